package insidelift.rules.weigh;

/**
 * The state of the track that the next run is for.
 *
 * @param water {@code dry}, {@code damp}, {@code wet} or {@code standing}
 */
public record Track(String water) {

  /** The condition that a baseline is kept for. */
  public String condition() {
    return water.equals("dry") ? "dry" : "wet";
  }
}
