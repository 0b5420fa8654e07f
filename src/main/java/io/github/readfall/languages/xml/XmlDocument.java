package io.github.readfall.languages.xml;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * An XML file: its text, and the elements in it.
 *
 * @param encoding how it is written as bytes
 * @param text as written, without a byte order mark
 * @param root the one element that holds all others
 */
public record XmlDocument(XmlEncoding encoding, String text, XmlElement root) {

  /** The largest file that is read, in bytes: 16 MiB. House default, no source. */
  public static final int MOST_BYTES = 16 * 1024 * 1024;

  /**
   * Reads a file.
   *
   * @throws XmlFault where it is not well-formed XML, declares a document type, or is too large
   */
  public static XmlDocument of(byte[] bytes) throws XmlFault {
    if (bytes.length > MOST_BYTES) {
      throw new XmlFault(
          0, "it is larger than " + (MOST_BYTES >> 20) + " MiB: take out what is not needed.");
    }
    XmlEncoding encoding = XmlEncoding.of(bytes);
    return of(encoding, encoding.text(bytes));
  }

  /**
   * Reads a text.
   *
   * @throws XmlFault where it is not well-formed XML or declares a document type
   */
  public static XmlDocument of(XmlEncoding encoding, String text) throws XmlFault {
    WellFormed.check(text);
    return new XmlDocument(encoding, text, XmlScan.root(text));
  }

  /**
   * This document with changes made to its text; everything else stays as it is, character for
   * character.
   *
   * @param edits none overlapping; those at one place are made in their order
   * @throws XmlFault if the result is not well-formed
   */
  public XmlDocument with(List<XmlEdit> edits) throws XmlFault {
    List<XmlEdit> sorted = new ArrayList<>(edits);
    sorted.sort(Comparator.comparingInt(XmlEdit::start).thenComparingInt(XmlEdit::end));
    StringBuilder changed = new StringBuilder(text.length());
    int at = 0;
    for (XmlEdit edit : sorted) {
      changed.append(text, at, edit.start()).append(edit.text());
      at = edit.end();
    }
    changed.append(text, at, text.length());
    return of(encoding, changed.toString());
  }

  /** The bytes of the file. */
  public byte[] bytes() {
    return encoding.bytes(text);
  }

  /** The line, from 1, that a place in the text is on. */
  public int line(int index) {
    return (int) text.substring(0, index).chars().filter(c -> c == '\n').count() + 1;
  }

  /** An element as it is written. */
  public String written(XmlNode node) {
    return text.substring(node.start(), node.end());
  }
}
