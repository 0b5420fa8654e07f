package io.github.readfall.languages.xml;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds the elements of a text that {@link WellFormed} has passed: it has no document type, so
 * everything in it is itself. The JDK's parsers tell the content of a text, but not exactly its
 * places.
 */
final class XmlScan {

  private static final String XML = "http://www.w3.org/XML/1998/namespace";

  private XmlScan() {}

  /** An element that is not closed yet. */
  private record Open(
      String name,
      Map<String, String> scope,
      List<XmlAttribute> attributes,
      List<XmlNode> children,
      int start,
      int startTagEnd) {

    XmlElement closed(int endTagStart, int end) {
      int colon = name.indexOf(':');
      String namespace = scope.getOrDefault(colon < 0 ? "" : name.substring(0, colon), "");
      return new XmlElement(
          name, namespace, scope, attributes, children, start, startTagEnd, endTagStart, end);
    }
  }

  static XmlElement root(String text) {
    Deque<Open> open = new ArrayDeque<>();
    open.push(new Open("", Map.of("xml", XML), List.of(), new ArrayList<>(), 0, 0));
    for (int at = 0; at < text.length(); ) {
      at = text.charAt(at) == '<' ? markup(text, at, open) : characters(text, at, open);
    }
    return open.element().children().stream()
        .filter(XmlElement.class::isInstance)
        .map(XmlElement.class::cast)
        .findFirst()
        .orElseThrow();
  }

  private static int characters(String text, int at, Deque<Open> open) {
    int next = text.indexOf('<', at);
    int end = next < 0 ? text.length() : next;
    String value = XmlEscapes.resolved(text.substring(at, end));
    open.element().children().add(new XmlNode.Chars(at, end, value));
    return end;
  }

  private static int markup(String text, int at, Deque<Open> open) {
    List<XmlNode> siblings = open.element().children();
    if (text.startsWith("<!--", at)) {
      int end = text.indexOf("-->", at) + 3;
      siblings.add(new XmlNode.Aside(at, end));
      return end;
    }
    if (text.startsWith("<?", at)) {
      int end = text.indexOf("?>", at) + 2;
      siblings.add(new XmlNode.Aside(at, end));
      return end;
    }
    if (text.startsWith("<![CDATA[", at)) {
      int end = text.indexOf("]]>", at) + 3;
      String value = text.substring(at + "<![CDATA[".length(), end - 3).replace("\r\n", "\n");
      siblings.add(new XmlNode.Chars(at, end, value));
      return end;
    }
    return tag(text, at, open);
  }

  private static int tag(String text, int at, Deque<Open> open) {
    if (text.charAt(at + 1) == '/') {
      int end = text.indexOf('>', at) + 1;
      XmlElement closed = open.pop().closed(at, end);
      open.element().children().add(closed);
      return end;
    }
    int nameEnd = nameEnd(text, at + 1);
    List<XmlAttribute> attributes = new ArrayList<>();
    int i = attributes(text, nameEnd, attributes);
    boolean empty = text.charAt(i) == '/';
    int end = i + (empty ? 2 : 1);
    Map<String, String> scope = scope(open.element().scope(), attributes);
    Open opened =
        new Open(text.substring(at + 1, nameEnd), scope, attributes, new ArrayList<>(), at, end);
    if (empty) {
      open.element().children().add(opened.closed(end, end));
    } else {
      open.push(opened);
    }
    return end;
  }

  /** Reads attributes; returns the index of the end of the tag. */
  private static int attributes(String text, int from, List<XmlAttribute> attributes) {
    int i = skipSpace(text, from);
    while (text.charAt(i) != '>' && text.charAt(i) != '/') {
      int nameEnd = nameEnd(text, i);
      int quote = skipSpace(text, skipSpace(text, nameEnd) + 1);
      int close = text.indexOf(text.charAt(quote), quote + 1);
      String value = text.substring(quote + 1, close).replaceAll("\r\n|[\t\r\n]", " ");
      attributes.add(
          new XmlAttribute(text.substring(i, nameEnd), XmlEscapes.resolved(value), i, close + 1));
      i = skipSpace(text, close + 1);
    }
    return i;
  }

  private static int nameEnd(String text, int from) {
    int i = from;
    while (" \t\r\n=/>".indexOf(text.charAt(i)) < 0) {
      i++;
    }
    return i;
  }

  private static int skipSpace(String text, int from) {
    int i = from;
    while (" \t\r\n".indexOf(text.charAt(i)) >= 0) {
      i++;
    }
    return i;
  }

  private static Map<String, String> scope(
      Map<String, String> outer, List<XmlAttribute> attributes) {
    if (attributes.stream().noneMatch(attribute -> attribute.name().startsWith("xmlns"))) {
      return outer;
    }
    Map<String, String> scope = new HashMap<>(outer);
    for (XmlAttribute attribute : attributes) {
      if (attribute.name().equals("xmlns")) {
        scope.put("", attribute.value());
      } else if (attribute.name().startsWith("xmlns:")) {
        scope.put(attribute.name().substring("xmlns:".length()), attribute.value());
      }
    }
    return scope;
  }
}
