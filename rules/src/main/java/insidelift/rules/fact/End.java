package insidelift.rules.fact;

/**
 * From where a lever cannot be moved on, as in {@link Setting}.
 *
 * @param lever a lever's id
 * @param least toward {@code less}
 * @param most toward {@code more}
 * @param size one position
 */
public record End(String lever, int least, int most, int size) implements Told {}
