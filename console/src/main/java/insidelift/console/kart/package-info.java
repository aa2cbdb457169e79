/** The verbs about the kart's own geometry: loads, eccentric positions, gauges, toe, pictures. */
package insidelift.console.kart;
