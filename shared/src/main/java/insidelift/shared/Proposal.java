package insidelift.shared;

/**
 * A move that a claim asks for, before it is known which proposals stand.
 *
 * @param claim the id of the claim (its note)
 * @param lever a {@link Lever}'s id
 * @param direction a {@link Direction}'s id; {@code hold} where a target is already reached
 * @param kind {@code target} or {@code correction}
 * @param strength the evidence behind it in decibans
 */
public record Proposal(String claim, String lever, String direction, String kind, int strength) {}
