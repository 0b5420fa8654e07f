package io.github.readfall.script.lines;

import io.github.readfall.script.Keywords;
import io.github.readfall.script.LineKind;

/** Recognises lines that begin a panel or a scene. */
public final class BlockKeyword {

  private BlockKeyword() {}

  /** PANEL, SCENE, or DESCRIPTION if it begins neither. */
  static LineKind kind(Keywords keywords, String line, int start) {
    if (Keywords.endOf(keywords.panel(), line, start) >= 0) {
      return LineKind.PANEL;
    }
    return Keywords.endOf(keywords.scene(), line, start) >= 0
        ? LineKind.SCENE
        : LineKind.DESCRIPTION;
  }

  /** Index after the keyword of a panel's or scene's line. */
  public static int end(Keywords keywords, ClassifiedLine line) {
    String word = line.kind() == LineKind.PANEL ? keywords.panel() : keywords.scene();
    return Keywords.endOf(word, line.written().text(), line.start());
  }
}
