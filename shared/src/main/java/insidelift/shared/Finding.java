package insidelift.shared;

/**
 * What the answers say about the front end.
 *
 * @param id a finding's id in the {@link Vocabulary}
 * @param strength the summed evidence in decibans; negative speaks against
 */
public record Finding(String id, int strength) {}
