package io.github.readfall.series.autosave;

import io.github.readfall.base.files.SafeFile;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.wording.Wording;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalInt;

/**
 * Names beside a script that say what they hold: {@code script.theirs.txt}, {@code
 * script.theirs-2.txt}.
 *
 * @param folder of the files
 * @param stem with a dot and the content's name: {@code script.theirs}
 * @param ending with the dot; may be empty
 */
record SiblingNames(Path folder, String stem, String ending) {

  /** Far more than anyone keeps beside one script; house default, no source. */
  private static final int MOST = 10_000;

  /**
   * Names for something of a script.
   *
   * @param what they hold: {@code theirs}
   */
  static SiblingNames of(Path script, String what) {
    String name = String.valueOf(script.getFileName());
    int dot = name.lastIndexOf('.');
    String stem = dot > 0 ? name.substring(0, dot) : name;
    String ending = dot > 0 ? name.substring(dot) : "";
    return new SiblingNames(script.resolveSibling(".").normalize(), stem + "." + what, ending);
  }

  /** The name with a number, from 1; the first bears none. */
  Path numbered(long number) {
    return folder.resolve(number == 1 ? stem + ending : stem + "-" + number + ending);
  }

  /** The number of such a name; empty for any other. */
  OptionalInt number(Path file) {
    String name = String.valueOf(file.getFileName());
    if (name.equals(stem + ending)) {
      return OptionalInt.of(1);
    }
    boolean alike = name.startsWith(stem + "-") && name.endsWith(ending);
    int digits = name.length() - stem.length() - 1 - ending.length();
    if (!alike || digits < 1 || digits > 9) {
      return OptionalInt.empty();
    }
    String between = name.substring(stem.length() + 1, stem.length() + 1 + digits);
    return between.chars().allMatch(c -> c >= '0' && c <= '9')
        ? OptionalInt.of(Integer.parseInt(between))
        : OptionalInt.empty();
  }

  /**
   * Keeps bytes under the first free name.
   *
   * @throws UnusablePath if they cannot be written
   */
  Path keep(byte[] bytes) throws UnusablePath {
    Path file = reserve();
    boolean written = false;
    try {
      SafeFile.write(file, out -> out.write(bytes));
      written = true;
      return file;
    } finally {
      if (!written) {
        deleteQuietly(file);
      }
    }
  }

  /** Takes a name by an empty file, so that no other's is ever replaced. */
  private Path reserve() throws UnusablePath {
    for (int number = 1; number < MOST; number++) {
      if (isTaken(numbered(number))) {
        return numbered(number);
      }
    }
    throw new UnusablePath(Wording.of("autosave.beside", folder));
  }

  private boolean isTaken(Path name) throws UnusablePath {
    try {
      return SafeFile.reserve(name);
    } catch (IOException e) {
      throw new UnusablePath(Wording.of("autosave.beside", folder));
    }
  }

  private static void deleteQuietly(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      return; // an empty file is left; the reason why it could not be filled is reported
    }
  }
}
