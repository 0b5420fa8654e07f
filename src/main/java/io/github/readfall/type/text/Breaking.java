package io.github.readfall.type.text;

/**
 * The request to ICU for a language's line breaks.
 *
 * @param tag BCP 47, with the keywords that ICU really obeys
 * @param looseTag the tag to fall back on if one phrase is wider than its balloon
 * @param byWord true if a line should rather end where a word of ICU's dictionary does
 */
public record Breaking(String tag, String looseTag, boolean byWord) {

  /** Strict breaks, so that no small kana starts a line; the same if a balloon is narrow. */
  static Breaking strict(String language) {
    String tag = language + "-u-lb-strict";
    return new Breaking(tag, tag, false);
  }

  /**
   * Breaks between phrases: ICU has them for Japanese and Korean alone. Strict if that is too wide.
   */
  static Breaking byPhrase(String language) {
    return new Breaking(language + "-u-lb-strict-lw-phrase", language + "-u-lb-strict", false);
  }

  /** Strict breaks, between words if possible: for a language without spaces or phrases in ICU. */
  static Breaking byWord(String language) {
    String tag = language + "-u-lb-strict";
    return new Breaking(tag, tag, true);
  }
}
