package io.github.readfall.art.panels;

import io.github.readfall.base.geom.Box;
import io.github.readfall.script.ShotHints;
import java.util.List;

/**
 * Scores how well a panel of the script and a box in the art match, from the panel's description in
 * the script. Weights are house defaults, no source.
 */
final class MatchScore {

  /** Score of any pair: better than none, as long as the order is kept. */
  private static final double LEAST = 0.05;

  private static final double BASE = 1;
  private static final double SHAPE = 0.3;
  private static final double INSET = 0.6;
  private static final double BESIDE = 0.4;
  private static final double NO_ROOM = 0.6;
  private static final double SAME_PLACE = 1;
  private static final double SAME_SIZE = 0.3;
  private static final double HEIGHT = 0.4;

  /** Ratio of height to width from which a box is tall. */
  private static final double TALL = 1.1;

  /** Share of the strip's width from which a box is wide. */
  private static final double WIDE = 0.75;

  /** Balloons that need more than this share of a panel do not fit it. */
  private static final double FULL = 0.8;

  private final List<ExpectedPanel> wanted;
  private final List<FoundPanel> boxes;
  private final double stripWidthPx;

  MatchScore(List<ExpectedPanel> wanted, List<FoundPanel> boxes, double stripWidthPx) {
    this.wanted = wanted;
    this.boxes = boxes;
    this.stripWidthPx = stripWidthPx;
  }

  /** The score of a pair; greater than 0. */
  double of(int panel, int found) {
    ExpectedPanel wish = wanted.get(panel);
    Box box = boxes.get(found).box();
    ShotHints hints = wish.panel().hints();
    double score =
        BASE * boxes.get(found).certainty()
            + shape(hints, box)
            + INSET * agreement(hints.inset(), isInset(found))
            + BESIDE * agreement(hints.besidePrevious(), isBeside(found))
            - (hasNoRoom(wish, box) ? NO_ROOM : 0)
            + wish.before().map(before -> likeness(before, box)).orElse(0.0);
    return Math.max(LEAST, score);
  }

  /**
   * The agreement of a hint: present if asked for speaks for a pair, present unasked against it.
   */
  private static double agreement(boolean asked, boolean there) {
    if (asked == there) {
      return asked ? 1 : 0;
    }
    return -0.5;
  }

  private double shape(ShotHints hints, Box box) {
    double score = 0;
    if (hints.tall()) {
      score += box.height() >= TALL * box.width() ? SHAPE : -SHAPE / 2;
    }
    if (hints.wide()) {
      score +=
          box.width() >= WIDE * stripWidthPx && box.height() < box.width() ? SHAPE : -SHAPE / 2;
    }
    if (hints.heightPx().isPresent()) {
      double asked = hints.heightPx().getAsInt();
      score += HEIGHT * (Math.min(asked, box.height()) / Math.max(asked, box.height()) - 0.5);
    }
    return score;
  }

  private boolean isInset(int found) {
    FoundPanel box = boxes.get(found);
    return boxes.stream().anyMatch(other -> PanelOrder.isIn(box, other));
  }

  /** Returns true if it shares half of its height or more with the box before it. */
  private boolean isBeside(int found) {
    if (found == 0 || isInset(found)) {
      return false;
    }
    Box box = boxes.get(found).box();
    Box before = boxes.get(found - 1).box();
    double shared = Math.min(box.bottom(), before.bottom()) - Math.max(box.y(), before.y());
    return shared >= Math.min(box.height(), before.height()) / 2;
  }

  private static boolean hasNoRoom(ExpectedPanel wish, Box box) {
    return wish.balloonsPx2() > FULL * box.width() * box.height() || wish.widestPx() > box.width();
  }

  private static double likeness(Box before, Box box) {
    double across = Math.min(before.right(), box.right()) - Math.max(before.x(), box.x());
    double down = Math.min(before.bottom(), box.bottom()) - Math.max(before.y(), box.y());
    double shared = Math.max(0, across) * Math.max(0, down);
    double all = before.width() * before.height() + box.width() * box.height() - shared;
    double size =
        Math.min(before.width(), box.width())
            / Math.max(before.width(), box.width())
            * Math.min(before.height(), box.height())
            / Math.max(before.height(), box.height());
    return SAME_PLACE * shared / all + SAME_SIZE * (size - 0.5);
  }
}
