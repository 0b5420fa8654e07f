package io.github.readfall.base.files;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import org.jspecify.annotations.Nullable;

/** Makes folders, and copies a folder whole or not at all. */
public final class Folders {

  private Folders() {}

  /**
   * Makes a folder and those above it, as far as they are missing.
   *
   * @throws UnusablePath if one of them cannot be made
   */
  public static void make(Path folder) throws UnusablePath {
    try {
      Disk.REAL.makeFolders(folder);
    } catch (IOException e) {
      throw notMade(folder);
    }
  }

  /**
   * Makes one folder that must not exist yet.
   *
   * @throws UnusablePath if it exists, or cannot be made
   */
  public static void makeNew(Path folder) throws UnusablePath {
    if (Files.exists(folder)) {
      throw new UnusablePath(folder + " already exists: nothing was written.");
    }
    try {
      Disk.REAL.makeFolder(folder);
    } catch (IOException e) {
      throw notMade(folder);
    }
  }

  private static UnusablePath notMade(Path folder) {
    return new UnusablePath(
        "The folder " + folder + " could not be created: check that you may write there.");
  }

  /**
   * Copies a folder with everything in it. The copy is complete and on the disk before it gets its
   * name. Its files are writable even if the originals are not.
   *
   * @param to a folder that does not exist yet
   * @throws IOException if it cannot be copied; then {@code to} does not exist
   */
  public static void copy(Path from, Path to) throws IOException {
    Path part = to.resolveSibling("." + to.getFileName() + ".part");
    remove(part);
    Disk.REAL.makeFolders(part);
    Files.walkFileTree(from, new CopyTo(from, part));
    Disk.REAL.move(part, to);
    Disk.REAL.forceFolderOf(to);
  }

  /** Removes what an interrupted copy left. */
  private static void remove(Path part) throws IOException {
    if (Files.exists(part)) {
      Files.walkFileTree(part, new Removal());
    }
  }

  private static final class CopyTo extends SimpleFileVisitor<Path> {

    private final Path from;
    private final Path to;

    CopyTo(Path from, Path to) {
      this.from = from;
      this.to = to;
    }

    private Path copyOf(Path path) {
      return to.resolve(from.relativize(path).toString());
    }

    @Override
    public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes is)
        throws IOException {
      Disk.REAL.makeFolders(copyOf(folder));
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes is) throws IOException {
      try (OutputStream out = Disk.REAL.open(copyOf(file))) {
        long unused = Files.copy(file, out);
      }
      return FileVisitResult.CONTINUE;
    }
  }

  private static final class Removal extends SimpleFileVisitor<Path> {

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes is) throws IOException {
      Files.delete(file);
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult postVisitDirectory(Path folder, @Nullable IOException e)
        throws IOException {
      Files.delete(folder);
      return FileVisitResult.CONTINUE;
    }
  }
}
