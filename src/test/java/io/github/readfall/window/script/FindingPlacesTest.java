package io.github.readfall.window.script;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.read.ReadScript;
import io.github.readfall.script.read.ScriptReader;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class FindingPlacesTest {

  private static final String SCRIPT =
      """
      PANEL 1  tall
      Rain. 😀 falls
      ILSE (mumbling, off): It is
      // later
        *counting* again. // hm

      PANEL 2
      """;

  static Stream<Arguments> places() {
    return Stream.of(
        Arguments.of("a word", Where.at("", 2, 9), "falls"),
        Arguments.of("a manner", Where.at("", 3, 7), "mumbling"),
        Arguments.of("a speaker", Where.at("", 3, 1), "ILSE"),
        Arguments.of("the middle of a word", Where.at("", 3, 24), "t"),
        Arguments.of("behind the end of a line", Where.at("", 6, 9), ""),
        Arguments.of("a balloon", Where.balloon("p1-1", 1, 3), "It is|counting* again."),
        Arguments.of("a panel", panel(2), "PANEL 2"),
        Arguments.of("a line", line(2), "Rain. 😀 falls"),
        Arguments.of("another file", Where.at("series.toml", 2, 1), "none"),
        Arguments.of("no such line", Where.at("", 40, 1), "none"),
        Arguments.of("no such panel", panel(3), "none"),
        Arguments.of("the episode", Where.everywhere(), "none"));
  }

  private static Where panel(int number) {
    return new Where(
        "", OptionalInt.empty(), OptionalInt.empty(), OptionalInt.of(number), List.of());
  }

  private static Where line(int number) {
    return new Where(
        "", OptionalInt.of(number), OptionalInt.empty(), OptionalInt.empty(), List.of());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("places")
  void areAtThePlaceOfTheFinding(String what, Where where, String words) {
    assertEquals(words, underlined(document(), where), what);
  }

  @Test
  void moveWithTheText() {
    ScriptDocument document = document();
    List<Underline> underlines = underlines(document, Where.at("", 3, 1));
    document.put(0, 0, "SCENE Mill\n");
    assertEquals("ILSE", words(document, underlines));
  }

  private static ScriptDocument document() {
    ScriptDocument document = new ScriptDocument();
    document.become(SCRIPT);
    return document;
  }

  private static String underlined(ScriptDocument document, Where where) {
    return words(document, underlines(document, where));
  }

  private static List<Underline> underlines(ScriptDocument document, Where where) {
    ReadScript read = new ScriptReader().read(document.text(), Keywords.ENGLISH);
    Finding finding = Finding.of("words/long", Severity.WARNING, where, "Long.", "");
    return new FindingPlaces(document, read.script()).of(List.of(finding));
  }

  private static String words(ScriptDocument document, List<Underline> underlines) {
    return underlines.isEmpty()
        ? "none"
        : underlines.get(0).stretches().stream()
            .map(s -> document.text().substring(s.start(), s.end()))
            .collect(Collectors.joining("|"));
  }
}
