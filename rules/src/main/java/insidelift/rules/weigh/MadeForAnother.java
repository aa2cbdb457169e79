package insidelift.rules.weigh;

/** The present set-up was made for another condition than the next run's. */
public record MadeForAnother() {}
