/** How far a lever is moved, within its range. */
package insidelift.engine.sizing;
