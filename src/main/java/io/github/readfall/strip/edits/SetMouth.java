package io.github.readfall.strip.edits;

import io.github.readfall.base.geom.XY;
import io.github.readfall.strip.Extra;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.Mouth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Sets or removes a speaker's mouth. */
final class SetMouth {

  /**
   * Distance up to which a tail's tip is taken to be aimed at a mouth, in px. House default, no
   * source.
   */
  private static final double AIMED_PX = 60;

  private SetMouth() {}

  static Layout in(Layout layout, StripItem.Mouth which, Optional<XY> at) {
    List<Mouth> mouths = new ArrayList<>();
    Optional<Mouth> old = Optional.empty();
    for (Mouth mouth : layout.mouths()) {
      if (isMeant(mouth, which)) {
        old = Optional.of(mouth);
      } else {
        mouths.add(mouth);
      }
    }
    Extra extra = old.map(Mouth::extra).orElse(Extra.NONE);
    at.ifPresent(xy -> mouths.add(new Mouth(which.panel(), which.speaker(), xy, extra)));
    Layout put = layout.withMouths(mouths);
    Optional<XY> from = old.map(Mouth::at);
    return at.isPresent() ? aimed(put, which, from, at.get()) : put;
  }

  private static boolean isMeant(Mouth mouth, StripItem.Mouth which) {
    return mouth.panel() == which.panel() && mouth.speaker().equalsIgnoreCase(which.speaker());
  }

  /**
   * Moves the tips of tails that ended at the mouth; for a new mouth, aims all its speaker's tails
   * at it.
   */
  private static Layout aimed(Layout layout, StripItem.Mouth which, Optional<XY> from, XY to) {
    return layout.withBalloons(
        layout.balloons().stream().map(balloon -> aimed(balloon, which, from, to)).toList());
  }

  private static LaidBalloon aimed(
      LaidBalloon balloon, StripItem.Mouth which, Optional<XY> from, XY to) {
    int speaker =
        balloon
            .cue()
            .filter(cue -> cue.panel() == which.panel())
            .map(cue -> cue.placeOf(which.speaker()))
            .orElse(-1);
    if (speaker < 0 || speaker >= balloon.tailsTo().size()) {
      return balloon;
    }
    XY tip = balloon.tailsTo().get(speaker);
    Optional<XY> there =
        from.map(
            old ->
                tip.distanceTo(old) <= AIMED_PX
                    ? tip.plus(to.x() - old.x(), to.y() - old.y())
                    : tip);
    return balloon.withTip(speaker, there.orElse(to));
  }
}
