package io.github.readfall.script.check;

import io.github.readfall.base.finding.Shortened;
import io.github.readfall.script.LineKind;
import io.github.readfall.script.lines.ClassifiedLine;
import io.github.readfall.script.lines.CueHead;
import io.github.readfall.script.lines.FindingList;
import io.github.readfall.script.lines.HeaderReader;
import io.github.readfall.script.lines.Speakers;
import java.util.List;

/** Finds text in places where nothing is read. */
public final class StrayLines {

  private final Speakers speakers;
  private final FindingList findings;

  public StrayLines(Speakers speakers, FindingList findings) {
    this.speakers = speakers;
    this.findings = findings;
  }

  public void check(List<ClassifiedLine> lines, int panels) {
    if (lines.stream().allMatch(line -> line.kind() == LineKind.BLANK)) {
      findings.warning(
          "empty", 1, 1, "The script is empty.", "Begin with a line PANEL 1 and a cue below it.");
    } else if (panels == 0) {
      reportNoPanels(lines);
    } else {
      checkTop(lines);
      checkSilence(lines);
    }
  }

  /** A strip may be silent; but perhaps the names are not in capitals. */
  private void checkSilence(List<ClassifiedLine> lines) {
    if (lines.stream().anyMatch(line -> line.kind() == LineKind.CUE)) {
      return;
    }
    lines.stream()
        .filter(line -> line.kind() == LineKind.DESCRIPTION && line.head().colon())
        .findFirst()
        .ifPresent(
            line ->
                findings.warning(
                    "no-cues",
                    line.number(),
                    line.column(),
                    "The script has no cue; this line is read as description and not lettered.",
                    "Write the name in capitals, or name "
                        + line.head().name()
                        + " in a header Cast at the top."));
  }

  /** Reports that a cue is lost. */
  public static void reportCue(ClassifiedLine line, FindingList findings, String what) {
    findings.error(
        "before-first-panel",
        line.number(),
        line.column(),
        "This reads like a cue of "
            + line.head().name()
            + ", but it is before "
            + what
            + " and is not lettered.",
        "Put a line PANEL above it.");
  }

  private void reportNoPanels(List<ClassifiedLine> lines) {
    List<ClassifiedLine> cues =
        lines.stream().filter(line -> line.kind() == LineKind.CUE || isStrayCue(line)).toList();
    String advice = "Write a line PANEL above each picture's description and cues.";
    if (cues.isEmpty()) {
      findings.warning("no-panels", 1, 1, "The script has no panel.", advice);
    } else {
      findings.error(
          "no-panels",
          cues.get(0).number(),
          cues.get(0).column(),
          "The script has no panel, so none of its cues is lettered.",
          advice);
    }
  }

  private void checkTop(List<ClassifiedLine> lines) {
    boolean firstPanel = false;
    LineKind before = LineKind.BLANK;
    for (ClassifiedLine line : lines) {
      firstPanel |= line.kind() == LineKind.PANEL;
      if (line.kind() == LineKind.STRAY) {
        checkStray(line, before);
      } else if (line.kind() == LineKind.CUE && !firstPanel) {
        reportCue(line, findings, "the first panel");
      }
      before = line.kind();
    }
  }

  private void checkStray(ClassifiedLine line, LineKind before) {
    CueHead head = line.head();
    if (isStrayCue(line)) {
      reportCue(line, findings, "the first panel");
    } else if (!head.isNone() && head.colon()) {
      findings.warning(
          "unknown-header",
          line.number(),
          line.column(),
          "The header \""
              + Shortened.to(FindingList.MAX_QUOTED, head.name())
              + "\" is not known; it changes nothing.",
          HeaderReader.advice(head.name()));
    } else if (before != LineKind.STRAY) {
      findings.warning(
          "before-first-panel",
          line.number(),
          line.column(),
          "This text is before the first panel and belongs to nothing.",
          "Put // before a note to yourself, or a line PANEL above a description.");
    }
  }

  private boolean isStrayCue(ClassifiedLine line) {
    CueHead head = line.head();
    return line.kind() == LineKind.STRAY
        && !head.isNone()
        && head.colon()
        && (speakers.isDeclared(head.name())
            || (Speakers.isCapitals(head.name()) && speakers.speaks(head.name())));
  }
}
