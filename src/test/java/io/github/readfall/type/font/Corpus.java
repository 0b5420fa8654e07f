package io.github.readfall.type.font;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/** The invented lines of many languages that shaping is checked with. */
public final class Corpus {

  private static final Path FILE = Path.of("src/test/resources/font/corpus.txt");
  private static final Set<String> RIGHT_TO_LEFT = Set.of("ar", "he");

  /**
   * One line, of one direction.
   *
   * @param language BCP 47 tag
   */
  public record Line(String language, String text) {

    public boolean rightToLeft() {
      return RIGHT_TO_LEFT.contains(language);
    }

    Line inCapitals() {
      return new Line(language, text.toUpperCase(Locale.forLanguageTag(language)));
    }

    public boolean isCoveredBy(Face face) {
      return text.codePoints().allMatch(face::covers);
    }

    public List<String> words() {
      return List.of(text.split(" ", -1));
    }
  }

  private Corpus() {}

  /** The lines as written. */
  public static List<Line> asWritten() throws IOException {
    return Files.readAllLines(FILE).stream()
        .filter(line -> !line.isBlank() && !line.startsWith("#"))
        .map(line -> line.split(" \\| ", 2))
        .map(cells -> new Line(cells[0], cells[1]))
        .toList();
  }

  /** The lines as written and, where that differs, in capitals. */
  public static List<Line> all() throws IOException {
    return asWritten().stream()
        .flatMap(line -> Stream.of(line, line.inCapitals()).distinct())
        .toList();
  }
}
