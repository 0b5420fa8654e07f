package io.github.readfall.script.lines;

import io.github.readfall.script.Letters;

/** Tells {@code MARA - Not tonight.} from a sentence, or the heading of a place, with a dash. */
public final class DashedCues {

  /** Most words of a name that is not known. House default, no source. */
  private static final int MAX_WORDS = 3;

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
            && !DescriptionWords.beginsAsScenery(text(line, head.textStart()));
    return speakers.isKnown(head.name()) || (speakers.cast().isEmpty() && !goesOn && speech);
  }

  /** Returns true for a name of the cast, and one in capitals that may be a speaker's. */
  boolean isSpeaker(String name) {
    return speakers.hasInCast(name) || (Speakers.isCapitals(name) && mayBeName(name));
  }

  private boolean mayBeName(String name) {
    return speakers.isKnown(name)
        || (name.length() > 1
            && name.split(" ", -1).length <= MAX_WORDS
            && !DescriptionWords.isScenery(name)
            && !DescriptionWords.isLabel(name)
            && !name.endsWith("."));
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
