package insidelift.rules.weigh;

/** A table of words that is entered at the beginning of every weighing. */
public record Begin(String of) {}
