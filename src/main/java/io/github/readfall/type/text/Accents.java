package io.github.readfall.type.text;

import com.ibm.icu.text.Normalizer2;

/** Compares words without their accents. */
public final class Accents {

  private static final int FIRST = 0x0300; // combining diacritical marks (Unicode, block)
  private static final int LAST = 0x036F;

  private Accents() {}

  /**
   * A text without its accents: é is e. Marks for sounds, as in Thai or Hindi, stay. Worked
   * example: {@code Émile} is {@code Emile}.
   */
  public static String without(String text) {
    return Normalizer2.getNFDInstance()
        .normalize(text)
        .codePoints()
        .filter(c -> c < FIRST || c > LAST)
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }
}
