package io.github.readfall.series.autosave;

import io.github.readfall.base.files.SafeFile;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.script.read.ScriptFile;
import io.github.readfall.script.read.ScriptFileException;
import io.github.readfall.series.autosave.ReloadResult.NotTaken;
import io.github.readfall.series.autosave.ReloadResult.Taken;
import io.github.readfall.series.autosave.SaveResult.ChangedByOthers;
import io.github.readfall.series.autosave.SaveResult.NotSaved;
import io.github.readfall.series.autosave.SaveResult.Saved;
import io.github.readfall.series.autosave.SaveResult.WayOn;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * A text file that is only replaced while it still holds what was last read or written. Text goes
 * in and out exactly, with its byte order mark and line ends.
 *
 * <p>A file that need not exist counts as empty while it does not, and is deleted when an empty
 * text is saved.
 */
public final class TextOnDisk {

  private final Path path;
  private final Optional<Path> previous;
  private final String openedText;
  private ContentHash known;

  private TextOnDisk(Path path, Optional<Path> previous) throws ScriptFileException {
    this.path = path;
    this.previous = previous;
    byte[] bytes = there();
    this.openedText = ScriptFile.decode(bytes, path.toString());
    this.known = ContentHash.of(bytes);
  }

  /**
   * Opens a script.
   *
   * @throws ScriptFileException if it cannot be read, or is not UTF-8
   */
  public static TextOnDisk open(Path path) throws ScriptFileException {
    return new TextOnDisk(path, Optional.empty());
  }

  /**
   * Opens a file that need not exist.
   *
   * @param previous file that keeps the text before it was replaced
   * @throws ScriptFileException if it exists and cannot be read, or is not UTF-8
   */
  public static TextOnDisk openOrNew(Path path, Path previous) throws ScriptFileException {
    return new TextOnDisk(path, Optional.of(previous));
  }

  /** The content of the file; empty if it does not exist and need not. */
  private byte[] there() throws ScriptFileException {
    return mayBeAbsent() && Files.notExists(path) ? new byte[0] : ScriptFile.bytes(path);
  }

  private boolean mayBeAbsent() {
    return previous.isPresent();
  }

  /** The path, as the person named it. */
  public Path path() {
    return path;
  }

  /** The text as it was when it was opened. */
  public String openedText() {
    return openedText;
  }

  /** The hash of the text last read or written. */
  public synchronized ContentHash known() {
    return known;
  }

  /** Returns true if others changed or deleted the file since it was last read or written. */
  public synchronized boolean isChangedByOthers() {
    return !holds(known);
  }

  /** Makes the next saving ask, because it is not known whether the text comes after the file's. */
  synchronized void distrust() {
    known = new ContentHash("");
  }

  /** Saves a text, if the file has not changed. */
  public synchronized SaveResult save(String text) {
    byte[] mine = bytes(text);
    if (isGone()) {
      return gone();
    }
    try {
      byte[] there = there();
      if (Arrays.equals(there, mine)) {
        known = ContentHash.of(mine);
        return new Saved(Optional.empty());
      }
      return ContentHash.of(there).equals(known) ? write(mine, there) : changed(there);
    } catch (ScriptFileException e) {
      return notSaved(e);
    }
  }

  /** Saves a text whatever the file holds, which is kept beside it. */
  public synchronized SaveResult keepMine(String text) {
    byte[] mine = bytes(text);
    Optional<Path> kept = Optional.empty();
    try {
      if (!isGone()) {
        byte[] theirs = there();
        known = ContentHash.of(theirs);
        if (theirs.length > 0 && !Arrays.equals(theirs, mine)) {
          kept = Optional.of(SiblingNames.of(path, "theirs").keep(theirs));
        }
      }
      boolean unused = put(mine, () -> true);
      known = ContentHash.of(mine);
      return new Saved(kept);
    } catch (ScriptFileException | UnusablePath e) {
      return notSaved(e);
    }
  }

  /**
   * Takes the content of the file.
   *
   * @param mine kept beside it, unless it is what was last read or written
   */
  public synchronized ReloadResult takeTheirs(String mine) {
    byte[] own = bytes(mine);
    try {
      byte[] theirs = there();
      String text = ScriptFile.decode(theirs, path.toString());
      boolean lost = !ContentHash.of(own).equals(known) && !Arrays.equals(own, theirs);
      Optional<Path> kept =
          lost ? Optional.of(SiblingNames.of(path, "mine").keep(own)) : Optional.empty();
      known = ContentHash.of(theirs);
      return new Taken(text, kept);
    } catch (ScriptFileException | UnusablePath e) {
      return new NotTaken(String.valueOf(e.getMessage()));
    }
  }

  /** Writes a text to a new file somewhere else; an existing file is not replaced. */
  public static SaveResult copyTo(Path elsewhere, String text) {
    if (Files.exists(elsewhere, LinkOption.NOFOLLOW_LINKS)) {
      return new NotSaved(Wording.of("autosave.copyInTheWay", elsewhere), WayOn.SAVE_ELSEWHERE);
    }
    try {
      SafeFile.write(elsewhere, out -> out.write(bytes(text)));
      return new Saved(Optional.empty());
    } catch (UnusablePath e) {
      return notSaved(e);
    }
  }

  private SaveResult write(byte[] mine, byte[] before) {
    if (Files.exists(path) && !Files.isWritable(path)) {
      return new NotSaved(Wording.of("autosave.writeProtected", path), WayOn.SAVE_ELSEWHERE);
    }
    try {
      if (previous.isPresent() && before.length > 0) {
        SafeFile.write(previous.get(), out -> out.write(before));
      }
      if (put(mine, () -> holds(known))) {
        known = ContentHash.of(mine);
        return new Saved(Optional.empty());
      }
      return isGone() ? gone() : changed(there());
    } catch (ScriptFileException | UnusablePath e) {
      return notSaved(e);
    }
  }

  /** Writes the file, or takes it away where it is to be empty, if that is still wanted. */
  private boolean put(byte[] mine, BooleanSupplier wanted) throws UnusablePath {
    if (mine.length > 0 || !mayBeAbsent()) {
      return SafeFile.writeIf(path, out -> out.write(mine), wanted);
    }
    try {
      return wanted.getAsBoolean() && (Files.deleteIfExists(path) || Files.notExists(path));
    } catch (IOException e) {
      throw new UnusablePath(path + " could not be taken away: check that its folder is yours.");
    }
  }

  private boolean holds(ContentHash print) {
    try {
      return ContentHash.of(there()).equals(print);
    } catch (ScriptFileException e) {
      return false;
    }
  }

  private ChangedByOthers changed(byte[] theirs) {
    String sentence = Wording.of("autosave.changedByOthers", path);
    try {
      String text = ScriptFile.decode(theirs, path.toString());
      return new ChangedByOthers(Optional.of(text), sentence);
    } catch (ScriptFileException e) {
      return new ChangedByOthers(Optional.empty(), Wording.of("autosave.changedToNoText", path));
    }
  }

  private boolean isGone() {
    return !mayBeAbsent() && Files.notExists(path);
  }

  private NotSaved gone() {
    Path folder = path.resolveSibling(".").normalize();
    boolean folderGone = Files.notExists(folder.toAbsolutePath());
    return folderGone
        ? new NotSaved(Wording.of("autosave.folderGone", folder), WayOn.SAVE_ELSEWHERE)
        : new NotSaved(Wording.of("autosave.scriptGone", path), WayOn.WRITE_ANEW);
  }

  private static NotSaved notSaved(Exception e) {
    return new NotSaved(
        Wording.of("autosave.notSaved", String.valueOf(e.getMessage())), WayOn.SAVE_ELSEWHERE);
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
