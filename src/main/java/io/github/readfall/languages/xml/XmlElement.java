package io.github.readfall.languages.xml;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * An element, and its place in the text.
 *
 * @param name as written, with its prefix
 * @param namespace its namespace; empty if it has none
 * @param scope every prefix in force in it, with its namespace; the default one's is empty
 * @param attributes in the order they are written
 * @param children its content, in order
 * @param start where it begins
 * @param startTagEnd the index after its start tag
 * @param endTagStart where its end tag begins; {@code end} if it has none
 * @param end the index after it
 */
public record XmlElement(
    String name,
    String namespace,
    Map<String, String> scope,
    List<XmlAttribute> attributes,
    List<XmlNode> children,
    int start,
    int startTagEnd,
    int endTagStart,
    int end)
    implements XmlNode {

  public XmlElement {
    scope = Map.copyOf(scope);
    attributes = List.copyOf(attributes);
    children = List.copyOf(children);
  }

  /** Its name without a prefix. */
  public String local() {
    return name.substring(name.indexOf(':') + 1);
  }

  /** Returns true if it has this name in a namespace. */
  public boolean is(String inNamespace, String localName) {
    return namespace.equals(inNamespace) && local().equals(localName);
  }

  /** Returns true if it is written as one tag, {@code <target/>}. */
  public boolean isEmptyTag() {
    return startTagEnd == end;
  }

  /** The value of an attribute without a prefix. */
  public Optional<String> attribute(String attribute) {
    return written(attribute).map(XmlAttribute::value);
  }

  /** An attribute by its name as written. */
  public Optional<XmlAttribute> written(String attribute) {
    return attributes.stream().filter(each -> each.name().equals(attribute)).findFirst();
  }

  /** An attribute of a namespace, whatever its prefix is here. */
  public Optional<XmlAttribute> written(String inNamespace, String attribute) {
    return attributes.stream()
        .filter(each -> each.name().contains(":"))
        .filter(each -> each.name().endsWith(":" + attribute))
        .filter(
            each ->
                inNamespace.equals(scope.get(each.name().substring(0, each.name().indexOf(':')))))
        .findFirst();
  }

  /** The elements in it, in order. */
  public Stream<XmlElement> elements() {
    return children.stream().filter(XmlElement.class::isInstance).map(XmlElement.class::cast);
  }

  /** The elements in it that go by this name. */
  public Stream<XmlElement> elements(String inNamespace, String localName) {
    return elements().filter(element -> element.is(inNamespace, localName));
  }

  /** All character data in it, however deep. */
  public String words() {
    StringBuilder words = new StringBuilder();
    for (XmlNode child : children) {
      if (child instanceof XmlElement element) {
        words.append(element.words());
      } else if (child instanceof XmlNode.Chars chars) {
        words.append(chars.value());
      }
    }
    return words.toString();
  }
}
