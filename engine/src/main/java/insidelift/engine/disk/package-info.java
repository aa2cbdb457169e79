/** A user's own folder on disk: what is written there is for its owner alone. */
package insidelift.engine.disk;
