package io.github.readfall.script;

import java.util.ArrayList;
import java.util.List;

/** Joins the lines of a cue and remembers where each came from. */
final class RawText {

  /**
   * Where a stretch of raw text came from.
   *
   * @param rawStart its first index in the raw text
   * @param line the line it is from
   * @param start its first index in that line
   */
  private record Piece(int rawStart, ReadLine line, int start) {}

  private final StringBuilder raw = new StringBuilder();
  private final List<Piece> pieces = new ArrayList<>();

  /**
   * Adds the rest of a line, behind a space: but between letters of scripts that are written
   * without spaces a line end means nothing (CSS Text Module Level 3, section 4.1.3).
   */
  void add(ReadLine line, int start) {
    String text = line.content(start);
    if (text.isEmpty()) {
      return;
    }
    if (!raw.isEmpty() && !isJoinedTight(text)) {
      raw.append(' ');
    }
    pieces.add(new Piece(raw.length(), line, start));
    raw.append(text);
  }

  String raw() {
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

  private boolean isJoinedTight(String next) {
    return Letters.isWrittenWithoutSpaces(raw.codePointBefore(raw.length()))
        && Letters.isWrittenWithoutSpaces(next.codePointAt(0));
  }
}
