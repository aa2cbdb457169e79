package insidelift.engine.sheet;

import insidelift.engine.sizing.Sizes;
import insidelift.shared.Degrees;
import insidelift.shared.Lever;
import insidelift.shared.situation.Baseline;
import insidelift.shared.situation.FrontEnd;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a kart stands against its own sheet.
 *
 * @param track {@code dry} or {@code wet}: which row of the sheet counts
 * @param words what it comes to
 */
public record Standing(String track, String words) {

  /** The kart of a situation against its own setting for that track; dry where none was told. */
  public static Standing of(Situation situation) {
    String track = situation.answer("water").orElse("dry").equals("dry") ? "dry" : "wet";
    Baseline own = situation.kart().past().baseline().get(track);
    if (own == null) {
      return new Standing(track, "no sheet for it yet");
    }
    FrontEnd now = situation.kart().front();
    List<String> off = new ArrayList<>();
    boolean read = false;
    for (Lever lever : Lever.values()) {
      Optional<Degrees> here = middle(now, lever);
      Optional<Degrees> there = middle(own.front(), lever);
      if (here.isPresent() && there.isPresent()) {
        read = true;
        Degrees apart = here.get().minus(there.get());
        if (apart.size().exceeds(Sizes.LEAST_MOVE)) {
          off.add("%s %s off".formatted(lever.id(), apart.signed()));
        }
      }
    }
    if (!read) {
      return new Standing(track, "not measured");
    }
    return new Standing(track, off.isEmpty() ? "as its sheet" : String.join(", ", off));
  }

  private static Optional<Degrees> middle(FrontEnd front, Lever lever) {
    return lever == Lever.CAMBER ? front.camber().map(Sides::middle) : front.casterFromNeutral();
  }
}
