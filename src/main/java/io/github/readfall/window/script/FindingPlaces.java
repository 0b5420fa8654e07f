package io.github.readfall.window.script;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Where;
import io.github.readfall.script.Cue;
import io.github.readfall.script.LinePart;
import io.github.readfall.script.LineRange;
import io.github.readfall.script.PartKind;
import io.github.readfall.script.Script;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javax.swing.text.BadLocationException;

/** Finds the places of findings in the text. */
final class FindingPlaces {

  /** Parts that are underlined completely if a finding is anywhere in them. */
  private static final Set<PartKind> WHOLE =
      Set.of(
          PartKind.KEYWORD,
          PartKind.LABEL,
          PartKind.HEADER_KEY,
          PartKind.SPEAKER,
          PartKind.MANNER,
          PartKind.OTHER_MANNER);

  private final ScriptDocument document;
  private final Script script;

  /** Finds places in a document that holds exactly this script. */
  FindingPlaces(ScriptDocument document, Script script) {
    this.document = document;
    this.script = script;
  }

  /** The findings with a place in the script, from its top to its end. */
  List<Underline> of(List<Finding> findings) {
    return findings.stream()
        .flatMap(finding -> place(finding).stream())
        .sorted(Comparator.comparingInt(Underline::start))
        .toList();
  }

  private Optional<Underline> place(Finding finding) {
    List<Underline.Stretch> stretches = stretches(finding.where());
    return stretches.isEmpty() ? Optional.empty() : Optional.of(new Underline(finding, stretches));
  }

  private List<Underline.Stretch> stretches(Where where) {
    if (!where.file().isEmpty()) {
      return List.of();
    }
    if (where.line().isPresent() && where.column().isPresent()) {
      return at(where.line().getAsInt(), where.column().getAsInt());
    }
    if (!where.balloons().isEmpty()) {
      return where.balloons().stream()
          .flatMap(id -> script.cue(id).stream())
          .flatMap(this::words)
          .toList();
    }
    if (where.line().isPresent()) {
      return line(where.line().getAsInt());
    }
    return where.panel().isPresent() ? panel(where.panel().getAsInt()) : List.of();
  }

  private List<Underline.Stretch> at(int line, int column) {
    if (line > document.lineCount()) {
      return List.of();
    }
    String text = document.line(line);
    int index =
        text.offsetByCodePoints(0, Math.min(column - 1, text.codePointCount(0, text.length())));
    return List.of(
        document.lines().parts(line).stream()
            .filter(part -> WHOLE.contains(part.kind()))
            .filter(part -> part.start() <= index && index < part.end())
            .findFirst()
            .map(part -> stretch(line, part.start(), part.end()))
            .orElseGet(() -> stretch(line, index, wordEnd(text, index))));
  }

  private static int wordEnd(String text, int index) {
    int end = index;
    while (end < text.length() && !Character.isWhitespace(text.charAt(end))) {
      end++;
    }
    return Math.max(end, Math.min(text.length(), index + 1));
  }

  /** The lettered words of a cue, line by line. */
  private Stream<Underline.Stretch> words(Cue cue) {
    LineRange range = script.linesOf(cue);
    List<Underline.Stretch> words = new ArrayList<>();
    for (int line = range.first(); line <= range.last(); line++) {
      List<LinePart> lettered =
          document.lines().parts(line).stream().filter(part -> part.kind().isLettered()).toList();
      if (!lettered.isEmpty()) {
        words.add(stretch(line, lettered.get(0).start(), lettered.get(lettered.size() - 1).end()));
      }
    }
    return words.stream();
  }

  private List<Underline.Stretch> line(int line) {
    if (line > document.lineCount()) {
      return List.of();
    }
    String text = document.line(line);
    int end = text.stripTrailing().length();
    return List.of(stretch(line, Math.min(end, text.length() - text.stripLeading().length()), end));
  }

  private List<Underline.Stretch> panel(int number) {
    return number >= 1 && number <= script.panels().size()
        ? line(script.panels().get(number - 1).line())
        : List.of();
  }

  private Underline.Stretch stretch(int line, int start, int end) {
    int offset = document.startOf(line);
    try {
      return new Underline.Stretch(
          document.createPosition(offset + start), document.createPosition(offset + end));
    } catch (BadLocationException e) {
      throw new IllegalStateException(e);
    }
  }
}
