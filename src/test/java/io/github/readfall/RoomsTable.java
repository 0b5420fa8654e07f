package io.github.readfall;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** Reads the table of rooms in DEVELOPERS.md. */
final class RoomsTable {

  /** A room: its name, its sub-packages, the rooms and the libraries that it may import. */
  record Room(String name, List<String> subpackages, List<String> imports, List<String> libraries) {

    /** Its packages, without the part that all packages have in common. */
    Stream<String> packages() {
      return Stream.concat(Stream.of(name), subpackages.stream().map(sub -> name + "." + sub));
    }
  }

  private RoomsTable() {}

  static List<Room> rooms() throws IOException {
    return Files.readAllLines(Path.of("DEVELOPERS.md")).stream()
        .filter(line -> line.matches("\\| [a-z]+ \\|.*\\|.*\\|.*\\|.*\\|"))
        .filter(line -> !line.startsWith("| room"))
        .map(line -> line.split("\\|", -1))
        .map(cell -> new Room(cell[1].strip(), list(cell[3]), list(cell[4]), list(cell[5])))
        .toList();
  }

  private static List<String> list(String cell) {
    return Arrays.stream(cell.split(",", -1)).map(String::strip).filter(s -> !s.isEmpty()).toList();
  }
}
