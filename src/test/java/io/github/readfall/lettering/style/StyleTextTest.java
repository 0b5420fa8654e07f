package io.github.readfall.lettering.style;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import io.github.readfall.lettering.toml.TomlValue;
import io.github.readfall.lettering.toml.TomlValue.Figure;
import io.github.readfall.lettering.toml.TomlValue.Truth;
import io.github.readfall.lettering.toml.TomlValue.Words;
import io.github.readfall.lettering.toml.UnchangeableText;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** One value changed by hand, as a careful person would. The texts are TOML v1.0.0 (toml.io). */
class StyleTextTest {

  private static final List<String> SIZE = List.of("voices", "ILSE", "size");

  private static StyleText read(String text) throws UnchangeableText {
    return StyleText.of(text, "series.toml");
  }

  private static String changed(String before, List<String> path, Optional<TomlValue> value)
      throws UnchangeableText {
    StyleText text = read(before);
    return (value.isPresent() ? text.with(path, value.get()) : text.without(path)).text();
  }

  static Stream<Arguments> awkward() {
    Optional<TomlValue> two = Optional.of(new Figure(2));
    Optional<TomlValue> none = Optional.empty();
    List<String> crab = List.of("voices", "Old \"Man\"", "slant");
    return Stream.of(
        arguments(
            "a note behind the value",
            "[voices.ILSE]\nsize = 1.2   # loud\nslant = 3\n",
            SIZE,
            two,
            "[voices.ILSE]\nsize = 2   # loud\nslant = 3\n"),
        arguments(
            "no spaces round the sign",
            "[voices.ILSE]\nsize=1.2\n",
            SIZE,
            two,
            "[voices.ILSE]\nsize=2\n"),
        arguments(
            "line ends of another system",
            "[voices.ILSE]\r\n  slant = 3\r\n\r\n[limits]\r\n",
            SIZE,
            two,
            "[voices.ILSE]\r\n  slant = 3\r\n  size = 2\r\n\r\n[limits]\r\n"),
        arguments(
            "a byte order mark",
            "\uFEFFvoices.ILSE.size = 1 # é\n",
            SIZE,
            two,
            "\uFEFFvoices.ILSE.size = 2 # é\n"),
        arguments(
            "letters of four bytes before it",
            "[voices.ILSE]\nface = \"\uD83D\uDC1A\"\nsize = 1\n",
            SIZE,
            two,
            "[voices.ILSE]\nface = \"\uD83D\uDC1A\"\nsize = 2\n"),
        arguments(
            "a table in braces",
            "voices = { ILSE = { slant = 3, size = 1 }, PIM = { size = 1 } }\n",
            SIZE,
            two,
            "voices = { ILSE = { slant = 3, size = 2 }, PIM = { size = 1 } }\n"),
        arguments(
            "a table in braces that lacks it",
            "[voices]\nILSE = { slant = 3 } # leans\n",
            SIZE,
            two,
            "[voices]\nILSE = { slant = 3, size = 2 } # leans\n"),
        arguments(
            "empty braces", "[voices]\nILSE = {}\n", SIZE, two, "[voices]\nILSE = { size = 2 }\n"),
        arguments(
            "braces that lack the voice",
            "voices = { PIM = { size = 1 } }\n",
            SIZE,
            two,
            "voices = { PIM = { size = 1 }, ILSE.size = 2 }\n"),
        arguments(
            "dotted keys",
            "[voices]\nILSE.slant = 3\nPIM.slant = 4\n",
            SIZE,
            two,
            "[voices]\nILSE.slant = 3\nILSE.size = 2\nPIM.slant = 4\n"),
        arguments(
            "dotted keys above all headers",
            "voices . ILSE . slant = 3\n[limits]\n",
            SIZE,
            two,
            "voices . ILSE . slant = 3\nvoices.ILSE.size = 2\n[limits]\n"),
        arguments(
            "a header with spaces and quotes",
            "[ voices . 'ILSE' ]\nsize = 1\n",
            SIZE,
            two,
            "[ voices . 'ILSE' ]\nsize = 2\n"),
        arguments(
            "a name with quotes in it",
            "[voices.'Old \"Man\"']\nsize = 1\n",
            crab,
            two,
            "[voices.'Old \"Man\"']\nsize = 1\nslant = 2\n"),
        arguments(
            "no such table",
            "[voices.PIM]\nsize = 1",
            crab,
            two,
            "[voices.PIM]\nsize = 1\n\n[voices.\"Old \\\"Man\\\"\"]\nslant = 2\n"),
        arguments("nothing at all", "", SIZE, two, "[voices.ILSE]\nsize = 2\n"),
        arguments(
            "a text of several lines that looks like TOML",
            "[keywords]\n"
                + "panel = \"\"\"\n"
                + "[voices.ILSE]\n"
                + "size = 1\n"
                + "\"\"\"\n"
                + "[voices.ILSE]\n"
                + "size = 1\n",
            SIZE,
            two,
            "[keywords]\n"
                + "panel = \"\"\"\n"
                + "[voices.ILSE]\n"
                + "size = 1\n"
                + "\"\"\"\n"
                + "[voices.ILSE]\n"
                + "size = 2\n"),
        arguments(
            "a text that ends in five quotes",
            "a = \"\"\"x\"\"\"\"\"\n[voices.ILSE]\nsize = 1\n",
            SIZE,
            two,
            "a = \"\"\"x\"\"\"\"\"\n[voices.ILSE]\nsize = 2\n"),
        arguments(
            "a list of several lines",
            "[voices.ILSE]\nextra = [ 1, # ]\n  { size = 3 }, [ '#' ],\n]\nsize = 1 # x\n",
            SIZE,
            two,
            "[voices.ILSE]\nextra = [ 1, # ]\n  { size = 3 }, [ '#' ],\n]\nsize = 2 # x\n"),
        arguments(
            "a list of several lines that is itself replaced",
            "[voices.ILSE]\nsize = [ 1,\n 2 ] # odd\nslant = 1\n",
            SIZE,
            two,
            "[voices.ILSE]\nsize = 2 # odd\nslant = 1\n"),
        arguments(
            "the key shown with a # before it",
            "[voices.ILSE]\n# Times the usual size.\n#size = 1.0\n#slant = 0\n",
            SIZE,
            two,
            "[voices.ILSE]\n# Times the usual size.\n#size = 1.0\nsize = 2\n#slant = 0\n"),
        arguments(
            "a header without an end of line",
            "[voices.ILSE]",
            SIZE,
            two,
            "[voices.ILSE]\nsize = 2\n"),
        arguments(
            "a table within it that comes first",
            "[voices.ILSE.more]\nsize = 1\n",
            SIZE,
            two,
            "[voices.ILSE.more]\nsize = 1\n\n[voices.ILSE]\nsize = 2\n"),
        arguments(
            "a name that needs quotes as a key",
            "[limits]\n\"words/long\" = 25 # words\n",
            List.of("limits", "legible/size"),
            two,
            "[limits]\n\"words/long\" = 25 # words\n\"legible/size\" = 2\n"),
        arguments(
            "taken out with its line",
            "[voices.ILSE]\nslant = 3\n  size = 1\n\n# more\n",
            SIZE,
            none,
            "[voices.ILSE]\nslant = 3\n\n# more\n"),
        arguments(
            "taken out, its note kept",
            "[voices.ILSE]\nsize = 1   # as large as it goes\nslant = 3\n",
            SIZE,
            none,
            "[voices.ILSE]\n# as large as it goes\nslant = 3\n"),
        arguments(
            "the first in braces taken out",
            "voices.ILSE = { size = 1, slant = 3 }",
            SIZE,
            none,
            "voices.ILSE = { slant = 3 }"),
        arguments(
            "the last in braces taken out",
            "voices.ILSE = { slant = 3, size = 1 }",
            SIZE,
            none,
            "voices.ILSE = { slant = 3 }"),
        arguments(
            "the only one in braces taken out",
            "voices.ILSE = { size = 1 }",
            SIZE,
            none,
            "voices.ILSE = {  }"),
        arguments("taken out though not there", "# x", SIZE, none, "# x"),
        arguments(
            "a list of tables of that name elsewhere",
            "[[voices.ILSE.size]]\na = 1\n[voices.PIM]\n",
            List.of("voices", "PIM", "size"),
            two,
            "[[voices.ILSE.size]]\na = 1\n[voices.PIM]\nsize = 2\n"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("awkward")
  void oneValueIsChangedAndNothingElse(
      String name, String before, List<String> path, Optional<TomlValue> value, String after)
      throws UnchangeableText {
    assertEquals(after, changed(before, path, value), name);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"plain", "say \"so\"", "back\\slash", "tab\there", "\u0001", "é\uD83D\uDC1A"})
  void wordsComeBackAsTheyWent(String words) throws UnchangeableText {
    StyleText text = read("").with(List.of("voices", words, "face"), new Words(words));
    HouseStyle style = new StyleReader().read(text.text(), "series.toml").style();
    assertEquals(Optional.of(words), style.voice(words).orElseThrow().face());
    assertEquals(List.of(words), text.names("voices"));
  }

  @Test
  void everyKindOfValueIsWrittenAsTomlHasIt() {
    assertEquals("1.05", new Figure(1.05).toml());
    assertEquals("-3", new Figure(-3.0).toml());
    assertEquals("false", new Truth(false).toml());
    assertEquals("\"#ffffff\"", new Words("#ffffff").toml());
  }

  @Test
  void aFileThatCannotBeReadIsLeftAloneAndTheLineIsTold() {
    UnchangeableText refused =
        assertThrows(UnchangeableText.class, () -> read("[limits]\nsize = 1,5\n"));
    assertEquals(
        "In series.toml line 2 cannot be read, so nothing is changed in the file from here: fix"
            + " that line by hand.",
        refused.getMessage());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "[voices]\n[[voices.ILSE]]\nsize = 1\n",
        "[voices]\nILSE = 3\n",
        "[voices]\nILSE = [ { size = 1 } ]\n",
        "voices = 7\n",
        "\n[voices.ILSE.size]\nx = 1\n"
      })
  void whatCannotBeChangedAloneIsRefusedWithItsLine(String text) throws UnchangeableText {
    StyleText before = read(text);
    UnchangeableText refused =
        assertThrows(UnchangeableText.class, () -> before.with(SIZE, new Figure(2)));
    String message = String.valueOf(refused.getMessage());
    assertTrue(message.matches("Line [12] of series.toml .*: change it by hand\\."), message);
  }

  @Test
  void itTellsWhatStandsWhere() throws UnchangeableText {
    StyleText text = read("[voices.B]\nsize = 1\n[voices.A]\n[limits]\n\"words/long\" = 9\n");
    assertEquals(List.of("B", "A"), text.names("voices"));
    assertEquals(Optional.of(2), text.line(List.of("voices", "B", "size")));
    assertEquals(Optional.of(5), text.line(List.of("limits", "words/long")));
    assertTrue(text.says(List.of("limits", "words/long")));
    assertFalse(text.says(List.of("voices", "A")));
    assertFalse(text.says(List.of("voices", "A", "size")));
    assertEquals(List.of(), text.names("manners"));
  }
}
