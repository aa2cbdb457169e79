package insidelift.rules.weigh;

/**
 * The ends of a lever's range and where a rain setting starts, as in {@link Setting}.
 *
 * @param lever a lever's id
 * @param least the end toward {@code less}
 * @param most the end toward {@code more}
 * @param size one position
 * @param wet where a set-up made for the wet is taken to stand if nobody measured it
 */
public record End(String lever, int least, int most, int size, int wet) {}
