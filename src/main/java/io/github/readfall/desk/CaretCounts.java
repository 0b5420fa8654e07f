package io.github.readfall.desk;

import io.github.readfall.plan.WordCount;
import io.github.readfall.script.Cue;
import io.github.readfall.script.Panel;

/**
 * Words and balloons at the caret, counted as the rules count them.
 *
 * @param cueWords of the cue the caret is in; 0 where it is in none
 * @param panelWords of the panel the caret is in
 * @param panelBalloons of that panel
 */
public record CaretCounts(int cueWords, int panelWords, int panelBalloons) {

  /** What is at a line of a script, from 1. */
  public static CaretCounts of(Links links, int line) {
    int cue = links.cueAt(line).map(CaretCounts::words).orElse(0);
    int panel = links.panelAt(line).map(CaretCounts::words).orElse(0);
    int balloons = links.panelAt(line).map(p -> p.cues().size()).orElse(0);
    return new CaretCounts(cue, panel, balloons);
  }

  private static int words(Panel panel) {
    return panel.cues().stream().mapToInt(CaretCounts::words).sum();
  }

  private static int words(Cue cue) {
    return WordCount.of(cue.text());
  }
}
