/**
 * Holds the knowledge against itself: what contradicts, repeats, never speaks or ends nowhere, what
 * no source carries, and what must hold in every situation. {@link insidelift.engine.audit.Audit}
 * is the way in; the build's tests run the same code.
 */
package insidelift.engine.audit;
