package io.github.readfall.series;

import io.github.readfall.base.files.UnusablePath;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import org.jspecify.annotations.Nullable;

/** A person's own copy of the series that comes with the program, to try things on. */
public final class SampleSeries {

  private SampleSeries() {}

  /**
   * The copy, made if it is not there yet. One that is there is left as the person has it.
   *
   * @param sample what is copied
   * @param copy the folder it is to be, not there yet or from an earlier call
   * @return the copy
   * @throws UnusablePath where it cannot be made; then nothing is there
   */
  public static Path copied(Path sample, Path copy) throws UnusablePath {
    if (Files.exists(copy)) {
      return copy;
    }
    Path part = copy.resolveSibling("." + copy.getFileName() + ".part");
    try {
      remove(part);
      Files.createDirectories(part);
      Files.walkFileTree(sample, new CopyTo(sample, part));
      Files.move(part, copy, StandardCopyOption.ATOMIC_MOVE);
      return copy;
    } catch (IOException e) {
      throw new UnusablePath(
          "The sample could not be copied to " + copy + ": check that there is room and you may.");
    }
  }

  /** What a copy that was broken off has left. */
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

    private Path place(Path path) {
      return to.resolve(from.relativize(path).toString());
    }

    @Override
    public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes is)
        throws IOException {
      Files.createDirectories(place(folder));
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes is) throws IOException {
      Files.write(place(file), Files.readAllBytes(file)); // not write-protected, as ours may be
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
