/**
 * What a kart may be that nobody measured, and what a few measures make of it: bands, never a false
 * digit.
 */
package insidelift.engine.geometry.plausible;
