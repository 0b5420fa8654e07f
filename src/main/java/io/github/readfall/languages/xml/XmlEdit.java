package io.github.readfall.languages.xml;

/**
 * A change to a text.
 *
 * @param start of the text replaced
 * @param end after the text replaced; {@code start} to insert
 * @param text that replaces it
 */
public record XmlEdit(int start, int end, String text) {

  /** Puts a text in at a place. */
  public static XmlEdit insert(int at, String text) {
    return new XmlEdit(at, at, text);
  }

  /** Puts other content into an element. */
  public static XmlEdit content(XmlElement element, String content) {
    return element.isEmptyTag()
        ? new XmlEdit(element.end() - 2, element.end(), ">" + content + "</" + element.name() + ">")
        : new XmlEdit(element.startTagEnd(), element.endTagStart(), content);
  }

  /** Gives an element an attribute, by its name as written, in place of one that it may have. */
  public static XmlEdit attribute(XmlElement element, String name, String value) {
    String written = name + "=\"" + XmlEscapes.attribute(value) + "\"";
    return element
        .written(name)
        .map(old -> new XmlEdit(old.start(), old.end(), written))
        .orElseGet(() -> insert(element.start() + 1 + element.name().length(), " " + written));
  }

  /** Takes an attribute from an element, with the white space before it. */
  public static XmlEdit without(String text, XmlAttribute attribute) {
    return new XmlEdit(spaceBefore(text, attribute.start()), attribute.end(), "");
  }

  /** Takes a piece out, with the white space before it. */
  public static XmlEdit without(String text, XmlNode node) {
    return new XmlEdit(spaceBefore(text, node.start()), node.end(), "");
  }

  private static int spaceBefore(String text, int at) {
    int start = at;
    while (start > 0 && " \t\r\n".indexOf(text.charAt(start - 1)) >= 0) {
      start--;
    }
    return start;
  }
}
