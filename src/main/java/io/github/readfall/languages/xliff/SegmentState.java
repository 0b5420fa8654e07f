package io.github.readfall.languages.xliff;

import io.github.readfall.languages.translate.State;
import io.github.readfall.languages.xml.XmlDocument;
import io.github.readfall.languages.xml.XmlElement;
import io.github.readfall.languages.xml.XmlFault;
import java.util.Optional;

/** Checks the state of segments (XLIFF 2.1, 4.3.1.31 and 4.3.1.33). */
record SegmentState(XmlDocument document) {

  void check(XmlElement segment) throws XmlFault {
    Optional<String> state = segment.attribute("state");
    Optional<String> subState = segment.attribute("subState");
    if (state.isPresent() && state.flatMap(State::of).isEmpty()) {
      throw fault(
          segment,
          "state is \"" + state.get() + "\": write initial, translated, reviewed or final.");
    }
    if (subState.isPresent() && state.isEmpty()) {
      throw fault(segment, "there is a subState without a state: write state too, or take it out.");
    }
    if (subState.filter(value -> !value.matches("[^:]+:.+")).isPresent()) {
      throw fault(
          segment, "subState is \"" + subState.get() + "\": write whose it is before a colon.");
    }
    boolean slr =
        segment.attributes().stream()
            .anyMatch(a -> segment.written(Names.SLR, local(a.name())).isPresent());
    if (slr) {
      throw fault(segment, "a size cannot be restricted on a segment: put it on the unit.");
    }
  }

  private static String local(String name) {
    return name.substring(name.indexOf(':') + 1);
  }

  private XmlFault fault(XmlElement segment, String sentence) {
    return new XmlFault(document.line(segment.start()), sentence);
  }
}
