package insidelift.shared.situation;

/** Something in a file that cannot be used; the message is one sentence that names the place. */
public final class CaseProblem extends Exception {

  private static final long serialVersionUID = 1L;

  /** A problem, by its sentence. */
  public CaseProblem(String message) {
    super(message);
  }

  public static CaseProblem at(String place, String what) {
    return new CaseProblem(place.isEmpty() ? what : place + ": " + what);
  }
}
