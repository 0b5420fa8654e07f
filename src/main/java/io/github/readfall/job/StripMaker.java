package io.github.readfall.job;

import io.github.readfall.art.DetailMap;
import io.github.readfall.base.geom.Box;
import io.github.readfall.job.polyglot.SharedBalloons;
import io.github.readfall.lettering.typeset.BalloonRequest;
import io.github.readfall.lettering.typeset.GivenFit;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.plan.PanelInsertion;
import io.github.readfall.plan.StripCuts;
import io.github.readfall.plan.place.Placer;
import io.github.readfall.plan.place.Placing;
import io.github.readfall.plan.place.Shortfall;
import io.github.readfall.script.Script;
import io.github.readfall.strip.Cuts;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.Opening;
import io.github.readfall.strip.galley.Compositor;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts a strip together: cues set into the boxes of the layout, and the rest placed. */
final class StripMaker {

  /** A box this much larger than its text needs is made smaller when its text has changed. */
  private static final double BAGGY = 1.3; // area over area; house default, no source

  /** Sizes this near are the same: layout.json has hundredths of a pixel. */
  private static final double SAME_PX = 0.02;

  /** Number of times that balloons in the way are placed again. House default, no source. */
  private static final int ROUNDS = 8;

  private final Typesetter typesetter;
  private final Script script;
  private final SharedBalloons shared;
  private final DetailMap detail;

  /**
   * Makes strips of a script.
   *
   * @param shared balloons whose size other languages decide too
   */
  StripMaker(Typesetter typesetter, Script script, SharedBalloons shared) {
    this(typesetter, script, shared, DetailMap.NONE);
  }

  private StripMaker(
      Typesetter typesetter, Script script, SharedBalloons shared, DetailMap detail) {
    this.typesetter = typesetter;
    this.script = script;
    this.shared = shared;
    this.detail = detail;
  }

  /** The same maker for a strip with this art. */
  StripMaker over(DetailMap other) {
    return new StripMaker(typesetter, script, shared, other);
  }

  /** A layout whose balloons have the sizes that are shared, but for those that are to stay. */
  static Layout sharing(Layout layout, SharedBalloons shared) {
    Set<String> movable = movable(layout);
    return layout.withBalloons(
        layout.balloons().stream()
            .map(
                balloon ->
                    movable.contains(balloon.id())
                        ? shared
                            .of(balloon.id())
                            .map(one -> sized(balloon, one.size()))
                            .orElse(balloon)
                        : balloon)
            .toList());
  }

  /** Ids of balloons that a layout holds as they are. */
  static Set<String> held(Layout layout) {
    Set<String> movable = movable(layout);
    return layout.balloons().stream()
        .map(LaidBalloon::id)
        .filter(id -> !movable.contains(id))
        .collect(Collectors.toSet());
  }

  private static LaidBalloon sized(LaidBalloon balloon, Box size) {
    boolean same =
        balloon
            .box()
            .filter(box -> Math.abs(box.width() - size.width()) < SAME_PX)
            .filter(box -> Math.abs(box.height() - size.height()) < SAME_PX)
            .isPresent();
    return same || balloon.box().isEmpty()
        ? balloon
        : balloon.at(balloon.box().map(box -> box.resized(size)), List.of());
  }

  /** The strip by its layout; only what that leaves out is placed. */
  static ComposedStrip asLaid(SetEpisode set, Layout layout) {
    return composed(set, layout, Set.of(), DetailMap.NONE);
  }

  /** The strip with some balloons placed again, as far as they may be, and all others as laid. */
  ComposedStrip placedOnly(SetEpisode set, Layout layout, Set<String> balloons) {
    Set<String> free =
        movable(layout).stream().filter(balloons::contains).collect(Collectors.toSet());
    return composed(set, layout, free);
  }

  private ComposedStrip composed(SetEpisode set, Layout layout, Set<String> free) {
    return composed(set, layout, free, detail);
  }

  private static ComposedStrip composed(
      SetEpisode set, Layout layout, Set<String> free, DetailMap detail) {
    Placing placing = Placer.place(set, layout, free, detail);
    Galley galley = Compositor.compose(set, placing.layout(), Cuts.NONE);
    Cuts cuts = StripCuts.of(placing.layout(), galley);
    Galley cut = galley.withCuts(cuts);
    ComposedStrip composed = new ComposedStrip(cut, placing.layout(), placing.shortfalls());
    if (placing.shortfalls().isEmpty()) {
      return composed;
    }
    ComposedStrip judged = composed.judged();
    return judged.lacking(real(placing.shortfalls(), judged));
  }

  /**
   * The shortfalls that some rule confirms: less room than the placer likes is no fault by itself.
   */
  private static List<Shortfall> real(List<Shortfall> shortfalls, ComposedStrip composed) {
    Set<String> faulty = composed.faultyBalloons();
    return shortfalls.stream()
        .filter(shortfall -> isFaulty(shortfall.panel(), faulty, composed.galley()))
        .toList();
  }

  private static boolean isFaulty(int panel, Set<String> faulty, Galley galley) {
    return galley.balloonsOf(panel).stream().anyMatch(balloon -> faulty.contains(balloon.id()));
  }

  /**
   * The strip with everything placed that may be.
   *
   * @param set into the boxes of the layout
   */
  ComposedStrip placed(SetEpisode set, Layout given, PlaceOptions wish) {
    Layout layout = wish.openGutters() ? PanelInsertion.complete(set, given) : given;
    Set<String> misfits = misfits(set, layout);
    SetEpisode own = misfits.isEmpty() ? set : typesetter.set(script, wanted(layout, misfits));
    Layout fitted = resized(layout, own, misfits);
    Set<String> free = wish.afresh() ? movable(layout) : Set.of();
    ComposedStrip settled = settled(own, composed(own, fitted, free), misfits);
    return wish.openGutters() ? opened(own, settled) : settled;
  }

  /**
   * The strip after placing again the balloons in the way, as long as that makes it better: first
   * those whose words have changed, then all that are in the way, then all of their panels.
   * Settling it once more changes nothing. The shortfalls are those of the last attempt.
   *
   * @param changed ids of balloons whose words have changed
   */
  private ComposedStrip settled(SetEpisode set, ComposedStrip start, Set<String> changed) {
    ComposedStrip best = start.judged();
    for (int round = 0; round < ROUNDS; round++) {
      Set<String> inTheWay = inTheWay(best, movable(best.layout()));
      if (inTheWay.isEmpty()) {
        break;
      }
      ComposedStrip next = best;
      for (Set<String> free : attempts(best, inTheWay, changed)) {
        next = next.isBetterThan(best) ? next : composed(set, best.layout(), free).judged();
      }
      if (!next.isBetterThan(best)) {
        return best.lacking(real(next.shortfalls(), best));
      }
      best = next;
    }
    return best;
  }

  /** Sets of balloons to place again, the smallest first. */
  private static List<Set<String>> attempts(
      ComposedStrip composed, Set<String> inTheWay, Set<String> changed) {
    Set<String> first = inTheWay.stream().filter(changed::contains).collect(Collectors.toSet());
    Set<Integer> panels =
        composed.galley().balloons().stream()
            .filter(balloon -> inTheWay.contains(balloon.id()))
            .map(PlacedBalloon::panel)
            .collect(Collectors.toSet());
    Set<String> all = movableIn(panels, composed);
    return Stream.of(first, inTheWay, all).filter(free -> !free.isEmpty()).distinct().toList();
  }

  /**
   * All balloons of some panels that may be moved, since the place of one depends on the others.
   */
  private static Set<String> movableIn(Set<Integer> panels, ComposedStrip composed) {
    Set<String> movable = movable(composed.layout());
    return composed.galley().balloons().stream()
        .filter(balloon -> panels.contains(balloon.panel()))
        .map(PlacedBalloon::id)
        .filter(movable::contains)
        .collect(Collectors.toSet());
  }

  private ComposedStrip opened(SetEpisode set, ComposedStrip tight) {
    ComposedStrip best = tight;
    for (int round = 0; round < ROUNDS && !openings(best).isEmpty(); round++) {
      Set<Integer> panels =
          best.shortfalls().stream().map(Shortfall::panel).collect(Collectors.toSet());
      Layout wider = Opening.allIn(best.layout(), openings(best));
      best = settled(set, composed(set, wider, movableIn(panels, best)), Set.of());
    }
    return best;
  }

  private static List<Opening> openings(ComposedStrip composed) {
    List<Opening> openings = new ArrayList<>();
    for (Shortfall shortfall : composed.shortfalls()) {
      shortfall.byPx().ifPresent(by -> openings.add(new Opening(shortfall.atPx(), by)));
    }
    return openings;
  }

  /** Balloons that the person did not place, and whose lettering does not exist yet. */
  private static Set<String> movable(Layout layout) {
    return layout.balloons().stream()
        .filter(balloon -> !balloon.pinned() && !balloon.isLettered() && !balloon.bleed())
        .map(LaidBalloon::id)
        .collect(Collectors.toSet());
  }

  /** Movable balloons whose text has outgrown its box, or shrunk in it. */
  private Set<String> misfits(SetEpisode set, Layout layout) {
    Set<String> movable = movable(layout);
    return set.balloons().stream()
        .filter(balloon -> movable.contains(balloon.cue().id()))
        .filter(balloon -> shared.of(balloon.cue().id()).isEmpty())
        .filter(balloon -> balloon.given().filter(g -> isMisfit(balloon, g)).isPresent())
        .map(balloon -> balloon.cue().id())
        .collect(Collectors.toSet());
  }

  private static boolean isMisfit(SetBalloon balloon, GivenFit given) {
    Box own = given.ownSize();
    double baggy = balloon.box().width() * balloon.box().height();
    boolean asAsked =
        balloon.wanted().lines().orElse(balloon.lines().size()) == balloon.lines().size();
    return !asAsked || !given.fits() || baggy > BAGGY * own.width() * own.height();
  }

  private Map<String, BalloonRequest> wanted(Layout layout, Set<String> misfits) {
    Map<String, BalloonRequest> wanted = shared.wanted(Compositor.wanted(layout));
    misfits.forEach(id -> wanted.computeIfPresent(id, (same, all) -> all.withoutBox()));
    return wanted;
  }

  /** The layout with balloons that do not fit in boxes of their own size about the same middle. */
  private static Layout resized(Layout layout, SetEpisode set, Set<String> misfits) {
    Map<String, Box> own =
        set.balloons().stream()
            .collect(Collectors.toMap(balloon -> balloon.cue().id(), SetBalloon::box));
    return layout.withBalloons(
        layout.balloons().stream()
            .map(
                balloon ->
                    misfits.contains(balloon.id())
                        ? balloon.at(
                            balloon
                                .box()
                                .map(box -> box.resized(own.getOrDefault(balloon.id(), box))),
                            List.of())
                        : balloon)
            .toList());
  }

  /** Movable balloons with a fault of order or room. */
  private static Set<String> inTheWay(ComposedStrip composed, Set<String> movable) {
    return composed.faultyBalloons().stream().filter(movable::contains).collect(Collectors.toSet());
  }
}
