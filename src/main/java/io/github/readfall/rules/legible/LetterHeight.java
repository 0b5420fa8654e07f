package io.github.readfall.rules.legible;

import io.github.readfall.base.viewing.LetterKind;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.type.font.FaceHeights;
import java.util.List;
import java.util.stream.Stream;

/**
 * The height of letters of one kind in a balloon, and their least height beside a capital.
 *
 * @param kind by which they are judged; sources of the least heights are there
 * @param letter its name in a sentence
 * @param key of [lettering] in series.toml that makes it larger
 * @param px its height in strip pixels; positive
 */
record LetterHeight(LetterKind kind, String letter, String key, double px) {

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
    LetterHeight capital = of(LetterKind.CAPITAL, CAPITAL_KEY, balloon.capitalPx());
    double xPx = heights(balloon).xHeight() * balloon.type().pxPerUnit();
    LetterHeight small = of(LetterKind.X_HEIGHT, "x-height-arcmin", xPx);
    return Stream.of(capital, small)
        .filter(height -> height.equals(capital) || (xPx > 0 && hasSmallLetters(balloon)))
        .toList();
  }

  private static LetterHeight ideograph(SetBalloon balloon) {
    return of(LetterKind.IDEOGRAPH, "ideograph-arcmin", balloon.ideographPx());
  }

  private static LetterHeight of(LetterKind kind, String key, double px) {
    return new LetterHeight(kind, kind.inWords(), key, px);
  }

  /**
   * Letters of a script whose height says little, such as Arabic: sized by the em, which the script
   * needs larger than Latin by a factor. They are as large as a capital of their own face, less
   * that factor.
   */
  private static LetterHeight uncased(SetBalloon balloon) {
    double px = balloon.capitalPx() / balloon.language().emFactor();
    String letter = "the capital that goes with the letters";
    return new LetterHeight(LetterKind.CAPITAL, letter, CAPITAL_KEY, px);
  }

  /** Its least height over the least height of a capital. */
  double perCapital() {
    return kind.leastArcmin() / LetterKind.CAPITAL.leastArcmin();
  }

  private static FaceHeights heights(SetBalloon balloon) {
    return balloon.type().face().heights();
  }

  private static boolean hasSmallLetters(SetBalloon balloon) {
    return balloon.lines().stream()
        .anyMatch(line -> line.line().text().codePoints().anyMatch(Character::isLowerCase));
  }
}
