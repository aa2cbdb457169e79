/** The kart as it is measured, its wheels under steer, and the four wheel loads in a corner. */
package insidelift.engine.geometry.kart;
