package io.github.readfall.window.model;

import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.plan.WordCount;
import io.github.readfall.script.Cue;
import io.github.readfall.script.LineRange;
import io.github.readfall.script.Panel;
import io.github.readfall.script.Script;
import java.util.List;
import java.util.Optional;

/**
 * Counts of words and balloons at the caret, and around it.
 *
 * @param cue the words of the cue that the line belongs to; empty if it belongs to none
 * @param panel the counts of the panel that the line belongs to; empty if it belongs to none
 * @param episode the counts of the whole episode
 */
public record CaretCounts(Optional<CueWords> cue, Optional<Said> panel, Said episode) {

  /**
   * The number of words of a cue.
   *
   * @param speaker of the cue
   * @param words as the rules about words count them
   */
  public record CueWords(String speaker, int words) {}

  /**
   * The counts of a part of the script.
   *
   * @param name the panel's number or name, or its position if it has none; empty for the episode
   * @param words of every cue, including those lettered by hand
   * @param balloons that are set, including captions and sound effects
   */
  public record Said(String name, int words, int balloons) {

    public static Said of(String name, List<Cue> cues) {
      int words = cues.stream().mapToInt(cue -> WordCount.of(cue.text())).sum();
      return new Said(name, words, (int) cues.stream().filter(Typesetter::isSet).count());
    }
  }

  /** The counts for a line of the script, from 1. */
  public static CaretCounts of(Script script, int line) {
    Optional<Panel> panel =
        script.panels().stream().filter(p -> has(script.linesOf(p), line)).findFirst();
    Optional<CueWords> cue =
        panel.stream()
            .flatMap(p -> p.cues().stream())
            .filter(c -> has(script.linesOf(c), line))
            .findFirst()
            .map(c -> new CueWords(c.names(), WordCount.of(c.text())));
    return new CaretCounts(
        cue, panel.map(p -> Said.of(name(p), p.cues())), Said.of("", script.cues()));
  }

  private static String name(Panel panel) {
    return panel.label().isEmpty() ? String.valueOf(panel.number()) : panel.label();
  }

  private static boolean has(LineRange range, int line) {
    return range.first() <= line && line <= range.last();
  }
}
