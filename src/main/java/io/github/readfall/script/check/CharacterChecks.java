package io.github.readfall.script.check;

import io.github.readfall.script.Letters;
import io.github.readfall.script.LineKind;
import io.github.readfall.script.lines.ClassifiedLine;
import io.github.readfall.script.lines.FindingList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds characters that cannot be seen or lettered. */
public final class CharacterChecks {

  /**
   * The most combining marks on one letter: no language needs more (Unicode Standard Annex #15,
   * section 13, Stream-Safe Text Format).
   */
  static final int MAX_MARKS = 30;

  private final FindingList findings;

  public CharacterChecks(FindingList findings) {
    this.findings = findings;
  }

  public void check(List<ClassifiedLine> lines) {
    for (ClassifiedLine line : lines) {
      if (line.kind() != LineKind.NOTE && needsLook(line.written().text())) {
        check(line);
      }
    }
  }

  /** Plain western text has nothing to find. */
  private static boolean needsLook(String text) {
    return text.chars()
        .anyMatch(c -> (c < ' ' && c != '\t') || (c >= 0x7F && c < 0xA0) || c > 0x2FF);
  }

  /** Reports the first of each fault on a line. */
  private void check(ClassifiedLine line) {
    String text = line.written().text();
    int control = -1;
    int damaged = -1;
    int direction = -1;
    int marked = -1;
    int marks = 0;
    boolean rightToLeft = false;
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      marks = Letters.isMark(c) ? marks + 1 : 0;
      control = control < 0 && Letters.isUnletterable(c) ? i : control;
      damaged = damaged < 0 && c == 0xFFFD ? i : damaged;
      marked = marked < 0 && marks > MAX_MARKS ? i : marked;
      direction = direction < 0 && isDirection(c) ? i : direction;
      rightToLeft |= isRightToLeft(c);
      i += Character.charCount(c);
    }
    reportControl(line, control, damaged);
    reportDirection(line, direction, rightToLeft);
    if (marked >= 0) {
      findings.warning(
          "many-marks",
          line.number(),
          line.column(marked),
          "A letter here bears more than " + MAX_MARKS + " marks, which no balloon can hold.",
          "Delete the marks above and below it.");
    }
  }

  private void reportControl(ClassifiedLine line, int control, int damaged) {
    if (control >= 0) {
      findings.warning(
          "control-character",
          line.number(),
          line.column(control),
          "There is a character here that cannot be lettered (" + name(line, control) + ").",
          "Delete it; it is left out of the lettering.");
    }
    if (damaged >= 0) {
      findings.warning(
          "damaged-character",
          line.number(),
          line.column(damaged),
          "A character here was lost when the text was converted (U+FFFD).",
          "Write the letter that stood here.");
    }
  }

  /** A mark beside letters of a right-to-left script is ordinary; an override never is. */
  private void reportDirection(ClassifiedLine line, int direction, boolean rightToLeft) {
    if (direction < 0
        || (rightToLeft && isMarkOfDirection(line.written().text().charAt(direction)))) {
      return;
    }
    findings.warning(
        "bidi-control",
        line.number(),
        line.column(direction),
        "An invisible character here changes the direction of the text ("
            + name(line, direction)
            + ").",
        "Delete it unless it is meant.");
  }

  private static boolean isDirection(int c) {
    return isMarkOfDirection(c) || (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
  }

  private static boolean isMarkOfDirection(int c) {
    return c == 0x200E || c == 0x200F || c == 0x061C;
  }

  private static boolean isRightToLeft(int c) {
    byte direction = Character.getDirectionality(c);
    return Character.isLetter(c)
        && (direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
            || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC);
  }

  private static String name(ClassifiedLine line, int index) {
    int c = line.written().text().codePointAt(index);
    String hex = Integer.toHexString(c).toUpperCase(Locale.ROOT);
    String padded = "0".repeat(Math.max(0, 4 - hex.length())) + hex;
    return "U+" + padded + Optional.ofNullable(Character.getName(c)).map(n -> " " + n).orElse("");
  }
}
