/**
 * The kart's own geometry: what steering does to the front wheels and to the four wheel loads,
 * which eccentric positions give a wanted change, how to read the garage gauges, and what a change
 * of camber or caster does to the wheels on the ground.
 *
 * <p>Axes are those of ISO 8855: x forward, y left, z up. Caster is positive with the top of the
 * kingpin rearward, kingpin inclination with its top inboard, camber with the top of the wheel
 * outboard. Steer turns both wheels about their kingpins and is positive to the left, so the left
 * wheel is the inner one. Not modelled: camber thrust, tyre deflection sideways, steering geometry
 * that turns the two wheels by different angles, and the shift of the contact points under steer.
 */
package insidelift.engine.geometry;
