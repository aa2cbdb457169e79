package insidelift.engine.units;

/** What is measured in units that differ from country to country. */
public enum Quantity {
  /** A tyre's pressure over that of the air around. */
  PRESSURE("a pressure"),
  /** A temperature, as of a tread. */
  TEMPERATURE("a temperature"),
  /** An engine's power. */
  POWER("a power");

  private final String words;

  Quantity(String words) {
    this.words = words;
  }

  /** It in words, as in {@code a pressure}. */
  public String words() {
    return words;
  }

  /** The unit in which it is stored, computed and written to files. */
  public KnownUnit stored() {
    return switch (this) {
      case PRESSURE -> KnownUnit.BAR;
      case TEMPERATURE -> KnownUnit.CELSIUS;
      case POWER -> KnownUnit.KILOWATT;
    };
  }
}
