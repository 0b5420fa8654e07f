package io.github.readfall.script.assist;

import io.github.readfall.script.CommaList;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Letters;
import io.github.readfall.script.LineKind;
import io.github.readfall.script.LinePart;
import io.github.readfall.script.MarkupReader;
import io.github.readfall.script.PartKind;
import io.github.readfall.script.ShotHints;
import io.github.readfall.script.lines.BlockKeyword;
import io.github.readfall.script.lines.ClassifiedLine;
import io.github.readfall.script.lines.ClassifiedLines;
import io.github.readfall.script.lines.CueHead;
import io.github.readfall.script.lines.HeaderReader;
import io.github.readfall.script.lines.PanelHeading;
import io.github.readfall.script.read.CueReader;
import io.github.readfall.script.read.LeadingManners;
import io.github.readfall.script.read.PanelList;
import io.github.readfall.script.read.RawText;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Takes the lines of a script to pieces, by the same readers that make the script of them. */
final class LineParts {

  private final Keywords keywords;
  private final Set<Integer> keyLines = new HashSet<>();
  private final List<ClassifiedLine> lines;
  private final List<List<LinePart>> parts = new ArrayList<>();

  private LineParts(Keywords keywords, ClassifiedLines classified) {
    this.keywords = keywords;
    this.lines = classified.lines();
    classified.top().headers().forEach(header -> keyLines.add(header.line()));
  }

  /** The parts of every line, in order. */
  static List<List<LinePart>> of(Keywords keywords, ClassifiedLines classified) {
    return new LineParts(keywords, classified).read();
  }

  private List<List<LinePart>> read() {
    lines.forEach(line -> parts.add(new ArrayList<>()));
    for (int i = 0; i < lines.size(); i++) {
      ClassifiedLine line = lines.get(i);
      switch (line.kind()) {
        case BLANK, CUE_TEXT -> {}
        case NOTE -> add(line, PartKind.NOTE, line.start(), line.written().text().length());
        case HEADER -> readHeader(line);
        case SCENE -> readScene(line);
        case PANEL -> readPanel(line);
        case CUE -> readCue(lines.subList(i, PanelList.blockEnd(lines, i)));
        case DESCRIPTION -> add(line, PartKind.DESCRIPTION, line.start(), line.end());
        case STRAY -> add(line, PartKind.STRAY, line.start(), line.end());
      }
    }
    lines.forEach(this::readNoteBehind);
    return parts.stream().map(List::copyOf).toList();
  }

  private void readHeader(ClassifiedLine line) {
    int value = line.start();
    if (keyLines.contains(line.number())) {
      int colon = HeaderReader.colon(line.written());
      add(line, PartKind.HEADER_KEY, line.start(), colon);
      value = Letters.skipSpaces(line.written().text(), colon + 1, line.end());
    }
    add(line, PartKind.HEADER_VALUE, value, line.end());
  }

  private void readScene(ClassifiedLine line) {
    int behind = readKeyword(line);
    String heading = PanelHeading.withoutSigns(line.content(behind));
    readWithin(line, PartKind.HEADING, heading, behind);
  }

  private void readPanel(ClassifiedLine line) {
    int behind = readKeyword(line);
    PanelHeading heading = PanelHeading.of(line.content(behind));
    int at = behind;
    if (!heading.label().isEmpty()) {
      int signs = line.end() - PanelHeading.withoutSigns(line.content(behind)).length();
      int label = Math.max(behind, signs);
      int end = Math.max(label, line.end() - heading.heading().length());
      add(
          line,
          PartKind.LABEL,
          label,
          Letters.trimEnd(line.written().text(), label, labelEnd(line, heading, label, end)));
      at = end;
    }
    for (String hint : CommaList.parts(heading.heading())) {
      boolean understood = ShotHints.of(hint).description().isEmpty();
      at = readWithin(line, understood ? PartKind.HINT : PartKind.HEADING, hint, at);
    }
  }

  /** The end of a label, which may be written with more white space within it. */
  private static int labelEnd(ClassifiedLine line, PanelHeading heading, int label, int end) {
    String text = line.written().text();
    return text.startsWith(heading.label(), label) ? label + heading.label().length() : end;
  }

  private int readKeyword(ClassifiedLine line) {
    int behind = BlockKeyword.end(keywords, line);
    add(line, PartKind.KEYWORD, line.start(), behind);
    return behind;
  }

  private void readCue(List<ClassifiedLine> block) {
    ClassifiedLine first = block.get(0);
    CueHead head = first.head();
    add(first, PartKind.SPEAKER, head.start(), head.nameEnd());
    int at = head.nameEnd();
    for (String manner : head.manners()) {
      boolean known = keywords.manner(manner).isKnown();
      at = readWithin(first, known ? PartKind.MANNER : PartKind.OTHER_MANNER, manner, at);
    }
    RawText raw = CueReader.raw(block);
    raw.toLines(textParts(raw.raw()), (line, found) -> parts.get(line.number() - 1).addAll(found));
  }

  private List<LinePart> textParts(String raw) {
    LeadingManners leading = LeadingManners.of(raw, keywords);
    List<LinePart> found = new ArrayList<>();
    int at = 0;
    for (String manner : leading.words()) {
      int start = raw.indexOf(manner, at);
      at = start + manner.length();
      found.add(new LinePart(PartKind.MANNER, start, at));
    }
    MarkupReader.parts(raw.substring(leading.end()))
        .forEach(part -> found.add(part.moved(leading.end())));
    return found;
  }

  /** Finds words that were read from this line, at or after a place; returns their end. */
  private int readWithin(ClassifiedLine line, PartKind kind, String words, int from) {
    int start = line.written().text().indexOf(words, from);
    if (start < 0 || words.isEmpty()) {
      return from;
    }
    add(line, kind, start, start + words.length());
    return start + words.length();
  }

  private void readNoteBehind(ClassifiedLine line) {
    String text = line.written().text();
    int start = Letters.skipSpaces(text, line.end(), text.length());
    if (line.kind() != LineKind.NOTE && text.startsWith("//", start)) {
      add(line, PartKind.NOTE, start, text.length());
    }
  }

  private void add(ClassifiedLine line, PartKind kind, int start, int end) {
    if (start < end) {
      parts.get(line.number() - 1).add(new LinePart(kind, start, end));
    }
  }
}
