package io.github.readfall.type.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.ibm.icu.util.VersionInfo;
import io.github.readfall.type.text.LineBreaks.Segment;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Where a line may end, row by row of a table that anyone can read. */
class LineBreaksTest {

  private static final Path TABLE = Path.of("src/test/resources/text/line-breaks.txt");
  private static final Pattern ESCAPE = Pattern.compile("\\\\u([0-9A-F]{4})");

  /** One row. */
  record Row(String language, String marked, String why) {

    static Row of(String line) {
      String[] cells = line.split(" \\| ", 3);
      String marked =
          ESCAPE
              .matcher(cells[1])
              .replaceAll(m -> Character.toString(Integer.parseInt(m.group(1), 16)))
              .replace("\\n", "\n");
      return new Row(cells[0], marked, cells[2]);
    }

    String text() {
      return marked.replace("¦", "").replace("~", "");
    }

    List<Segment> segments(LineBreaks breaks) {
      return language.startsWith("loose ")
          ? breaks.looseSegments(text(), Languages.of(language.substring(6)))
          : breaks.segments(text(), Languages.of(language));
    }
  }

  static List<Row> rows() throws IOException {
    return Files.readAllLines(TABLE).stream()
        .filter(line -> !line.isBlank() && !line.startsWith("#"))
        .map(Row::of)
        .toList();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void aLineMayEndWhereTheTableSaysAndNowhereElse(Row row) {
    assertEquals(row.marked(), marked(row.text(), row.segments(new LineBreaks())), row.why());
  }

  private static String marked(String text, List<Segment> segments) {
    StringBuilder marked = new StringBuilder();
    for (int i = 0; i < segments.size(); i++) {
      Segment segment = segments.get(i);
      marked.append(text, segment.start(), segment.end());
      if (i + 1 < segments.size()) {
        marked.append(segment.discouraged() ? "~" : "¦");
      }
    }
    return marked.toString();
  }

  @Test
  void theTableIsForThisVersionOfIcu() {
    assertEquals(VersionInfo.getInstance(78, 1), VersionInfo.ICU_VERSION);
  }

  @Test
  void onlyALineBreakCharacterForcesABreakAndTheLastSegmentNever() {
    List<Segment> segments = new LineBreaks().segments("one\ntwo three\n", Languages.of("en"));
    assertEquals(List.of(true, false, false), segments.stream().map(Segment::forced).toList());
    assertEquals(List.of(0, 4, 8), segments.stream().map(Segment::start).toList());
    assertEquals(List.of(4, 8, 14), segments.stream().map(Segment::end).toList());
  }

  @Test
  void anEmptyTextHasNoSegments() {
    for (Language language : Languages.all()) {
      assertTrue(new LineBreaks().segments("", language).isEmpty());
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void phrasesAreCutAtNoPlaceThatTheLooseCutDoesNotHave(Row row) {
    LineBreaks breaks = new LineBreaks();
    for (Language language : Languages.all()) {
      List<Integer> loose = ends(breaks.looseSegments(row.text(), language));
      List<Integer> tight = ends(breaks.segments(row.text(), language));
      assertTrue(loose.containsAll(tight), () -> language.tag() + " " + loose + " " + tight);
    }
  }

  private static List<Integer> ends(List<Segment> segments) {
    return segments.stream().map(Segment::end).toList();
  }

  @Test
  void threadsMayShareIt() throws Exception {
    LineBreaks shared = new LineBreaks();
    List<Row> rows = rows();
    List<Callable<List<String>>> tasks =
        IntStream.range(0, 16)
            .<Callable<List<String>>>mapToObj(
                i -> () -> rows.stream().map(r -> marked(r.text(), r.segments(shared))).toList())
            .toList();
    ExecutorService threads = Executors.newFixedThreadPool(4);
    try {
      for (Future<List<String>> done : threads.invokeAll(tasks)) {
        assertEquals(rows.stream().map(Row::marked).toList(), done.get());
      }
    } finally {
      threads.shutdownNow();
    }
  }
}
