package io.github.readfall.languages.xml;

/**
 * An attribute.
 *
 * @param name as written, with its prefix
 * @param value with references resolved
 * @param start of its name in the text
 * @param end the index after its closing quote
 */
public record XmlAttribute(String name, String value, int start, int end) {}
