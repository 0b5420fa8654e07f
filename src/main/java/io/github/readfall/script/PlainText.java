package io.github.readfall.script;

import java.util.ArrayList;
import java.util.List;

/** Gathers the letters of a cue: white space collapsed, breaks kept, emphasis noted. */
final class PlainText {

  private static final int STRONG = 1;
  private static final int SLANTED = 2;

  private final StringBuilder plain = new StringBuilder();

  /** The emphasis of each unit of {@code plain}: a sum of the constants above. */
  private final StringBuilder looks = new StringBuilder();

  /** White space and breaks since the last letter, not yet written, with their emphasis. */
  private final StringBuilder gap = new StringBuilder();

  private final StringBuilder gapLooks = new StringBuilder();

  void add(int c, boolean strong, boolean slanted) {
    if (Letters.isUnletterable(c)) {
      return;
    }
    char look = look(strong, slanted);
    if (Character.isWhitespace(c)) {
      gap.appendCodePoint(c);
      gapLooks.append(look);
      return;
    }
    writeGap();
    plain.appendCodePoint(c);
    for (int i = 0; i < Character.charCount(c); i++) {
      looks.append(look);
    }
  }

  void breakLine(boolean strong, boolean slanted) {
    gap.append('\n');
    gapLooks.append(look(strong, slanted));
  }

  CueText text(String raw) {
    List<Span> spans = new ArrayList<>();
    int start = 0;
    for (int i = 1; i <= looks.length(); i++) {
      if (i == looks.length() || looks.charAt(i) != looks.charAt(start)) {
        int look = looks.charAt(start);
        if (look != 0) {
          spans.add(new Span(start, i, Emphasis.of((look & STRONG) != 0, (look & SLANTED) != 0)));
        }
        start = i;
      }
    }
    return new CueText(raw, plain.toString(), spans);
  }

  private void writeGap() {
    if (!gap.isEmpty() && !plain.isEmpty()) {
      plain.append(gapSign());
      looks.append((char) gapLooks.chars().reduce(STRONG | SLANTED, (a, b) -> a & b));
    }
    gap.setLength(0);
    gapLooks.setLength(0);
  }

  /** A break if there is one; the ideographic space if there is nothing else; else a space. */
  private char gapSign() {
    if (gap.indexOf("\n") >= 0) {
      return '\n';
    }
    return gap.chars().allMatch(c -> c == 0x3000) ? '\u3000' : ' ';
  }

  private static char look(boolean strong, boolean slanted) {
    return (char) ((strong ? STRONG : 0) | (slanted ? SLANTED : 0));
  }
}
