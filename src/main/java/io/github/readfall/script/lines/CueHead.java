package io.github.readfall.script.lines;

import java.util.List;

/**
 * The head of a cue, before its words: {@code NAME (manner):}, with a dash instead of the colon, or
 * with nothing if it is alone on its line.
 *
 * @param name without format characters, white space collapsed; empty in {@link #NONE}
 * @param manners as written
 * @param start index of the name
 * @param nameEnd index after the name, before manners
 * @param end index after name and manners, before the sign
 * @param textStart index of the words after the sign; the line's end if there are none
 * @param sign after the head
 * @param closed true if every bracket that is opened is closed
 */
public record CueHead(
    String name,
    List<String> manners,
    int start,
    int nameEnd,
    int end,
    int textStart,
    HeadSign sign,
    boolean closed) {

  static final CueHead NONE = new CueHead("", List.of(), 0, 0, 0, 0, HeadSign.NONE, true);

  public CueHead {
    manners = List.copyOf(manners);
  }

  public boolean isNone() {
    return name.isEmpty();
  }

  /** Returns true if a colon ends it. */
  public boolean colon() {
    return sign == HeadSign.COLON;
  }

  /** Returns true if a dash ends it. */
  public boolean dash() {
    return sign == HeadSign.DASH;
  }
}
