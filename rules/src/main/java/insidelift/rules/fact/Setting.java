package insidelift.rules.fact;

/**
 * Where a lever stands, stood, or is to stand.
 *
 * @param of {@code now}, {@code before}, {@code dry} or {@code wet}: the kart's own record
 * @param lever a lever's id
 * @param value hundredths of a degree from zero for camber, hundredths of a position from the
 *     user's neutral for caster
 */
public record Setting(String of, String lever, int value) implements Told {

  /** Stands for a set-up that was made for another condition than the next run's. */
  public static final Setting MADE_FOR_ANOTHER = new Setting("other", "both", 0);

  /** More than a quarter of a degree, by which two readings may differ and still be equal. */
  private static final int CAMBER_APART = 26;

  /** Caster is set by whole positions, so more than half of one is the least that can be meant. */
  private static final int CASTER_APART = 51;

  /** Whether another place of the same lever is worth going to. */
  public boolean apart(int other) {
    return Math.abs(value - other) >= (lever.equals("camber") ? CAMBER_APART : CASTER_APART);
  }
}
