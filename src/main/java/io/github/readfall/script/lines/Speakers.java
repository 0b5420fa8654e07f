package io.github.readfall.script.lines;

import io.github.readfall.script.Cast;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Letters;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** Knows the speakers, and the meaning of a name by itself. */
public final class Speakers {

  /** What is between the names of people who speak together. */
  private static final Pattern TOGETHER =
      Pattern.compile(
          "\\s*[&+/,\uFF06\uFF0F]\\s*|\\s+(?:and|und|et|y|e|och|og|en|i|ve|и)\\s+",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

  private final Keywords keywords;
  private final Cast cast;
  private final Set<String> heard;

  /**
   * @param heard folded names of all who speak anywhere in the script
   */
  Speakers(Keywords keywords, Cast cast, Set<String> heard) {
    this.keywords = keywords;
    this.cast = cast;
    this.heard = Set.copyOf(heard);
  }

  public Cast cast() {
    return cast;
  }

  /** Returns true if {@code NAME: text} is a cue. */
  public boolean speaks(String name) {
    return isDeclared(name)
        || (isCapitals(name) && !DescriptionWords.isLabel(name))
        || (cast.isEmpty() && isCaseless(name))
        || hasInCast(name);
  }

  /** Returns true if a name is in the cast or a keyword. */
  public boolean isDeclared(String name) {
    return isKeyword(name) || cast.has(name);
  }

  /** Returns true if a name is of one, or of several, who are in the cast or speak elsewhere. */
  public boolean isKnown(String name) {
    return isDeclared(name) || isHeard(name) || !together(name).isEmpty();
  }

  /** Returns true if one, or each of several, is in the cast. */
  public boolean hasInCast(String name) {
    List<String> together = together(name);
    return cast.has(name) || (!together.isEmpty() && together.stream().allMatch(cast::has));
  }

  private boolean isHeard(String name) {
    return !isKeyword(name) && (cast.has(name) || heard.contains(Letters.fold(name)));
  }

  /** The names of all who say a cue: one, or several who are each known by themselves. */
  public List<String> names(String name) {
    List<String> together = together(name);
    return together.isEmpty() ? List.of(canonical(name)) : together;
  }

  private List<String> together(String name) {
    if (name.codePoints().allMatch(Character::isLetterOrDigit)) {
      return List.of(); // most names are one word, and splitting each by the pattern takes time
    }
    List<String> parts = List.of(TOGETHER.split(name, -1));
    return parts.size() > 1 && !isDeclared(name) && parts.stream().allMatch(this::isHeard)
        ? parts.stream().map(this::canonical).distinct().toList()
        : List.of();
  }

  private boolean isKeyword(String name) {
    return keywordKind(name) != CueKind.DIALOGUE;
  }

  /** The kind of cue that a keyword as name makes; dialogue if it is none. */
  public CueKind keywordKind(String name) {
    String word = withoutNumber(name);
    return keywords.isExact(word) || !cast.has(name) ? keywords.kind(word) : CueKind.DIALOGUE;
  }

  /** The name that a cue of this speaker bears. */
  private String canonical(String name) {
    String word = withoutNumber(name);
    if (isKeyword(name)) {
      return keywords.isExact(word) ? word : keywords.word(keywordKind(name));
    }
    return cast.canonical(name);
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
