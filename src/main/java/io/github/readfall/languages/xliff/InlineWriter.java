package io.github.readfall.languages.xliff;

import io.github.readfall.languages.xliff.InlineText.Code;
import io.github.readfall.languages.xliff.InlineText.Written;
import io.github.readfall.languages.xml.XmlEscapes;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/** Writes a text with inline codes: its signs strong outside slanted, neither across a code. */
final class InlineWriter {

  private final StringBuilder xml = new StringBuilder();
  private final Deque<Sign> open = new ArrayDeque<>();
  private final SignPool pool;
  private final String prefix;

  private InlineWriter(SignPool pool, String prefix) {
    this.pool = pool;
    this.prefix = prefix;
  }

  /**
   * The content of a source or a target.
   *
   * @param pool codes for its signs
   * @param prefix of the core's elements, with its colon; empty for none
   */
  static String write(InlineText text, SignPool pool, String prefix) {
    InlineWriter writer = new InlineWriter(pool, prefix);
    writer.write(text);
    return writer.xml.toString();
  }

  private void write(InlineText text) {
    int next = 0;
    List<Code> codes = text.codes();
    for (int i = 0; i <= text.plain().length(); ) {
      int look = i < text.plain().length() ? text.looks().charAt(i) : 0;
      close(look);
      while (next < codes.size() && codes.get(next).at() <= i) {
        if (codes.get(next).pair()) {
          close(0);
        }
        xml.append(codes.get(next++).written());
      }
      open(look);
      i += i < text.plain().length() ? letter(text.plain().codePointAt(i)) : 1;
    }
  }

  /** Closes signs until none is open that a look has not. */
  private void close(int look) {
    while (open.stream().anyMatch(sign -> (sign.look() & look) == 0)) {
      Sign unused = open.pop();
      xml.append("</").append(prefix).append("pc>");
    }
  }

  private void open(int look) {
    for (Sign sign : List.of(Sign.STRONG, Sign.SLANTED)) {
      if ((sign.look() & look) != 0 && !open.contains(sign)) {
        open.push(sign);
        xml.append(tag("pc", sign)).append('>');
      }
    }
  }

  private int letter(int c) {
    xml.append(c == '\n' ? tag("ph", Sign.BREAK) + "/>" : XmlEscapes.text(Character.toString(c)));
    return Character.charCount(c);
  }

  private String tag(String name, Sign sign) {
    Written code = pool.next(sign);
    return "<"
        + prefix
        + name
        + " id=\""
        + XmlEscapes.attribute(code.id())
        + "\""
        + code.attributes();
  }
}
