/**
 * The units that people read and type: pressures, temperatures, engine powers. Everything that is
 * stored, computed and written to files is in the units of {@link
 * insidelift.engine.units.Quantity#stored()}; other units exist at the rim only. The units library
 * is loaded by the first real conversion, never by an ordinary start.
 */
package insidelift.engine.units;
