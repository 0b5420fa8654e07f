package io.github.readfall.strip.json;

import io.github.readfall.strip.LaidBalloon;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Tells balloons of layout.json with the same id apart. */
final class BalloonTwins {

  private final LayoutFindings faults;

  BalloonTwins(LayoutFindings faults) {
    this.faults = faults;
  }

  /** The balloons with each id once: the first keeps it. */
  List<LaidBalloon> onceEach(List<LocatedPart<LaidBalloon>> all) {
    Map<String, LaidBalloon> byId = new HashMap<>();
    List<LaidBalloon> once = new ArrayList<>();
    for (LocatedPart<LaidBalloon> written : all) {
      LaidBalloon balloon = written.part();
      Optional<LaidBalloon> first =
          balloon.id().isEmpty()
              ? Optional.empty()
              : Optional.ofNullable(byId.putIfAbsent(balloon.id(), balloon));
      first.map(twin -> parted(written, twin)).orElse(Optional.of(balloon)).ifPresent(once::add);
    }
    return once;
  }

  /** The second of two, known by its cue alone, or left out if the cue is the same too. */
  private Optional<LaidBalloon> parted(LocatedPart<LaidBalloon> second, LaidBalloon first) {
    LaidBalloon balloon = second.part();
    String id = LayoutFindings.shown(balloon.id());
    if (balloon.cue().isEmpty() || balloon.cue().equals(first.cue())) {
      faults.error(
          "cue-twice",
          second.offset(),
          "The cue " + id + " has a balloon already, so this one is left out.",
          "Keep one of the two, or give this one the id of another cue.");
      return Optional.empty();
    }
    faults.warning(
        "cue-twice",
        second.offset(),
        "Two balloons have the id " + id + "; this one is known by its cue alone.",
        "Give it the id of its own cue, or none.");
    return Optional.of(balloon.named(""));
  }
}
