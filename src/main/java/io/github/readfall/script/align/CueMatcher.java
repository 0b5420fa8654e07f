package io.github.readfall.script.align;

import io.github.readfall.base.finding.Spelling;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;

/**
 * Finds the lines of an earlier script in the present one: first those that are word for word the
 * same and in the same order, then those that moved, then between them those that were reworded.
 */
public final class CueMatcher {

  // Weights of words, speaker and panel. House defaults, no source.
  private static final double WORDS = 0.6;
  private static final double SPEAKER = 0.3;
  private static final double PANEL = 0.1;
  private static final double LEAST = 0.5;
  private static final double LEAST_MOVED = 0.9;

  private static final double SAME_PANEL = 0.01; // breaks ties
  private static final double SAME_ID = 0.001; // breaks ties

  /** Letters from which a line is not written twice by chance. House default, no source. */
  private static final int OWN_WORDS = 12;

  /**
   * Distance from its place in a long gap within which a reworded cue is searched. House default,
   * no source.
   */
  private static final int REACH = 60;

  private static final int MOST_MOVED = 300;

  private final List<ComparedLine> olds;
  private final List<ComparedLine> nows;
  private final int[] oldNames;
  private final int[] nowNames;
  private final int[] pairs;
  private final boolean[] taken;

  private CueMatcher(List<ComparedLine> olds, List<ComparedLine> nows) {
    this.olds = olds;
    this.nows = nows;
    Map<Said, Integer> names = new HashMap<>();
    this.oldNames = names(olds, names);
    this.nowNames = names(nows, names);
    this.pairs = new int[olds.size()];
    this.taken = new boolean[nows.size()];
  }

  /** The identity of a line, wherever it is. */
  private record Said(String speaker, String text) {}

  private static int[] names(List<ComparedLine> lines, Map<Said, Integer> names) {
    return lines.stream()
        .map(line -> new Said(line.speaker(), line.text()))
        .mapToInt(
            key -> {
              names.putIfAbsent(key, names.size());
              return names.getOrDefault(key, 0);
            })
        .toArray();
  }

  /**
   * The index of the present line for each former one, or {@link SequenceAlignment#NONE}.
   *
   * @param olds in their former order
   * @param nows in script order
   */
  public static int[] match(List<ComparedLine> olds, List<ComparedLine> nows) {
    return new CueMatcher(olds, nows).match();
  }

  private int[] match() {
    int[] same = SequenceAlignment.pairs(olds.size(), nows.size(), this::isSame, this::sameScore);
    Arrays.fill(pairs, SequenceAlignment.NONE);
    for (int i = 0; i < same.length; i++) {
      if (same[i] != SequenceAlignment.NONE) {
        pair(i, same[i]);
      }
    }
    pairMoved(this::isSamePanel);
    pairMoved(this::isOnlyOne);
    pairReworded(same);
    pairMovedAndReworded();
    return pairs;
  }

  private boolean isSame(int i, int j) {
    return oldNames[i] == nowNames[j] && isSamePanel(i, j);
  }

  private boolean isSamePanel(int i, int j) {
    return olds.get(i).panel() == nows.get(j).panel();
  }

  private double sameScore(int i, int j) {
    return oldNames[i] == nowNames[j] ? 1 + ties(i, j) : 0;
  }

  private double ties(int i, int j) {
    return (isSamePanel(i, j) ? SAME_PANEL : 0)
        + (olds.get(i).id().equals(nows.get(j).id()) ? SAME_ID : 0);
  }

  private void pair(int i, int j) {
    pairs[i] = j;
    taken[j] = true;
  }

  private boolean isFree(int i) {
    return pairs[i] == SequenceAlignment.NONE;
  }

  /** Pairs lines that are word for word the same, wherever they are. */
  private void pairMoved(BiPredicate<Integer, Integer> allowed) {
    Map<Integer, Deque<Integer>> free = new HashMap<>();
    for (int j = 0; j < taken.length; j++) {
      if (!taken[j]) {
        free.computeIfAbsent(nowNames[j], name -> new ArrayDeque<>()).add(j);
      }
    }
    for (int i = 0; i < pairs.length; i++) {
      Deque<Integer> same = free.getOrDefault(oldNames[i], new ArrayDeque<>());
      int old = i;
      if (isFree(i)) {
        same.stream()
            .filter(j -> allowed.test(old, j))
            .findFirst()
            .ifPresent(
                j -> {
                  same.remove(j);
                  pair(old, j);
                });
      }
    }
  }

  private boolean isOnlyOne(int i, int j) {
    return olds.get(i).text().length() >= OWN_WORDS
        && Arrays.stream(oldNames).filter(name -> name == oldNames[i]).count() == 1
        && Arrays.stream(nowNames).filter(name -> name == nowNames[j]).count() == 1;
  }

  /** Returns true if the speakers are the same; a line without a speaker matches any. */
  private static boolean isSameSpeaker(ComparedLine old, ComparedLine now) {
    return !old.speaker().isEmpty() && old.speaker().equals(now.speaker());
  }

  private void pairReworded(int[] same) {
    for (UnpairedRun gap : UnpairedRun.between(same, nows.size())) {
      List<Integer> left = gap.olds(this::isFree);
      List<Integer> open = gap.nows(j -> !taken[j]);
      int[] found =
          SequenceAlignment.pairs(
              left.size(),
              open.size(),
              (i, j) ->
                  Math.abs((long) i * open.size() / left.size() - j) > REACH
                      ? 0
                      : score(left.get(i), open.get(j), LEAST));
      for (int i = 0; i < found.length; i++) {
        if (found[i] != SequenceAlignment.NONE) {
          pair(left.get(i), open.get(found[i]));
        }
      }
      pairOnlyOnes(gap);
    }
  }

  /** The only line left between its neighbours is the same line, whatever is said in it now. */
  private void pairOnlyOnes(UnpairedRun gap) {
    List<Integer> left = gap.olds(this::isFree);
    List<Integer> open = gap.nows(j -> !taken[j]);
    if (left.size() == 1 && open.size() == 1) {
      int i = left.get(0);
      int j = open.get(0);
      boolean sameSpeaker = isSameSpeaker(olds.get(i), nows.get(j));
      if (sameSpeaker && isSamePanel(i, j)) {
        pair(i, j);
      }
    }
  }

  /** The likeness of a former line and one of the script; 0 if less than asked for. */
  private double score(int i, int j, double least) {
    ComparedLine old = olds.get(i);
    ComparedLine now = nows.get(j);
    double known = (isSameSpeaker(old, now) ? SPEAKER : 0) + (isSamePanel(i, j) ? PANEL : 0);
    double words = Spelling.likeness(old.text(), now.text(), (least - known) / WORDS);
    double score = WORDS * words + known;
    return score < least - 1e-9 ? 0 : score + ties(i, j);
  }

  /** Pairs the rest that is still very much alike, the most alike first. */
  private void pairMovedAndReworded() {
    record Pair(int old, int now, double score) {}
    List<Integer> left = IntStream.range(0, pairs.length).filter(this::isFree).boxed().toList();
    List<Integer> open = IntStream.range(0, taken.length).filter(j -> !taken[j]).boxed().toList();
    List<Pair> found = new ArrayList<>();
    for (int i : left.subList(0, Math.min(left.size(), MOST_MOVED))) {
      for (int j : open.subList(0, Math.min(open.size(), MOST_MOVED))) {
        double score = score(i, j, LEAST_MOVED);
        if (score > 0) {
          found.add(new Pair(i, j, score));
        }
      }
    }
    found.sort(Comparator.comparingDouble(Pair::score).reversed());
    for (Pair pair : found) {
      if (isFree(pair.old()) && !taken[pair.now()]) {
        pair(pair.old(), pair.now());
      }
    }
  }
}
