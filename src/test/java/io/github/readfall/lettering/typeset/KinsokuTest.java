package io.github.readfall.lettering.typeset;

import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.Languages;
import io.github.readfall.type.text.LineBreaks;
import io.github.readfall.type.text.LineBreaks.Segment;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The lists of JLREQ, CLREQ and KLREQ, sign by sign, in rows made up for it: also where a balloon
 * is so narrow that phrases have to be broken.
 */
class KinsokuTest {

  private static final LineBreaks BREAKS = new LineBreaks();

  /** What stands on either side of a sign, by language. */
  static Stream<Arguments> rows() {
    return Stream.of(
        Arguments.of("ja", List.of("海", "うみ", "ウミ", "」")),
        Arguments.of("zh", List.of("海", "大海", "”")),
        Arguments.of("zh-Hant", List.of("海", "大海", "」")),
        Arguments.of("ko", List.of("가", "바다", "”")),
        Arguments.of("en", List.of("a", "sea", "”")));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void noLineStartsWithASignOfTheListWhateverStandsBesideIt(String tag, List<String> words) {
    Kinsoku.neverAtStart(tag)
        .codePoints()
        .filter(sign -> sign != '%') // stands behind a figure, and is written once
        .mapToObj(Character::toString)
        .forEach(
            sign ->
                words.forEach(
                    word -> {
                      assertWhole(tag, word, sign + words.get(0));
                      assertWhole(tag, word + sign, sign + words.get(0));
                    }));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void noLineEndsWithASignOfTheListWhateverStandsBesideIt(String tag, List<String> words) {
    Kinsoku.neverAtEnd(tag)
        .codePoints()
        .mapToObj(Character::toString)
        .forEach(
            sign ->
                words.stream()
                    .limit(words.size() - 1)
                    .forEach(word -> assertWhole(tag, word + sign, word)));
  }

  /** JLREQ 3.1.10, CLREQ and KLREQ: two dashes or two ellipses are one sign. */
  @ParameterizedTest
  @CsvSource({"ja, —", "ja, …", "ja, ‥", "zh, —", "zh, …", "zh-Hant, —", "zh-Hant, …", "ko, …"})
  void aSignThatIsWrittenTwiceIsNotParted(String tag, String sign) {
    assertWhole(tag, "海" + sign, sign + "海");
  }

  private static void assertWhole(String tag, String before, String after) {
    Language language = Languages.of(tag);
    String text = before + after;
    Stream.of(BREAKS.segments(text, language), BREAKS.looseSegments(text, language))
        .flatMap(List::stream)
        .map(Segment::end)
        .forEach(end -> assertTrue(end != before.length(), tag + ": " + before + " | " + after));
  }
}
