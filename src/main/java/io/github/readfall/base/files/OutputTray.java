package io.github.readfall.base.files;

import java.io.IOException;
import java.io.OutputStream;

/** Gives out files to fill; several may be open at once. */
public interface OutputTray {

  /**
   * An empty file.
   *
   * @param name without a folder; each name once
   * @return buffered; whoever opens it closes it
   * @throws IOException where there is no room, or the folder is gone
   */
  OutputStream open(String name) throws IOException;
}
