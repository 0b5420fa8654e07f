package io.github.readfall.export.html;

import io.github.readfall.export.html.Element.Attribute;
import java.util.Set;

/** Writes pages down (HTML Standard, section 13.1). */
public final class Markup {

  /** The beginning of a page; its one element is {@code html}. */
  public static final String DOCTYPE = "<!DOCTYPE html>\n";

  /** Elements that have no end tag (HTML Standard, 13.1.2). */
  private static final Set<String> VOID = Set.of("meta", "link", "input", "img", "br");

  /** Elements of SVG without content, which may be written as one tag. */
  private static final Set<String> MARKS = Set.of("path", "use", "rect");

  /** Elements after which white space means nothing, so each has a line of its own. */
  private static final Set<String> BLOCKS =
      Set.of(
          "head",
          "meta",
          "link",
          "title",
          "style",
          "body",
          "header",
          "main",
          "footer",
          "section",
          "nav",
          "aside",
          "h1",
          "h2",
          "h3",
          "h4",
          "h5",
          "p",
          "div",
          "dl",
          "dt",
          "dd",
          "ul",
          "ol",
          "li",
          "details",
          "summary",
          "fieldset",
          "legend",
          "svg");

  private Markup() {}

  /** A node and all in it. */
  public static String of(Node node) {
    StringBuilder out = new StringBuilder();
    write(node, out);
    return out.toString();
  }

  /** An element up to its end tag, for more content to follow. */
  public static String begun(Element element) {
    StringBuilder out = new StringBuilder();
    start(element, out);
    out.append('>');
    element.content().forEach(node -> write(node, out));
    return out.toString();
  }

  /** The end tag of an element that was begun. */
  public static String ended(Element element) {
    return "</" + element.name() + ">\n";
  }

  private static void write(Node node, StringBuilder out) {
    if (node instanceof Element element) {
      element(element, out);
    } else if (node instanceof Text text) {
      escaped(text.words(), out);
    } else if (node instanceof StyleSheet sheet) {
      out.append("<style>\n").append(sheet.css()).append("</style>\n");
    }
  }

  private static void element(Element element, StringBuilder out) {
    start(element, out);
    boolean isMark = MARKS.contains(element.name()) && element.content().isEmpty();
    out.append(isMark ? "/>" : ">");
    element.content().forEach(node -> write(node, out));
    if (!isMark && !VOID.contains(element.name())) {
      out.append("</").append(element.name()).append('>');
    }
    if (BLOCKS.contains(element.name())) {
      out.append('\n');
    }
  }

  private static void start(Element element, StringBuilder out) {
    out.append('<').append(element.name());
    for (Attribute attribute : element.attributes()) {
      out.append(' ').append(attribute.name());
      if (!attribute.value().isEmpty()) {
        out.append("=\"");
        escaped(attribute.value(), out);
        out.append('"');
      }
    }
  }

  private static void escaped(String words, StringBuilder out) {
    words
        .codePoints()
        .filter(Markup::isAllowed)
        .forEach(
            c -> {
              switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> out.appendCodePoint(c);
              }
            });
  }

  /** Not a control, half a pair or a noncharacter (HTML Standard, 13.2.3.5). */
  private static boolean isAllowed(int c) {
    boolean isControl = Character.isISOControl(c) && c != '\n' && c != '\t';
    boolean isHalf = c >= 0xD800 && c <= 0xDFFF;
    boolean isNone = (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF);
    return !isControl && !isHalf && !isNone;
  }
}
