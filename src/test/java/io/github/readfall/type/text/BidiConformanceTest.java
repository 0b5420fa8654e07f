package io.github.readfall.type.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.type.font.OpenFaces;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;

/**
 * Directions against the Unicode Character Database's own samples, all of BidiCharacterTest.txt
 * 15.0 (https://www.unicode.org/Public/15.0.0/ucd/). Our texts know their direction, so samples
 * that leave it to the first letter are asked with the one that the file resolves.
 */
class BidiConformanceTest {

  private static final Path FILE =
      Path.of("src/test/resources/text/unicode/BidiCharacterTest.txt.gz");
  private static final int SAMPLES = 91_707;
  private static final List<Language> BY_LEVEL = List.of(Languages.of("en"), Languages.of("ar"));
  private static final String REMOVED = "x"; // by rule X9: they have no level and no place

  /**
   * One sample.
   *
   * @param levels of its code points
   * @param order indices of its code points from left to right
   */
  private record Sample(String text, Language language, List<String> levels, List<String> order) {

    static Sample of(String line) {
      String[] fields = line.split(";", -1);
      StringBuilder text = new StringBuilder();
      words(fields[0]).forEach(code -> text.appendCodePoint(Integer.parseInt(code, 16)));
      return new Sample(
          text.toString(),
          BY_LEVEL.get(Integer.parseInt(fields[2])),
          words(fields[3]),
          words(fields[4]));
    }

    private static List<String> words(String field) {
      return field.isEmpty() ? List.of() : Arrays.asList(field.split(" ", -1));
    }
  }

  /** Why ICU4J 78.1 departs from the standard; java.text.Bidi of JDK 17 does in the same 31. */
  private enum Departure {
    /** Isolates and brackets beside the old codes that embed and override: nobody types those. */
    EXPLICIT_CODES("[\u202A-\u202E]"),
    /** N0, since Unicode 8: a mark behind a bracket takes the bracket's direction. */
    MARK_BEHIND_BRACKET("[)\\]][\u200B\u200D]*\\p{M}"),
    /** BD16: at most 63 brackets are open at a time. */
    DEEP_BRACKETS("\\({64,}");

    private final Pattern sign;

    Departure(String sign) {
      this.sign = Pattern.compile(sign);
    }

    static Departure of(Sample sample) {
      return Arrays.stream(values())
          .filter(departure -> departure.sign.matcher(sample.text()).find())
          .findFirst()
          .orElseThrow(() -> new AssertionError("unexplained: " + sample));
    }
  }

  @Test
  void everyLetterHasTheLevelAndThePlaceOfTheStandardSaveForWhatIcuIsKnownToLack()
      throws Exception {
    SizedFace type = new SizedFace(OpenFaces.regular("Grandstander"), 84, 0);
    int samples = 0;
    Map<Departure, Integer> departures = new TreeMap<>();
    try (BufferedReader lines = lines()) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        if (!line.isEmpty() && !line.startsWith("#")) {
          samples++;
          Sample sample = Sample.of(line);
          if (!levels(sample, type).equals(sample.levels())
              || !order(sample).equals(sample.order())) {
            departures.merge(Departure.of(sample), 1, Integer::sum);
          }
        }
      }
    }
    assertEquals(SAMPLES, samples);
    assertEquals(
        Map.of(
            Departure.EXPLICIT_CODES, 21,
            Departure.MARK_BEHIND_BRACKET, 9,
            Departure.DEEP_BRACKETS, 1),
        departures);
  }

  private static BufferedReader lines() throws IOException {
    InputStream unzipped = new GZIPInputStream(Files.newInputStream(FILE));
    return new BufferedReader(new InputStreamReader(unzipped, StandardCharsets.UTF_8));
  }

  /** The levels of the runs that are shaped, code point by code point. */
  private static List<String> levels(Sample sample, SizedFace type) {
    String text = sample.text();
    StyledText all = new StyledText(0, text.length(), new OneFace(type));
    List<String> levels = new ArrayList<>();
    for (Run run : Itemiser.runs(text, List.of(all), sample.language())) {
      int letters = text.codePointCount(run.start(), run.end());
      for (int i = 0; i < letters; i++) {
        boolean removed = sample.levels().get(levels.size()).equals(REMOVED);
        levels.add(removed ? REMOVED : Integer.toString(run.level()));
      }
    }
    return levels;
  }

  /** The order in which the runs of a line are placed, odd levels from their ends. */
  private static List<String> order(Sample sample) {
    String text = sample.text();
    List<String> order = new ArrayList<>();
    for (Itemiser.Directed run : Itemiser.visual(text, sample.language(), 0, text.length())) {
      int first = text.codePointCount(0, run.start());
      int last = text.codePointCount(0, run.end()) - 1;
      boolean fromTheRight = run.level() % 2 != 0;
      for (int i = 0; i <= last - first; i++) {
        int at = fromTheRight ? last - i : first + i;
        if (!sample.levels().get(at).equals(REMOVED)) {
          order.add(Integer.toString(at));
        }
      }
    }
    return order;
  }
}
