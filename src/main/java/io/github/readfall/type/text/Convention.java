package io.github.readfall.type.text;

import java.util.function.IntPredicate;

/**
 * A way of typing that is lettered otherwise: unit for unit, so that every place in the text stays
 * where it is.
 */
public enum Convention {
  /**
   * A space typed before {@code ? ! ; : »} or after {@code «} is narrow and never breaks; where
   * none is typed, none comes. Narrow beside all of them, as is common practice in lettering; in
   * books the colon and the quotes have a full one.
   */
  NARROW_SPACES {
    @Override
    String lettered(String text, IntPredicate has) {
      return NarrowSpaces.in(text, has);
    }
  },
  /**
   * Letters typed with a cedilla have the comma below that they are written with: ș and ț (The
   * Unicode Standard, chapter 7, on Romanian).
   */
  COMMA_BELOW {
    @Override
    String lettered(String text, IntPredicate has) {
      StringBuilder lettered = new StringBuilder(text);
      for (int i = 0; i < text.length(); i++) {
        int typed = CEDILLAS.indexOf(text.charAt(i));
        if (typed >= 0 && has.test(COMMAS.charAt(typed))) {
          lettered.setCharAt(i, COMMAS.charAt(typed));
        }
      }
      return lettered.toString();
    }
  };

  private static final String CEDILLAS = "\u015E\u015F\u0162\u0163";
  private static final String COMMAS = "\u0218\u0219\u021A\u021B";

  /**
   * A text as it is to be lettered; as long as before.
   *
   * @param has true for a character of the faces; others are not put in
   */
  abstract String lettered(String text, IntPredicate has);
}
