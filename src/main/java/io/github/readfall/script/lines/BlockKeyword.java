package io.github.readfall.script.lines;

import io.github.readfall.script.Keywords;
import io.github.readfall.script.LineKind;

/** Tells whether a line begins a panel or a scene. */
public final class BlockKeyword {

  private BlockKeyword() {}

  /** PANEL, SCENE, or DESCRIPTION where it begins neither. */
  static LineKind kind(Keywords keywords, String line, int start) {
    if (Keywords.endOf(keywords.panel(), line, start) >= 0) {
      return LineKind.PANEL;
    }
    return Keywords.endOf(keywords.scene(), line, start) >= 0
        ? LineKind.SCENE
        : LineKind.DESCRIPTION;
  }

  /** Index behind the keyword that a panel's or scene's line begins with. */
  public static int end(Keywords keywords, ClassifiedLine line) {
    String word = line.kind() == LineKind.PANEL ? keywords.panel() : keywords.scene();
    return Keywords.endOf(word, line.written().text(), line.start());
  }
}
