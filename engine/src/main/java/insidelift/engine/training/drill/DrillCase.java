package insidelift.engine.training.drill;

import insidelift.shared.situation.Situation;

/**
 * A case to be worked on.
 *
 * @param source where it comes from: its number, or the name of its file
 * @param hidden what is true of the kart, the track, the driver and the tyres; its kart is told at
 *     the start, its answers only when asked for
 */
public record DrillCase(String source, Situation hidden) {}
