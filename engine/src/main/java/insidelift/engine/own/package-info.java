/**
 * A shop's own knowledge: claims in a file of data that stand beside those of this build. They can
 * weigh in, correct, forbid, warn and overrule a claim, but no first check, no limit and no caution
 * of this build; nothing in the file is ever executed.
 */
package insidelift.engine.own;
