package io.github.readfall.languages.xml;

/** Characters that XML writes in another way. */
public final class XmlEscapes {

  private XmlEscapes() {}

  /** Text for a place between tags. Characters that XML 1.0 cannot hold become U+FFFD. */
  public static String text(String text) {
    StringBuilder escaped = new StringBuilder(text.length());
    text.codePoints().forEach(c -> append(escaped, c, false));
    return escaped.toString();
  }

  /** Text for a place between double quotes. */
  public static String attribute(String text) {
    StringBuilder escaped = new StringBuilder(text.length());
    text.codePoints().forEach(c -> append(escaped, c, true));
    return escaped.toString();
  }

  private static void append(StringBuilder escaped, int c, boolean inAttribute) {
    switch (c) {
      case '&' -> escaped.append("&amp;");
      case '<' -> escaped.append("&lt;");
      case '>' -> escaped.append("&gt;");
      case '\r' -> escaped.append("&#13;");
      case '"' -> escaped.append(inAttribute ? "&quot;" : "\"");
      case '\n' -> escaped.append(inAttribute ? "&#10;" : "\n");
      case '\t' -> escaped.append(inAttribute ? "&#9;" : "\t");
      default -> escaped.appendCodePoint(isChar(c) ? c : 0xFFFD);
    }
  }

  /** XML 1.0, production 2. */
  private static boolean isChar(int c) {
    return (c >= 0x20 && c <= 0xD7FF) || (c >= 0xE000 && c <= 0xFFFD) || c >= 0x10000;
  }

  /** The content of well-formed text without entities of its own. */
  static String resolved(String written) {
    String text = written.replace("\r\n", "\n").replace('\r', '\n');
    if (text.indexOf('&') < 0) {
      return text;
    }
    StringBuilder resolved = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); ) {
      int end = text.charAt(i) == '&' ? text.indexOf(';', i) : -1;
      if (end < 0) {
        resolved.append(text.charAt(i++));
      } else {
        resolved.appendCodePoint(character(text.substring(i + 1, end)));
        i = end + 1;
      }
    }
    return resolved.toString();
  }

  private static int character(String reference) {
    return switch (reference) {
      case "amp" -> '&';
      case "lt" -> '<';
      case "gt" -> '>';
      case "quot" -> '"';
      case "apos" -> '\'';
      default ->
          reference.startsWith("#x")
              ? Integer.parseInt(reference.substring(2), 16)
              : Integer.parseInt(reference.substring(1));
    };
  }
}
