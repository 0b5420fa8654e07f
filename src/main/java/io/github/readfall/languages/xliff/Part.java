package io.github.readfall.languages.xliff;

import io.github.readfall.languages.translate.State;
import io.github.readfall.languages.xml.XmlElement;
import java.util.Optional;

/**
 * A segment, or an ignorable between two.
 *
 * @param element as written
 * @param sourceElement its source, as written
 * @param source its source
 * @param targetElement its translation as written, if there is one
 * @param target its translation, if there is one
 * @param state of the translation
 * @param place of its target among those of the unit, from 1
 */
record Part(
    XmlElement element,
    XmlElement sourceElement,
    InlineText source,
    Optional<XmlElement> targetElement,
    Optional<InlineText> target,
    State state,
    int place) {

  /** Returns true if it has words of its own to translate. */
  boolean isSegment() {
    return element.local().equals("segment");
  }

  /**
   * Its content in a translation: white space between segments stays unless the file has a target
   * for it.
   */
  Optional<InlineText> said() {
    return isSegment() ? target : Optional.of(target.orElse(source));
  }

  boolean lacksTarget() {
    return isSegment()
        && !source.plain().isBlank()
        && target.map(InlineText::plain).filter(text -> !text.isBlank()).isEmpty();
  }
}
