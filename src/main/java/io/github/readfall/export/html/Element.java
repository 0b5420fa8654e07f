package io.github.readfall.export.html;

import java.util.ArrayList;
import java.util.List;

/**
 * An element of HTML, or of SVG within it.
 *
 * @param name of its tag
 * @param attributes in the order in which they are written
 * @param content in order
 */
public record Element(String name, List<Attribute> attributes, List<Node> content) implements Node {

  /**
   * An attribute of an element.
   *
   * @param name of the attribute
   * @param value not escaped; empty for one without a value
   */
  public record Attribute(String name, String value) {}

  public Element {
    attributes = List.copyOf(attributes);
    content = List.copyOf(content);
  }

  /** An element with nothing in it. */
  public static Element of(String name) {
    return new Element(name, List.of(), List.of());
  }

  /** An element with words in it. */
  public static Element of(String name, String words) {
    return of(name).holding(new Text(words));
  }

  /** The same element with another attribute. */
  public Element with(String attribute, String value) {
    List<Attribute> more = new ArrayList<>(attributes);
    more.add(new Attribute(attribute, value));
    return new Element(name, more, content);
  }

  /** The same element with another attribute without a value, such as {@code checked}. */
  public Element with(String attribute) {
    return with(attribute, "");
  }

  /** The same element with its class. */
  public Element as(String className) {
    return with("class", className);
  }

  /** The same element with more content. */
  public Element holding(Node... nodes) {
    return holding(List.of(nodes));
  }

  /** The same element with more content. */
  public Element holding(List<? extends Node> nodes) {
    List<Node> more = new ArrayList<>(content);
    more.addAll(nodes);
    return new Element(name, attributes, more);
  }
}
