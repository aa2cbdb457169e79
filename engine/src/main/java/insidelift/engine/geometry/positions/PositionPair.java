package insidelift.engine.geometry.positions;

/**
 * Where both washers of one kingpin are.
 *
 * @param top name of the top washer's position
 * @param bottom name of the bottom washer's position
 */
public record PositionPair(String top, String bottom) {}
