/** One consultation from its first answer to the next heat: what is known, undone, kept. */
package insidelift.engine.consultation.session;
