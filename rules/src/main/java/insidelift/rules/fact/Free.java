package insidelift.rules.fact;

/** A move that nothing forbids, and what it gains. */
public record Free(String lever, String direction, int gain) {

  /** Its place among equals: caster first, which acts in the earlier part of the corner. */
  public int place() {
    return (lever.equals("caster") ? 0 : 2) + (direction.equals("more") ? 0 : 1);
  }
}
