package io.github.readfall.window.model;

import java.util.Optional;

/** Hears what becomes of a house style that is on the desk, on the thread of the window. */
public interface StyleModelListener {

  /** The style is another now. */
  public void shown(StyleSnapshot style);

  /**
   * A balloon shows what a style makes of what is seen.
   *
   * @param style the one that is shown, or one that is only tried out
   * @param specimen empty where there is none, as of a limit
   */
  void previewed(StyleSnapshot style, Optional<Specimen> specimen);

  /** The file was written. */
  public void written();

  /** Something could not be read or written; the sentence says what and how to mend it. */
  void refused(String sentence);

  /** There is a fault of our own. */
  void failed(Throwable fault);
}
