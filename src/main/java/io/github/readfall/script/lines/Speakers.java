package io.github.readfall.script.lines;

import io.github.readfall.script.Cast;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.Keywords;

/** Knows the speakers, and the meaning of a name by itself. */
public final class Speakers {

  private final Keywords keywords;
  private final Cast cast;

  Speakers(Keywords keywords, Cast cast) {
    this.keywords = keywords;
    this.cast = cast;
  }

  public Cast cast() {
    return cast;
  }

  /** Returns true if {@code NAME: text} is a cue. */
  public boolean speaks(String name) {
    return isDeclared(name) || isCapitals(name) || (cast.isEmpty() && isCaseless(name));
  }

  /** Returns true if a name is in the cast or a keyword. */
  public boolean isDeclared(String name) {
    return isKeyword(name) || cast.has(name);
  }

  boolean isKeyword(String name) {
    return keywordKind(name) != CueKind.DIALOGUE;
  }

  /** The kind of cue that a keyword as name makes; dialogue if it is none. */
  public CueKind keywordKind(String name) {
    String word = withoutNumber(name);
    if (Keywords.matches(keywords.caption(), word)) {
      return CueKind.CAPTION;
    }
    return Keywords.matches(keywords.effect(), word) ? CueKind.EFFECT : CueKind.DIALOGUE;
  }

  /** The name that a cue of this speaker bears. */
  public String canonical(String name) {
    return isKeyword(name) ? withoutNumber(name) : cast.canonical(name);
  }

  /** Some capitals and no small letter; ß, which capitals may keep in German, counts as neither. */
  public static boolean isCapitals(String name) {
    return name.codePoints().anyMatch(Character::isUpperCase)
        && !hasSmall(name)
        && !hasCaseless(name);
  }

  public static boolean hasSmall(String name) {
    return name.codePoints().anyMatch(Speakers::isSmall);
  }

  private static boolean isSmall(int c) {
    return Character.getType(c) == Character.LOWERCASE_LETTER && c != 'ß' && !isGeorgian(c);
  }

  /** Letters of a script that has no capitals, and no small letters beside them. */
  public static boolean isCaseless(String name) {
    return hasCaseless(name) && !hasSmall(name);
  }

  private static boolean hasCaseless(String name) {
    return name.codePoints()
        .anyMatch(c -> Character.getType(c) == Character.OTHER_LETTER || isGeorgian(c));
  }

  /** Small letters to Unicode, but everyday Georgian has no capitals beside them. */
  private static boolean isGeorgian(int c) {
    return c >= 0x10D0 && c <= 0x10FF;
  }

  /** {@code CAPTION 2} is a caption as well. */
  private static String withoutNumber(String name) {
    int end = name.length();
    while (end > 0 && (Character.isDigit(name.charAt(end - 1)) || name.charAt(end - 1) == ' ')) {
      end--;
    }
    return name.substring(0, end);
  }
}
