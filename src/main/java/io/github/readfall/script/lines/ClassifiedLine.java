package io.github.readfall.script.lines;

import io.github.readfall.script.LineKind;
import io.github.readfall.script.SourceLine;

/**
 * A line of which the kind is known.
 *
 * @param number its place in the script, from 1
 * @param written as written
 * @param kind of the line
 * @param start index of the first visible character
 * @param end index after the last, without a note that ends the line
 * @param head of a cue; {@link CueHead#NONE} on other lines
 */
public record ClassifiedLine(
    int number, RawLine written, LineKind kind, int start, int end, CueHead head) {

  /** The content of the line, without white space at its ends and a note. */
  public String content() {
    return start < end ? written.text().substring(start, end) : "";
  }

  public String content(int from) {
    return from < end ? written.text().substring(from, end) : "";
  }

  public int column(int index) {
    return written.column(index);
  }

  public int column() {
    return column(start);
  }

  public SourceLine source() {
    return new SourceLine(written.text(), written.ending(), kind);
  }
}
