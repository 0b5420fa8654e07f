package io.github.readfall.rules;

import io.github.readfall.font.FaceHeights;
import io.github.readfall.typeset.SetBalloon;
import java.util.List;
import java.util.stream.Stream;

/**
 * How high letters of one kind are in a balloon, and how high they must be beside a capital.
 *
 * @param letter as a sentence names it
 * @param key of [lettering] in series.toml that makes it larger
 * @param px its height in strip pixels; positive
 * @param perCapital its least height over the least height of a capital
 */
record LetterHeight(String letter, String key, double px, double perCapital) {

  /**
   * The least height of a capital, 16′, that the other heights go with: ISO 9241-3 as quoted in
   * U.S. NRC NUREG-0700 Rev. 2, 1.3.1-4.
   */
  private static final double CAPITAL_ARCMIN = 16;

  /**
   * The critical print size of 0.2 degrees, below which reading slows (Legge and Bigelow 2011,
   * Journal of Vision 11(5):8).
   */
  private static final double SMALL_X = 12 / CAPITAL_ARCMIN;

  /**
   * Ideographs must be 1.54 times as high as the small letters of English (Zhang et al. 2020,
   * Optometry and Vision Science 97(10)): 12′ times 1.54 is 18.5′.
   */
  private static final double IDEOGRAPH = 18.5 / CAPITAL_ARCMIN;

  private static final String CAPITAL_KEY = "capital-arcmin";

  /** Every height by which a balloon is judged. */
  static List<LetterHeight> of(SetBalloon balloon) {
    return switch (balloon.language().sizeBasis()) {
      case CAPITAL -> cased(balloon);
      case IDEOGRAPH -> List.of(ideograph(balloon));
      case EM -> List.of(uncased(balloon));
    };
  }

  private static List<LetterHeight> cased(SetBalloon balloon) {
    LetterHeight capital = new LetterHeight("a capital", CAPITAL_KEY, balloon.capitalPx(), 1);
    double xPx = heights(balloon).xHeight() * balloon.type().pxPerUnit();
    LetterHeight small = new LetterHeight("a small x", "x-height-arcmin", xPx, SMALL_X);
    return Stream.of(capital, small)
        .filter(height -> height.equals(capital) || (xPx > 0 && hasSmallLetters(balloon)))
        .toList();
  }

  private static LetterHeight ideograph(SetBalloon balloon) {
    return new LetterHeight(
        "an ideograph or syllable", "ideograph-arcmin", balloon.ideographPx(), IDEOGRAPH);
  }

  /**
   * Letters of a script whose height says little, such as Arabic: sized by the em, which the script
   * needs larger than Latin by a factor. They are as large as a capital of their own face, less
   * that factor.
   */
  private static LetterHeight uncased(SetBalloon balloon) {
    double px = balloon.capitalPx() / balloon.language().emFactor();
    return new LetterHeight("the capital that goes with the letters", CAPITAL_KEY, px, 1);
  }

  private static FaceHeights heights(SetBalloon balloon) {
    return balloon.type().face().heights();
  }

  private static boolean hasSmallLetters(SetBalloon balloon) {
    return balloon.lines().stream()
        .anyMatch(line -> line.line().text().codePoints().anyMatch(Character::isLowerCase));
  }
}
