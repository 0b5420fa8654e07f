package io.github.readfall.script.lines;

import io.github.readfall.script.Letters;
import java.util.List;

/** Reads English numbers written as words, from one to ninety-nine: {@code Panel Twenty-one}. */
final class NumberWords {

  private static final List<String> ONES =
      List.of(
          "one",
          "two",
          "three",
          "four",
          "five",
          "six",
          "seven",
          "eight",
          "nine",
          "ten",
          "eleven",
          "twelve",
          "thirteen",
          "fourteen",
          "fifteen",
          "sixteen",
          "seventeen",
          "eighteen",
          "nineteen");

  private static final List<String> TENS =
      List.of("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety");

  private NumberWords() {}

  /** The number that a word says, in any case; -1 if it is none. */
  static int value(String word) {
    String folded = Letters.fold(word);
    int hyphen = folded.indexOf('-');
    int tens = TENS.indexOf(hyphen < 0 ? folded : folded.substring(0, hyphen));
    int ones = ONES.indexOf(hyphen < 0 ? folded : folded.substring(hyphen + 1)) + 1;
    if (hyphen < 0) {
      return tens >= 0 ? 10 * (tens + 2) : ones > 0 ? ones : -1;
    }
    return tens >= 0 && ones > 0 && ones < 10 ? 10 * (tens + 2) + ones : -1;
  }
}
