package io.github.readfall.type.font;

import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Tests whether a face kerns no letter with the space beside it. */
final class SpaceKerning {

  private static final double TOLERANCE_UNITS = 0.01;
  private static final int FIRST = 0x21;
  private static final int LAST = 0x17F; // through Latin Extended-A

  private SpaceKerning() {}

  /** Shapes every Latin letter and sign of the face between spaces, and alone. */
  static boolean isAdditive(Face face) {
    if (!face.covers(' ')) {
      return false;
    }
    String letters =
        IntStream.rangeClosed(FIRST, LAST)
            .filter(c -> Character.isLetter(c) || c < 0x7F || c > 0xA0)
            .filter(c -> c != 0xAD && face.covers(c))
            .mapToObj(Character::toString)
            .collect(Collectors.joining(" "));
    GlyphRow row = face.shape(letters);
    if (row.size() != letters.length()) {
      return false;
    }
    double space = face.shape(" ").advance();
    return IntStream.range(0, row.size())
        .allMatch(
            i -> Math.abs(advance(row, i) - alone(face, letters, i, space)) < TOLERANCE_UNITS);
  }

  private static double advance(GlyphRow row, int i) {
    return row.x(i + 1) - row.x(i);
  }

  private static double alone(Face face, String letters, int i, double space) {
    return letters.charAt(i) == ' ' ? space : face.shape(letters.substring(i, i + 1)).advance();
  }
}
