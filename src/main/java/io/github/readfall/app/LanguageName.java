package io.github.readfall.app;

import java.util.Locale;

/** What a language calls itself, with its tag: who works with twenty reads the tag. */
final class LanguageName {

  private LanguageName() {}

  /** The name of the language of a BCP 47 tag. */
  static String of(String tag) {
    Locale locale = Locale.forLanguageTag(tag);
    String own = locale.getDisplayName(locale);
    return own.isBlank() ? tag : own + " (" + tag + ")";
  }
}
