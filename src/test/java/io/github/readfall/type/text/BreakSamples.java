package io.github.readfall.type.text;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.BitSet;
import java.util.List;

/** Reads the Unicode Character Database's samples of breaks, version 15.0. */
final class BreakSamples {

  private static final Path FOLDER = Path.of("src/test/resources/text/unicode");

  /**
   * One sample.
   *
   * @param text what may be broken
   * @param breaks UTF-16 indices at which it may, its end included
   * @param comment the file's own explanation
   */
  record Sample(String text, BitSet breaks, String comment) {

    static Sample of(String line) {
      String[] parts = line.split("#", 2);
      StringBuilder text = new StringBuilder();
      BitSet breaks = new BitSet();
      for (String sign : parts[0].trim().split("\\s+", -1)) {
        if (sign.equals("÷")) {
          breaks.set(text.length());
        } else if (!sign.equals("×")) {
          text.appendCodePoint(Integer.parseInt(sign, 16));
        }
      }
      breaks.clear(0);
      return new Sample(text.toString(), breaks, parts[1].trim());
    }
  }

  private BreakSamples() {}

  static List<Sample> lineBreaks() throws IOException {
    return read("LineBreakTest.txt");
  }

  static List<Sample> graphemeBreaks() throws IOException {
    return read("GraphemeBreakTest.txt");
  }

  private static List<Sample> read(String name) throws IOException {
    return Files.readAllLines(FOLDER.resolve(name)).stream()
        .filter(line -> line.startsWith("÷") || line.startsWith("×"))
        .map(Sample::of)
        .toList();
  }
}
