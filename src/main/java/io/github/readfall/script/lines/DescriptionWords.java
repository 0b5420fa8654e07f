package io.github.readfall.script.lines;

import io.github.readfall.script.ShotHints;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;

/** Knows words that descriptions are written with and no speaker is called. Common practice. */
public final class DescriptionWords {

  /** Words of headings of places, times and views. */
  private static final Set<String> SCENERY =
      Set.of(
          "int",
          "ext",
          "int/ext",
          "day",
          "night",
          "dawn",
          "dusk",
          "noon",
          "morning",
          "evening",
          "later",
          "meanwhile",
          "flashback",
          "insert",
          "angle",
          "view",
          "shot",
          "pov",
          "wide",
          "tall",
          "inset",
          "page");

  /** What is written before a colon. */
  private static final Set<String> LABELS =
      Set.of(
          "note",
          "notes",
          "nb",
          "time",
          "place",
          "location",
          "setting",
          "background",
          "foreground",
          "action",
          "description",
          "art",
          "artist",
          "colour",
          "color",
          "mood",
          "camera",
          "view",
          "angle",
          "shot",
          "page",
          "weather",
          "lighting",
          "reference",
          "layout",
          "props",
          "letterer",
          "lettering",
          "insert",
          "flashback");

  private DescriptionWords() {}

  /** Returns true if a name is a word for a kind of description: {@code Note}. */
  public static boolean isLabel(String name) {
    return LABELS.contains(name.toLowerCase(Locale.ROOT));
  }

  /** Returns true if a text is the heading of a place, a time or a shot: {@code INT. MILL}. */
  static boolean isScenery(String text) {
    return ShotHints.isShotWord(text) || Arrays.stream(words(text)).anyMatch(SCENERY::contains);
  }

  /** Returns true if a text begins with a word of such a heading. */
  static boolean beginsAsScenery(String text) {
    return SCENERY.contains(words(text)[0]);
  }

  private static String[] words(String text) {
    return text.toLowerCase(Locale.ROOT).replace(".", "").split(" ", -1);
  }
}
