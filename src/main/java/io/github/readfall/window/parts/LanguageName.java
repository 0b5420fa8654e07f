package io.github.readfall.window.parts;

import java.awt.Font;
import java.util.Locale;
import javax.swing.UIManager;

/**
 * The name of a language in that language, with its tag: people who work with many languages read
 * the tag. In English if the window's font lacks the letters.
 */
public final class LanguageName {

  private LanguageName() {}

  /** The name of the language of a BCP 47 tag: {@code Deutsch (de)}. */
  public static String of(String tag) {
    Locale locale = Locale.forLanguageTag(tag);
    String own = locale.getDisplayName(locale);
    Font font = UIManager.getFont("defaultFont");
    boolean isShown = font == null || font.canDisplayUpTo(own) < 0;
    String name = isShown ? own : locale.getDisplayName(Locale.ENGLISH);
    return name.isBlank() ? tag : name + " (" + tag + ")";
  }
}
