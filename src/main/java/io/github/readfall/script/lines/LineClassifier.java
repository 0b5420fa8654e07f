package io.github.readfall.script.lines;

import io.github.readfall.script.CommaList;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Letters;
import io.github.readfall.script.LineKind;
import java.util.ArrayList;
import java.util.List;

/** Finds the kind of each line, from the top down. */
final class LineClassifier {

  private static final int BETWEEN_NAMES = 5;

  /**
   * What is above a line.
   *
   * @param kind of the last line that is no note
   * @param dashed true if the last cue has a dash after its name
   */
  private record Above(LineKind kind, boolean dashed) {

    boolean isOfCue() {
      return kind == LineKind.CUE || kind == LineKind.CUE_TEXT;
    }

    /** Returns true if a line below is likely to continue a sentence. */
    boolean goesOn() {
      return isOfCue() || kind == LineKind.DESCRIPTION;
    }
  }

  private final Keywords keywords;
  private final Speakers speakers;
  private final CueHeadReader heads;
  private final DashedCues dashedCues;

  LineClassifier(Keywords keywords, Speakers speakers) {
    this.keywords = keywords;
    this.speakers = speakers;
    this.heads = new CueHeadReader(keywords, longestName(speakers));
    this.dashedCues = new DashedCues(speakers);
  }

  /** The longest name taken for one: two of the cast may speak together. */
  private static int longestName(Speakers speakers) {
    return Math.min(
        CueHeadReader.MAX_DECLARED_NAME,
        Math.max(CueHeadReader.MAX_NAME, 2 * speakers.cast().longestName() + BETWEEN_NAMES));
  }

  List<ClassifiedLine> classify(List<RawLine> lines, HeaderReader.Top top) {
    List<ClassifiedLine> read = new ArrayList<>(lines.size());
    LineKind before = LineKind.BLANK;
    boolean dashed = false;
    for (int i = 0; i < lines.size(); i++) {
      RawLine line = lines.get(i);
      CueHead head = head(line);
      LineKind kind = kind(lines, i, top, head, new Above(before, dashed));
      dashed = kind == LineKind.CUE ? head.dash() : dashed;
      int end = Math.max(line.start(), line.end());
      read.add(new ClassifiedLine(i + 1, line, kind, line.start(), end, head));
      before = kind == LineKind.NOTE ? before : kind;
    }
    return read;
  }

  /** The head that a line may begin with; one with a dash if a colon makes no cue of it. */
  private CueHead head(RawLine line) {
    int end = Math.max(line.start(), line.end());
    CueHead plain = heads.read(line.text(), line.start(), end);
    if (plain.colon() && speakers.speaks(plain.name())) {
      return speakers.isDeclared(plain.name()) ? plain : withoutNumber(plain, line, end);
    }
    CueHead dashed = heads.readDashed(line.text(), line.start(), end);
    boolean colon = plain.colon() && !dashedCues.isSpeaker(dashed.name());
    return dashed.isNone() || colon ? plain : dashed;
  }

  /** {@code 1 MARA:} is a numbered cue if Mara is known. */
  private CueHead withoutNumber(CueHead head, RawLine line, int end) {
    int start = head.start();
    while (start < end && Character.isDigit(line.text().charAt(start))) {
      start++;
    }
    CueHead rest = heads.read(line.text(), Letters.skipSpaces(line.text(), start, end), end);
    return start > head.start() && rest.colon() && speakers.isKnown(rest.name()) ? rest : head;
  }

  private LineKind kind(
      List<RawLine> lines, int i, HeaderReader.Top top, CueHead head, Above above) {
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
    LineKind block = BlockKeyword.kind(keywords, line);
    if (block != LineKind.DESCRIPTION) {
      return block;
    }
    if (isCue(head, lines, i, above)) {
      return LineKind.CUE;
    }
    return above.isOfCue() ? LineKind.CUE_TEXT : LineKind.DESCRIPTION;
  }

  private boolean isCue(CueHead head, List<RawLine> lines, int i, Above above) {
    if (head.isNone()) {
      return false;
    }
    return switch (head.sign()) {
      case COLON -> speakers.speaks(head.name());
      case DASH -> dashedCues.isCue(head, lines.get(i), above.isOfCue() && !above.dashed());
      case NONE -> isLoneName(head, lines, i, above);
    };
  }

  private boolean isLoneName(CueHead head, List<RawLine> lines, int i, Above above) {
    boolean small = Speakers.hasSmall(head.name());
    boolean below = hasTextBelow(lines, i);
    if (!small && speakers.isKnown(head.name())) {
      return above.isOfCue() ? below : below || isFirm(head);
    }
    if (small && speakers.cast().has(head.name())) {
      return !above.isOfCue() && !hasComma(head, lines.get(i)) && (below || isFirm(head));
    }
    return below && couldStandAlone(head) && (isFirm(head) || !above.goesOn());
  }

  /** {@code Mara, shouting} alone on its line is a description. */
  private static boolean hasComma(CueHead head, RawLine line) {
    return head.nameEnd() < head.end() && CommaList.isComma(line.text().charAt(head.nameEnd()));
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
        && !name.endsWith(",")
        && !DescriptionWords.isScenery(name);
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
    if (BlockKeyword.kind(keywords, line) != LineKind.DESCRIPTION) {
      return false;
    }
    CueHead head = head(line);
    return head.isNone()
        || switch (head.sign()) {
          case COLON -> !speakers.speaks(head.name());
          case DASH -> !dashedCues.isCue(head, line, false);
          case NONE -> !speakers.isDeclared(head.name());
        };
  }
}
