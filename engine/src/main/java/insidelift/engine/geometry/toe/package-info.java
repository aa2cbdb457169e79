/** Toe: how it is measured, and which rod to turn by how much. */
package insidelift.engine.geometry.toe;
