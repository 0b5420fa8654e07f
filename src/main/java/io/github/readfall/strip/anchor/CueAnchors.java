package io.github.readfall.strip.anchor;

import io.github.readfall.script.Cue;
import io.github.readfall.script.Script;
import io.github.readfall.script.align.ComparedLine;
import io.github.readfall.script.align.CueMatcher;
import io.github.readfall.script.align.SequenceAlignment;
import io.github.readfall.strip.CueMark;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.PanelBox;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * The balloons of a layout, each with its cue in the present script.
 *
 * @param pairs balloons as they were, with their cues, in script order
 * @param gone balloons whose cues have just gone
 * @param parked balloons whose cues went earlier and have not come back
 */
record CueAnchors(List<Pair> pairs, List<LaidBalloon> gone, List<LaidBalloon> parked) {

  private static final Pattern ID = Pattern.compile("p(\\d{1,7})-(\\d{1,7})");

  /**
   * A balloon and its cue.
   *
   * @param balloon as it was
   * @param cue as it is
   */
  record Pair(LaidBalloon balloon, Cue cue) {}

  static CueAnchors of(Layout layout, Script script, PanelAnchors panels) {
    Map<Integer, LaidBalloon> found = new TreeMap<>();
    List<Cue> cues = script.cues();
    List<LaidBalloon> gone = new ArrayList<>();
    pairById(layout.balloons(), cues, found, gone);
    pairByMark(inOldOrder(layout.balloons()), cues, panels, found, gone);
    List<LaidBalloon> parked = new ArrayList<>(layout.parked().balloons());
    wake(parked, cues, panels, found);
    List<Pair> pairs =
        found.entrySet().stream().map(e -> new Pair(e.getValue(), cues.get(e.getKey()))).toList();
    gone.replaceAll(balloon -> renumbered(balloon, panels));
    parked.replaceAll(balloon -> renumbered(balloon, panels));
    return new CueAnchors(pairs, gone, parked);
  }

  /** Pairs balloons that have only an id with the cue that has that id now. */
  private static void pairById(
      List<LaidBalloon> balloons,
      List<Cue> cues,
      Map<Integer, LaidBalloon> found,
      List<LaidBalloon> gone) {
    Map<String, Integer> byId = new HashMap<>();
    IntStream.range(0, cues.size()).forEach(i -> byId.put(cues.get(i).id(), i));
    for (LaidBalloon balloon : balloons) {
      if (balloon.cue().isEmpty()) {
        Optional.ofNullable(byId.get(balloon.id()))
            .ifPresentOrElse(i -> found.put(i, balloon), () -> gone.add(balloon));
      }
    }
  }

  private static void pairByMark(
      List<LaidBalloon> marked,
      List<Cue> cues,
      PanelAnchors panels,
      Map<Integer, LaidBalloon> found,
      List<LaidBalloon> gone) {
    List<Integer> open =
        IntStream.range(0, cues.size()).filter(i -> !found.containsKey(i)).boxed().toList();
    Map<Integer, Integer> numbers = panels.numbers();
    int[] pairs =
        CueMatcher.match(
            marked.stream().map(balloon -> line(balloon, numbers)).toList(),
            open.stream().map(i -> line(cues.get(i).id(), CueMark.of(cues.get(i)))).toList());
    for (int i = 0; i < pairs.length; i++) {
      if (pairs[i] == SequenceAlignment.NONE) {
        gone.add(marked.get(i));
      } else {
        found.put(open.get(pairs[i]), marked.get(i));
      }
    }
  }

  /** The line of a balloon with a mark, in the present panel. */
  private static ComparedLine line(LaidBalloon balloon, Map<Integer, Integer> numbers) {
    CueMark mark = balloon.cue().orElseThrow();
    int panel = numbers.getOrDefault(mark.panel(), 0);
    return ComparedLine.of(balloon.id(), panel, mark.speaker(), mark.text());
  }

  private static ComparedLine line(String id, CueMark mark) {
    return ComparedLine.of(id, mark.panel(), mark.speaker(), mark.text());
  }

  /** Balloons with marks in the order of their cues: by id if every one has a sound id. */
  private static List<LaidBalloon> inOldOrder(List<LaidBalloon> balloons) {
    List<LaidBalloon> marked =
        new ArrayList<>(balloons.stream().filter(balloon -> balloon.cue().isPresent()).toList());
    boolean sound = marked.stream().allMatch(balloon -> numberInPanel(balloon) > 0);
    marked.sort(
        Comparator.comparingInt((LaidBalloon b) -> b.cue().orElseThrow().panel())
            .thenComparingInt(b -> sound ? numberInPanel(b) : 0));
    return marked;
  }

  /** The cue's place in its panel by the balloon's id; 0 if the id does not tell. */
  private static int numberInPanel(LaidBalloon balloon) {
    Matcher id = ID.matcher(balloon.id());
    boolean sound =
        id.matches() && Integer.parseInt(id.group(1)) == balloon.cue().orElseThrow().panel();
    return sound ? Integer.parseInt(id.group(2)) : 0;
  }

  /** Gives cues without a balloon a parked one with the same text in the same panel. */
  private static void wake(
      List<LaidBalloon> parked,
      List<Cue> cues,
      PanelAnchors panels,
      Map<Integer, LaidBalloon> found) {
    List<CueKey> keys = new ArrayList<>();
    parked.forEach(
        balloon -> keys.add(balloon.cue().map(CueKey::of).orElse(new CueKey("", balloon.id()))));
    for (int i = 0; i < cues.size() && !parked.isEmpty(); i++) {
      if (!found.containsKey(i)) {
        Cue cue = cues.get(i);
        int at = keys.lastIndexOf(CueKey.of(CueMark.of(cue)));
        while (at >= 0 && !belongs(parked.get(at), cue, panels)) {
          at = keys.subList(0, at).lastIndexOf(keys.get(at));
        }
        if (at >= 0) {
          keys.remove(at);
          found.put(i, parked.remove(at));
        }
      }
    }
  }

  private static boolean belongs(LaidBalloon balloon, Cue cue, PanelAnchors panels) {
    boolean inIt = panels.box(cue.panel()).filter(box -> isIn(balloon, box)).isPresent();
    boolean inParked = panels.parked().stream().anyMatch(box -> isIn(balloon, box));
    return inIt || (!inParked && panels.numberNow(balloon.cue().orElseThrow()) == cue.panel());
  }

  private static boolean isIn(LaidBalloon balloon, PanelBox panel) {
    return balloon.box().filter(box -> panel.box().covers(box.centre())).isPresent();
  }

  /** A parked balloon with the present number of its panel, if the panel is still there. */
  private static LaidBalloon renumbered(LaidBalloon balloon, PanelAnchors panels) {
    return balloon
        .cue()
        .filter(mark -> panels.numberNow(mark) > 0)
        .filter(mark -> panels.parked().stream().noneMatch(box -> isIn(balloon, box)))
        .map(
            mark ->
                balloon.of(
                    balloon.id(), new CueMark(panels.numberNow(mark), mark.speaker(), mark.text())))
        .orElse(balloon);
  }
}
