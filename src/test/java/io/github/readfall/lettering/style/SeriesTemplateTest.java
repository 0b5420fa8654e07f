package io.github.readfall.lettering.style;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.script.Cue;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Manner;
import io.github.readfall.script.read.ReadScript;
import io.github.readfall.script.read.ScriptReader;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
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
    assertEquals(BUILT_IN, new StyleReader().read(TEMPLATE, "series.toml"));
  }

  @Test
  void withEveryKeyUncommentedItStillSaysTheBuiltInStyle() {
    String uncommented =
        TEMPLATE.lines().map(SeriesTemplateTest::uncommented).collect(Collectors.joining("\n"));
    assertTrue(uncommented.lines().filter(line -> line.matches("[\"a-z].* = .*")).count() > 40);
    assertEquals(BUILT_IN, new StyleReader().read(uncommented, "series.toml"));
  }

  @Test
  void itsExamplesUncommentedToo() {
    String uncommented =
        TEMPLATE
            .lines()
            .map(line -> line.replaceFirst("^# {3}", ""))
            .filter(line -> !line.startsWith("#"))
            .collect(Collectors.joining("\n"));
    ReadStyle read = new StyleReader().read(uncommented, "series.toml");
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
            .dropWhile(line -> !isHeader(line, table))
            .takeWhile(line -> !line.startsWith("[") || isHeader(line, table))
            .collect(Collectors.joining("\n"));
    assertTrue(inTable.matches("(?s).*\n# *" + key + " = .*"), key + " is not in [" + table + "]");
  }

  private static boolean isHeader(String line, String table) {
    return line.matches("\\[" + table + "(\\.[a-z]+)?]");
  }

  @Test
  void theStartingScriptHasFourPanelsEveryKindOfCueAndNoFault() {
    ReadScript read = new ScriptReader().read(SeriesTemplate.script(), Keywords.ENGLISH);
    assertEquals(List.of(), read.findings());
    assertEquals(4, read.script().panels().size());
    List<Cue> cues = read.script().panels().stream().flatMap(p -> p.cues().stream()).toList();
    assertEquals(
        EnumSet.allOf(CueKind.class), cues.stream().map(Cue::kind).collect(Collectors.toSet()));
    assertEquals(
        Set.of(Manner.THOUGHT, Manner.OFF, Manner.WHISPER, Manner.SHOUT, Manner.JOINED),
        cues.stream().flatMap(cue -> cue.manners().stream()).collect(Collectors.toSet()));
  }

  /** Without the manners, which have the keys of voices, as the template says. */
  static Stream<Object[]> keys() {
    assertEquals(Sections.VOICES.keys(), Sections.MANNERS.keys());
    return Sections.ALL.stream()
        .filter(section -> !section.name().equals("manners"))
        .flatMap(s -> s.keyNames().stream().map(key -> new Object[] {s.name(), key}));
  }

  private static String uncommented(String line) {
    return line.matches("#[\"a-z].*") ? line.substring(1) : line;
  }
}
