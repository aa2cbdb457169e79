package insidelift.rules.weigh;

/** A move that could be made: one position of one lever. */
public record Option(String lever, String direction, int minutes) {

  /** Toward more front bite by the sign of the lever: 1 more, -1 less. */
  public int sign() {
    return direction.equals("more") ? 1 : -1;
  }
}
