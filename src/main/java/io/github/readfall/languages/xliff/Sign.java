package io.github.readfall.languages.xliff;

import io.github.readfall.languages.xml.XmlElement;
import java.util.Arrays;
import java.util.Optional;

/**
 * The signs that the script's markup and inline codes share (XLIFF 2.1, 4.3.1.36: the subTypes).
 */
enum Sign {
  STRONG("xlf:b", "b", "*"),
  SLANTED("xlf:i", "i", "_"),
  BREAK("xlf:lb", "lb", " / ");

  private final String subType;
  private final String letter;
  private final String written;

  Sign(String subType, String letter, String written) {
    this.subType = subType;
    this.letter = letter;
    this.written = written;
  }

  /** Beginning of the ids of its codes. */
  String letter() {
    return letter;
  }

  /** The sign in the script. */
  String written() {
    return written;
  }

  /** The id of its original data. */
  String dataId() {
    return "d-" + letter;
  }

  /** The attributes that identify it. */
  String attributes() {
    return " type=\"fmt\" subType=\"" + subType + "\"";
  }

  /** Its change of the look of letters, a sum of these; 0 for a break. */
  int look() {
    return switch (this) {
      case STRONG -> 1;
      case SLANTED -> 2;
      case BREAK -> 0;
    };
  }

  /** The sign of an inline code. */
  static Optional<Sign> of(XmlElement code) {
    String subType = code.attribute("subType").orElse("");
    boolean placeholder = code.local().equals("ph");
    return code.attribute("type").filter("fmt"::equals).isEmpty()
        ? Optional.empty()
        : Arrays.stream(values())
            .filter(sign -> sign.subType.equals(subType) && (sign == BREAK) == placeholder)
            .findFirst();
  }
}
