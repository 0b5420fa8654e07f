package io.github.readfall.text;

/**
 * How ICU is asked for a language's line breaks.
 *
 * @param tag BCP 47, with the keywords that ICU really obeys
 * @param looseTag the tag to fall back on where one phrase is wider than its balloon
 */
public record Breaking(String tag, String looseTag) {

  /** Strictly, so that no small kana starts a line; the same where a balloon is narrow. */
  static Breaking strict(String language) {
    String tag = language + "-u-lb-strict";
    return new Breaking(tag, tag);
  }

  /** By phrases: ICU has them for Japanese and Korean alone. Strictly where that is too wide. */
  static Breaking byPhrase(String language) {
    return new Breaking(language + "-u-lb-strict-lw-phrase", language + "-u-lb-strict");
  }
}
