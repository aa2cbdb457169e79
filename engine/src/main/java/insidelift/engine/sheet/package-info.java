/**
 * The front-end sheet of a kart: how it stands for a dry and a wet track by its own record, where
 * the trade starts where there is no record, and how it is changed over.
 */
package insidelift.engine.sheet;
