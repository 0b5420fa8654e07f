package io.github.readfall.type.text;

import java.util.function.IntPredicate;
import java.util.regex.Pattern;

/** Sets the spaces beside signs that are a little apart from their words. */
final class NarrowSpaces {

  private static final Pattern BESIDE = Pattern.compile("(?<=.) +(?=[?!;:»⁇⁈⁉‼])|(?<=«) +(?=.)");
  private static final String NARROW = "\u202F";
  private static final String NO_BREAK = "\u00A0";

  private NarrowSpaces() {}

  /** A text with those spaces narrow; only unbreakable if no face has a narrow one. */
  static String in(String text, IntPredicate has) {
    String space = has.test(NARROW.charAt(0)) ? NARROW : NO_BREAK;
    return BESIDE.matcher(text).replaceAll(found -> space.repeat(found.group().length()));
  }
}
