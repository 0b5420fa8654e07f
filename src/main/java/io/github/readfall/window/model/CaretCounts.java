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
 * How much is said where the caret is, and around it.
 *
 * @param cue the words of the cue that the line belongs to; empty where it belongs to none
 * @param panel what is said in the panel that the line belongs to; empty where it belongs to none
 * @param episode what is said in all
 */
public record CaretCounts(Optional<CueWords> cue, Optional<Said> panel, Said episode) {

  /**
   * The words of a cue.
   *
   * @param speaker whose it is
   * @param words as the rules about words count them
   */
  public record CueWords(String speaker, int words) {}

  /**
   * What is said in a part of the script.
   *
   * @param name the panel's number or name, or its place where it has none; empty for all
   * @param words of every cue, those lettered by hand too
   * @param balloons that are set, captions and sound effects too
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
            .map(c -> new CueWords(c.speaker(), WordCount.of(c.text())));
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
