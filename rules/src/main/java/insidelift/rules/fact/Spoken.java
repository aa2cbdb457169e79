package insidelift.rules.fact;

import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.IndexedRule;
import org.kie.api.definition.rule.Rule;

/** What a plain rule says. It is entered as a fact, and names the rule and the note behind it. */
public sealed interface Spoken
    permits Barred,
        Claim,
        Evidence,
        Spoken.Care,
        Spoken.Check,
        Spoken.Job,
        Spoken.Kit,
        Spoken.Option,
        Spoken.Other,
        Spoken.Overruled,
        Spoken.Severity,
        Spoken.Start,
        Spoken.Term,
        Spoken.Track,
        Spoken.Unseen {

  /** Which rule said it. */
  By by();

  /**
   * Who speaks.
   *
   * @param rule the rule's id
   * @param note the note it stands on
   */
  record By(String rule, String note) {

    /** The rule that speaks, with its note without the quotation marks it is kept in. */
    public static By of(Rule rule) {
      String note = String.valueOf(rule.getMetaData().get("note"));
      return new By(
          rule.getName(), note.startsWith("\"") ? note.substring(1, note.length() - 1) : note);
    }
  }

  /** What a rule of the index says by one of its acts. */
  static Spoken of(IndexedRule rule, Act act) {
    By by = new By(rule.id(), rule.note());
    return switch (act.verb()) {
      case CHECK -> new Check(by, act.word(0));
      case UNSEEN -> new Unseen(by, act.word(0));
      case OTHER -> new Other(by, act.word(0), act.word(1));
      case KIT -> new Kit(by, act.word(0), act.word(1));
      case OVERRULED -> new Overruled(by, act.word(0));
      case CARE -> new Care(by, act.word(0), act.number(1));
      case JOB -> new Job(by, act.number(0));
      case EVIDENCE -> new Evidence(by, act.word(0), act.number(1), act.word(2));
      case CLAIM ->
          new Claim(
              by,
              act.word(0),
              act.word(1),
              act.word(2),
              act.number(3),
              act.number(4),
              act.word(5),
              act.word(6));
      case BARRED -> new Barred(by, act.word(0), act.word(1), act.word(2));
      case START -> new Start(by, act.word(0), act.word(1), act.number(2));
      case TRACK -> new Track(by, act.word(0));
      case SEVERITY -> new Severity(by, act.number(0));
      case TERM ->
          new Term(
              by,
              act.word(0),
              act.word(1),
              act.number(2),
              act.word(3),
              Boolean.parseBoolean(act.word(4)));
      case OPTION -> new Option(by, act.word(0), act.word(1), act.number(2));
    };
  }

  /**
   * Something to be put right, set or looked at before a lever is touched.
   *
   * @param kind a {@link insidelift.shared.CheckKind}'s id
   */
  record Check(By by, String kind) implements Spoken {
    /** A check by a rule that speaks. */
    public Check(Rule rule, String kind) {
      this(By.of(rule), kind);
    }

    /** Whether nothing else is done before it. */
    public boolean stops() {
      return !kind.equals("look");
    }
  }

  /** A safety question that nobody has answered. */
  record Unseen(By by, String question) implements Spoken {
    /** A question by a rule that speaks. */
    public Unseen(Rule rule, String question) {
      this(By.of(rule), question);
    }
  }

  /** Another lever than camber and caster to be moved that way, whatever the sums say. */
  record Other(By by, String lever, String direction) implements Spoken {
    /** A lever by a rule that speaks. */
    public Other(Rule rule, String lever, String direction) {
      this(By.of(rule), lever, direction);
    }
  }

  /** A lever that is changed over for a wet track, or back for a dry one. */
  record Kit(By by, String lever, String condition) implements Spoken {
    /** A lever by a rule that speaks. */
    public Kit(Rule rule, String lever, String condition) {
      this(By.of(rule), lever, condition);
    }
  }

  /** A claim that a shop does not go by, by its note. */
  record Overruled(By by, String claim) implements Spoken {}

  /**
   * A caution that goes with a move.
   *
   * @param lever the lever, or {@code both}
   * @param place lower ones come first
   */
  record Care(By by, String lever, int place) implements Spoken {
    /** A caution by a rule that speaks. */
    public Care(Rule rule, String lever, int place) {
      this(By.of(rule), lever, place);
    }
  }

  /** Steps of the job that makes the change; lower places come first. */
  record Job(By by, int place) implements Spoken {
    /** Steps by a rule that speaks. */
    public Job(Rule rule, int place) {
      this(By.of(rule), place);
    }
  }

  /**
   * Where the trade starts a lever on a kart without a record.
   *
   * @param water the track that it is for: {@code dry} to {@code standing}
   * @param value as in {@link Setting}
   */
  record Start(By by, String water, String lever, int value) implements Spoken {
    /** A starting point by a rule that speaks. */
    public Start(Rule rule, String water, String lever, int value) {
      this(By.of(rule), water, lever, value);
    }
  }

  /** The state of the track that the next run is for: {@code dry} to {@code standing}. */
  record Track(By by, String water) implements Spoken {
    /** A track by a rule that speaks. */
    public Track(Rule rule, String water) {
      this(By.of(rule), water);
    }

    /** The condition that a baseline is kept for. */
    public String condition() {
      return water.equals("dry") ? "dry" : "wet";
    }
  }

  /** How bad it is, in per cent of a clear complaint. */
  record Severity(By by, int percent) implements Spoken {
    /** A severity by a rule that speaks. */
    public Severity(Rule rule, int percent) {
      this(By.of(rule), percent);
    }
  }

  /**
   * A finding of the vocabulary.
   *
   * @param on what a claim must be about to bear on it: itself, or a part of the corner
   * @param wants the front bite that it wants there: 1 more, -1 less, 0 neither
   * @param question the question that asks for that part of the corner, or {@code none}
   * @param complaint whether it speaks against leaving the kart as it is
   */
  record Term(By by, String finding, String on, int wants, String question, boolean complaint)
      implements Spoken {
    /** A finding by a rule that speaks. */
    public Term(
        Rule rule, String finding, String on, int wants, String question, boolean complaint) {
      this(By.of(rule), finding, on, wants, question, complaint);
    }

    /**
     * The finding as it is found.
     *
     * @param weight the sum of its evidence
     * @param percent how bad it is, for what is felt in the corner
     */
    public Found found(int weight, int percent) {
      return new Found(finding, wants == 0 ? weight : weight * percent / 100, on, wants, complaint);
    }
  }

  /** A move that could be made: one position of one lever. */
  record Option(By by, String lever, String direction, int minutes) implements Spoken {
    /** A move by a rule that speaks. */
    public Option(Rule rule, String lever, String direction, int minutes) {
      this(By.of(rule), lever, direction, minutes);
    }

    /** Toward more front bite by the sign of the lever: 1 more, -1 less. */
    public int sign() {
      return direction.equals("more") ? 1 : -1;
    }
  }
}
