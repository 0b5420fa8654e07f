package io.github.readfall.script;

import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * The words a script is written with, which a series may rename, e.g. to VIÑETA or 컷.
 *
 * <p>A keyword is at the start of its line. The words of captions and effects are read in any case,
 * and the English ones in other usual spellings. A panel's or scene's word in another case needs a
 * number that stands by itself: {@code Panel three} is a panel, {@code Panel three is dark} is not.
 *
 * @param panel begins a panel
 * @param scene begins a scene
 * @param caption speaker of a caption
 * @param effect speaker of a sound effect
 * @param manners further words for manners, in any case
 */
public record Keywords(
    String panel, String scene, String caption, String effect, Map<String, Manner> manners) {

  public static final Keywords ENGLISH = new Keywords("PANEL", "SCENE", "CAPTION", "SFX", Map.of());

  /** Other ways to write the English words, folded. Common practice. */
  private static final Set<String> CAPTIONS = Set.of("caption", "captions", "cap");

  private static final Set<String> EFFECTS =
      Set.of("sfx", "fx", "sound", "sound fx", "sound effect", "sound effects");

  public Keywords {
    panel = Letters.collapse(panel);
    scene = Letters.collapse(scene);
    caption = Letters.collapse(caption);
    effect = Letters.collapse(effect);
    TreeMap<String, Manner> folded = new TreeMap<>();
    manners.forEach((word, manner) -> folded.put(Letters.fold(word), manner));
    manners = Map.copyOf(folded);
  }

  /** The manner that a person means by a word, in these words or in English. */
  public Manner manner(String written) {
    Manner own = manners.get(Letters.fold(written));
    return own == null ? Manner.of(written) : own;
  }

  /** The kind of cue that a name makes, whoever is in the cast; dialogue if it is no keyword. */
  public CueKind kind(String name) {
    String folded = Letters.fold(name);
    if (isWord(caption, ENGLISH.caption, CAPTIONS, folded)) {
      return CueKind.CAPTION;
    }
    return isWord(effect, ENGLISH.effect, EFFECTS, folded) ? CueKind.EFFECT : CueKind.DIALOGUE;
  }

  private static boolean isWord(String keyword, String english, Set<String> others, String folded) {
    return (!keyword.isEmpty() && folded.equals(Letters.fold(keyword)))
        || (keyword.equals(english) && others.contains(folded));
  }

  /** Returns true if a name is the keyword of captions or effects: as given or in capitals. */
  public boolean isExact(String name) {
    return matches(caption, name) || matches(effect, name);
  }

  /** The keyword for a kind of cue, in capitals; empty for dialogue. */
  public String word(CueKind kind) {
    return switch (kind) {
      case DIALOGUE -> "";
      case CAPTION -> caption.toUpperCase(Locale.ROOT);
      case EFFECT -> effect.toUpperCase(Locale.ROOT);
    };
  }

  /** Returns true if a name is a keyword: as given or in capitals. */
  private static boolean matches(String keyword, String name) {
    return !keyword.isEmpty()
        && (name.equals(keyword) || name.equals(keyword.toUpperCase(Locale.ROOT)));
  }

  /**
   * The end of a keyword that begins at {@code start}; -1 if it is not there as a word of its own.
   * A number may follow at once.
   */
  public static int endOf(String keyword, String line, int start) {
    int end = endInAnyCase(keyword, line, start);
    return end >= 0 && matches(keyword, line.substring(start, end)) ? end : -1;
  }

  /** The same with the keyword in any case. */
  public static int endInAnyCase(String keyword, String line, int start) {
    int end = start + keyword.length();
    if (keyword.isEmpty()
        || !line.regionMatches(true, start, keyword, 0, keyword.length())
        || (end < line.length() && !mayFollow(line.charAt(end)))) {
      return -1;
    }
    return end;
  }

  private static boolean mayFollow(char c) {
    return Letters.isSpace(c)
        || Character.isDigit(c)
        || ":\uFF1A.,#(\uFF08-\u2013\u2014".indexOf(c) >= 0;
  }
}
