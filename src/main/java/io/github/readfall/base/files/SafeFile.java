package io.github.readfall.base.files;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;

/**
 * Writes a file whole or not at all: what is there stays until the new file is complete and on the
 * disk.
 */
public final class SafeFile {

  private SafeFile() {}

  /** Writes the content of a file. */
  public interface Content {
    /**
     * Writes all of it.
     *
     * @param out buffered; closed by the caller
     * @throws IOException if it cannot be written
     */
    void writeTo(OutputStream out) throws IOException;
  }

  /**
   * Writes a new file beside the old one, then puts it in its place.
   *
   * @throws UnusablePath if it cannot be written; the old file is untouched
   */
  public static void write(Path file, Content content) throws UnusablePath {
    boolean unused = writeIf(file, content, () -> true);
  }

  /**
   * Writes a new file beside the old one, and puts it in its place if it is still wanted then.
   *
   * @param wanted asked when only the move is left to do
   * @return true if the file is in its place; if not, the old file is untouched
   * @throws UnusablePath if it cannot be written; the old file is untouched
   */
  public static boolean writeIf(Path file, Content content, BooleanSupplier wanted)
      throws UnusablePath {
    return writeIf(file, content, wanted, Disk.REAL);
  }

  static boolean writeIf(Path file, Content content, BooleanSupplier wanted, Disk disk)
      throws UnusablePath {
    if (Files.isDirectory(file)) {
      throw new UnusablePath(file + " is a folder: name a file in it.");
    }
    try {
      return replace(target(file), content, wanted, disk);
    } catch (IOException e) {
      throw new UnusablePath(
          file
              + " could not be written: check that its folder exists, that you may write there, and"
              + " that the disk is not full.");
    }
  }

  /**
   * Makes an empty file, so that nobody else takes its name.
   *
   * @return false if there is a file of that name already
   * @throws IOException if it cannot be made
   */
  public static boolean reserve(Path file) throws IOException {
    try {
      Files.createFile(file);
      return true;
    } catch (FileAlreadyExistsException e) {
      return false;
    }
  }

  /** Returns the file itself, or the file that a link points to, even if that does not exist. */
  private static Path target(Path file) throws IOException {
    if (Files.exists(file)) {
      return file.toRealPath();
    }
    return Files.isSymbolicLink(file) ? file.resolveSibling(Files.readSymbolicLink(file)) : file;
  }

  private static boolean replace(Path file, Content content, BooleanSupplier wanted, Disk disk)
      throws IOException {
    Path part = part(file);
    try {
      try (OutputStream out = disk.open(part)) {
        content.writeTo(out);
      }
      keepPermissions(file, part);
      boolean still = wanted.getAsBoolean();
      if (still) {
        disk.move(part, file);
        disk.forceFolderOf(file);
      }
      return still;
    } finally {
      Files.deleteIfExists(part);
    }
  }

  /** Returns a name that no other writer uses now: two may save one file at once. */
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
}
