package io.github.readfall.script;

import java.util.List;
import java.util.SplittableRandom;

/** Makes scripts by chance: sound ones, and ones with slips in them. */
public final class RandomScript {

  private static final List<String> LINES =
      List.of(
          "Title: The Long Ebb",
          "Language: de",
          "Cast: Ilse, Old Wouter (elder)",
          "// a note",
          "SCENE Tide mill",
          "PANEL",
          "PANEL 2 long shot, tall",
          "The mill stands in water.",
          "",
          "",
          "  ",
          "ILSE: It is *counting* again.",
          "ILSE",
          "Otto: hm",
          "  it runs on / and on",
          "OLD WOUTER (off, whisper): _Do_ not. // really",
          "CAPTION: Spring.",
          "SFX (drawn): KRRANK",
          "花（whisper）：静かに。",
          "철수: 또 센다.",
          "GUARD 2:Halt",
          "ILSE (off: who",
          "MILLER",
          "Panel Two.",
          "1. ILSE - Hm",
          "ILSE V.O. – *No* - never",
          "ILSE & OLD WOUTER: Both of us.",
          "ILSE: (softly, off) It is _late_.",
          "(whispering)",
          "Cap: Later.",
          "PANEL 3: close-up",
          "http://mill.example/",
          "10:30: rain",
          "ILSE:",
          "\u200Fليلى: إنها",
          "Cast: a,",
          "*open _and");

  private static final List<String> ENDS =
      List.of("\n", "\n", "\n", "\r\n", "\r", "\u0085", "\u2028");

  private static final List<String> SLIPS =
      List.of(
          "*", "_", "\\", "/", " / ", "//", " // ", "(", ")", ":", "：", "（", "\n", "\r", "\r\n",
          "\n\n", "\u0000", "\uD800", "\uDC00", "\uFEFF", "\u202E", "\u200F", "\u0301", "\u00A0",
          "\t", "\u2029", " - ", " & ", "1. ", "PANEL", "SCENE", "ILSE", "A", "a", "7", "한", "花",
          "😀", ",", "'", "\uFFFF", "İ", "ß");

  private RandomScript() {}

  public static String sound(SplittableRandom random) {
    StringBuilder script = new StringBuilder(random.nextInt(4) == 0 ? "\uFEFF" : "");
    String end = pick(ENDS, random);
    int lines = random.nextInt(40);
    for (int i = 0; i < lines; i++) {
      script.append(pick(LINES, random)).append(end);
    }
    return random.nextBoolean() ? script.append(pick(LINES, random)).toString() : script.toString();
  }

  /** Takes some characters out of a script and puts others in. */
  public static String withSlips(String script, SplittableRandom random) {
    StringBuilder text = new StringBuilder(script);
    int slips = 1 + random.nextInt(12);
    for (int i = 0; i < slips; i++) {
      int at = random.nextInt(text.length() + 1);
      if (random.nextBoolean()) {
        text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(6)));
      } else {
        text.insert(at, pick(SLIPS, random));
      }
    }
    return text.toString();
  }

  static String words(SplittableRandom random) {
    StringBuilder words = new StringBuilder(random.nextBoolean() ? "" : pick(LINES, random));
    int pieces = random.nextInt(8);
    for (int i = 0; i < pieces; i++) {
      words.append(random.nextBoolean() ? " " : "").append(pick(SLIPS, random));
    }
    return words.toString();
  }

  private static String pick(List<String> list, SplittableRandom random) {
    return list.get(random.nextInt(list.size()));
  }
}
