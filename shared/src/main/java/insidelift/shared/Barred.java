package insidelift.shared;

/**
 * A move that a limit forbids.
 *
 * @param lever a {@link Lever}'s id
 * @param direction a {@link Direction}'s id
 */
public record Barred(String lever, String direction) {}
