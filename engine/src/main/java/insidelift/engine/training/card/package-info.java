/** Cards of notes and rules, when each comes back (SM-2), and lessons. */
package insidelift.engine.training.card;
