package io.github.readfall.script.lines;

import java.util.List;

/**
 * The head of a cue, before its words: {@code NAME (manner):}, or without the colon if it is alone
 * on its line.
 *
 * @param name without format characters, white space collapsed; empty in {@link #NONE}
 * @param manners as written
 * @param start index of the name
 * @param end index after name and brackets, before the colon
 * @param textStart index of the words after the colon; the line's end if there are none
 * @param colon true if there is one
 * @param closed true if every bracket that is opened is closed
 */
public record CueHead(
    String name,
    List<String> manners,
    int start,
    int end,
    int textStart,
    boolean colon,
    boolean closed) {

  static final CueHead NONE = new CueHead("", List.of(), 0, 0, 0, false, true);

  public CueHead {
    manners = List.copyOf(manners);
  }

  public boolean isNone() {
    return name.isEmpty();
  }
}
