package insidelift.engine.speech;

import insidelift.engine.speech.Figures.Measured;
import insidelift.shared.situation.EdgeTemperatures;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Three temperatures across the tread of a front tyre. */
final class TreadFigures {

  private static final Set<String> OUTER = Set.of("outside", "outer", "out", "outsides");
  private static final Set<String> MIDDLE = Set.of("middle", "mid", "centre", "center");
  private static final Set<String> INNER = Set.of("inside", "inner", "in", "insides");
  private static final String OUTER_FIRST =
      ".*\\b(?:outside|outer|out)\\b.*\\b(?:inside|inner|in)\\b.*";
  private static final Set<String> BETWEEN =
      Set.of("/", ",", "-", "and", "degrees", "c", "°", "is", "deg", "on", "then", ":", "at");

  /** How many words after the numbers may say what they are. */
  private static final int AFTER = 4;

  /** How many words and marks after them may say in which order they were taken. */
  private static final int ORDER = 8;

  private TreadFigures() {}

  /** From the edge nearest the seat outward, as everywhere, unless the words say otherwise. */
  static Optional<Measured> at(List<Token> tokens, int start, String back) {
    Map<Integer, Double> told = new TreeMap<>();
    List<Double> inOrder = new ArrayList<>();
    Integer label = null;
    Double waiting = null;
    int at = start;
    int end = start;
    int numbers = start;
    for (; at < tokens.size() && at < start + Figures.AHEAD && inOrder.size() <= 3; at++) {
      Token token = tokens.get(at);
      Integer here = label(token.said());
      if (token.isNumber() && token.number() >= 10 && token.number() <= 150) {
        inOrder.add(token.number());
        end = at + 1;
        numbers = at + 1;
        if (label == null) {
          waiting = token.number();
        } else {
          told.put(label, token.number());
          label = null;
        }
      } else if (here != null && waiting != null) {
        told.put(here, waiting);
        waiting = null;
        end = at + 1;
      } else if (here != null) {
        label = here;
      } else if (at == start || !BETWEEN.contains(token.said())) {
        break;
      }
    }
    boolean labelled = told.size() == 3;
    String order =
        back + " " + Figures.text(tokens, numbers, Math.min(tokens.size(), numbers + ORDER));
    String around = back + " " + Figures.text(tokens, end, Math.min(tokens.size(), end + AFTER));
    if (inOrder.size() != 3
        || (!labelled && !tokens.get(start).isNumber())
        || !around.matches(".*\\b(?:temps?|temperatures?|tyres?|tires?|fronts?|pyro\\w*)\\b.*")
        || around.matches(".*\\b(?:rears?|back|pressures?)\\b.*")) {
      return Optional.empty();
    }
    List<Double> seatFirst =
        labelled
            ? List.of(told.get(2), told.get(1), told.get(0))
            : order.matches(OUTER_FIRST)
                ? List.of(inOrder.get(2), inOrder.get(1), inOrder.get(0))
                : inOrder;
    EdgeTemperatures edges =
        new EdgeTemperatures(seatFirst.get(0), seatFirst.get(1), seatFirst.get(2));
    return Optional.of(
        new Measured(
            Figures.measured(
                Figures.TEMPS,
                inOrder,
                Map.of(Figures.TEMPS, EdgeTemperatures.pattern(edges, edges)),
                Figures.text(tokens, start, end)),
            end - start));
  }

  private static Integer label(String word) {
    return OUTER.contains(word)
        ? Integer.valueOf(0)
        : MIDDLE.contains(word)
            ? Integer.valueOf(1)
            : INNER.contains(word) ? Integer.valueOf(2) : null;
  }
}
