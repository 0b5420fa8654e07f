package io.github.readfall.languages.xliff;

import io.github.readfall.script.CueText;

/**
 * The number of emphasised stretches of a text, and of its forced breaks.
 *
 * @param strong stretches that are strong
 * @param slanted stretches that are slanted
 * @param breaks forced breaks
 */
record Signs(int strong, int slanted, int breaks) {

  static Signs of(CueText text) {
    InlineText inline = InlineText.of(text);
    int breaks = (int) text.plain().chars().filter(c -> c == '\n').count();
    return new Signs(count(inline, Sign.STRONG), count(inline, Sign.SLANTED), breaks);
  }

  private static int count(InlineText text, Sign sign) {
    int count = 0;
    boolean in = false;
    for (int i = 0; i < text.looks().length(); i++) {
      boolean now = (text.looks().charAt(i) & sign.look()) != 0;
      count += now && !in ? 1 : 0;
      in = now;
    }
    return count;
  }

  @Override
  public String toString() {
    return strong + " strong, " + slanted + " slanted, " + breaks + " forced breaks";
  }
}
