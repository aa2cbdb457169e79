package insidelift.engine.speech;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What an answer is made of: the concepts that say it, all within one clause. */
final class Frames {

  /** How many other pieces may stand between the pieces of one statement. */
  private static final int SCATTER = 3;

  /** One line of the file. */
  record Frame(List<String> gives, List<Set<String>> needs, List<Set<String>> may) {}

  /** A frame as it was found: the places of its pieces. */
  record Match(Frame frame, List<Integer> places, int from, int to) {}

  private final List<Frame> frames;

  private Frames(List<Frame> frames) {
    this.frames = frames;
  }

  static Frames load() {
    try (InputStream in = Frames.class.getResourceAsStream("/insidelift/speech/frames.txt")) {
      return new Frames(
          new String(in.readAllBytes(), StandardCharsets.UTF_8)
              .lines()
              .filter(line -> !line.isBlank() && !line.startsWith("#"))
              .map(Frames::frame)
              .toList());
    } catch (IOException e) {
      throw new UncheckedIOException("the frames of this build cannot be read", e);
    }
  }

  private static Frame frame(String line) {
    String[] sides = line.split("<-", -1);
    List<Set<String>> needs = new ArrayList<>();
    List<Set<String>> may = new ArrayList<>();
    for (String word : sides[1].strip().split("\\s+", -1)) {
      (word.endsWith("?") ? may : needs).add(Set.of(word.replace("?", "").split("\\|")));
    }
    return new Frame(Arrays.stream(sides[0].strip().split(",\\s*")).toList(), needs, may);
  }

  List<Frame> all() {
    return frames;
  }

  /** The statements of a clause: the fullest first, then the closest, then the first. */
  List<Match> in(List<Piece> pieces) {
    List<Match> matches = new ArrayList<>();
    Set<Integer> used = new HashSet<>();
    Optional<Match> next = best(pieces, used);
    while (next.isPresent()) {
      // No statement stands within another.
      for (int at = next.get().from(); at <= next.get().to(); at++) {
        used.add(at);
      }
      used.addAll(next.get().places());
      matches.add(next.get());
      next = best(pieces, used);
    }
    return matches;
  }

  private Optional<Match> best(List<Piece> pieces, Set<Integer> used) {
    Match best = null;
    for (Frame frame : frames) {
      for (int at = 0; at < pieces.size(); at++) {
        Match match = from(frame, pieces, used, at);
        if (match != null) {
          match = withMay(match, pieces, used);
          best = best == null || before(match, best) ? match : best;
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private static Match withMay(Match match, List<Piece> pieces, Set<Integer> used) {
    List<Integer> places = new ArrayList<>(match.places());
    for (Set<String> may : match.frame().may()) {
      nearest(pieces, used, places, may, match.from()).ifPresent(places::add);
    }
    return new Match(match.frame(), places, Collections.min(places), Collections.max(places));
  }

  private static boolean before(Match one, Match other) {
    int size = one.places().size() - other.places().size();
    int span = one.to() - one.from() - (other.to() - other.from());
    return size != 0 ? size > 0 : span != 0 ? span < 0 : one.from() < other.from();
  }

  /** The frame with its first piece here: each other need is taken as near as it is found. */
  private static Match from(Frame frame, List<Piece> pieces, Set<Integer> used, int at) {
    List<Integer> places = new ArrayList<>();
    boolean ordered = false;
    int from = at;
    int to = at;
    for (Set<String> need : frame.needs()) {
      int found = -1;
      if (places.isEmpty()) {
        found = !used.contains(at) && fits(pieces.get(at), need) ? at : -1;
      } else {
        for (int step = 1; step <= frame.needs().size() + SCATTER && found < 0; step++) {
          for (int place : ordered ? new int[] {to + step} : new int[] {at + step, at - step}) {
            if (found < 0
                && place >= 0
                && place < pieces.size()
                && !used.contains(place)
                && !places.contains(place)
                && fits(pieces.get(place), need)) {
              found = place;
            }
          }
        }
      }
      if (found < 0) {
        return null;
      }
      places.add(found);
      ordered |= need.contains("not");
      from = Math.min(from, found);
      to = Math.max(to, found);
    }
    int first = from;
    int last = to;
    return to - from > frame.needs().size() - 1 + SCATTER
            || used.stream().anyMatch(place -> place > first && place < last)
        ? null
        : new Match(frame, places, from, to);
  }

  private static Optional<Integer> nearest(
      List<Piece> pieces, Set<Integer> used, List<Integer> places, Set<String> may, int from) {
    Integer best = null;
    for (int at = 0; at < pieces.size(); at++) {
      if (!used.contains(at)
          && !places.contains(at)
          && fits(pieces.get(at), may)
          && Math.abs(at - from) <= 2 * SCATTER
          && (best == null || Math.abs(at - from) < Math.abs(best - from))) {
        best = at;
      }
    }
    return Optional.ofNullable(best);
  }

  private static boolean fits(Piece piece, Set<String> concepts) {
    return piece.concepts().stream().anyMatch(concepts::contains);
  }
}
