package io.github.readfall.series.autosave;

import io.github.readfall.base.files.UnusablePath;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * Claims side files for living windows. A claim is a lock on one byte of one file of the state
 * folder, whose place is computed from the side file's path; the byte need not exist. The system
 * releases the lock when the process ends, however it ends, so that a claim never outlives its
 * window, whatever process id comes next.
 *
 * <p>To be made once in a process: with POSIX locks, closing a file drops all of a process's locks
 * on it.
 */
public final class SideFileLocks implements AutoCloseable {

  /** The right to write a file, while it lasts. */
  interface Claim {
    void release();
  }

  private final Path stateFolder;
  private final Optional<FileChannel> channel;

  private SideFileLocks(Path stateFolder, Optional<FileChannel> channel) {
    this.stateFolder = stateFolder;
    this.channel = channel;
  }

  /** Those of a state folder, which is made where it is not there. */
  public static SideFileLocks in(Path stateFolder) {
    try {
      StateFolder.make(stateFolder);
      return new SideFileLocks(
          stateFolder,
          Optional.of(
              FileChannel.open(
                  stateFolder.resolve("open-scripts.lock"),
                  StandardOpenOption.CREATE,
                  StandardOpenOption.WRITE)));
    } catch (IOException | UnusablePath e) {
      return new SideFileLocks(stateFolder, Optional.empty());
    }
  }

  Path stateFolder() {
    return stateFolder;
  }

  /**
   * The first number for an own side file: if nothing can be locked, one that no other living
   * process has.
   */
  long firstNumber() {
    return channel.isPresent() ? 1 : 1 + ProcessHandle.current().pid();
  }

  /** Claims a file; empty if a living window has it. */
  Optional<Claim> claim(Path file) {
    if (channel.isEmpty()) {
      return Optional.of(() -> {});
    }
    byte[] path = file.toAbsolutePath().normalize().toString().getBytes(StandardCharsets.UTF_8);
    try {
      FileLock lock = channel.get().tryLock(ContentHash.of(path).number(), 1, false);
      return Optional.ofNullable(lock).map(SideFileLocks::held);
    } catch (OverlappingFileLockException e) {
      return Optional.empty(); // another window of this process
    } catch (IOException e) {
      return Optional.of(() -> {}); // a disk without locks
    }
  }

  private static Claim held(FileLock lock) {
    return () -> {
      try {
        lock.release();
      } catch (IOException e) {
        return; // it is released with the process
      }
    };
  }

  @Override
  public void close() {
    if (channel.isPresent()) {
      try {
        channel.get().close();
      } catch (IOException e) {
        return; // it is released with the process
      }
    }
  }
}
