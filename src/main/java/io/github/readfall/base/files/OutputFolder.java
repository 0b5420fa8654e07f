package io.github.readfall.base.files;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A folder that files are written into. They are made in a hidden folder within it, on the same
 * disk, and are moved to their places when all are complete: until then what was there is
 * untouched, and whatever goes wrong leaves nothing behind.
 *
 * @param folder made where it is not there yet
 * @param replace whether files of the same names may be replaced
 */
public record OutputFolder(Path folder, boolean replace) {

  /**
   * The files that a list of batches will write, as far as can be said before.
   *
   * @throws CannotWrite where one is there already and may not be replaced, or two have one name
   */
  public List<Path> planned(List<Batch> batches) throws CannotWrite {
    Set<String> names = new LinkedHashSet<>();
    for (Batch batch : batches) {
      for (String name : batch.names()) {
        if (!names.add(name)) {
          throw new CannotWrite("Two files would be called " + name + ": ask for fewer at once.");
        }
      }
    }
    List<Path> files = names.stream().map(folder::resolve).toList();
    for (Path file : files) {
      refuseTaken(file);
    }
    return files;
  }

  private void refuseTaken(Path file) throws CannotWrite {
    if (Files.isDirectory(file)) {
      throw new CannotWrite(file + " is a folder: name another folder to write into.");
    }
    if (!replace && Files.exists(file)) {
      throw new CannotWrite(
          file + " is there already: say --replace to write it anew, or name another folder.");
    }
  }

  /**
   * The files in the folder that an earlier making of the same left there. Those that are not
   * written again are taken away where files may be replaced, and stay otherwise.
   *
   * @throws CannotWrite where the folder cannot be read
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
      throw full();
    }
  }

  private static String name(Path file) {
    return String.valueOf(file.getFileName());
  }

  /**
   * Makes all files of all batches.
   *
   * @param work is told the hundredths of a batch that are done, and of how many
   * @return the files in the order in which they were opened
   * @throws CannotWrite where one cannot be made; nothing is written then
   * @throws Cancelled where the work was ended; nothing is written then
   */
  public List<Path> write(List<Batch> batches, Progress work) throws CannotWrite, Cancelled {
    List<Path> planned = planned(batches);
    if (planned.isEmpty()) {
      return List.of();
    }
    Making making = making();
    try {
      for (int i = 0; i < batches.size(); i++) {
        long before = 100L * i;
        long all = 100L * batches.size();
        batches
            .get(i)
            .writeTo(making, (done, of) -> work.at(before + Math.min(100, 100 * done / of), all));
        work.at(before + 100, all);
      }
      List<Path> files = making.moved();
      for (Path file : replace ? outdated(batches) : List.<Path>of()) {
        if (!files.contains(file)) {
          Files.deleteIfExists(file);
        }
      }
      return files;
    } catch (IOException e) {
      throw full();
    } finally {
      making.clear();
    }
  }

  private Making making() throws CannotWrite {
    try {
      boolean isNew = !Files.exists(folder);
      Files.createDirectories(folder);
      return new Making(Files.createTempDirectory(folder, ".part-"), isNew, new ArrayList<>());
    } catch (FileAlreadyExistsException e) {
      throw new CannotWrite(folder + " is a file: name a folder to write into.");
    } catch (IOException e) {
      throw full();
    }
  }

  private CannotWrite full() {
    return new CannotWrite(
        "The folder "
            + folder
            + " could not be written to, and was left as it was: check that it is yours, and that"
            + " there is room on the disk.");
  }

  /** The hidden folder, and what was opened in it so far. */
  private final class Making implements OutputTray {

    private final Path hidden;
    private final boolean folderIsNew;
    private final List<String> opened;

    Making(Path hidden, boolean folderIsNew, List<String> opened) {
      this.hidden = hidden;
      this.folderIsNew = folderIsNew;
      this.opened = opened;
    }

    @Override
    public OutputStream open(String name) throws IOException {
      opened.add(name);
      return new BufferedOutputStream(
          Files.newOutputStream(hidden.resolve(name), StandardOpenOption.CREATE_NEW), 1 << 16);
    }

    List<Path> moved() throws IOException, CannotWrite {
      for (String name : opened) {
        refuseTaken(folder.resolve(name));
      }
      List<Path> files = new ArrayList<>();
      for (String name : opened) {
        Path file = folder.resolve(name);
        move(hidden.resolve(name), file);
        files.add(file);
      }
      return List.copyOf(files);
    }

    private static void move(Path from, Path to) throws IOException {
      try {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
      } catch (AtomicMoveNotSupportedException e) {
        Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
      }
    }

    void clear() {
      try {
        for (String name : opened) {
          Files.deleteIfExists(hidden.resolve(name));
        }
        Files.deleteIfExists(hidden);
        if (folderIsNew) {
          Files.delete(folder); // only if nothing is in it
        }
      } catch (IOException e) {
        return; // the folder is in use now: it holds what was written
      }
    }
  }
}
