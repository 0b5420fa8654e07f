package io.github.readfall.languages.xliff;

import io.github.readfall.languages.xml.XmlDocument;
import io.github.readfall.languages.xml.XmlEdit;
import io.github.readfall.languages.xml.XmlElement;
import io.github.readfall.languages.xml.XmlFault;
import java.util.List;
import java.util.Optional;

/**
 * An XLIFF file.
 *
 * @param document as written
 * @param sourceLanguage a BCP 47 tag
 * @param targetLanguage a BCP 47 tag, if the file names one
 * @param units of all its files, in order
 */
public record Xliff(
    XmlDocument document,
    String sourceLanguage,
    Optional<String> targetLanguage,
    List<Unit> units) {

  public Xliff {
    units = List.copyOf(units);
  }

  /**
   * The same file with its target language.
   *
   * @param tag a BCP 47 tag
   * @throws XmlFault never if the file was read: it stays well-formed
   */
  public Xliff in(String tag) throws XmlFault {
    return XliffReader.read(
        document.with(List.of(XmlEdit.attribute(document.root(), "trgLang", tag))));
  }

  /** The files in it, in order. */
  List<XmlElement> files() {
    return document.root().elements(Names.CORE, "file").toList();
  }

  /** The prefix of the core's elements with a colon, or nothing. */
  String prefix() {
    String root = document.root().name();
    return root.substring(0, root.indexOf(':') + 1);
  }
}
