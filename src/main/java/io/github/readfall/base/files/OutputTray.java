package io.github.readfall.base.files;

import java.io.IOException;
import java.io.OutputStream;

/** Opens the files of a batch for writing; several may be open at once. */
public interface OutputTray {

  /**
   * Opens an empty file.
   *
   * @param name without a folder; each name once
   * @return buffered; to be closed by the caller, which forces the file to the disk
   * @throws IOException if the disk is full, or the folder is gone
   */
  OutputStream open(String name) throws IOException;
}
