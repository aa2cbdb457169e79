package insidelift.rules.fact;

/** A quicker lever that comes before the move of the front end, and which way. */
public record Lead(String lever, String direction) {}
