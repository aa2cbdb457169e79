/** Readings of the garage gauges, turned into degrees. */
package insidelift.engine.geometry.gauge;
