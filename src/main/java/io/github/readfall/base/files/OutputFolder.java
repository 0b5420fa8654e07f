package io.github.readfall.base.files;

import io.github.readfall.base.OneCall;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A folder that a set of files is written to. They are made in a hidden folder within it, on the
 * same disk, and moved to their places when all are complete and on the disk. Until then the files
 * that are there stay untouched, and a failure leaves nothing new.
 *
 * @param folder made if it does not exist
 * @param replace whether files of the same names may be replaced
 */
public record OutputFolder(Path folder, boolean replace) {

  /**
   * Returns the files that some batches will write, as far as they can be named in advance.
   *
   * @throws CannotWrite if one exists already and may not be replaced, or two have the same name
   */
  public List<Path> planned(List<Batch> batches) throws CannotWrite {
    Set<String> names = new LinkedHashSet<>();
    for (Batch batch : batches) {
      for (String name : batch.names()) {
        if (!names.add(name)) {
          throw new CannotWrite(
              "Two files would be called " + name + ": export fewer kinds or languages at once.");
        }
      }
    }
    List<Path> files = names.stream().map(folder::resolve).toList();
    for (Path file : files) {
      refuseTaken(file);
    }
    return files;
  }

  private static String taken(Path file, String remedy) {
    return file + " already exists: " + remedy + ", or choose another folder.";
  }

  private void refuseTaken(Path file) throws CannotWrite {
    if (Files.isDirectory(file)) {
      throw new CannotWrite(file + " is a folder: choose another folder to write to.");
    }
    if (!replace && Files.exists(file)) {
      throw new CannotWrite(
          taken(file, "add --replace to replace it"), taken(file, "replace existing files"));
    }
  }

  /**
   * Returns the files in the folder that an earlier export of the same kind left there. If files
   * may be replaced, {@link #write} deletes those that it does not write again.
   *
   * @throws CannotWrite if the folder cannot be read
   */
  public List<Path> outdated(List<Batch> batches) throws CannotWrite {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(file -> batches.stream().anyMatch(b -> b.isOutdated(name(file))))
          .filter(Files::isRegularFile)
          .sorted()
          .toList();
    } catch (IOException | UncheckedIOException e) {
      throw notWritten();
    }
  }

  private static String name(Path file) {
    return String.valueOf(file.getFileName());
  }

  /**
   * Writes all files of all batches.
   *
   * @param work receives the hundredths of a batch that are done, and of how many
   * @return the files in the order in which they were opened
   * @throws CannotWrite if one cannot be made; then nothing is written
   * @throws Cancelled if the work was cancelled; then nothing is written
   */
  public List<Path> write(List<Batch> batches, Progress work) throws CannotWrite, Cancelled {
    return write(batches, work, Disk.REAL);
  }

  List<Path> write(List<Batch> batches, Progress work, Disk disk) throws CannotWrite, Cancelled {
    List<Path> planned = planned(batches);
    if (planned.isEmpty()) {
      return List.of();
    }
    HiddenFolder hidden = hiddenFolder(disk);
    try {
      for (int i = 0; i < batches.size(); i++) {
        long before = 100L * i;
        long all = 100L * batches.size();
        batches
            .get(i)
            .writeTo(hidden, (done, of) -> work.at(before + Math.min(100, 100 * done / of), all));
        work.at(before + 100, all);
      }
      List<Path> files = hidden.moveAll();
      for (Path file : replace ? outdated(batches) : List.<Path>of()) {
        if (!files.contains(file)) {
          Files.deleteIfExists(file);
        }
      }
      return files;
    } catch (IOException e) {
      throw notWritten();
    } finally {
      hidden.clear();
    }
  }

  private HiddenFolder hiddenFolder(Disk disk) throws CannotWrite {
    try {
      boolean isNew = !Files.exists(folder);
      disk.makeFolders(folder);
      return new HiddenFolder(disk, disk.makeHiddenFolder(folder), isNew);
    } catch (FileAlreadyExistsException e) {
      throw new CannotWrite(folder + " is a file: choose a folder to write to.");
    } catch (IOException e) {
      throw notWritten();
    }
  }

  private CannotWrite notWritten() {
    return new CannotWrite(
        "Nothing was written to the folder "
            + folder
            + ": check that you may write there, and that there is room on the disk.");
  }

  /** The hidden folder, and the files that were opened in it so far. */
  @OneCall
  private final class HiddenFolder implements OutputTray {

    private final Disk disk;
    private final Path hidden;
    private final boolean folderIsNew;
    private final List<String> opened = new ArrayList<>();

    HiddenFolder(Disk disk, Path hidden, boolean folderIsNew) {
      this.disk = disk;
      this.hidden = hidden;
      this.folderIsNew = folderIsNew;
    }

    @Override
    public OutputStream open(String name) throws IOException {
      if (opened.contains(name)) {
        throw new FileAlreadyExistsException(name);
      }
      opened.add(name);
      return disk.open(hidden.resolve(name));
    }

    /** Moves the files to their places, once none of them would replace what it may not. */
    List<Path> moveAll() throws IOException, CannotWrite {
      for (String name : opened) {
        refuseTaken(folder.resolve(name));
      }
      List<Path> files = new ArrayList<>();
      for (String name : opened) {
        Path file = folder.resolve(name);
        disk.move(hidden.resolve(name), file);
        files.add(file);
      }
      disk.forceFolderOf(folder.resolve(opened.isEmpty() ? "." : opened.get(0)));
      return List.copyOf(files);
    }

    void clear() {
      try {
        for (String name : opened) {
          Files.deleteIfExists(hidden.resolve(name));
        }
        Files.deleteIfExists(hidden);
        if (folderIsNew) {
          Files.delete(folder); // fails, as it should, if the folder holds anything
        }
      } catch (IOException e) {
        return; // the folder holds what was written
      }
    }
  }
}
