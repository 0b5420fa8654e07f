package io.github.readfall.script.lines;

import io.github.readfall.script.Brackets;
import io.github.readfall.script.CommaList;
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

  private final int maxName;

  public CueHeadReader(int maxName) {
    this.maxName = maxName;
  }

  /** The head that a line begins with; {@link CueHead#NONE} if there is none. */
  public CueHead read(String line, int lineStart, int end) {
    int start = behindDash(line, lineStart, end);
    int nameEnd = nameEnd(line, start, end);
    if (nameEnd < 0) {
      return CueHead.NONE;
    }
    String name = Letters.collapse(line.substring(start, nameEnd));
    if (name.codePoints().noneMatch(Character::isLetter)) {
      return CueHead.NONE;
    }
    List<String> manners = new ArrayList<>();
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
    return head(line, end, name, manners, start, at, closed);
  }

  private static CueHead head(
      String line, int end, String name, List<String> manners, int start, int at, boolean closed) {
    int headEnd = Letters.trimEnd(line, start, at);
    if (at == end) {
      return new CueHead(name, manners, start, headEnd, end, false, closed);
    }
    if (!Brackets.isColon(line.charAt(at)) || isWithinNumberOrAddress(line, at, end)) {
      return CueHead.NONE;
    }
    int text = Letters.skipSpaces(line, at + 1, end);
    return new CueHead(name, manners, start, headEnd, text, true, closed);
  }

  /** A dash before a name is a list's, not the name's. */
  private static int behindDash(String line, int start, int end) {
    boolean dash = start < end && "-\u2013\u2014\u2022".indexOf(line.charAt(start)) >= 0;
    return dash ? Letters.skipSpaces(line, start + 1, end) : start;
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
