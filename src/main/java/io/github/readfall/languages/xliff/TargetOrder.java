package io.github.readfall.languages.xliff;

import io.github.readfall.languages.xml.XmlDocument;
import io.github.readfall.languages.xml.XmlElement;
import io.github.readfall.languages.xml.XmlFault;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Checks that each target of a unit has a place of its own (XLIFF 2.1, 4.3.1.21). */
record TargetOrder(XmlDocument document) {

  void check(XmlElement unit, List<Part> parts) throws XmlFault {
    Set<Integer> places = new HashSet<>();
    for (Part part : parts) {
      if (part.place() < 1 || part.place() > parts.size() || !places.add(part.place())) {
        throw new XmlFault(
            document.line(part.element().start()),
            "the order of a target in unit \""
                + unit.attribute("id").orElse("")
                + "\" is not its own from 1 to "
                + parts.size()
                + ": number the targets, or leave out order.");
      }
    }
  }
}
