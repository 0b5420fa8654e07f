package io.github.readfall.plan.place;

import io.github.readfall.art.DetailMap;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.plan.Spacing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The possible places of one item, and what each costs by itself.
 *
 * @param item to be placed
 * @param area placement area of its panel
 * @param spacing the distances kept
 * @param sides of the speakers
 * @param idealTopPx its top if all items were evenly spread
 * @param detail of the art
 */
record Candidates(
    PlacementItem item,
    PlacementArea area,
    Spacing spacing,
    Sides sides,
    double idealTopPx,
    DetailMap detail) {

  /** Heights tried beside the even ones, in a panel of one item; three more for each other. */
  private static final int HEIGHTS = 8;

  private static final int MORE_HEIGHTS = 3;
  private static final int MOST_MORE = 6;

  /** From so many items on a grid is coarser than they are: only the even heights are tried. */
  private static final int FULL = 16;

  /** Even heights tried, those nearest to its own; house default, no source. */
  private static final int MOST_EVEN = 12;

  /** In panel heights: beyond this from the even place the cost is the whole {@link Costs}. */
  private static final double UNEVEN_REACH = 0.25;

  /** The same in panel widths, if that is less: in a tall panel evenness still counts. */
  private static final double UNEVEN_REACH_OF_WIDTH = 0.5;

  /**
   * All places.
   *
   * @param evenTops tops of all items of the panel, evenly spread
   */
  List<Candidate> all(List<Double> evenTops) {
    if (item.fixedAt().isPresent()) {
      return List.of(at(item.fixedAt().get()));
    }
    List<Candidate> all = new ArrayList<>();
    for (double top : tops(evenTops)) {
      for (double left : lefts()) {
        all.add(at(new XY(left, top)));
      }
    }
    return all;
  }

  private TreeSet<Double> tops(List<Double> evenTops) {
    double highest = area.panel().box().y() + spacing.clearancePx();
    double lowest = Math.max(highest, area.lowestTopPx(item.heightPx(), spacing));
    TreeSet<Double> tops = new TreeSet<>();
    nearest(evenTops).forEach(top -> tops.add(Math.max(highest, Math.min(lowest, top))));
    boolean full = evenTops.size() > FULL;
    int heights = full ? 0 : HEIGHTS + MORE_HEIGHTS * Math.min(evenTops.size(), MOST_MORE);
    for (int i = 0; i < heights; i++) {
      tops.add(highest + (lowest - highest) * i / (heights - 1));
    }
    return tops;
  }

  /** Its own even place and those about it: in a full panel the rest is too far away to matter. */
  private Stream<Double> nearest(List<Double> evenTops) {
    return evenTops.stream()
        .sorted(Comparator.comparingDouble(top -> Math.abs(top - idealTopPx)))
        .limit(MOST_EVEN);
  }

  private boolean goesInside() {
    return item.widthPx() <= area.rightPx() - area.leftPx();
  }

  private double leastLeft() {
    return goesInside() ? area.leftPx() : area.outerLeftPx();
  }

  private double mostLeft() {
    return (goesInside() ? area.rightPx() : area.outerRightPx()) - item.widthPx();
  }

  /** Returns true if an item that may move may be here. */
  boolean allows(XY at) {
    double highest = area.panel().box().y() + spacing.clearancePx();
    return at.x() >= leastLeft()
        && at.x() <= mostLeft()
        && at.y() >= highest
        && at.y() <= Math.max(highest, area.lowestTopPx(item.heightPx(), spacing));
  }

  private TreeSet<Double> lefts() {
    double width = item.widthPx();
    double least = leastLeft();
    double most = mostLeft();
    if (most < least) {
      return new TreeSet<>(List.of((least + most) / 2));
    }
    TreeSet<Double> lefts = new TreeSet<>(List.of(least, most, (least + most) / 2));
    lefts.add(Math.max(least, Math.min(most, wantedMiddle() - width / 2)));
    if (!goesInside()) {
      Box panel = area.panel().box();
      double clear = PlacementArea.tangentPx(spacing);
      for (double edge : List.of(panel.x(), panel.right() - width)) {
        lefts.add(Math.max(least, Math.min(most, edge - clear)));
        lefts.add(Math.max(least, Math.min(most, edge + clear)));
      }
    }
    return lefts;
  }

  /** The same item at another place. */
  Candidate at(XY at) {
    Box box = item.boxAt(at);
    Box lastBox = item.tailedBox(at);
    Optional<Pointer> tail = item.hasTail() ? shortTail(lastBox, 0) : Optional.empty();
    Box reach = tail.map(pointer -> box.union(pointer.bounds())).orElse(box);
    return new Candidate(at, box, lastBox, tail, reach, cost(box, lastBox, tail));
  }

  /**
   * The shortest tail to a speaker that would do; empty if they are under the balloon.
   *
   * @param speaker from 0
   */
  Optional<Pointer> shortTail(Box lastBox, int speaker) {
    XY target = target(lastBox, speaker);
    XY exit = Pointer.exit(item.last().look().shape(), lastBox, target);
    double way = exit.distanceTo(target);
    if (way < spacing.clearancePx() || lastBox.covers(target)) {
      return Optional.empty();
    }
    if (speaker < item.fixedTips().size()) {
      return Optional.of(new Pointer(exit, target));
    }
    return Optional.of(Pointer.towards(exit, target, Math.min(spacing.leastTailPx(), 0.9 * way)));
  }

  /**
   * The target of a tail: the given tip, the mouth, or the place where one is expected.
   *
   * @param speaker from 0
   */
  XY target(Box lastBox, int speaker) {
    String name = item.speakers().get(Math.min(speaker, item.speakers().size() - 1));
    return speaker < item.fixedTips().size()
        ? item.fixedTips().get(speaker)
        : area.mouth(name).map(mouth -> mouth.at()).orElseGet(() -> supposedMouth(lastBox, name));
  }

  /** The place where a mouth is expected; for a voice from off, the panel's edge. */
  private XY supposedMouth(Box lastBox, String speaker) {
    Box panel = area.panel().box();
    double aside = sides.middlePx(item, speaker, area.panel(), Optional.empty());
    if (item.isOff()) {
      double edge = sides.isLeft(item, speaker) ? panel.x() : panel.right();
      return new XY(edge, lastBox.centre().y() + lastBox.height() / 4);
    }
    double least = 3 * spacing.leastTailPx();
    double below = Math.max(panel.y() + 0.62 * panel.height(), lastBox.bottom() + least);
    if (below < panel.bottom() + least) {
      return new XY(aside, below);
    }
    return new XY(aside, Math.min(panel.y() + panel.height() / 2, lastBox.y() - least));
  }

  private double wantedMiddle() {
    Box panel = area.panel().box();
    if (item.isSpoken()) {
      return item.speakers().stream()
          .mapToDouble(name -> sides.middlePx(item, name, area.panel(), area.mouth(name)))
          .average()
          .orElseThrow();
    }
    double half = item.widthPx() / 2;
    return item.isCaption()
        ? (sides.isLeft(item, item.speaker()) ? area.leftPx() + half : area.rightPx() - half)
        : panel.centre().x();
  }

  private double cost(Box box, Box lastBox, Optional<Pointer> tail) {
    if (item.fixedAt().isPresent()) {
      return 0;
    }
    return broken(box, tail) * Costs.HARD
        + uneven(box)
        + Costs.ASIDE
            * Math.abs(box.centre().x() - wantedMiddle())
            / (area.panel().box().width() / 2)
        + beforePicture(box)
        + (box.bottom() > area.panel().box().bottom() ? Costs.IN_GUTTER : 0)
        + farFromMouth(lastBox)
        + Costs.COVERED * detail.detail(box);
  }

  /** The number of hard rules that the item breaks by itself. */
  private int broken(Box box, Optional<Pointer> tail) {
    int broken = 0;
    for (Box obstacle : area.obstacles()) {
      broken += obstacle.meets(box) || tail.filter(t -> t.meets(obstacle, 0)).isPresent() ? 1 : 0;
    }
    for (Box face : area.faces()) {
      broken += face.meets(box) ? 1 : 0;
    }
    boolean tangent = area.isTangent(box, spacing);
    boolean tailless = item.hasTail() && tail.isEmpty();
    return broken + (tangent ? 1 : 0) + (tailless ? 1 : 0);
  }

  private double uneven(Box box) {
    Box panel = area.panel().box();
    double reachPx = Math.min(UNEVEN_REACH * panel.height(), UNEVEN_REACH_OF_WIDTH * panel.width());
    double off = (box.y() - idealTopPx) / reachPx;
    boolean mouth = item.isSpoken() && area.mouth(item.speaker()).isPresent();
    return off * off * (mouth ? Costs.UNEVEN_BY_MOUTH : Costs.UNEVEN);
  }

  private double beforePicture(Box box) {
    Box panel = area.panel().box();
    double wantedPx =
        Math.min(
            Costs.PICTURE_FIRST * panel.height(), Costs.PICTURE_FIRST_OF_WIDTH * panel.width());
    double seenPx = box.y() - panel.y();
    return item.isSpoken() && seenPx < wantedPx
        ? Costs.BEFORE_PICTURE * (1 - seenPx / wantedPx)
        : 0;
  }

  private double farFromMouth(Box lastBox) {
    return item.isSpoken()
        ? area.mouth(item.speaker())
            .map(
                mouth ->
                    Costs.FAR_FROM_MOUTH
                            * lastBox.distanceTo(new Box(mouth.at().x(), mouth.at().y(), 0, 0))
                            / area.panel().box().height()
                        + (lastBox.y() > mouth.at().y() ? Costs.BELOW_MOUTH : 0))
            .orElse(0.0)
        : 0;
  }
}
