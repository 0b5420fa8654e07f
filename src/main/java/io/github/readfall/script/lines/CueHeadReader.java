package io.github.readfall.script.lines;

import io.github.readfall.script.Brackets;
import io.github.readfall.script.CommaList;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Letters;
import java.util.ArrayList;
import java.util.List;

/** Reads what looks like the head of a cue, whether or not it names a speaker. */
public final class CueHeadReader {

  /** The longest name taken for one that is not in the cast. House default, no source. */
  public static final int MAX_NAME = 40;

  /** The longest name that a cast may declare. House default, no source. */
  public static final int MAX_DECLARED_NAME = 200;

  private static final String NAME_SIGNS =
      " \u00A0'\u2019\u2018\u02BC.-\u2010\u2011&+/#,_\"\u201C\u201D\u00B7\u05F3\u05F4\u30FB";

  private static final String DASHES = "-\u2010\u2011\u2013\u2014";

  /** Most digits of a number that a list puts before a name. House default, no source. */
  private static final int MAX_LIST_DIGITS = 3;

  private final Keywords keywords;
  private final int maxName;

  public CueHeadReader(Keywords keywords, int maxName) {
    this.keywords = keywords;
    this.maxName = maxName;
  }

  /** The head with a colon, or alone, that a line begins with; none if there is none. */
  public CueHead read(String line, int lineStart, int end) {
    int start = nameStart(line, lineStart, end);
    CueHead head = read(line, start, nameEnd(line, start, end), end);
    return head.dash() ? CueHead.NONE : head;
  }

  /** The head with a dash that a line begins with; none if there is none. */
  CueHead readDashed(String line, int lineStart, int end) {
    int start = nameStart(line, lineStart, end);
    int nameEnd = nameEnd(line, start, end);
    int dash = dash(line, start, nameEnd < 0 ? Math.min(end, start + maxName) : nameEnd);
    CueHead head = read(line, start, dash < 0 ? nameEnd : dash, end);
    return head.dash() ? head : CueHead.NONE;
  }

  private CueHead read(String line, int start, int nameEnd, int end) {
    if (nameEnd < 0) {
      return CueHead.NONE;
    }
    SplitName name = SplitName.of(line.substring(start, nameEnd), keywords);
    if (name.name().codePoints().noneMatch(Character::isLetter)) {
      return CueHead.NONE;
    }
    List<String> manners = new ArrayList<>(name.manners());
    int at = Letters.skipInvisible(line, nameEnd, end);
    boolean closed = true;
    while (closed && at < end && Brackets.opens(line.charAt(at))) {
      int close = bracketEnd(line, at + 1, end);
      if (close == end) {
        return CueHead.NONE;
      }
      manners.addAll(CommaList.parts(line.substring(at + 1, close)));
      closed = Brackets.closes(line.charAt(close));
      at = closed ? Letters.skipInvisible(line, close + 1, end) : close;
    }
    HeadSign sign = sign(line, at, end);
    int headEnd = Letters.trimEnd(line, start, at);
    boolean broken = sign == HeadSign.NONE && at < end;
    return broken || (sign == HeadSign.COLON && isWithinNumberOrAddress(line, at, end))
        ? CueHead.NONE
        : new CueHead(
            name.name(),
            manners,
            start,
            start + name.length(),
            headEnd,
            textStart(line, sign, at, end),
            sign,
            closed);
  }

  private static HeadSign sign(String line, int at, int end) {
    if (at == end) {
      return HeadSign.NONE;
    }
    if (Brackets.isColon(line.charAt(at))) {
      return HeadSign.COLON;
    }
    return isDash(line, at, end) ? HeadSign.DASH : HeadSign.NONE;
  }

  private static int textStart(String line, HeadSign sign, int at, int end) {
    int after = at;
    while (after < end && sign == HeadSign.DASH && DASHES.indexOf(line.charAt(after)) >= 0) {
      after++;
    }
    return Letters.skipSpaces(line, sign == HeadSign.COLON ? at + 1 : after, end);
  }

  /** Index of the first dash between spaces; -1 if there is none. */
  static int dash(String line, int start, int end) {
    int i = start;
    while (i < end && !isDash(line, i, line.length())) {
      i++;
    }
    return i < end ? i : -1;
  }

  /** Returns true for a dash, or a double one, with white space before and after it. */
  static boolean isDash(String line, int at, int end) {
    int after = at;
    while (after < end && after < at + 2 && DASHES.indexOf(line.charAt(after)) >= 0) {
      after++;
    }
    return after > at
        && at > 0
        && Letters.isSpace(line.charAt(at - 1))
        && after < end
        && Letters.isSpace(line.charAt(after));
  }

  /** A dash or a number with a point before a name is a list's, not the name's. */
  private static int nameStart(String line, int start, int end) {
    boolean dash = start < end && "-\u2013\u2014\u2022".indexOf(line.charAt(start)) >= 0;
    int i = start;
    while (i < end && i < start + MAX_LIST_DIGITS && Character.isDigit(line.charAt(i))) {
      i++;
    }
    boolean number =
        i > start
            && i + 1 < end
            && ".)".indexOf(line.charAt(i)) >= 0
            && Letters.isSpace(line.charAt(i + 1));
    return dash || number ? Letters.skipSpaces(line, number ? i + 1 : start + 1, end) : start;
  }

  /** Index of the first character that no name has; -1 if the name would be too long. */
  private int nameEnd(String line, int start, int end) {
    int count = 0;
    int i = start;
    while (i < end) {
      int c = line.codePointAt(i);
      if (!isOfName(c)) {
        return i;
      }
      if (++count > maxName) {
        return -1;
      }
      i += Character.charCount(c);
    }
    return i;
  }

  private static boolean isOfName(int c) {
    return Character.isLetterOrDigit(c)
        || Letters.isMark(c)
        || NAME_SIGNS.indexOf(c) >= 0
        || c == '\t'
        || c == 0x3000
        || Character.getType(c) == Character.FORMAT;
  }

  /** The closing bracket; or, if there is none, the colon; or else the end. */
  private static int bracketEnd(String line, int start, int end) {
    int colon = end;
    int depth = 1;
    for (int i = start; i < end; i++) {
      char c = line.charAt(i);
      depth += Brackets.opens(c) ? 1 : 0;
      depth -= Brackets.closes(c) ? 1 : 0;
      if (depth == 0) {
        return colon < end && !isHeadGoingOn(line, i + 1, end) ? colon : i;
      }
      if (Brackets.isColon(c) && colon == end) {
        colon = i;
      }
    }
    return colon;
  }

  private static boolean isHeadGoingOn(String line, int index, int end) {
    int i = Letters.skipInvisible(line, index, end);
    return i == end || Brackets.isColon(line.charAt(i)) || Brackets.opens(line.charAt(i));
  }

  /** {@code 10:30} and {@code HTTP://} are no heads. */
  private static boolean isWithinNumberOrAddress(String line, int colon, int end) {
    return line.startsWith("//", colon + 1)
        || (colon + 1 < end
            && Character.isDigit(line.charAt(colon + 1))
            && Character.isDigit(line.charAt(colon - 1)));
  }
}
