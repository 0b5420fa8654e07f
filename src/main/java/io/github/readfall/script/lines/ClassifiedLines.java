package io.github.readfall.script.lines;

import io.github.readfall.script.Keywords;
import java.util.List;

/**
 * The lines of a script with their kinds.
 *
 * @param top the headers
 * @param speakers of the script
 * @param lines all of them
 */
public record ClassifiedLines(HeaderReader.Top top, Speakers speakers, List<ClassifiedLine> lines) {

  public static ClassifiedLines of(String text, Keywords keywords, FindingList findings) {
    List<RawLine> written = RawLine.split(text, hasMark(text) ? 1 : 0);
    HeaderReader.Top top = new HeaderReader(keywords, findings).read(written);
    Speakers speakers = new Speakers(keywords, top.cast());
    return new ClassifiedLines(
        top, speakers, new LineClassifier(keywords, speakers).classify(written, top));
  }

  /** Returns true if a text begins with U+FEFF. */
  public static boolean hasMark(String text) {
    return text.startsWith("\uFEFF");
  }
}
