package io.github.readfall.plan.place;

import io.github.readfall.art.DetailMap;
import io.github.readfall.base.geom.XY;
import io.github.readfall.lettering.style.ReadingSide;
import io.github.readfall.lettering.style.StripStyle;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.plan.Spacing;
import io.github.readfall.script.Panel;
import io.github.readfall.script.Script;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.PanelBox;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Places the balloons of an episode: a search over all places at once ({@link PlaceSearch}), then
 * small moves as long as they pay ({@link AdjustSearch}), then the tails ({@link Tails}).
 */
public final class Placer {

  private Placer() {}

  /**
   * Places everything that has no place yet.
   *
   * @param set every cue set
   * @param layout panels, and everything that already has a place
   * @param free ids of balloons that have a place but may be moved; pinned ones stay
   */
  public static Placing place(SetEpisode set, Layout layout, Set<String> free) {
    return place(set, layout, free, DetailMap.NONE);
  }

  /**
   * Places everything that has no place yet, preferably where the art is calm.
   *
   * @param set every cue set
   * @param layout panels, and everything that already has a place
   * @param free ids of balloons that have a place but may be moved; pinned ones stay
   * @param detail of the art
   */
  public static Placing place(SetEpisode set, Layout layout, Set<String> free, DetailMap detail) {
    StripStyle strip = set.style().strip();
    Spacing spacing = Spacing.of(set.style());
    Map<Integer, PlacementArea> areas = areas(layout, strip.safeMarginPx(), spacing);
    Pairs pairs = new Pairs(spacing, strip.reads() == ReadingSide.LTR);
    Arranger arranger = new Arranger(spacing, pairs, scenes(set.script()), detail);
    List<SetBalloon> balloons =
        set.balloons().stream().filter(b -> areas.containsKey(b.cue().panel())).toList();
    WrittenPlaces written = WrittenPlaces.on(layout);
    List<Candidates> makers =
        arranger.makers(PlacementItems.of(balloons, fixed(written.laid(), free)), areas);
    List<Candidate> places = arranger.arranged(makers);
    List<List<XY>> tips = new Tails(makers, places, spacing).tips();
    List<PlacementItem> items = makers.stream().map(Candidates::item).toList();
    return new Placing(
        written.with(items, places, tips), new Shortfalls(arranger).of(makers, places));
  }

  private static Map<Integer, PlacementArea> areas(
      Layout layout, double safeMarginPx, Spacing spacing) {
    Map<Integer, PlacementArea> areas = new HashMap<>();
    for (PanelBox panel : layout.panels()) {
      areas.put(panel.panel(), PlacementArea.of(panel, layout, safeMarginPx, spacing));
    }
    return areas;
  }

  private static Map<String, LaidBalloon> fixed(Map<String, LaidBalloon> laid, Set<String> free) {
    Map<String, LaidBalloon> fixed = new HashMap<>(laid);
    fixed.values().removeIf(b -> b.box().isEmpty() || (!b.pinned() && free.contains(b.id())));
    return fixed;
  }

  private static Map<Integer, Integer> scenes(Script script) {
    Map<Integer, Integer> scenes = new HashMap<>();
    for (Panel panel : script.panels()) {
      panel.scene().ifPresent(scene -> scenes.put(panel.number(), scene));
    }
    return scenes;
  }
}
