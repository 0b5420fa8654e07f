package io.github.readfall.script.assist;

import io.github.readfall.script.Keywords;
import io.github.readfall.script.LineKind;
import io.github.readfall.script.LinePart;
import io.github.readfall.script.Script;
import io.github.readfall.script.lines.ClassifiedLines;
import io.github.readfall.script.lines.FindingList;
import io.github.readfall.script.read.ScriptReader;
import java.util.List;

/**
 * The kind of each line of a text and its parts: the quick half of reading a script, for an editor
 * that shows it while it is typed.
 *
 * <p>Lines and their kinds are those of the {@link Script} that {@link ScriptReader} makes of the
 * same text.
 */
public final class ScriptLines {

  private final Keywords keywords;
  private final ClassifiedLines classified;
  private final List<List<LinePart>> parts;

  private ScriptLines(Keywords keywords, ClassifiedLines classified) {
    this.keywords = keywords;
    this.classified = classified;
    this.parts = LineParts.of(keywords, classified);
  }

  /** Reads a text as it is in the file, with or without U+FEFF at its start. */
  public static ScriptLines read(String text, Keywords keywords) {
    return new ScriptLines(keywords, ClassifiedLines.of(text, keywords, new FindingList()));
  }

  /** The number of lines, without an empty line at the very end. */
  public int count() {
    return parts.size();
  }

  /** The kind of a line; blank after the last. */
  public LineKind kind(int line) {
    return line > count() ? LineKind.BLANK : classified.lines().get(line - 1).kind();
  }

  /** The parts of a line from left to right, white space and brackets left out. */
  public List<LinePart> parts(int line) {
    return line > count() ? List.of() : parts.get(line - 1);
  }

  /**
   * What may be written at a place.
   *
   * @param line from 1
   * @param before text before the place on its line
   */
  public Slot slot(int line, String before) {
    return new SlotReader(keywords, classified).read(line, before);
  }
}
