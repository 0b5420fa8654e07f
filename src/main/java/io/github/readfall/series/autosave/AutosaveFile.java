package io.github.readfall.series.autosave;

import io.github.readfall.base.files.SafeFile;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.wording.Wording;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The file with the unsaved text of a window. It belongs to this window alone. */
final class AutosaveFile {

  /**
   * A possible place of the file.
   *
   * @param file no other window's
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

  /** The place where it would be written first. */
  Path first() {
    return places.get(0).file();
  }

  /**
   * Writes a text whole, in the first place where that is possible.
   *
   * @throws UnusablePath if it cannot be written anywhere
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

  /** Removes what was written before, when another place was the better one. */
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
      return false; // the next place is tried, and the last one's failure reported
    }
  }

  /**
   * Deletes it.
   *
   * @throws UnusablePath if it cannot be deleted
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
