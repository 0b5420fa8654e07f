package io.github.readfall.keeping;

import io.github.readfall.keeping.Saving.ChangedByOthers;
import io.github.readfall.keeping.Saving.NotSaved;
import io.github.readfall.keeping.Saving.Saved;
import io.github.readfall.keeping.Saving.WayOn;
import io.github.readfall.keeping.Taking.NotTaken;
import io.github.readfall.keeping.Taking.Taken;
import io.github.readfall.script.ScriptFile;
import io.github.readfall.script.ScriptFileException;
import io.github.readfall.series.SafeFile;
import io.github.readfall.series.UnusablePath;
import io.github.readfall.wording.Wording;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/**
 * A script's file and what is known of it: it is only written over while it still holds what was
 * read or written last. Text goes in and out exactly, its byte order mark and line ends included.
 */
public final class ScriptOnDisk {

  private final Path path;
  private final String openedText;
  private Fingerprint known;

  private ScriptOnDisk(Path path, String openedText, Fingerprint known) {
    this.path = path;
    this.openedText = openedText;
    this.known = known;
  }

  /**
   * Opens a script.
   *
   * @throws ScriptFileException if it cannot be read, or is not UTF-8
   */
  public static ScriptOnDisk open(Path path) throws ScriptFileException {
    byte[] bytes = ScriptFile.bytes(path);
    String text = ScriptFile.decode(bytes, path.toString());
    return new ScriptOnDisk(path, text, Fingerprint.of(bytes));
  }

  /** As the person named it. */
  public Path path() {
    return path;
  }

  /** The text as it was when it was opened. */
  public String openedText() {
    return openedText;
  }

  /** What was read or written last. */
  public synchronized Fingerprint known() {
    return known;
  }

  /** Whether others wrote the file, or took it away, since it was read or written last. */
  public synchronized boolean isChangedByOthers() {
    return !holds(known);
  }

  /** Makes the next saving ask, because it is not known whether the text comes after the file's. */
  synchronized void distrust() {
    known = new Fingerprint("");
  }

  /** Saves a text, if the file still holds what is known of it. */
  public synchronized Saving save(String text) {
    byte[] mine = bytes(text);
    if (isGone()) {
      return gone();
    }
    try {
      byte[] there = ScriptFile.bytes(path);
      if (Arrays.equals(there, mine)) {
        known = Fingerprint.of(mine);
        return new Saved(Optional.empty());
      }
      return Fingerprint.of(there).equals(known) ? write(mine) : changed(there);
    } catch (ScriptFileException e) {
      return notSaved(e);
    }
  }

  /** Saves a text whatever the file holds, which is kept beside it. */
  public synchronized Saving keepMine(String text) {
    byte[] mine = bytes(text);
    Optional<Path> kept = Optional.empty();
    try {
      if (!isGone()) {
        byte[] theirs = ScriptFile.bytes(path);
        known = Fingerprint.of(theirs);
        if (!Arrays.equals(theirs, mine)) {
          kept = Optional.of(Beside.of(path, "theirs").keep(theirs));
        }
      }
      SafeFile.write(path, out -> out.write(mine));
      known = Fingerprint.of(mine);
      return new Saved(kept);
    } catch (ScriptFileException | UnusablePath e) {
      return notSaved(e);
    }
  }

  /**
   * Takes what the file holds.
   *
   * @param mine kept beside it, unless it is what was read or written last
   */
  public synchronized Taking takeTheirs(String mine) {
    byte[] own = bytes(mine);
    try {
      byte[] theirs = ScriptFile.bytes(path);
      String text = ScriptFile.decode(theirs, path.toString());
      boolean lost = !Fingerprint.of(own).equals(known) && !Arrays.equals(own, theirs);
      Optional<Path> kept =
          lost ? Optional.of(Beside.of(path, "mine").keep(own)) : Optional.empty();
      known = Fingerprint.of(theirs);
      return new Taken(text, kept);
    } catch (ScriptFileException | UnusablePath e) {
      return new NotTaken(String.valueOf(e.getMessage()));
    }
  }

  /** Writes a text to a new file somewhere else; what is there already is not written over. */
  public static Saving copyTo(Path elsewhere, String text) {
    if (Files.exists(elsewhere, LinkOption.NOFOLLOW_LINKS)) {
      return new NotSaved(Wording.of("keeping.copyInTheWay", elsewhere), WayOn.SAVE_ELSEWHERE);
    }
    try {
      SafeFile.write(elsewhere, out -> out.write(bytes(text)));
      return new Saved(Optional.empty());
    } catch (UnusablePath e) {
      return notSaved(e);
    }
  }

  private Saving write(byte[] mine) {
    if (!Files.isWritable(path)) {
      return new NotSaved(Wording.of("keeping.writeProtected", path), WayOn.SAVE_ELSEWHERE);
    }
    try {
      if (SafeFile.writeIf(path, out -> out.write(mine), () -> holds(known))) {
        known = Fingerprint.of(mine);
        return new Saved(Optional.empty());
      }
      return isGone() ? gone() : changed(ScriptFile.bytes(path));
    } catch (ScriptFileException | UnusablePath e) {
      return notSaved(e);
    }
  }

  private boolean holds(Fingerprint print) {
    try {
      return Fingerprint.of(ScriptFile.bytes(path)).equals(print);
    } catch (ScriptFileException e) {
      return false;
    }
  }

  private ChangedByOthers changed(byte[] theirs) {
    String sentence = Wording.of("keeping.changedByOthers", path);
    try {
      String text = ScriptFile.decode(theirs, path.toString());
      return new ChangedByOthers(Optional.of(text), sentence);
    } catch (ScriptFileException e) {
      return new ChangedByOthers(Optional.empty(), Wording.of("keeping.changedToNoText", path));
    }
  }

  private boolean isGone() {
    return Files.notExists(path);
  }

  private NotSaved gone() {
    Path folder = path.resolveSibling(".").normalize();
    boolean folderGone = Files.notExists(folder.toAbsolutePath());
    return folderGone
        ? new NotSaved(Wording.of("keeping.folderGone", folder), WayOn.SAVE_ELSEWHERE)
        : new NotSaved(Wording.of("keeping.scriptGone", path), WayOn.WRITE_ANEW);
  }

  private static NotSaved notSaved(Exception e) {
    return new NotSaved(
        Wording.of("keeping.notSaved", String.valueOf(e.getMessage())), WayOn.SAVE_ELSEWHERE);
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
