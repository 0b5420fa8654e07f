package io.github.readfall.languages.xml;

/**
 * An attribute.
 *
 * @param name as written, with its prefix
 * @param value what it says, references resolved
 * @param start where its name begins in the text
 * @param end the index behind its closing quote
 */
public record XmlAttribute(String name, String value, int start, int end) {}
