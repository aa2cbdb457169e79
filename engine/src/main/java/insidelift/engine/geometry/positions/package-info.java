/** The kart's own eccentrics: which positions come nearest to what is wanted. */
package insidelift.engine.geometry.positions;
