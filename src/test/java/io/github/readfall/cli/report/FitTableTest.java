package io.github.readfall.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FitTableTest {

  private static final String EPISODE = "sample-scripts/overdue-tide/ep01";
  private static final Path GOLDEN = Path.of("src/test/resources/report/ep01.table.txt");
  private static final boolean ACCEPT = "accept".equals(System.getProperty("golden"));

  @Test
  void theSamplesTableIsTheAcceptedOne() throws IOException {
    String table = FitTable.of(Fitted.of(EPISODE).proof());
    if (ACCEPT) {
      Files.writeString(GOLDEN, table);
    }
    assertEquals(Files.readString(GOLDEN), table);
  }

  @Test
  void theTableIsTheSameInEveryLocale() {
    String path = "src/test/resources/report/scripts/bare.txt";
    String table = FitTable.of(Fitted.of(path).proof());
    Locale before = Locale.getDefault();
    try {
      for (String tag : List.of("tr", "de", "ar-u-nu-arab")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertEquals(table, FitTable.of(Fitted.of(path).proof()), tag);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  /**
   * In a terminal's cells, two for a wide letter and none for a mark (UAX #11, ED4 and section 5.1,
   * counted here by block alone), every row has its columns at the same place.
   */
  @ParameterizedTest
  @ValueSource(strings = {"ko", "ja", "th", "ar", "bare"})
  void columnsStandUnderEachOther(String script) {
    List<String> rows =
        FitTable.of(Fitted.of("src/test/resources/report/scripts/" + script + ".txt").proof())
            .lines()
            .filter(line -> line.startsWith("  id ") || line.matches("  p\\d+-\\d+ .*"))
            .toList();
    assertTrue(rows.size() > 4, rows.toString());
    Set<Integer> ends = new HashSet<>();
    for (String row : rows) {
      int end = row.startsWith("  id ") ? row.indexOf("letters") + 7 : row.indexOf('′') + 1;
      ends.add(cells(row.substring(0, end)));
    }
    assertEquals(1, ends.size(), String.join("\n", rows));
    Set<Integer> times = new HashSet<>();
    rows.stream()
        .filter(row -> row.contains("×"))
        .forEach(row -> times.add(cells(row.substring(0, row.indexOf("px") + 1))));
    assertEquals(1, times.size());
  }

  private static int cells(String text) {
    return text.codePoints().map(FitTableTest::cells).sum();
  }

  private static int cells(int c) {
    boolean wide = (c >= 0x1100 && c <= 0x115F) || (c >= 0x2E80 && c <= 0x9FFF);
    boolean syllable = c >= 0xAC00 && c <= 0xD7A3;
    boolean mark = Character.getType(c) == Character.NON_SPACING_MARK;
    return wide || syllable ? 2 : mark ? 0 : 1;
  }

  @Test
  void aLongNameIsShortenedAndALongerTableStaysAligned() throws IOException {
    Path script = Files.createTempFile("readfall", ".txt");
    try {
      String name = "THE KEEPER OF THE NORTHERN SLUICE";
      Files.writeString(script, "Language: en\n\nPANEL 1\n\n" + name + ": So.\nOTTO: No.\n");
      List<String> rows =
          FitTable.of(Fitted.of(script.toString()).proof())
              .lines()
              .filter(line -> line.contains("′"))
              .toList();
      assertEquals(2, rows.size());
      assertTrue(rows.get(0).contains("THE KEEPER OF THE…"), rows.get(0));
      assertEquals(rows.get(0).indexOf('×'), rows.get(1).indexOf('×'));
    } finally {
      Files.delete(script);
    }
  }

  @Test
  void everyFindingOfAFaultyScriptIsSaidOnItsOwnLine() {
    Fitted faulty = Fitted.of("src/test/resources/report/scripts/faulty.txt");
    String table = FitTable.of(faulty.proof());
    List<String> lines = table.lines().toList();
    IntStream.range(0, faulty.proof().findings().size())
        .forEach(
            i -> {
              var finding = faulty.proof().findings().get(i);
              String line =
                  lines.stream()
                      .filter(l -> l.contains(finding.message()))
                      .findFirst()
                      .orElseThrow(() -> new AssertionError("not said: " + finding.message()));
              assertTrue(line.endsWith("[" + finding.rule() + "]"), line);
              assertTrue(line.contains(finding.severity().word()), line);
              assertTrue(line.contains(finding.advice()), line);
            });
  }
}
