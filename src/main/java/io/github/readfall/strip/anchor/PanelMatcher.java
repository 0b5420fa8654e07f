package io.github.readfall.strip.anchor;

import io.github.readfall.base.finding.Spelling;
import io.github.readfall.script.Letters;
import io.github.readfall.script.Script;
import io.github.readfall.script.align.SequenceAlignment;
import io.github.readfall.script.align.UnpairedRun;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Layout;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Finds the panels of a layout in the present script. */
final class PanelMatcher {

  private static final double UNKNOWN = 0.05; // less than any evidence: breaks ties by place alone
  private static final double SAME_NUMBER = 0.01; // breaks ties
  private static final double BOTH_SILENT = 0.5;
  private static final double ALIKE = 0.5; // house default, no source
  private static final int MOST_MOVED = 500;

  private final List<PanelTraits> olds;
  private final List<PanelTraits> nows;
  private final boolean knowsCues;
  private final int[] pairs;

  private PanelMatcher(List<PanelTraits> olds, List<PanelTraits> nows) {
    this.olds = olds;
    this.nows = nows;
    this.knowsCues = olds.stream().anyMatch(old -> !old.isSilent());
    this.pairs = new int[olds.size()];
  }

  /**
   * The present number of each panel of a layout by its former one, without those that are gone.
   */
  static Map<Integer, Integer> numbers(Layout layout, Script script) {
    List<PanelTraits> nows = script.panels().stream().map(PanelTraits::of).toList();
    PanelMatcher matcher = new PanelMatcher(traits(layout), nows);
    return matcher.match();
  }

  /** Every panel of the layout, in order. */
  private static List<PanelTraits> traits(Layout layout) {
    Map<Integer, String> headings = new TreeMap<>();
    Map<Integer, List<String>> texts = new HashMap<>();
    layout.mouths().forEach(mouth -> headings.put(mouth.panel(), ""));
    for (LaidBalloon balloon : layout.balloons()) {
      balloon
          .cue()
          .ifPresent(
              mark -> {
                headings.put(mark.panel(), "");
                texts
                    .computeIfAbsent(mark.panel(), panel -> new ArrayList<>())
                    .add(CueKey.of(mark).text());
              });
    }
    layout.panels().forEach(panel -> headings.put(panel.panel(), Letters.fold(panel.heading())));
    return headings.entrySet().stream()
        .map(
            e ->
                new PanelTraits(
                    e.getKey(), e.getValue(), texts.getOrDefault(e.getKey(), List.of())))
        .toList();
  }

  private Map<Integer, Integer> match() {
    int[] sure = SequenceAlignment.pairs(olds.size(), nows.size(), this::isSame, this::sureScore);
    System.arraycopy(sure, 0, pairs, 0, sure.length);
    pairMoved();
    pairByPlace(sure);
    Map<Integer, Integer> numbers = new HashMap<>();
    for (int i = 0; i < pairs.length; i++) {
      if (pairs[i] != SequenceAlignment.NONE) {
        numbers.put(olds.get(i).number(), nows.get(pairs[i]).number());
      }
    }
    return numbers;
  }

  /** Returns true if nothing has changed; for panels without any trait, not even the number. */
  private boolean isSame(int i, int j) {
    PanelTraits old = olds.get(i);
    PanelTraits now = nows.get(j);
    boolean known = !old.isSilent() || !old.isBare() || old.number() == now.number();
    return known && old.texts().equals(now.texts()) && old.heading().equals(now.heading());
  }

  private double sureScore(int i, int j) {
    if (!olds.get(i).isSilent() && !olds.get(i).saysAnyOf(nows.get(j))) {
      return 0; // a heading alone is not enough
    }
    double likeness = olds.get(i).likeness(nows.get(j), PanelTraits::equal);
    return likeness >= PanelTraits.SURE ? likeness + tie(i, j) : 0;
  }

  private double tie(int i, int j) {
    return olds.get(i).number() == nows.get(j).number() ? SAME_NUMBER : 0;
  }

  private static double alike(String a, String b) {
    double alike = Spelling.likeness(a, b, ALIKE);
    return alike >= ALIKE ? alike : 0;
  }

  /** Pairs panels that moved past others, if there is no doubt. */
  private void pairMoved() {
    List<Integer> free = freeNows();
    if (free.size() > MOST_MOVED) {
      return;
    }
    for (int i = 0; i < Math.min(pairs.length, MOST_MOVED); i++) {
      for (int at = 0; pairs[i] == SequenceAlignment.NONE && at < free.size(); at++) {
        if (isMoved(olds.get(i), nows.get(free.get(at)))) {
          pairs[i] = free.remove(at);
        }
      }
    }
  }

  private boolean isMoved(PanelTraits old, PanelTraits now) {
    return old.isSurely(now) && (!old.isSilent() || isOnlyHeading(old.heading()));
  }

  private boolean isOnlyHeading(String heading) {
    return olds.stream().filter(old -> old.heading().equals(heading)).count() == 1
        && nows.stream().filter(now -> now.heading().equals(heading)).count() == 1;
  }

  private List<Integer> freeNows() {
    boolean[] taken = new boolean[nows.size()];
    Arrays.stream(pairs).filter(j -> j != SequenceAlignment.NONE).forEach(j -> taken[j] = true);
    List<Integer> free = new ArrayList<>();
    for (int j = 0; j < taken.length; j++) {
      if (!taken[j]) {
        free.add(j);
      }
    }
    return free;
  }

  /** Pairs what is left between two certain pairs by its place there. */
  private void pairByPlace(int[] sure) {
    Set<Integer> free = Set.copyOf(freeNows());
    for (UnpairedRun gap : UnpairedRun.between(sure, nows.size())) {
      List<Integer> left = gap.olds(i -> pairs[i] == SequenceAlignment.NONE);
      List<Integer> open = gap.nows(free::contains);
      int[] found =
          SequenceAlignment.pairs(
              left.size(), open.size(), (i, j) -> placeScore(left.get(i), open.get(j)));
      for (int i = 0; i < found.length; i++) {
        pairs[left.get(i)] =
            found[i] == SequenceAlignment.NONE ? SequenceAlignment.NONE : open.get(found[i]);
      }
    }
  }

  private double placeScore(int i, int j) {
    PanelTraits old = olds.get(i);
    PanelTraits now = nows.get(j);
    boolean silent = knowsCues && old.isSilent() && now.isSilent() && old.isBare();
    return UNKNOWN
        + old.likeness(now, PanelMatcher::alike)
        + (silent ? BOTH_SILENT : 0)
        + tie(i, j);
  }
}
