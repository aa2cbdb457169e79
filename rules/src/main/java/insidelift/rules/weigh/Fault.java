package insidelift.rules.weigh;

/**
 * Something to be put right before a lever is touched.
 *
 * @param note the check
 */
public record Fault(String note) {}
