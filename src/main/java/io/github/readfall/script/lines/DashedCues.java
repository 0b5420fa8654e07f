package io.github.readfall.script.lines;

import io.github.readfall.script.Letters;
import io.github.readfall.script.ShotHints;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;

/** Tells {@code MARA - Not tonight.} from a sentence, or the heading of a place, with a dash. */
public final class DashedCues {

  /** Most words of a name that is not known. House default, no source. */
  private static final int MAX_WORDS = 3;

  /** Words of headings of places, times and views, in no speaker's name. Common practice. */
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
          "background",
          "foreground",
          "note",
          "title",
          "page",
          "end",
          "wide",
          "tall",
          "inset");

  private final Speakers speakers;

  DashedCues(Speakers speakers) {
    this.speakers = speakers;
  }

  /**
   * Returns true if a line with a dash is a cue. A known speaker's is, unless it goes on as prose;
   * another name in capitals is one if the script has no cast.
   *
   * @param goesOn true if the line is below a cue and may continue it
   */
  boolean isCue(CueHead head, RawLine line, boolean goesOn) {
    if (!isSpeaker(head.name()) || isProse(line, head.textStart())) {
      return false;
    }
    boolean speech =
        !Character.isLowerCase(first(line, head.textStart()))
            && !SCENERY.contains(words(text(line, head.textStart()))[0]);
    return speakers.isKnown(head.name()) || (speakers.cast().isEmpty() && !goesOn && speech);
  }

  private static String[] words(String text) {
    return text.toLowerCase(Locale.ROOT).replace(".", "").split(" ");
  }

  /** Returns true for a name of the cast, and one in capitals that may be a speaker's. */
  boolean isSpeaker(String name) {
    return speakers.hasInCast(name) || (Speakers.isCapitals(name) && mayBeName(name));
  }

  private boolean mayBeName(String name) {
    String[] words = words(name);
    boolean scenery =
        ShotHints.of(name).shot().isPresent() || Arrays.stream(words).anyMatch(SCENERY::contains);
    return speakers.isKnown(name)
        || (name.length() > 1 && words.length <= MAX_WORDS && !scenery && !name.endsWith("."));
  }

  /** {@code Mara - small, wet - is at the door}: a small letter, and a second dash. */
  public static boolean isProse(RawLine line, int textStart) {
    int end = Math.max(line.start(), line.end());
    boolean small = Character.isLowerCase(first(line, textStart));
    return textStart >= end || (small && CueHeadReader.dash(line.text(), textStart, end) >= 0);
  }

  private static int first(RawLine line, int textStart) {
    String text = text(line, textStart);
    return text.isEmpty() ? ' ' : text.codePointAt(0);
  }

  private static String text(RawLine line, int textStart) {
    int end = Math.max(textStart, line.end());
    return line.text().substring(Letters.skipInvisible(line.text(), textStart, end), end);
  }
}
