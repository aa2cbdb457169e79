package insidelift.shared;

/**
 * A move that the advice makes, for the rules that say what goes with it.
 *
 * @param lever a {@link Lever}'s id
 * @param direction a {@link Direction}'s id
 */
public record Move(String lever, String direction) {}
