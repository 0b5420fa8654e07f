package io.github.readfall.script.lines;

import java.util.List;

/**
 * What stands before a cue's words, if it is one: {@code NAME (manner):}, or without the colon
 * where it stands alone on its line.
 *
 * @param name without format characters, white space collapsed; empty in {@link #NONE}
 * @param manners as written
 * @param start index of the name
 * @param end index behind name and brackets, before the colon
 * @param textStart index of the words behind the colon; the line's end where there are none
 * @param colon whether there is one
 * @param closed whether every bracket that is opened is closed
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
