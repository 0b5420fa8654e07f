package io.github.readfall.script.assist;

import io.github.readfall.script.Brackets;
import io.github.readfall.script.CommaList;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Letters;
import io.github.readfall.script.LineKind;
import io.github.readfall.script.lines.BlockKeyword;
import io.github.readfall.script.lines.ClassifiedLines;
import io.github.readfall.script.lines.CueHead;
import io.github.readfall.script.lines.CueHeadReader;
import io.github.readfall.script.lines.HeaderReader;
import io.github.readfall.script.lines.PanelHeading;
import io.github.readfall.script.lines.RawLine;

/** Finds what may be written at a place, by reading the line as if it were finished there. */
final class SlotReader {

  private final Keywords keywords;
  private final ClassifiedLines classified;

  SlotReader(Keywords keywords, ClassifiedLines classified) {
    this.keywords = keywords;
    this.classified = classified;
  }

  Slot read(int line, String before) {
    RawLine written = new RawLine(before, "");
    int start = written.start();
    if (written.isNote() || written.end() < Letters.trimEnd(before, 0, before.length())) {
      return Slot.NONE;
    }
    SlotKind region = region(line);
    int open = openBracket(before);
    int behindPanel = BlockKeyword.endOf(keywords.panel(), written);
    if (behindPanel >= 0 && behindPanel < before.length()) {
      return hint(before, behindPanel);
    }
    if (open < 0) {
      return isName(before) ? new Slot(region, before.substring(start)) : Slot.NONE;
    }
    if (region == SlotKind.TOP) {
      return isCast(line, written) ? new Slot(SlotKind.VOICE, typed(before, open + 1)) : Slot.NONE;
    }
    return isHead(before, start)
        ? new Slot(SlotKind.MANNER, typed(before, mannerStart(before, open)))
        : Slot.NONE;
  }

  /** What a line at this place may begin with: decided by the nearest heading above it. */
  private SlotKind region(int line) {
    for (int i = Math.min(line - 1, classified.lines().size()); i > 0; i--) {
      LineKind kind = classified.lines().get(i - 1).kind();
      if (kind == LineKind.PANEL) {
        return SlotKind.LINE;
      }
      if (kind == LineKind.SCENE) {
        return SlotKind.SCENE;
      }
    }
    return SlotKind.TOP;
  }

  /** Index of the last bracket that is open at the end; -1 if none is. */
  private static int openBracket(String before) {
    int open = -1;
    for (int i = 0; i < before.length(); i++) {
      if (Brackets.opens(before.charAt(i))) {
        open = i;
      } else if (Brackets.closes(before.charAt(i))) {
        open = -1;
      }
    }
    return open;
  }

  private static boolean isName(String before) {
    return before.length() <= CueHeadReader.MAX_NAME
        && before.chars().noneMatch(c -> Brackets.isColon((char) c) || Brackets.closes((char) c));
  }

  /** Returns true for a header Cast, or a line that continues one. */
  private boolean isCast(int line, RawLine written) {
    int colon = HeaderReader.colon(written);
    boolean key =
        colon >= 0
            && Letters.collapse(written.text().substring(written.start(), colon))
                .equalsIgnoreCase("Cast");
    return key || (colon < 0 && line <= classified.lines().size() && isHeader(line));
  }

  private boolean isHeader(int line) {
    return classified.lines().get(line - 1).kind() == LineKind.HEADER;
  }

  private boolean isHead(String before, int start) {
    String finished = before + "): x";
    CueHead head =
        new CueHeadReader(keywords, CueHeadReader.MAX_DECLARED_NAME)
            .read(finished, start, finished.length());
    return !head.isNone()
        && head.end() == before.length() + 1
        && classified.speakers().speaks(head.name());
  }

  private static int mannerStart(String before, int open) {
    return Math.max(open, lastComma(before)) + 1;
  }

  /** No slot within the number or name of the panel. */
  private Slot hint(String before, int behindKeyword) {
    String heading = PanelHeading.of(before.substring(behindKeyword)).heading();
    int end = Letters.trimEnd(before, behindKeyword, before.length());
    if (heading.isEmpty() && end == before.length()) {
      return Slot.NONE;
    }
    int start = heading.isEmpty() ? before.length() : end - heading.length();
    return new Slot(SlotKind.HINT, typed(before, Math.max(start, lastComma(before) + 1)));
  }

  private static int lastComma(String text) {
    int i = text.length() - 1;
    while (i >= 0 && !CommaList.isComma(text.charAt(i))) {
      i--;
    }
    return i;
  }

  private static String typed(String before, int from) {
    return before.substring(Letters.skipSpaces(before, from, before.length()));
  }
}
