package io.github.readfall.plan.order;

import io.github.readfall.base.finding.Phrase;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.lettering.style.ReadingSide;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * The reading order of the balloons of a strip, and where that is not the script's.
 *
 * <p>Balloons of a panel, and of panels in different rows, are read by their places ({@link
 * Eye#balloons}); of panels in a row, those of the leading panel first; of a panel and its inset,
 * in script order. Balloons are counted from 0 in script order.
 */
public final class ReadingOrder {

  private static final Set<ReadingReason> NOT_COMPARED =
      Set.of(
          ReadingReason.NESTED, ReadingReason.ROW, ReadingReason.COLUMN, ReadingReason.SAME_COLUMN);

  private final List<ReadBalloon> stops;
  private final Eye eye;
  private final PanelFlow panels;
  private final int[] panelOf;
  private final Arrangement arrangement;

  private ReadingOrder(List<PanelBox> boxes, List<ReadBalloon> stops, ReadingSide side) {
    this.stops = List.copyOf(stops);
    this.eye = new Eye(side);
    this.panels = PanelFlow.of(withAll(boxes, stops), side);
    this.panelOf = panelsOf(stops, panels.panels());
    this.arrangement = Arrangement.of(groups(), new ByBalloons());
  }

  /** The order of a galley's balloons. */
  public static ReadingOrder of(Galley galley) {
    List<ReadBalloon> stops = galley.balloons().stream().map(ReadingOrder::stop).toList();
    return of(galley.panels(), stops, galley.style().strip().reads());
  }

  /**
   * The order of balloons in panels.
   *
   * @param panels a missing panel is taken to be round its balloons
   * @param stops balloons in script order
   * @param side from which the strip is read
   */
  public static ReadingOrder of(List<PanelBox> panels, List<ReadBalloon> stops, ReadingSide side) {
    return new ReadingOrder(panels, stops, side);
  }

  private static ReadBalloon stop(PlacedBalloon balloon) {
    return new ReadBalloon(balloon.id(), balloon.panel(), balloon.box(), balloon.pinned());
  }

  private static List<PanelBox> withAll(List<PanelBox> panels, List<ReadBalloon> stops) {
    Map<Integer, PanelBox> byNumber = new TreeMap<>();
    stops.forEach(
        stop ->
            byNumber.merge(
                stop.panel(),
                new PanelBox(stop.panel(), stop.box()),
                (known, more) -> known.at(known.box().union(more.box()))));
    panels.forEach(panel -> byNumber.put(panel.panel(), panel));
    return List.copyOf(byNumber.values());
  }

  private static int[] panelsOf(List<ReadBalloon> stops, List<PanelBox> panels) {
    Map<Integer, Integer> byNumber = new TreeMap<>();
    panels.forEach(panel -> byNumber.put(panel.panel(), byNumber.size()));
    return stops.stream().mapToInt(stop -> byNumber.getOrDefault(stop.panel(), 0)).toArray();
  }

  /** The balloons in script order. */
  public List<ReadBalloon> stops() {
    return stops;
  }

  /** The eye that reads in this order. */
  public Eye eye() {
    return eye;
  }

  /** The path from panel to panel. */
  public PanelFlow panels() {
    return panels;
  }

  /** The balloons in reading order, by their places in the script. */
  public List<Integer> met() {
    return arrangement.met();
  }

  /** The ids of the balloons in reading order. */
  public List<String> metIds() {
    return met().stream().map(balloon -> stops.get(balloon).id()).toList();
  }

  /** The distance of the reading order from the script's. */
  public Kendall kendall() {
    return Kendall.of(met());
  }

  /** Which of two balloons is read first, and why; the earlier of the script is named first. */
  public ReadFirst meeting(int earlier, int later) {
    int panel = panelOf[earlier];
    int other = panelOf[later];
    if (panel != other) {
      ReadFirst between = panels.meeting(panel, other);
      boolean asTheyLie = between.why() == ReadingReason.HIGHER;
      boolean strays = !isAtHome(earlier) || !isAtHome(later);
      if (!asTheyLie && !(between.why() == ReadingReason.STAGGERED && strays)) {
        return between;
      }
    }
    return eye.balloons(stops.get(earlier).box(), stops.get(later).box());
  }

  /**
   * Returns true if the order of two balloons depends on their places, wherever in its panel the
   * first is put.
   */
  public boolean hangsOnPlace(int put, int other) {
    int panel = panelOf[put];
    int beside = panelOf[other];
    if (panel == beside) {
      return true;
    }
    ReadingReason between = panels.meeting(Math.min(panel, beside), Math.max(panel, beside)).why();
    return between == ReadingReason.HIGHER
        || (between == ReadingReason.STAGGERED && !isAtHome(other));
  }

  /** Returns true if its middle is in its own panel. */
  private boolean isAtHome(int balloon) {
    Box panel = panels.panels().get(panelOf[balloon]).box();
    return panel.covers(stops.get(balloon).box().centre());
  }

  /**
   * Returns true if two balloons can be in the wrong order at all: not those of a row, of an inset
   * and its frame, or if nothing or a circle decides.
   */
  public boolean isCompared(int earlier, int later) {
    return arrangement.relation().judges(meeting(earlier, later).why()) && !isOpen(earlier, later);
  }

  /** Returns true if the order of two balloons depends on a circle that no order can satisfy. */
  public boolean isOpen(int earlier, int later) {
    return arrangement.open().contains(new Arrangement.Pair(earlier, later));
  }

  /** Every two balloons that depend on a circle, in script order. */
  public List<Displaced> open() {
    Map<Integer, List<Integer>> open = new TreeMap<>();
    for (Arrangement.Pair pair : arrangement.open()) {
      open.computeIfAbsent(pair.earlier(), first -> new ArrayList<>()).add(pair.later());
    }
    return open.entrySet().stream()
        .map(e -> new Displaced(e.getKey(), e.getValue().stream().sorted().toList()))
        .toList();
  }

  /**
   * The fewest balloons to move so that none is inverted; pinned ones only if nothing else helps,
   * and those outside their panels rather than others.
   */
  public List<Displaced> displaced() {
    return arrangement.displaced(balloon -> stops.get(balloon).pinned(), this::isAtHome);
  }

  /** Returns true if two balloons are read in another order than the script has them. */
  public boolean isInverted(int a, int b) {
    return arrangement.isInverted(a, b);
  }

  /**
   * The reason why one of two balloons is read first, as half a sentence.
   *
   * @param earlierName and {@code laterName} their names in the sentence
   */
  public Phrase reason(int earlier, int later, Phrase earlierName, Phrase laterName) {
    ReadFirst meeting = meeting(earlier, later);
    return meeting.why().sentence(meeting.inOrder() ? earlierName : laterName, eye.side());
  }

  /** The reading path: into each panel, and from balloon to balloon. */
  public List<PathPoint> path() {
    List<PathPoint> path = new ArrayList<>();
    List<PanelBox> ahead = new ArrayList<>(panels.met());
    for (int balloon : met()) {
      ReadBalloon stop = stops.get(balloon);
      enterUpTo(stop.panel(), ahead, path);
      path.add(new PathPoint(stop.box().centre(), stop.panel(), stop.id()));
    }
    ahead.forEach(panel -> path.add(entry(panel)));
    return List.copyOf(path);
  }

  private void enterUpTo(int panel, List<PanelBox> ahead, List<PathPoint> path) {
    boolean isAhead = ahead.stream().anyMatch(box -> box.panel() == panel);
    while (isAhead) {
      PanelBox next = ahead.remove(0);
      path.add(entry(next));
      isAhead = next.panel() != panel;
    }
  }

  /** The upper leading corner. */
  private PathPoint entry(PanelBox panel) {
    Box box = panel.box();
    XY at = new XY(eye.side() == ReadingSide.LTR ? box.x() : box.right(), box.y());
    return new PathPoint(at, panel.panel(), "");
  }

  /**
   * Groups of balloons each of which is wholly below the one before: the balloons of the panels of
   * a stretch, together with those of other stretches that reach into their heights.
   */
  private List<List<Integer>> groups() {
    Map<Integer, Group> byBand = new TreeMap<>();
    for (int balloon = 0; balloon < stops.size(); balloon++) {
      Box box = stops.get(balloon).box();
      Group alone = new Group(box.y(), box.bottom(), List.of(balloon));
      byBand.merge(panels.band(panelOf[balloon]), alone, Group::with);
    }
    List<Group> apart = new ArrayList<>();
    for (Group group :
        byBand.values().stream().sorted(Comparator.comparingDouble(Group::top)).toList()) {
      int last = apart.size() - 1;
      if (last >= 0 && group.top() < apart.get(last).bottom()) {
        apart.set(last, apart.get(last).with(group));
      } else {
        apart.add(group);
      }
    }
    return apart.stream().map(group -> group.balloons().stream().sorted().toList()).toList();
  }

  private record Group(double top, double bottom, List<Integer> balloons) {
    Group with(Group other) {
      List<Integer> both = new ArrayList<>(balloons);
      both.addAll(other.balloons);
      return new Group(Math.min(top, other.top), Math.max(bottom, other.bottom), both);
    }
  }

  private final class ByBalloons implements Arrangement.Relation {
    @Override
    public ReadFirst meeting(int earlier, int later) {
      return ReadingOrder.this.meeting(earlier, later);
    }

    @Override
    public boolean judges(ReadingReason why) {
      return !NOT_COMPARED.contains(why);
    }
  }
}
