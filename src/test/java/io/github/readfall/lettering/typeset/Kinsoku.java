package io.github.readfall.lettering.typeset;

import java.util.Set;

/**
 * Characters that published requirements keep from the start or the end of a line, copied by hand
 * from their classes; apart from the code, which takes ICU's.
 */
final class Kinsoku {

  private static final String CLOSING = "”’）〕］｝〉》」』】⦆〙〗»)]}";
  private static final String OPENING = "“‘（〔［｛〈《「『【⦅〘〖«([{";

  /** W3C JLREQ, appendix A: cl-02 to cl-07, cl-09, cl-10, cl-11, by rule of its 3.1.7. */
  private static final String JAPANESE_START =
      CLOSING
          + "‐〜゠–" // cl-03
          + "！？‼⁇⁈⁉" // cl-04
          + "・：；" // cl-05
          + "。．" // cl-06
          + "、，" // cl-07
          + "ヽヾゝゞ々〻" // cl-09
          + "ー" // cl-10
          + "ぁぃぅぇぉァィゥェォっゃゅょゎゕゖッャュョヮヵヶㇰㇱㇲㇳㇴㇵㇶㇷㇸㇹㇺㇻㇼㇽㇾㇿ"; // cl-11

  /** W3C CLREQ 3.1.3: stops, closing marks, connecting marks, interpuncts, solidi; strict too. */
  private static final String CHINESE_START = CLOSING + "、，；：。．！？‧·・–—～~/／…⋯⸺";

  /** W3C KLREQ, line breaking: closing brackets, stops and other marks after a word. */
  private static final String KOREAN_START = CLOSING + ".,!?:;%·。、…~-";

  /** UAX #14: the classes CL, CP, EX, IS and BA of what the languages of letters use. */
  private static final String LETTERS_START = ".,;:!?)]}…–—‐-·";

  /** W3C Indic layout requirements, line breaking: no line begins with a danda. */
  private static final String DEVANAGARI_START = LETTERS_START + "।॥";

  /**
   * Mai yamok and paiyan noi stay with their word (common practice); vowels and marks that follow a
   * consonant stand behind it, those written before it before it (the Unicode Standard, 16.1).
   */
  private static final String THAI_START = LETTERS_START + "ๆฯะัาำิีึืฺุูๅ็่้๊๋์ํ๎";

  private static final String THAI_END = OPENING + "เแโใไ";

  private static final Set<String> CHINESE = Set.of("zh", "zh-Hant");

  private Kinsoku() {}

  /** What no line of a language starts with. */
  static String neverAtStart(String tag) {
    return switch (tag) {
      case "ja" -> JAPANESE_START;
      case "ko" -> KOREAN_START;
      case "th" -> THAI_START;
      case "hi" -> DEVANAGARI_START;
      case "ar" -> LETTERS_START + "،؛؟";
      default -> CHINESE.contains(tag) ? CHINESE_START : LETTERS_START;
    };
  }

  /** What no line of a language ends with: JLREQ cl-01, and the like of CLREQ and KLREQ. */
  static String neverAtEnd(String tag) {
    return switch (tag) {
      case "th" -> THAI_END;
      case "ja", "ko", "zh", "zh-Hant" -> OPENING;
      default -> "([{¿¡"; // UAX #14: OP
    };
  }
}
