package insidelift.rules.weigh;

/**
 * Where a lever stands, stood, or is to stand.
 *
 * @param of {@code now}, {@code before}, {@code dry} or {@code wet}: the kart's own record
 * @param lever a lever's id
 * @param value hundredths of a degree from zero for camber, hundredths of a position from the
 *     user's neutral for caster
 */
public record Setting(String of, String lever, int value) {}
