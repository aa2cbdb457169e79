package insidelift.rules.fact;

/** Another lever that comes first, and which way: before a move of the front end, or alone. */
public record Lead(String lever, String direction) {}
