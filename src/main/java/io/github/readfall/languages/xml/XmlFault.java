package io.github.readfall.languages.xml;

/** XML that cannot be used. The message says what is wrong and how to fix it, for people. */
public final class XmlFault extends Exception {

  private static final long serialVersionUID = 1;

  private final int line;
  private final String sentence;

  /**
   * A fault.
   *
   * @param line of the file, from 1; 0 if it has no place
   * @param sentence without the name of the file
   */
  public XmlFault(int line, String sentence) {
    super(sentence);
    this.line = line;
    this.sentence = sentence;
  }

  /** The sentence with the place before it. */
  public String in(String file) {
    return file + (line > 0 ? ", line " + line : "") + ": " + sentence;
  }
}
