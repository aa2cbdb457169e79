package insidelift.rules.weigh;

/**
 * A caster at which the steering was too heavy for the driver.
 *
 * @param caster as in {@link Setting}
 */
public record HeavyAt(int caster) {}
