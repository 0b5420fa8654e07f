package io.github.readfall.languages.xliff;

import io.github.readfall.languages.xml.XmlDocument;
import io.github.readfall.languages.xml.XmlElement;
import io.github.readfall.languages.xml.XmlFault;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Checks that a document is XLIFF 2.0 or 2.1 that can be relied on: the order of elements (XLIFF
 * 2.1, 4.2), unique ids, valid values.
 */
final class XliffStructure {

  private static final Pattern NMTOKEN = Pattern.compile("[\\p{L}\\p{N}\\p{M}._:·-]+");

  private final XmlDocument document;

  XliffStructure(XmlDocument document) {
    this.document = document;
  }

  void check() throws XmlFault {
    XmlElement root = document.root();
    checkVersion(root);
    checkIds(root);
    List<XmlElement> files = root.elements(Names.CORE, "file").toList();
    if (files.isEmpty()) {
      throw fault(root, "the element xliff holds no file: there is nothing to take in.");
    }
    checkOwnIds(root, files);
    for (XmlElement file : files) {
      order(file, List.of("skeleton", "", "notes", "unit group"), "unit group");
      checkOwnIds(file, XliffReader.unitsIn(file).toList());
      new Sizes(document, file).checkWritten();
      children(file);
    }
  }

  private void checkVersion(XmlElement root) throws XmlFault {
    String version = root.attribute("version").orElse("");
    boolean known = version.equals("2.0") || version.equals("2.1");
    if (!root.local().equals("xliff")) {
      throw fault(root, "it is no XLIFF: its first element is " + root.name() + ", not xliff.");
    }
    if (!root.namespace().equals(Names.CORE) || !known) {
      throw fault(
          root,
          "it is XLIFF "
              + (version.isEmpty() ? "of no version" : version)
              + ", and only 2.0 and 2.1 are read: export it again as XLIFF 2.1.");
    }
  }

  /** Every id of the core is one word. */
  private void checkIds(XmlElement element) throws XmlFault {
    String id = element.attribute("id").orElse("x");
    if (element.namespace().equals(Names.CORE) && !NMTOKEN.matcher(id).matches()) {
      throw fault(element, "\"" + id + "\" is no id: write one without spaces and signs.");
    }
    for (XmlElement child : element.elements().toList()) {
      checkIds(child);
    }
  }

  private void checkOwnIds(XmlElement within, List<XmlElement> elements) throws XmlFault {
    Set<String> ids = new HashSet<>();
    for (XmlElement element : elements) {
      String id = element.attribute("id").orElse("");
      if (id.isEmpty()) {
        throw fault(element, "a " + element.local() + " has no id: give it one.");
      }
      if (!ids.add(id)) {
        throw fault(
            element,
            "two elements "
                + element.local()
                + " of one "
                + within.local()
                + " have the id \""
                + id
                + "\": give each an id of its own.");
      }
    }
  }

  private void children(XmlElement element) throws XmlFault {
    for (XmlElement child : element.elements().toList()) {
      if (child.is(Names.CORE, "group")) {
        order(child, List.of("", "notes", "unit group"), "");
        children(child);
      } else if (child.is(Names.CORE, "unit")) {
        order(
            child, List.of("", "notes", "originalData", "segment ignorable"), "segment ignorable");
        unit(child);
      }
    }
  }

  private void unit(XmlElement unit) throws XmlFault {
    Set<String> ids = new HashSet<>();
    for (XmlElement part : unit.elements().filter(XliffStructure::isPart).toList()) {
      order(part, List.of("source", "target"), "source");
      String words = part.attribute("id").orElse("");
      if (!words.isEmpty() && !ids.add(words)) {
        throw twice(part, words);
      }
      new SegmentState(document).check(part);
      for (String content : List.of("source", "target")) {
        Set<String> own = new HashSet<>(content.equals("source") ? ids : Set.of());
        for (XmlElement each : part.elements(Names.CORE, content).toList()) {
          inline(each, own);
          orders(each);
        }
        if (content.equals("source")) {
          ids.addAll(own);
        }
      }
    }
  }

  private void inline(XmlElement content, Set<String> ids) throws XmlFault {
    for (XmlElement code : content.elements().toList()) {
      String id = code.attribute("id").orElse("");
      if (code.namespace().equals(Names.CORE) && !id.isEmpty() && !ids.add(id)) {
        throw twice(code, id);
      }
      inline(code, ids);
    }
  }

  private void orders(XmlElement target) throws XmlFault {
    String order = target.attribute("order").orElse("1");
    if (!order.matches("[1-9]\\d{0,5}")) {
      throw fault(target, "order is \"" + order + "\": write a number from 1.");
    }
  }

  private XmlFault twice(XmlElement element, String id) {
    return fault(element, "the id \"" + id + "\" is there twice in one unit: make each its own.");
  }

  static boolean isPart(XmlElement element) {
    return element.is(Names.CORE, "segment") || element.is(Names.CORE, "ignorable");
  }

  /**
   * Checks that the core's elements in one are in their order.
   *
   * @param ranks names allowed at each rank; the empty one is for other namespaces
   * @param needed names of which one must be there; empty for none
   */
  private void order(XmlElement element, List<String> ranks, String needed) throws XmlFault {
    int reached = 0;
    boolean found = needed.isEmpty();
    for (XmlElement child : element.elements().toList()) {
      boolean core = child.namespace().equals(Names.CORE);
      int rank = core ? rank(ranks, child.local()) : ranks.indexOf("");
      if (rank < reached) {
        throw fault(
            child,
            child.name()
                + " cannot stand here in "
                + element.name()
                + ": put it where"
                + " XLIFF 2.1 has it, or export again.");
      }
      reached = core && !ranks.get(rank).contains(" ") ? rank + 1 : rank;
      found |= core && List.of(needed.split(" ", -1)).contains(child.local());
    }
    if (!found) {
      throw fault(element, element.name() + " lacks " + needed.replace(" ", " or ") + ": add it.");
    }
  }

  private static int rank(List<String> ranks, String local) {
    for (int i = 0; i < ranks.size(); i++) {
      if (!ranks.get(i).isEmpty() && List.of(ranks.get(i).split(" ", -1)).contains(local)) {
        return i;
      }
    }
    return -1;
  }

  private XmlFault fault(XmlElement element, String sentence) {
    return new XmlFault(document.line(element.start()), sentence);
  }
}
