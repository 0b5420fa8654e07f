package io.github.readfall.series.autosave;

import io.github.readfall.base.files.SafeFile;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.wording.Wording;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The file with what a window has not saved yet. It is this window's alone. */
final class AutosaveFile {

  /**
   * Where it may lie.
   *
   * @param file nobody else's
   * @param claim on it
   */
  record Place(Path file, SideFileLocks.Claim claim) {}

  private final List<Place> places;

  /**
   * Makes one.
   *
   * @param places the better one first
   */
  AutosaveFile(List<Place> places) {
    this.places = List.copyOf(places);
  }

  /** Where it would be written first. */
  Path first() {
    return places.get(0).file();
  }

  /**
   * Writes a text whole, in the first place where that can be done.
   *
   * @throws UnusablePath where none can be written
   */
  void write(String text) throws UnusablePath {
    for (Place place : places) {
      if (isWritten(place.file(), text)) {
        removeOlder(place);
        return;
      }
    }
    throw new UnusablePath(Wording.of("autosave.notKept", first()));
  }

  /** What was written before, when another place was the better one. */
  private void removeOlder(Place newest) {
    for (Place place : places) {
      try {
        if (!place.equals(newest)) {
          Files.deleteIfExists(place.file());
        }
      } catch (IOException e) {
        return; // it is offered as the older one, at worst
      }
    }
  }

  private boolean isWritten(Path file, String text) {
    try {
      if (!file.equals(first())) {
        StateFolder.make(file.resolveSibling("."));
      }
      SafeFile.write(file, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
      return true;
    } catch (UnusablePath e) {
      return false; // the next place is tried, and the last one's failure told
    }
  }

  /**
   * Takes it away.
   *
   * @throws UnusablePath where it stays
   */
  void remove() throws UnusablePath {
    for (Place place : places) {
      try {
        Files.deleteIfExists(place.file());
      } catch (IOException e) {
        throw new UnusablePath(Wording.of("autosave.notRemoved", place.file()));
      }
    }
  }

  /** Gives the place up to others. */
  void release() {
    places.forEach(place -> place.claim().release());
  }
}
