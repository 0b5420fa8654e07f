package io.github.readfall.rules;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Region;
import io.github.readfall.base.geom.RegionIndex;
import io.github.readfall.lettering.typeset.SetBalloon;
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
 * A galley whose balloons, borders and areas are found by where they are.
 *
 * @param galley what is looked at
 * @param balloons by where they reach, tails included
 * @param borders of panels, but those that lie on the strip's own edge
 * @param keepClear what nothing may cover
 * @param places each balloon's place in the script, by id
 * @param chains the first balloon of the joined ones that each belongs to, by id
 * @param joined ids of the balloons that are joined to another in its place
 */
record Neighbourhood(
    Galley galley,
    RegionIndex<PlacedBalloon> balloons,
    RegionIndex<PanelEdge> borders,
    RegionIndex<KeepClear> keepClear,
    Map<String, Integer> places,
    Map<String, String> chains,
    Set<String> joined) {

  /** Less than a polygon may stray from its curve on both sides: nothing that a reader can see. */
  static final double HAIR_PX = 0.1;

  static Neighbourhood of(Galley galley) {
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
    return new Neighbourhood(
        galley,
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
  double dp(double px) {
    return galley.set().phone().dp(px, galley.widthPx());
  }

  /** The length on the strip that the narrowest phone shows so long. */
  double px(double dp) {
    return dp * galley.widthPx() / galley.set().phone().widthDp();
  }

  /** The limit of a rule that is set in dp, in strip pixels. */
  double limitPx(String ruleId, double builtInDp) {
    return px(galley.style().limit(ruleId, builtInDp));
  }

  /** Other balloons that reach to within a length of a box, but those joined to this one. */
  List<PlacedBalloon> others(PlacedBalloon balloon, Box box, double withinPx) {
    return balloons.near(box.grownBy(withinPx)).stream()
        .filter(other -> !areJoined(balloon, other))
        .toList();
  }

  /** Whether two are parts of one connected balloon, or the same. */
  boolean areJoined(PlacedBalloon one, PlacedBalloon other) {
    return chain(one).equals(chain(other));
  }

  /** The first of the balloons that it is joined to; itself where it is joined to none. */
  String chain(PlacedBalloon balloon) {
    return chains.getOrDefault(balloon.id(), balloon.id());
  }

  /** Whether one comes before another in the script. */
  boolean isBefore(PlacedBalloon one, PlacedBalloon other) {
    return places.getOrDefault(one.id(), 0) < places.getOrDefault(other.id(), 0);
  }

  /** Whole pixels, rounded up but for what nobody can see. */
  static String upPx(double px) {
    return NumberWords.up(px - HAIR_PX / 2, 0);
  }

  /** Whole pixels, rounded down but for what nobody can see. */
  static String downPx(double px) {
    return NumberWords.down(px + HAIR_PX / 2, 0);
  }

  /** Whether what two regions share can be seen. */
  static boolean isSeen(Region shared) {
    Box box = shared.bounds();
    return shared.areaPx2() > 0 && Math.min(box.width(), box.height()) > HAIR_PX;
  }
}
