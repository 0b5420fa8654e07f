package io.github.readfall.base.files;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;

/**
 * The only place in which files are opened for writing, moved, and folders are made. A file is
 * forced to the disk before it may be moved, and its folder afterwards, so that a power cut leaves
 * either the old file or the whole new one.
 *
 * @param force writes what the system still holds in memory to the disk
 */
record Disk(Force force) {

  /** The disk of this machine. */
  static final Disk REAL = new Disk((channel, path) -> channel.force(true));

  private static final int BUFFER_BYTES = 1 << 16;

  /** Writes what the system still holds in memory to the disk. */
  interface Force {
    /**
     * Returns when everything is on the disk.
     *
     * @param channel open on the file or folder
     * @param path of the file or folder
     * @throws IOException if that fails
     */
    void force(FileChannel channel, Path path) throws IOException;
  }

  /**
   * Opens a file for writing. Closing the stream forces the file to the disk.
   *
   * @param file a new one, or one whose content is replaced
   * @return buffered
   */
  OutputStream open(Path file) throws IOException {
    FileChannel channel =
        FileChannel.open(
            file,
            StandardOpenOption.CREATE,
            StandardOpenOption.TRUNCATE_EXISTING,
            StandardOpenOption.WRITE);
    return new Forced(channel, file, force);
  }

  /**
   * Moves a complete file or folder to its place, over a file that is there.
   *
   * @param to in the same folder as {@code from}, or in another on the same disk
   */
  void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** Makes a folder and those above it, as far as they are missing. */
  void makeFolders(Path folder) throws IOException {
    List<Path> missing = new ArrayList<>();
    for (Path path = folder.toAbsolutePath();
        path != null && Files.notExists(path);
        path = path.getParent()) {
      missing.add(path);
    }
    Files.createDirectories(folder);
    missing.forEach(this::forceFolderOf);
  }

  /**
   * Makes one folder.
   *
   * @throws IOException if it exists, or the folder above does not
   */
  void makeFolder(Path folder) throws IOException {
    Files.createDirectory(folder);
    forceFolderOf(folder);
  }

  /** Makes a hidden folder with a name of its own, for files that are not complete yet. */
  Path makeHiddenFolder(Path in) throws IOException {
    return Files.createTempDirectory(in, ".part-");
  }

  /** Forces the entries of the folder that holds a file: a move outlives a power cut only then. */
  void forceFolderOf(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    if (folder == null) {
      return;
    }
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      force.force(channel, folder);
    } catch (IOException e) {
      return; // not every system lets a folder be opened; the file is there all the same
    }
  }

  /** A file that closing forces to the disk. */
  private static final class Forced extends BufferedOutputStream {

    private final FileChannel channel;
    private final Path file;
    private final Force force;

    Forced(FileChannel channel, Path file, Force force) {
      super(Channels.newOutputStream(channel), BUFFER_BYTES);
      this.channel = channel;
      this.file = file;
      this.force = force;
    }

    @Override
    public void close() throws IOException {
      try (channel) {
        if (channel.isOpen()) {
          flush();
          force.force(channel, file);
        }
      }
    }
  }
}
