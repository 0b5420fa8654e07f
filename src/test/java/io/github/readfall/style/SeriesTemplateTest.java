package io.github.readfall.style;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SeriesTemplateTest {

  private static final String TEMPLATE = SeriesTemplate.seriesToml();
  private static final ReadStyle BUILT_IN = new ReadStyle(HouseStyle.DEFAULT, List.of());

  @Test
  void asItComesItSaysNothingButTheBuiltInStyle() {
    assertEquals(BUILT_IN, StyleReader.read(TEMPLATE, "series.toml"));
  }

  @Test
  void withEveryKeyUncommentedItStillSaysTheBuiltInStyle() {
    String uncommented =
        TEMPLATE.lines().map(SeriesTemplateTest::uncommented).collect(Collectors.joining("\n"));
    assertTrue(uncommented.lines().filter(line -> line.matches("[\"a-z].* = .*")).count() > 40);
    assertEquals(BUILT_IN, StyleReader.read(uncommented, "series.toml"));
  }

  @Test
  void itsExamplesUncommentedToo() {
    String uncommented =
        TEMPLATE
            .lines()
            .map(line -> line.replaceFirst("^# {3}", ""))
            .filter(line -> !line.startsWith("#"))
            .collect(Collectors.joining("\n"));
    ReadStyle read = StyleReader.read(uncommented, "series.toml");
    assertEquals(List.of(), read.findings());
    assertEquals(8, read.style().voice("Ilse").orElseThrow().slantDeg().orElseThrow());
    assertEquals(2, read.style().phones().size());
  }

  @ParameterizedTest
  @MethodSource("keys")
  void itShowsEveryKey(String table, String key) {
    String inTable =
        TEMPLATE
            .lines()
            .dropWhile(line -> !line.matches("\\[" + table + "(\\.[a-z]+)?]"))
            .collect(Collectors.joining("\n"));
    assertTrue(inTable.matches("(?s).*\n# *" + key + " = .*"), key + " is not in [" + table + "]");
  }

  static Stream<List<String>> pairs() {
    return Sections.ALL.stream()
        .flatMap(section -> section.keyNames().stream().map(key -> List.of(section.name(), key)));
  }

  static Stream<Object[]> keys() {
    return pairs().map(List::toArray);
  }

  private static String uncommented(String line) {
    return line.matches("#[\"a-z].*") ? line.substring(1) : line;
  }
}
