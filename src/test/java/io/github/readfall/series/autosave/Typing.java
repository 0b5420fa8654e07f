package io.github.readfall.series.autosave;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** The same keys for the same seed: letters put in and taken out here and there in a script. */
final class Typing {

  private static final String KEYS = "abcdefghijklmnopqrstuvwxyz ,.!\n\u00E9\u4E00";

  private final SplittableRandom random;
  private final StringBuilder text;
  private int caret;

  Typing(long seed, String start) {
    random = new SplittableRandom(seed);
    text = new StringBuilder(start);
    caret = text.length();
  }

  /** A script to begin with. */
  static String start(int lines) {
    return "PIM: It was here when I came.\n".repeat(lines);
  }

  String text() {
    return text.toString();
  }

  void key() {
    int what = random.nextInt(40);
    if (what == 0) {
      caret = random.nextInt(text.length() + 1);
    }
    if (what < 6 && caret > 0) {
      text.deleteCharAt(--caret);
    } else {
      text.insert(caret++, KEYS.charAt(random.nextInt(KEYS.length())));
    }
  }

  /** After how many of the first keys the text was this one: letters that go may come back. */
  static List<Integer> keysFor(String wanted, long seed, String start, int most) {
    Typing typing = new Typing(seed, start);
    List<Integer> found = new ArrayList<>();
    for (int keys = 0; keys <= most; keys++) {
      if (wanted.contentEquals(typing.text)) {
        found.add(keys);
      }
      typing.key();
    }
    return found;
  }
}
