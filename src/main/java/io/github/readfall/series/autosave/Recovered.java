package io.github.readfall.series.autosave;

import java.nio.file.Path;
import java.nio.file.attribute.FileTime;

/** The unsaved text of a window that crashed. It is not offered to other windows meanwhile. */
public final class Recovered {

  private final Path file;
  private final String text;
  private final FileTime writtenAt;
  private final boolean scriptIsNewer;
  private final SideFileLocks.Claim claim;

  Recovered(
      Path file,
      String text,
      FileTime writtenAt,
      boolean scriptIsNewer,
      SideFileLocks.Claim claim) {
    this.file = file;
    this.text = text;
    this.writtenAt = writtenAt;
    this.scriptIsNewer = scriptIsNewer;
    this.claim = claim;
  }

  /** The side file that holds it. */
  public Path file() {
    return file;
  }

  /** All of the text, as it would have been saved. */
  public String text() {
    return text;
  }

  /** When it was kept. */
  public FileTime writtenAt() {
    return writtenAt;
  }

  /** Returns true if the script was written after it, so that the two may differ both ways. */
  public boolean scriptIsNewer() {
    return scriptIsNewer;
  }

  SideFileLocks.Claim claim() {
    return claim;
  }
}
