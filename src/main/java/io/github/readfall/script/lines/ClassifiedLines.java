package io.github.readfall.script.lines;

import io.github.readfall.script.Keywords;
import io.github.readfall.script.Letters;
import io.github.readfall.script.LineKind;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

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
    Speakers declared = new Speakers(keywords, top.cast(), Set.of());
    Set<String> heard = names(new LineClassifier(keywords, declared).classify(written, top));
    Speakers speakers = new Speakers(keywords, top.cast(), heard);
    return new ClassifiedLines(
        top, speakers, new LineClassifier(keywords, speakers).classify(written, top));
  }

  private static Set<String> names(List<ClassifiedLine> lines) {
    return lines.stream()
        .filter(line -> line.kind() == LineKind.CUE)
        .map(line -> Letters.fold(line.head().name()))
        .collect(Collectors.toSet());
  }

  /** Returns true if a text begins with U+FEFF. */
  public static boolean hasMark(String text) {
    return text.startsWith("\uFEFF");
  }
}
