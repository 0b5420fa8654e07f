package io.github.readfall.series.autosave;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.script.read.ScriptFileException;
import io.github.readfall.series.LayoutFile;
import io.github.readfall.series.autosave.ReloadResult.Taken;
import io.github.readfall.series.autosave.SaveResult.Saved;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * A script or a layout that a window has open: its file, the side file with its unsaved text, and
 * text that earlier windows left unsaved when they crashed. Texts are as they are on disk, with
 * byte order mark and line ends. It may be used from any thread; all but {@link #changed} may wait
 * for a disk.
 */
public final class OpenText implements AutoCloseable {

  private final TextOnDisk disk;
  private final Autosaver keeper;
  private final List<Recovered> recovered;
  private final List<String> remarks;

  private OpenText(
      TextOnDisk disk, AutosaveFiles sides, Scheduler later, Consumer<String> troubled) {
    Leftovers.sweep(disk.path());
    List<String> read = new ArrayList<>();
    this.disk = disk;
    this.recovered = new ArrayList<>(sides.fallen(disk.openedText(), read));
    this.remarks = List.copyOf(read);
    this.keeper = new Autosaver(sides.own(), disk.openedText(), later, troubled);
  }

  /**
   * Opens a script.
   *
   * @param claims the process's
   * @param later runs the writing of the side file; nothing else slow
   * @param troubled receives a sentence when typed text cannot be autosaved, on any thread
   * @throws ScriptFileException if it cannot be read, or is not UTF-8; its message also says if a
   *     side file holds something of it
   */
  public static OpenText open(
      Path script, SideFileLocks claims, Scheduler later, Consumer<String> troubled)
      throws ScriptFileException {
    AutosaveFiles sides = new AutosaveFiles(script, claims);
    return new OpenText(opened(sides, () -> TextOnDisk.open(script)), sides, later, troubled);
  }

  /**
   * Opens the layout of an episode, whether or not it is there yet: it counts as empty then, and an
   * empty one is not there when it is saved.
   *
   * @throws ScriptFileException if it is there and cannot be read, or is not UTF-8
   */
  public static OpenText open(
      LayoutFile layout, SideFileLocks claims, Scheduler later, Consumer<String> troubled)
      throws ScriptFileException {
    AutosaveFiles sides = new AutosaveFiles(layout.path(), claims);
    TextOnDisk disk = opened(sides, () -> TextOnDisk.openOrNew(layout.path(), layout.previous()));
    return new OpenText(disk, sides, later, troubled);
  }

  /** Opens a file. */
  private interface Opening {
    TextOnDisk open() throws ScriptFileException;
  }

  private static TextOnDisk opened(AutosaveFiles sides, Opening opening)
      throws ScriptFileException {
    try {
      return opening.open();
    } catch (ScriptFileException e) {
      List<Path> files = sides.files();
      if (files.isEmpty()) {
        throw e;
      }
      throw new ScriptFileException(
          Wording.of("autosave.onlySideFile", String.valueOf(e.getMessage()), files.get(0)), e);
    }
  }

  /** The file, as the person named it. */
  public Path path() {
    return disk.path();
  }

  /** The text as it was when it was opened. */
  public String openedText() {
    return disk.openedText();
  }

  /** The hash of the text last read or written. */
  public ContentHash known() {
    return disk.known();
  }

  /**
   * Texts that earlier windows left unsaved and that are still to be decided on, the newest first.
   */
  public synchronized List<Recovered> recovered() {
    return List.copyOf(recovered);
  }

  /** A sentence for each side file that is there and cannot be read. */
  public List<String> remarks() {
    return remarks;
  }

  /** Returns true if others changed or deleted the file since it was last read or written. */
  public boolean isChangedByOthers() {
    return disk.isChangedByOthers();
  }

  /** Returns true if there is unsaved text. */
  public boolean hasUnsaved() {
    return keeper.hasUnsaved();
  }

  /** Reports a change; cheap. The text is in the side file within half a second. */
  public void changed(String text) {
    keeper.changed(text);
  }

  /**
   * Saves a text, if the file has not changed since it was last read or written. Later {@link
   * #changed} texts stay unsaved.
   *
   * @param text the newest one, or one that was the newest a moment ago
   */
  public synchronized SaveResult save(String text) {
    keeper.saving(text);
    return reported(disk.save(text), text);
  }

  /**
   * Saves a text, as {@link #save}; the text of others is kept beside it as {@code
   * script.theirs.txt}.
   */
  public synchronized SaveResult keepMine(String text) {
    keeper.saving(text);
    return reported(disk.keepMine(text), text);
  }

  /**
   * Takes the text that others wrote.
   *
   * @param mine the newest text, or one that was a moment ago; the newest is kept beside it as
   *     {@code script.mine.txt}, unless all of it had been saved
   */
  public synchronized ReloadResult takeTheirs(String mine) {
    keeper.saving(mine);
    ReloadResult taking = disk.takeTheirs(keeper.newest());
    if (taking instanceof Taken taken) {
      keeper.changed(taken.text());
      keeper.saved(taken.text());
    }
    return taking;
  }

  /** Writes a text to a new file somewhere else; this script stays unsaved. */
  public static SaveResult copyTo(Path elsewhere, String text) {
    return TextOnDisk.copyTo(elsewhere, text);
  }

  private SaveResult reported(SaveResult saving, String text) {
    if (saving instanceof Saved) {
      keeper.saved(text);
    }
    return saving;
  }

  /**
   * Continues from a recovered text, which is the newest one from now on. Its file is deleted once
   * the text is in this window's own side file. If the script is newer than it, the next saving
   * asks.
   *
   * @return the text
   */
  public synchronized String adopt(Recovered fallen) {
    if (fallen.scriptIsNewer()) {
      disk.distrust();
    }
    keeper.changed(fallen.text());
    if (keeper.keep()) {
      remove(fallen);
    }
    return fallen.text();
  }

  /**
   * Keeps a recovered text beside the script as {@code script.recovered.txt}, and no longer offers
   * it.
   *
   * @throws UnusablePath if that cannot be done; it is offered again
   */
  public synchronized Path setAside(Recovered fallen) throws UnusablePath {
    byte[] bytes = fallen.text().getBytes(StandardCharsets.UTF_8);
    Path file = SiblingNames.of(disk.path(), "recovered").keep(bytes);
    remove(fallen);
    return file;
  }

  /** Discards a recovered text, when the person has said so. */
  public synchronized void drop(Recovered fallen) {
    remove(fallen);
  }

  private void remove(Recovered fallen) {
    try {
      Files.deleteIfExists(fallen.file());
    } catch (IOException e) {
      return; // it is offered once more, next time
    }
    if (recovered.remove(fallen)) {
      fallen.claim().release();
    }
  }

  /** Closes it. What is not saved stays in the side file, and is offered at the next opening. */
  @Override
  public synchronized void close() {
    keeper.end();
    letGo();
  }

  /** Closes it and discards unsaved text, when the person has said so. */
  public synchronized void closeAndDrop() {
    keeper.endAndDrop();
    letGo();
  }

  private void letGo() {
    recovered.forEach(fallen -> fallen.claim().release());
    recovered.clear();
  }
}
