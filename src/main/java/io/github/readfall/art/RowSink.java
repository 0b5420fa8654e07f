package io.github.readfall.art;

import java.io.IOException;

/** Takes the rows of a picture from the top. */
public interface RowSink {

  /**
   * Takes a row.
   *
   * @param rgb red, green, blue from the left; the sink copies what it keeps
   */
  void row(byte[] rgb) throws IOException;
}
