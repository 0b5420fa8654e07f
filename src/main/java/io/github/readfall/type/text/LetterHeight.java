package io.github.readfall.type.text;

import io.github.readfall.base.viewing.LetterKind;
import java.util.List;

/**
 * The height of letters of one kind in a face at a size.
 *
 * @param kind of the letters
 * @param px their height in strip pixels; positive
 */
public record LetterHeight(LetterKind kind, double px) {

  /** A capital over its em, for a face that has none. House default, no source. */
  private static final double CAPITAL_EM = 0.7;

  /**
   * The heights that decide whether a language can be read in a face: of every letter that its
   * script is judged by and the face has, the most telling first. In a face without any, that of
   * its capital, or of what would go with its em.
   *
   * @param small true if there are small letters, so that the x counts
   */
  public static List<LetterHeight> of(SizedFace type, Language language, boolean small) {
    List<LetterHeight> heights =
        language.letters().stream()
            .filter(kind -> small || kind != LetterKind.X_HEIGHT)
            .map(kind -> new LetterHeight(kind, type.heightPx(kind)))
            .filter(height -> height.px() > 0)
            .toList();
    return heights.isEmpty() ? List.of(capital(type)) : heights;
  }

  /** The height of a capital, or of its substitute in a face without capitals. */
  public static LetterHeight capital(SizedFace type) {
    double px = type.capitalPx();
    return new LetterHeight(LetterKind.CAPITAL, px > 0 ? px : CAPITAL_EM * type.fontPx());
  }
}
