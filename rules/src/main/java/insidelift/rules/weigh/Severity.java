package insidelift.rules.weigh;

/** How bad it is, in per cent of a clear complaint. */
public record Severity(int percent) {}
