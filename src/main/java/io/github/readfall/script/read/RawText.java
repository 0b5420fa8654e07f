package io.github.readfall.script.read;

import io.github.readfall.script.LinePart;
import io.github.readfall.script.lines.ClassifiedLine;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;

/** Joins the lines of a cue and remembers the origin of each. */
public final class RawText {

  /**
   * The origin of a stretch of raw text.
   *
   * @param rawStart its first index in the raw text
   * @param line the line it is from
   * @param start its first index in that line
   */
  private record Piece(int rawStart, ClassifiedLine line, int start) {}

  private final StringBuilder raw = new StringBuilder();
  private final List<Piece> pieces = new ArrayList<>();

  /** Adds the rest of a line, after a space if there must be one. */
  public void add(ClassifiedLine line, int start) {
    String text = line.content(start);
    if (text.isEmpty()) {
      return;
    }
    raw.append(JoinedLines.gap(raw, text));
    pieces.add(new Piece(raw.length(), line, start));
    raw.append(text);
  }

  /** Maps the raw text's parts, which are in order, back to their lines. */
  public void toLines(List<LinePart> parts, BiConsumer<ClassifiedLine, List<LinePart>> lines) {
    int first = 0;
    for (Piece piece : pieces) {
      int end = piece.rawStart() + piece.line().end() - piece.start();
      while (first < parts.size() && parts.get(first).end() <= piece.rawStart()) {
        first++;
      }
      List<LinePart> within = new ArrayList<>();
      for (int i = first; i < parts.size() && parts.get(i).start() < end; i++) {
        int from = Math.max(parts.get(i).start(), piece.rawStart());
        int to = Math.min(parts.get(i).end(), end);
        within.add(
            new LinePart(parts.get(i).kind(), from, to).moved(piece.start() - piece.rawStart()));
      }
      lines.accept(piece.line(), within);
    }
  }

  public String raw() {
    return raw.toString();
  }

  /** The line that a place in the raw text is written on. */
  int lineAt(int index) {
    return pieceAt(index).line().number();
  }

  /** The column there, in code points from 1. */
  int columnAt(int index) {
    Piece piece = pieceAt(index);
    return piece.line().column(piece.start() + index - piece.rawStart());
  }

  private Piece pieceAt(int index) {
    int i = pieces.size() - 1;
    while (i > 0 && pieces.get(i).rawStart() > index) {
      i--;
    }
    return pieces.get(i);
  }
}
