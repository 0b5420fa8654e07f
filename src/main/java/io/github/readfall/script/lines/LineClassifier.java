package io.github.readfall.script.lines;

import io.github.readfall.script.Keywords;
import io.github.readfall.script.Letters;
import io.github.readfall.script.LineKind;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Finds the kind of each line, from the top down. */
final class LineClassifier {

  private final Keywords keywords;
  private final Speakers speakers;
  private final CueHeadReader heads;

  /** Folded names of all speakers so far. */
  private final Set<String> spoken = new HashSet<>();

  LineClassifier(Keywords keywords, Speakers speakers) {
    this.keywords = keywords;
    this.speakers = speakers;
    this.heads =
        new CueHeadReader(
            Math.min(
                CueHeadReader.MAX_DECLARED_NAME,
                Math.max(CueHeadReader.MAX_NAME, speakers.cast().longestName())));
  }

  List<ClassifiedLine> classify(List<RawLine> lines, HeaderReader.Top top) {
    List<ClassifiedLine> read = new ArrayList<>(lines.size());
    LineKind before = LineKind.BLANK;
    for (int i = 0; i < lines.size(); i++) {
      RawLine line = lines.get(i);
      int start = line.start();
      int end = Math.max(start, line.end());
      CueHead head = heads.read(line.text(), start, end);
      LineKind kind = kind(lines, i, top, head, before);
      if (kind == LineKind.CUE) {
        spoken.add(Letters.fold(head.name()));
      }
      read.add(new ClassifiedLine(i + 1, line, kind, start, end, head));
      before = kind == LineKind.NOTE ? before : kind;
    }
    return read;
  }

  private LineKind kind(
      List<RawLine> lines, int i, HeaderReader.Top top, CueHead head, LineKind before) {
    RawLine line = lines.get(i);
    if (line.isBlank()) {
      return LineKind.BLANK;
    }
    if (line.isNote()) {
      return LineKind.NOTE;
    }
    if (i < top.end()) {
      return top.lines().get(i) ? LineKind.HEADER : LineKind.STRAY;
    }
    LineKind block = BlockKeyword.kind(keywords, line.text(), line.start());
    if (block != LineKind.DESCRIPTION) {
      return block;
    }
    if (isCue(head, lines, i, before)) {
      return LineKind.CUE;
    }
    return isOfCue(before) ? LineKind.CUE_TEXT : LineKind.DESCRIPTION;
  }

  private boolean isCue(CueHead head, List<RawLine> lines, int i, LineKind before) {
    if (head.isNone()) {
      return false;
    }
    if (head.colon()) {
      return speakers.speaks(head.name());
    }
    boolean below = hasTextBelow(lines, i);
    if (isKnown(head.name())) {
      return isOfCue(before) ? below && !Speakers.hasSmall(head.name()) : below || isFirm(head);
    }
    return below && couldStandAlone(head) && (isFirm(head) || !goesOn(before));
  }

  /** Returns true for a speaker who is declared or has spoken already. */
  private boolean isKnown(String name) {
    return speakers.isDeclared(name)
        || (!Speakers.hasSmall(name) && spoken.contains(Letters.fold(name)));
  }

  /** A name with a manner can be nothing but a cue's head. */
  private static boolean isFirm(CueHead head) {
    return !head.manners().isEmpty();
  }

  private static boolean couldStandAlone(CueHead head) {
    String name = head.name();
    return Speakers.isCapitals(name)
        && name.length() > 1
        && !name.endsWith(".")
        && !name.endsWith(",");
  }

  /** Returns true if the next line that is no note can be a cue's text. */
  private boolean hasTextBelow(List<RawLine> lines, int i) {
    int next = i + 1;
    while (next < lines.size() && lines.get(next).isNote()) {
      next++;
    }
    if (next == lines.size() || lines.get(next).isBlank()) {
      return false;
    }
    RawLine line = lines.get(next);
    int start = line.start();
    if (BlockKeyword.kind(keywords, line.text(), start) != LineKind.DESCRIPTION) {
      return false;
    }
    CueHead head = heads.read(line.text(), start, Math.max(start, line.end()));
    return head.isNone()
        || !(head.colon() ? speakers.speaks(head.name()) : speakers.isDeclared(head.name()));
  }

  private static boolean isOfCue(LineKind kind) {
    return kind == LineKind.CUE || kind == LineKind.CUE_TEXT;
  }

  /** Returns true if a line below one of this kind is likely to continue its sentence. */
  private static boolean goesOn(LineKind before) {
    return isOfCue(before) || before == LineKind.DESCRIPTION;
  }
}
