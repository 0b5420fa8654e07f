package io.github.readfall.base.wording;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** Looks up the words of the window and of exported pages. */
public final class Wording {

  private static final ResourceBundle WORDS =
      ResourceBundle.getBundle("io.github.readfall.base.wording.words", Locale.ROOT);

  private Wording() {}

  /**
   * The words for a key, with their arguments filled in.
   *
   * @param key in words.properties
   * @param about arguments for {0}, {1} …; numbers are written without grouping
   * @throws java.util.MissingResourceException if there is no such key
   */
  public static String of(String key, Object... about) {
    return new MessageFormat(WORDS.getString(key), Locale.ROOT).format(about);
  }
}
