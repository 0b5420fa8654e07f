package io.github.readfall.languages.xliff;

import io.github.readfall.languages.translate.State;
import io.github.readfall.languages.xml.XmlDocument;
import io.github.readfall.languages.xml.XmlElement;
import io.github.readfall.languages.xml.XmlFault;
import io.github.readfall.script.lines.LanguageTag;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads XLIFF 2.0 and 2.1 of any program; {@link XliffStructure} says what is refused. */
public final class XliffReader {

  private final XmlDocument document;

  private XliffReader(XmlDocument document) {
    this.document = document;
  }

  /** Returns true if a file is meant to be XML: if it begins with a tag. */
  public static boolean isXml(byte[] bytes) {
    for (int i = 0; i < bytes.length && i < 1000; i++) {
      int c = bytes[i] & 0xFF;
      boolean mark = c == 0xEF || c == 0xBB || c == 0xBF || c == 0xFE || c == 0xFF || c == 0;
      if (c > ' ' && !mark) {
        return c == '<';
      }
    }
    return false;
  }

  /**
   * Reads a file.
   *
   * @throws XmlFault if it cannot be used
   */
  public static Xliff read(byte[] bytes) throws XmlFault {
    return read(XmlDocument.of(bytes));
  }

  /**
   * Reads a document.
   *
   * @throws XmlFault if it cannot be used
   */
  public static Xliff read(XmlDocument document) throws XmlFault {
    new XliffStructure(document).check();
    return new XliffReader(document).xliff();
  }

  private Xliff xliff() throws XmlFault {
    XmlElement root = document.root();
    String source = language(root, "srcLang").orElseThrow(() -> noLanguage("srcLang"));
    Optional<String> target = language(root, "trgLang");
    List<Unit> units = new ArrayList<>();
    for (XmlElement file : root.elements(Names.CORE, "file").toList()) {
      for (XmlElement unit : unitsIn(file).toList()) {
        units.add(unit(unit));
      }
    }
    if (target.isEmpty() && units.stream().anyMatch(Unit::hasTarget)) {
      throw noLanguage("trgLang");
    }
    if (target.filter(source::equals).isPresent()) {
      throw new XmlFault(
          line(root),
          "srcLang and trgLang are both \""
              + source
              + "\": say in trgLang what it"
              + " was translated into.");
    }
    return new Xliff(document, source, target, units);
  }

  private XmlFault noLanguage(String attribute) {
    return new XmlFault(
        line(document.root()),
        "the element xliff has no " + attribute + ": write the language's tag there, such as de.");
  }

  private Optional<String> language(XmlElement root, String attribute) throws XmlFault {
    Optional<String> written = root.attribute(attribute);
    if (written.isEmpty()) {
      return written;
    }
    Optional<String> tag =
        written.filter(value -> value.indexOf('_') < 0).flatMap(LanguageTag::tag);
    if (tag.isEmpty()) {
      throw new XmlFault(
          line(root),
          attribute
              + " is \""
              + written.get()
              + "\", which is no language tag: write one such as"
              + " de or pt-BR.");
    }
    return tag;
  }

  private int line(XmlElement element) {
    return document.line(element.start());
  }

  /** The units below a file or a group, in order. */
  static Stream<XmlElement> unitsIn(XmlElement element) {
    return element
        .elements()
        .filter(child -> child.namespace().equals(Names.CORE))
        .flatMap(
            child ->
                switch (child.local()) {
                  case "unit" -> Stream.of(child);
                  case "group" -> unitsIn(child);
                  default -> Stream.empty();
                });
  }

  private Unit unit(XmlElement element) throws XmlFault {
    List<Part> parts = new ArrayList<>();
    for (XmlElement child : element.elements().filter(XliffStructure::isPart).toList()) {
      parts.add(part(child, parts.size() + 1));
    }
    new TargetOrder(document).check(element, parts);
    return new Unit(
        element, element.attribute("id").orElse(""), parts, notes(element), line(element));
  }

  private Part part(XmlElement element, int number) {
    XmlElement source = element.elements(Names.CORE, "source").findFirst().orElseThrow();
    Optional<XmlElement> target = element.elements(Names.CORE, "target").findFirst();
    return new Part(
        element,
        source,
        InlineReader.read(document, source),
        target,
        target.map(each -> InlineReader.read(document, each)),
        element.attribute("state").flatMap(State::of).orElse(State.INITIAL),
        target.flatMap(each -> each.attribute("order")).map(Integer::parseInt).orElse(number));
  }

  private static List<XliffNote> notes(XmlElement element) {
    return element
        .elements(Names.CORE, "notes")
        .flatMap(notes -> notes.elements(Names.CORE, "note"))
        .map(
            note ->
                new XliffNote(
                    note.attribute("id").orElse(""),
                    note.attribute("category").orElse(""),
                    note.words().strip()))
        .toList();
  }
}
