package io.github.readfall.languages.xml;

/** A piece of an XML text: from {@link #start} to before {@link #end}. */
public sealed interface XmlNode permits XmlElement, XmlNode.Chars, XmlNode.Aside {

  /** Index of its first unit in the text. */
  int start();

  /** The index after its last unit. */
  int end();

  /**
   * Character data, or a CDATA section.
   *
   * @param value with references resolved
   */
  record Chars(int start, int end, String value) implements XmlNode {}

  /** A comment or a processing instruction. */
  record Aside(int start, int end) implements XmlNode {}
}
