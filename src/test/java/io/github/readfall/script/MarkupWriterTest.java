package io.github.readfall.script;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MarkupWriterTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "It is *counting* again.",
        "*All of it.*",
        "_So_ / and *so*.",
        "*_Never_ in my* life",
        "*Never in _my_*",
        "_*Both*_ here",
        "2 * 3 and a_b",
        "\\*not strong\\* and/or \\/ so",
        "C:\\*x*",
        "なに*そ*れ",
        "a / / b",
        "*one* *two*",
        "***"
      })
  void whatIsWrittenMeansTheSame(String raw) {
    CueText meant = MarkupReader.text(raw);
    CueText again = MarkupReader.text(MarkupWriter.raw(meant.plain(), meant.spans()));
    assertEquals(meant.plain(), again.plain());
    assertEquals(meant.spans(), again.spans());
  }

  @ParameterizedTest
  @CsvSource({"It is *counting* again.", "2 * 3", "_so_ / so", "a_b*c"})
  void whatIsPlainlyWrittenStays(String raw) {
    CueText meant = MarkupReader.text(raw);
    assertEquals(raw, MarkupWriter.raw(meant.plain(), meant.spans()));
  }

  @Test
  void emphasisWithinAWordTakesInTheWord() {
    assertEquals(
        "*unbelievable* so",
        MarkupWriter.raw("unbelievable so", List.of(new Span(2, 12, Emphasis.STRONG))));
  }

  @Test
  void spacesAtTheEndsOfEmphasisStandOutside() {
    assertEquals(
        "so *it* is", MarkupWriter.raw("so it is", List.of(new Span(2, 6, Emphasis.STRONG))));
  }
}
