package insidelift.rules.weigh;

/** The minutes left to the next run. */
public record Minutes(int left) {}
