package io.github.readfall.window.model;

import java.util.Optional;

/** A listener to a style model. Called on the event thread. */
public interface StyleModelListener {

  /** Takes another style. */
  public void shown(StyleSnapshot style);

  /**
   * Takes the specimen of the selected subject.
   *
   * @param style the present one, or one that is being previewed
   * @param specimen empty if there is none, such as for a limit
   */
  void previewed(StyleSnapshot style, Optional<Specimen> specimen);

  /** Called when the file has been written. */
  public void written();

  /**
   * Called when something could not be read or written; the sentence says what, and how to fix it.
   */
  void refused(String sentence);

  /** Called on an internal error. */
  void failed(Throwable fault);
}
