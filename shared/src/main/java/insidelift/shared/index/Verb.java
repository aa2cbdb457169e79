package insidelift.shared.index;

import com.fasterxml.jackson.annotation.JsonValue;
import insidelift.shared.Named;
import java.util.List;

/** What a plain rule can say, with the kind of each of its words. */
public enum Verb implements Named {
  /** Something to be put right, set or looked at first. */
  CHECK("check", "check"),
  /** A safety question that nobody has answered. */
  UNSEEN("unseen", "question"),
  /** Another lever than camber and caster. */
  OTHER("other", "any lever, direction"),
  /** A lever that is changed over for a wet track, or back for a dry one. */
  KIT("kit", "any lever, condition"),
  /** A claim that a shop does not go by. */
  OVERRULED("overruled", "note"),
  /** A caution that goes with a move, and its place. */
  CARE("care", "lever or both, number"),
  /** Steps of the job, and their place in it. */
  JOB("job", "number"),
  /** Evidence for or against a finding, and the question it rests on. */
  EVIDENCE("evidence", "finding, number, question"),
  /** What one camp says that a move does. */
  CLAIM("claim", "any lever, direction, on, number, number, camp, mirror"),
  /** A move that is not made. */
  BARRED("barred", "any lever, direction, scope"),
  /** Where the trade starts a lever. */
  START("start", "water, lever, number"),
  /** The track that the next run is for. */
  TRACK("track", "water"),
  /** How bad it is, in per cent. */
  SEVERITY("severity", "number"),
  /** A finding of the vocabulary. */
  TERM("term", "finding, on, number, question or none, truth"),
  /** A move that could be made. */
  OPTION("option", "any lever, direction, number");

  private final String id;
  private final String words;

  Verb(String id, String words) {
    this.id = id;
    this.words = words;
  }

  @Override
  @JsonValue
  public String id() {
    return id;
  }

  /** The kinds of its words, in order. */
  public List<String> words() {
    return List.of(words.split(", ", -1));
  }
}
