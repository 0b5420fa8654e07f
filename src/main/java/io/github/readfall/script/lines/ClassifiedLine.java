package io.github.readfall.script.lines;

import io.github.readfall.script.LineKind;
import io.github.readfall.script.SourceLine;

/**
 * A line once it is known what it is.
 *
 * @param number its place in the script, from 1
 * @param written as written
 * @param kind what it is
 * @param start index of the first thing to see
 * @param end index behind the last, without a note that ends the line
 * @param head what stands before a cue's words; {@link CueHead#NONE} on other lines
 */
public record ClassifiedLine(
    int number, RawLine written, LineKind kind, int start, int end, CueHead head) {

  /** What the line says, without white space at its ends and a note. */
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
