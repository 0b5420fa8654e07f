package io.github.readfall.rules.model;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Region;
import io.github.readfall.base.geom.RegionIndex;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.plan.order.ReadingOrder;
import io.github.readfall.strip.KeepClear;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A strip under check, with what several rules need of it, computed once: its reading order, and
 * indexes of its balloons, borders and areas by place.
 *
 * @param galley the strip
 * @param order in which it is read
 * @param balloons by their reach, tails included
 * @param borders of panels, except those on the strip's own edge
 * @param keepClear areas that nothing may cover
 * @param places each balloon's position in the script, by id
 * @param chains the first of the joined balloons that each belongs to, by id
 * @param joined ids of the balloons that are joined to another one on the strip
 */
public record CheckedStrip(
    Galley galley,
    ReadingOrder order,
    RegionIndex<PlacedBalloon> balloons,
    RegionIndex<PanelEdge> borders,
    RegionIndex<KeepClear> keepClear,
    Map<String, Integer> places,
    Map<String, String> chains,
    Set<String> joined) {

  /** Less than a polygon may stray from its curve on both sides: nothing that a reader can see. */
  public static final double HAIR_PX = 0.1;

  /** Indexes a galley. */
  public static CheckedStrip of(Galley galley) {
    Map<String, Integer> places = new HashMap<>();
    Map<String, String> chains = new HashMap<>();
    for (SetBalloon balloon : galley.set().balloons()) {
      String id = balloon.cue().id();
      places.put(id, places.size());
      chains.put(
          id, balloon.joinedTo().map(before -> chains.getOrDefault(before, before)).orElse(id));
    }
    List<PanelEdge> borders =
        galley.panels().stream()
            .map(PanelBox::box)
            .flatMap(PanelEdge::of)
            .filter(border -> !border.isOnEdgeOf(galley.extent()))
            .distinct()
            .toList();
    return new CheckedStrip(
        galley,
        ReadingOrder.of(galley),
        galley.balloonIndex(),
        RegionIndex.of(borders, PanelEdge::box),
        RegionIndex.of(galley.keepClear(), KeepClear::box),
        Map.copyOf(places),
        Map.copyOf(chains),
        joined(galley));
  }

  private static Set<String> joined(Galley galley) {
    Set<String> placed =
        galley.balloons().stream().map(PlacedBalloon::id).collect(Collectors.toSet());
    return galley.balloons().stream()
        .flatMap(
            balloon ->
                balloon.set().joinedTo().stream()
                    .flatMap(to -> Stream.of(to, balloon.id()).filter(id -> placed.contains(to))))
        .collect(Collectors.toUnmodifiableSet());
  }

  /** A length on the strip as the narrowest phone shows it. */
  public double dp(double px) {
    return galley.set().phone().dp(px, galley.widthPx());
  }

  /** The length on the strip that the narrowest phone shows so long. */
  public double px(double dp) {
    return dp * galley.widthPx() / galley.set().phone().widthDp();
  }

  /** The limit of a rule on this strip, in the rule's unit. */
  public double limit(RuleSpec rule) {
    return rule.limitIn(galley.style());
  }

  /** The limit of a rule whose unit is dp, in strip pixels. */
  public double limitPx(RuleSpec rule) {
    return px(limit(rule));
  }

  /** Other balloons that reach to within a length of a box, but those joined to this one. */
  public List<PlacedBalloon> others(PlacedBalloon balloon, Box box, double withinPx) {
    return balloons.near(box.grownBy(withinPx)).stream()
        .filter(other -> !areJoined(balloon, other))
        .toList();
  }

  /** Returns true if two are parts of one connected balloon, or the same. */
  public boolean areJoined(PlacedBalloon one, PlacedBalloon other) {
    return chain(one).equals(chain(other));
  }

  /** The first of the balloons that it is joined to; itself where it is joined to none. */
  public String chain(PlacedBalloon balloon) {
    return chains.getOrDefault(balloon.id(), balloon.id());
  }

  /** Returns true if one comes before another in the script. */
  public boolean isBefore(PlacedBalloon one, PlacedBalloon other) {
    return places.getOrDefault(one.id(), 0) < places.getOrDefault(other.id(), 0);
  }

  /** Returns true if the area that two regions share can be seen. */
  public static boolean isSeen(Region shared) {
    Box box = shared.bounds();
    return shared.areaPx2() > 0 && Math.min(box.width(), box.height()) > HAIR_PX;
  }
}
