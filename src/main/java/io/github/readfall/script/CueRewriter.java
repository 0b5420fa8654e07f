package io.github.readfall.script;

import java.util.ArrayList;
import java.util.List;

/** Writes other words for one cue and leaves all other lines as they are. */
final class CueRewriter {

  private final Script script;

  CueRewriter(Script script) {
    this.script = script;
  }

  /**
   * Puts the words where the old ones begin; if they would be read as something else there, as a
   * line {@code PANEL 3} would, behind the name.
   */
  Script rewrite(Cue cue, String newRaw) {
    String raw = clean(newRaw);
    Script inPlace = read(cue, lines(cue, raw, false));
    return isMeant(inPlace, cue, raw) ? inPlace : read(cue, lines(cue, raw, true));
  }

  private static boolean isMeant(Script script, Cue cue, String raw) {
    return script.cue(cue.id()).map(Cue::text).filter(CueText.of(raw)::equals).isPresent();
  }

  private Script read(Cue cue, List<SourceLine> block) {
    LineRange range = script.linesOf(cue);
    List<SourceLine> all = new ArrayList<>(script.lines().subList(0, range.first() - 1));
    all.addAll(block);
    all.addAll(script.lines().subList(range.last(), script.lines().size()));
    StringBuilder text = new StringBuilder(script.byteOrderMark() ? "\uFEFF" : "");
    all.forEach(line -> text.append(line.text()).append(line.ending()));
    return new ScriptReader().read(text.toString(), script.keywords()).script();
  }

  private List<SourceLine> lines(Cue cue, String raw, boolean behindName) {
    LineRange range = script.linesOf(cue);
    List<SourceLine> old = script.lines().subList(range.first() - 1, range.last());
    SourceLine first = old.get(0);
    WrittenLine headLine = new WrittenLine(first.text(), first.ending());
    CueHead head = head(headLine);
    boolean inHead = behindName || old.size() == 1 || head.textStart() < headLine.end();
    List<SourceLine> lines = new ArrayList<>();
    if (inHead) {
      lines.add(with(first, head, raw, behindName));
    } else {
      lines.add(first);
    }
    boolean written = inHead;
    for (SourceLine line : old.subList(1, old.size())) {
      WrittenLine text = new WrittenLine(line.text(), line.ending());
      if (line.kind() == LineKind.NOTE) {
        lines.add(line);
      } else if (!written) {
        lines.add(new SourceLine(indent(text) + raw + tail(text), line.ending(), line.kind()));
        written = true;
      } else if (!Letters.isBlank(tail(text))) {
        lines.add(new SourceLine(indent(text) + tail(text).strip(), line.ending(), LineKind.NOTE));
      }
    }
    return ended(lines, old);
  }

  private CueHead head(WrittenLine line) {
    return new CueHeadReader(line.text().length())
        .read(line.text(), line.start(), Math.max(line.start(), line.end()));
  }

  private static SourceLine with(SourceLine line, CueHead head, String raw, boolean behindName) {
    WrittenLine text = new WrittenLine(line.text(), line.ending());
    String before =
        behindName || !head.colon() || head.textStart() >= text.end()
            ? line.text().substring(0, head.end()) + (head.closed() ? ": " : "): ")
            : line.text().substring(0, head.textStart());
    return new SourceLine(before + raw + tail(text), line.ending(), line.kind());
  }

  /**
   * The last line of the block ends as the last line of the old one did, so that a file's end stays
   * as it is and a lone CR meets no LF it did not meet before. A note keeps its own end if it can.
   */
  private static List<SourceLine> ended(List<SourceLine> lines, List<SourceLine> old) {
    String ending = old.get(old.size() - 1).ending();
    SourceLine last = lines.get(lines.size() - 1);
    if (last.kind() != LineKind.NOTE || last.ending().equals("\r")) {
      lines.set(lines.size() - 1, new SourceLine(last.text(), ending, last.kind()));
    }
    return lines;
  }

  private static String indent(WrittenLine line) {
    return line.text().substring(0, line.start());
  }

  /** White space and note behind the words. */
  private static String tail(WrittenLine line) {
    return line.text().substring(Math.max(line.start(), line.end()));
  }

  /** On one line, and with {@code //} escaped where it would begin a note. */
  private static String clean(String raw) {
    StringBuilder clean = new StringBuilder(raw.length());
    for (int i = 0; i < raw.length(); i++) {
      char c = raw.charAt(i);
      boolean slashes = raw.startsWith("//", i) && (i == 0 || Letters.isSpace(raw.charAt(i - 1)));
      clean.append(slashes ? "\\/" : WrittenLine.endsLine(c) ? " " : String.valueOf(c));
    }
    int start = Letters.skipSpaces(clean.toString(), 0, clean.length());
    return clean.substring(start, Letters.trimEnd(clean.toString(), start, clean.length()));
  }
}
