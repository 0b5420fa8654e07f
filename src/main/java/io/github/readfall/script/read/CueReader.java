package io.github.readfall.script.read;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Shortened;
import io.github.readfall.base.finding.Where;
import io.github.readfall.script.Cue;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.CueText;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.LineKind;
import io.github.readfall.script.Manner;
import io.github.readfall.script.MarkupReader;
import io.github.readfall.script.lines.ClassifiedLine;
import io.github.readfall.script.lines.CueHead;
import io.github.readfall.script.lines.FindingList;
import io.github.readfall.script.lines.Speakers;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** Makes a cue of its lines. */
public final class CueReader {

  /** Enough to see what is wrong with the manners of one cue. */
  private static final int MAX_REPORTED = 8;

  private final Keywords keywords;
  private final Speakers speakers;
  private final FindingList findings;

  CueReader(Keywords keywords, Speakers speakers, FindingList findings) {
    this.keywords = keywords;
    this.speakers = speakers;
    this.findings = findings;
  }

  /**
   * The cue on some lines.
   *
   * @param lines the head's line, then those of its text and notes
   * @param panel the panel it is in, from 1
   * @param number its place there, from 1
   */
  public Cue read(List<ClassifiedLine> lines, int panel, int number) {
    ClassifiedLine first = lines.get(0);
    CueHead head = first.head();
    RawText raw = raw(lines);
    LeadingManners leading = LeadingManners.of(raw.raw(), keywords);
    MarkupReader.Markup markup = MarkupReader.read(raw.raw().substring(leading.end()));
    List<Manner> manners =
        Stream.concat(head.manners().stream(), leading.words().stream())
            .map(keywords::manner)
            .distinct()
            .toList();
    Cue cue =
        new Cue(
            "p" + panel + "-" + number,
            panel,
            number,
            kind(head.name(), manners),
            speakers.names(head.name()),
            manners,
            markup.text(),
            first.number(),
            first.column(head.start()));
    checkHead(first, head);
    checkText(cue, raw, leading.end(), markup);
    return cue;
  }

  public static RawText raw(List<ClassifiedLine> lines) {
    RawText raw = new RawText();
    for (ClassifiedLine line : lines) {
      if (line.kind() == LineKind.CUE) {
        raw.add(line, line.head().textStart());
      } else if (line.kind() == LineKind.CUE_TEXT) {
        raw.add(line, line.start());
      }
    }
    return raw;
  }

  private CueKind kind(String name, List<Manner> manners) {
    CueKind kind = speakers.keywordKind(name);
    if (kind == CueKind.DIALOGUE && manners.contains(Manner.CAPTION)) {
      return CueKind.CAPTION;
    }
    return kind == CueKind.DIALOGUE && manners.contains(Manner.EFFECT) ? CueKind.EFFECT : kind;
  }

  private void checkHead(ClassifiedLine line, CueHead head) {
    if (!head.closed()) {
      findings.warning(
          "unclosed-bracket",
          line.number(),
          line.column(head.start()),
          "The bracket behind " + head.name() + " is not closed before the colon.",
          "Put ) before the colon.");
    }
    head.manners().stream()
        .filter(w -> !keywords.manner(w).isKnown() && !speakers.cast().has(w))
        .limit(MAX_REPORTED)
        .forEach(written -> noteManner(line, head, written));
  }

  private void noteManner(ClassifiedLine line, CueHead head, String written) {
    findings.note(
        "unknown-manner",
        line.number(),
        line.column(Math.max(head.start(), line.written().text().indexOf(written, head.start()))),
        "The manner \""
            + Shortened.to(FindingList.MAX_QUOTED, written)
            + "\" is not known; it changes nothing.",
        Manner.near(written)
            .map(word -> "Write \"" + word + "\" if that is what is meant.")
            .orElse("Use a known manner, or give this one a look in the series' house style."));
  }

  private void checkText(Cue cue, RawText raw, int start, MarkupReader.Markup markup) {
    if (!markup.unclosed().isEmpty()) {
      int index = start + markup.unclosed().get(0);
      char sign = raw.raw().charAt(index);
      findings.note(
          "unclosed-emphasis",
          raw.lineAt(index),
          raw.columnAt(index),
          "The sign " + sign + " opens emphasis that is never closed; it is lettered as written.",
          "Close it with another " + sign + ", or write \\" + sign + " if the sign is meant.");
    }
    if (cue.text().isTooLong()) {
      findings.add(tooLong(cue));
    }
  }

  private static Finding tooLong(Cue cue) {
    int words = cue.text().words();
    boolean byWords = words > CueText.MAX_WORDS;
    int measured = byWords ? words : cue.text().characters();
    int limit = byWords ? CueText.MAX_WORDS : CueText.MAX_CHARACTERS;
    String unit = byWords ? "words" : "characters";
    Where where =
        new Where(
            "",
            OptionalInt.of(cue.line()),
            OptionalInt.of(cue.column()),
            OptionalInt.of(cue.panel()),
            List.of(cue.id()));
    return Finding.of(
            "script/long-cue",
            Severity.ERROR,
            where,
            "This cue of "
                + cue.names()
                + " has "
                + measured
                + " "
                + unit
                + ", too many for any balloon; it is not lettered.",
            "Part it into several cues; a blank line ends a cue.")
        .measured(measured, limit, unit);
  }
}
