package io.github.readfall.window.parts;

import java.awt.Font;
import java.util.Locale;
import javax.swing.UIManager;

/**
 * What a language calls itself, with its tag: who works with twenty reads the tag. In English where
 * the desktop has no letters for it.
 */
public final class LanguageName {

  private LanguageName() {}

  /** The name of the language of a BCP 47 tag. */
  public static String of(String tag) {
    Locale locale = Locale.forLanguageTag(tag);
    String own = locale.getDisplayName(locale);
    Font font = UIManager.getFont("defaultFont");
    boolean isShown = font == null || font.canDisplayUpTo(own) < 0;
    String name = isShown ? own : locale.getDisplayName(Locale.ENGLISH);
    return name.isBlank() ? tag : name + " (" + tag + ")";
  }
}
