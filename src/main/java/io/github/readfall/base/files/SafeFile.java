package io.github.readfall.base.files;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.function.BooleanSupplier;

/** Writes a file whole or not at all: what was there stays until the new one is complete. */
public final class SafeFile {

  private SafeFile() {}

  /** What fills the file. */
  public interface Content {
    void writeTo(OutputStream out) throws IOException;
  }

  /**
   * Writes a file beside its place, then moves it there.
   *
   * @throws UnusablePath where it cannot be written; what was there is untouched
   */
  public static void write(Path file, Content content) throws UnusablePath {
    boolean unused = writeIf(file, content, () -> true);
  }

  /**
   * Writes a file beside its place, and moves it there if it is still wanted then.
   *
   * @param wanted asked when nothing is left to do but the move
   * @return whether it was moved; if not, what was there is untouched
   * @throws UnusablePath where it cannot be written; what was there is untouched
   */
  public static boolean writeIf(Path file, Content content, BooleanSupplier wanted)
      throws UnusablePath {
    if (Files.isDirectory(file)) {
      throw new UnusablePath(file + " is a folder: name a file in it.");
    }
    try {
      return replace(target(file), content, wanted);
    } catch (IOException e) {
      throw new UnusablePath(
          file + " could not be written: check that its folder is there, yours, and not full.");
    }
  }

  /** The file itself, or what a link stands for, even if that is not there yet. */
  private static Path target(Path file) throws IOException {
    if (Files.exists(file)) {
      return file.toRealPath();
    }
    return Files.isSymbolicLink(file) ? file.resolveSibling(Files.readSymbolicLink(file)) : file;
  }

  private static boolean replace(Path file, Content content, BooleanSupplier wanted)
      throws IOException {
    Path beside = part(file);
    try {
      try (FileChannel channel =
          FileChannel.open(
              beside,
              StandardOpenOption.CREATE,
              StandardOpenOption.TRUNCATE_EXISTING,
              StandardOpenOption.WRITE)) {
        OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel));
        content.writeTo(out);
        out.flush();
        channel.force(true);
      }
      keepPermissions(file, beside);
      boolean still = wanted.getAsBoolean();
      if (still) {
        move(beside, file);
        forceFolder(file);
      }
      return still;
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  /** A name that no other writer has now: two may save one file at once. */
  private static Path part(Path file) {
    String writer = ProcessHandle.current().pid() + "-" + Thread.currentThread().getId();
    return file.resolveSibling("." + file.getFileName() + "." + writer + ".part");
  }

  private static void keepPermissions(Path from, Path to) throws IOException {
    boolean posix = Files.getFileStore(to).supportsFileAttributeView("posix");
    if (posix && Files.exists(from, LinkOption.NOFOLLOW_LINKS)) {
      Files.setPosixFilePermissions(to, Files.getPosixFilePermissions(from));
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** The move itself outlives a power cut only if the folder is written too (POSIX fsync). */
  private static void forceFolder(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    if (folder == null) {
      return;
    }
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      return; // not every system lets a folder be opened; the file is there all the same
    }
  }
}
