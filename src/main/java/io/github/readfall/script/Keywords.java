package io.github.readfall.script;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * The words a script is written with, which a series may rename, e.g. to VIÑETA or 컷.
 *
 * <p>A keyword is at the start of its line, as given here or in capitals: {@code Panel three}
 * begins a sentence, {@code PANEL 3} a panel.
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

  /** Returns true if a name is a keyword: as given or in capitals. */
  public static boolean matches(String keyword, String name) {
    return !keyword.isEmpty()
        && (name.equals(keyword) || name.equals(keyword.toUpperCase(Locale.ROOT)));
  }

  /**
   * The end of a keyword that begins at {@code start}; -1 if it is not there as a word of its own.
   * A number may follow at once.
   */
  public static int endOf(String keyword, String line, int start) {
    int end = start + keyword.length();
    if (keyword.isEmpty()
        || end > line.length()
        || !matches(keyword, line.substring(start, end))
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
