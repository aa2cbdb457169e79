/** Understands what somebody says in own words, or leaves it out and says why. */
package insidelift.engine.speech;
