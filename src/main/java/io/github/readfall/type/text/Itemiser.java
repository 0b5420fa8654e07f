package io.github.readfall.type.text;

import com.ibm.icu.text.Bidi;
import com.ibm.icu.text.BidiRun;
import com.ibm.icu.text.BreakIterator;
import com.ibm.icu.util.ULocale;
import java.util.ArrayList;
import java.util.List;

/** Cuts a text into runs of one face and one direction. */
final class Itemiser {

  /**
   * A stretch of one direction.
   *
   * @param start first UTF-16 unit
   * @param end one past the last
   * @param level its embedding level (UAX #9)
   */
  record Directed(int start, int end, int level) {}

  private Itemiser() {}

  /** Runs in logical order, covering the text. */
  static List<Run> runs(String text, List<StyledText> stretches, Language language) {
    List<Run> runs = new ArrayList<>();
    for (StyledText stretch : stretches) {
      addRuns(text, stretch, runs);
    }
    return needsBidi(text, language) ? splitByLevel(text, runs, language) : runs;
  }

  static boolean needsBidi(String text, Language language) {
    return language.rightToLeft() || Bidi.requiresBidi(text.toCharArray(), 0, text.length());
  }

  private static void addRuns(String text, StyledText stretch, List<Run> runs) {
    SizedFace preferred = stretch.faces().preferred();
    String part = text.substring(stretch.start(), stretch.end());
    if (Coverage.covers(preferred.face(), part)) {
      runs.add(new Run(stretch.start(), stretch.end(), preferred, 0));
    } else {
      addRunsByCluster(part, stretch, preferred, runs);
    }
  }

  private static void addRunsByCluster(
      String part, StyledText stretch, SizedFace preferred, List<Run> runs) {
    BreakIterator it = BreakIterator.getCharacterInstance(ULocale.ROOT);
    it.setText(part);
    SizedFace inUse = preferred;
    int runStart = 0;
    int start = 0;
    for (int end = it.next(); end != BreakIterator.DONE; start = end, end = it.next()) {
      SizedFace face = stretch.faces().choose(part.substring(start, end), inUse);
      if (!face.equals(inUse) && start > runStart) {
        runs.add(new Run(stretch.start() + runStart, stretch.start() + start, inUse, 0));
        runStart = start;
      }
      inUse = face;
    }
    runs.add(new Run(stretch.start() + runStart, stretch.end(), inUse, 0));
  }

  private static List<Run> splitByLevel(String text, List<Run> runs, Language language) {
    Bidi bidi = paragraph(text, language);
    List<Run> split = new ArrayList<>();
    for (Run run : runs) {
      int from = run.start();
      while (from < run.end()) {
        int level = bidi.getLevelAt(from);
        int to = from + 1;
        while (to < run.end() && bidi.getLevelAt(to) == level) {
          to++;
        }
        split.add(run.within(from, to).atLevel(level));
        from = to;
      }
    }
    return split;
  }

  /** The directions of one line of a text, from left to right. */
  static List<Directed> visual(String text, Language language, int from, int to) {
    Bidi line = paragraph(text, language).setLine(from, to);
    List<Directed> visual = new ArrayList<>();
    for (int i = 0; i < line.countRuns(); i++) {
      BidiRun run = line.getVisualRun(i);
      visual.add(
          new Directed(from + run.getStart(), from + run.getLimit(), run.getEmbeddingLevel()));
    }
    return visual;
  }

  /** The paragraph's levels; a forced break does not start a paragraph, so it counts as a space. */
  private static Bidi paragraph(String text, Language language) {
    byte direction = language.rightToLeft() ? Bidi.RTL : Bidi.LTR;
    return new Bidi(text.replace('\n', ' '), direction);
  }
}
