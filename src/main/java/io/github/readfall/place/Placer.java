package io.github.readfall.place;

import io.github.readfall.geom.Box;
import io.github.readfall.geom.XY;
import io.github.readfall.plan.Spacing;
import io.github.readfall.script.Panel;
import io.github.readfall.script.Script;
import io.github.readfall.strip.CueMark;
import io.github.readfall.strip.Extra;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.style.HouseStyle;
import io.github.readfall.style.ReadingSide;
import io.github.readfall.typeset.SetBalloon;
import io.github.readfall.typeset.SetEpisode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Places the balloons of an episode: a search over all places at once ({@link PlaceSearch}), then
 * small moves as long as they pay ({@link AdjustSearch}), then the tails.
 */
public final class Placer {

  /** To let everything hang below the panel and still be nearer to it than to the next. */
  private static final double OPEN_MOST = 2.5;

  private static final double OPEN_STEP_PX = 8;

  private final SetEpisode set;
  private final Layout layout;
  private final Spacing spacing;
  private final Pairs pairs;
  private final Map<String, LaidBalloon> laid;
  private final Map<String, LaidBalloon> fixed;
  private final Map<Integer, Ground> grounds;

  private Placer(SetEpisode set, Layout layout, Set<String> free) {
    HouseStyle style = set.style();
    this.set = set;
    this.layout = layout;
    this.spacing = Spacing.of(style);
    this.pairs = new Pairs(spacing, style.strip().reads() == ReadingSide.LTR);
    this.laid =
        layout.balloons().stream()
            .collect(Collectors.toMap(LaidBalloon::id, balloon -> balloon, (a, b) -> a));
    this.fixed = new HashMap<>();
    laid.forEach(
        (id, balloon) -> {
          if (balloon.box().isPresent() && (balloon.pinned() || !free.contains(id))) {
            fixed.put(id, balloon);
          }
        });
    this.grounds = new HashMap<>();
    for (PanelBox panel : layout.panels()) {
      grounds.put(panel.panel(), Ground.of(panel, layout, style.strip().safeMarginPx(), spacing));
    }
  }

  /**
   * Places what has no place yet.
   *
   * @param set every cue set
   * @param layout panels, and what is already in its place
   * @param free ids of balloons that have a place but may be moved; those that are pinned stay
   */
  public static Placing place(SetEpisode set, Layout layout, Set<String> free) {
    return new Placer(set, layout, free).place();
  }

  private Placing place() {
    List<SetBalloon> balloons =
        set.balloons().stream().filter(b -> grounds.containsKey(b.cue().panel())).toList();
    List<Candidates> makers = makers(Items.of(balloons, fixed), 0, -1);
    List<Candidate> places = search(makers);
    List<Optional<XY>> tips = new Tails(makers, places, spacing).tips();
    return new Placing(written(makers, places, tips), shortfalls(makers, places));
  }

  private List<Candidate> search(List<Candidates> makers) {
    List<List<Candidate>> candidates = new ArrayList<>();
    Map<Integer, List<Double>> tops = evenTops(makers);
    makers.forEach(
        maker -> candidates.add(maker.all(tops.getOrDefault(maker.item().panel(), List.of()))));
    List<Candidate> grid =
        new PlaceSearch(
                makers.stream().map(Candidates::item).toList(),
                makers.stream().map(Candidates::ground).toList(),
                candidates,
                pairs)
            .cheapest();
    return new AdjustSearch(makers, grid, pairs).adjusted();
  }

  private static Map<Integer, List<Double>> evenTops(List<Candidates> makers) {
    Map<Integer, List<Double>> tops = new HashMap<>();
    for (Candidates maker : makers) {
      tops.computeIfAbsent(maker.item().panel(), p -> new ArrayList<>()).add(maker.idealTopPx());
    }
    return tops;
  }

  /**
   * What knows each item's places.
   *
   * @param openedPx how much further down the next panel lies below one panel
   * @param opened that panel
   */
  private List<Candidates> makers(List<Item> items, double openedPx, int opened) {
    Sides sides = Sides.of(items, scenes(set.script()), pairs.leftToRight());
    Map<Integer, List<Item>> byPanel = new LinkedHashMap<>();
    items.forEach(
        item -> byPanel.computeIfAbsent(item.panel(), panel -> new ArrayList<>()).add(item));
    List<Candidates> makers = new ArrayList<>();
    for (Map.Entry<Integer, List<Item>> entry : byPanel.entrySet()) {
      Ground ground = grounds.get(entry.getKey());
      if (ground == null) {
        continue;
      }
      ground = entry.getKey() == opened ? ground.openedBy(openedPx) : ground;
      List<Double> tops = Spread.tops(entry.getValue(), ground, spacing);
      for (int i = 0; i < tops.size(); i++) {
        makers.add(new Candidates(entry.getValue().get(i), ground, spacing, sides, tops.get(i)));
      }
    }
    return makers;
  }

  private static Map<Integer, Integer> scenes(Script script) {
    Map<Integer, Integer> scenes = new HashMap<>();
    for (Panel panel : script.panels()) {
      panel.scene().ifPresent(scene -> scenes.put(panel.number(), scene));
    }
    return scenes;
  }

  private Layout written(List<Candidates> makers, List<Candidate> places, List<Optional<XY>> tips) {
    Map<String, LaidBalloon> placed = new LinkedHashMap<>();
    for (int i = 0; i < makers.size(); i++) {
      Item item = makers.get(i).item();
      for (int b = 0; b < item.balloons().size(); b++) {
        boolean tailed = b == item.balloons().size() - 1;
        LaidBalloon balloon =
            written(item.balloons().get(b), item.place(b, places.get(i).at()), item.fixedAt())
                .withTip(tailed ? tips.get(i) : Optional.empty());
        placed.put(balloon.id(), balloon);
      }
    }
    layout.balloons().forEach(balloon -> placed.putIfAbsent(balloon.id(), balloon));
    return layout.withBalloons(List.copyOf(placed.values()));
  }

  /** A fixed balloon keeps the very box that it has. */
  private LaidBalloon written(SetBalloon balloon, XY at, Optional<XY> fixedAt) {
    String id = balloon.cue().id();
    CueMark mark = CueMark.of(balloon.cue());
    LaidBalloon before = laid.getOrDefault(id, blank(id));
    Optional<Box> box =
        fixedAt.isPresent()
            ? before.box()
            : Optional.of(new Box(at.x(), at.y(), balloon.box().width(), balloon.box().height()));
    return before.of(id, mark).at(box, before.tailTo());
  }

  private static LaidBalloon blank(String id) {
    return new LaidBalloon(
        id,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.empty(),
        false,
        false,
        Extra.NONE);
  }

  /** Every panel in which a rule had to be broken, and the least opening that would spare it. */
  private List<Shortfall> shortfalls(List<Candidates> makers, List<Candidate> places) {
    AdjustSearch costs = new AdjustSearch(makers, places, pairs);
    Map<Integer, List<String>> broken = new LinkedHashMap<>();
    for (int i = 0; i < makers.size(); i++) {
      Item item = makers.get(i).item();
      boolean placedHere = item.fixedAt().isEmpty();
      if (placedHere && costs.costAt(i, places.get(i)) >= Costs.HARD) {
        broken
            .computeIfAbsent(item.panel(), panel -> new ArrayList<>())
            .addAll(item.balloons().stream().map(balloon -> balloon.cue().id()).toList());
      }
    }
    List<Shortfall> shortfalls = new ArrayList<>();
    broken.forEach(
        (panel, ids) ->
            Optional.ofNullable(grounds.get(panel))
                .ifPresent(ground -> shortfalls.add(shortfall(ground, ids, makers))));
    return shortfalls;
  }

  private Shortfall shortfall(Ground ground, List<String> ids, List<Candidates> makers) {
    int panel = ground.panel().panel();
    List<Item> items =
        makers.stream().map(Candidates::item).filter(item -> item.panel() == panel).toList();
    double atPx = (ground.panel().box().bottom() + ground.nextTopPx()) / 2;
    double most = OPEN_MOST * (Spread.neededPx(items, spacing) + spacing.tailRoomPx());
    if (!fits(items, most, panel)) {
      return new Shortfall(panel, ids, atPx, OptionalDouble.empty());
    }
    double little = 0;
    double enough = most;
    while (enough - little > OPEN_STEP_PX) {
      double middle = (little + enough) / 2;
      if (fits(items, middle, panel)) {
        enough = middle;
      } else {
        little = middle;
      }
    }
    return new Shortfall(panel, ids, atPx, OptionalDouble.of(Math.ceil(enough)));
  }

  private boolean fits(List<Item> items, double openedPx, int panel) {
    List<Candidates> makers = makers(items, openedPx, panel);
    List<Candidate> places = search(makers);
    AdjustSearch costs = new AdjustSearch(makers, places, pairs);
    for (int i = 0; i < places.size(); i++) {
      if (costs.costAt(i, places.get(i)) >= Costs.HARD) {
        return false;
      }
    }
    return true;
  }
}
