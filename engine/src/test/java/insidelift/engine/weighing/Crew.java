package insidelift.engine.weighing;

/** Somebody who decides what to do next. */
interface Crew {

  /**
   * What they decide.
   *
   * @param kind as the rules choose
   * @param to where the kart is to stand
   */
  record Decision(String kind, Stand to) {}

  Decision next(Report report);
}
