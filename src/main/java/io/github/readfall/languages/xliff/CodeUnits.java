package io.github.readfall.languages.xliff;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Optional;

/**
 * The units in which the standard profiles count a text (XLIFF 2.1, 5.7.2: profiles without byte
 * order mark).
 */
enum CodeUnits {
  CODEPOINTS,
  UTF8,
  UTF16,
  UTF32;

  /** The profile of this name; empty for one that is not standard. */
  static Optional<CodeUnits> of(String profile) {
    return switch (profile) {
      case Names.CODEPOINTS -> Optional.of(CODEPOINTS);
      case Names.UTF8 -> Optional.of(UTF8);
      case "xliff:utf16" -> Optional.of(UTF16);
      case "xliff:utf32" -> Optional.of(UTF32);
      default -> Optional.empty();
    };
  }

  /** The size of a text: code points, or bytes. */
  int size(String text) {
    int points = text.codePointCount(0, text.length());
    return switch (this) {
      case CODEPOINTS -> points;
      case UTF8 -> text.getBytes(StandardCharsets.UTF_8).length;
      case UTF16 -> text.length() * 2;
      case UTF32 -> points * 4;
    };
  }

  /**
   * A text as it is counted.
   *
   * @param normalization {@code nfc}, {@code nfd} or {@code none}
   */
  static String normalized(String text, String normalization) {
    return switch (normalization) {
      case "nfc" -> Normalizer.normalize(text, Normalizer.Form.NFC);
      case "nfd" -> Normalizer.normalize(text, Normalizer.Form.NFD);
      default -> text;
    };
  }
}
