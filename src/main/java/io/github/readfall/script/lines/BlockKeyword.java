package io.github.readfall.script.lines;

import io.github.readfall.script.Keywords;
import io.github.readfall.script.Letters;
import io.github.readfall.script.LineKind;

/** Recognises lines that begin a panel or a scene. */
public final class BlockKeyword {

  private BlockKeyword() {}

  /** PANEL, SCENE, or DESCRIPTION if it begins neither. */
  static LineKind kind(Keywords keywords, RawLine line) {
    if (endOf(keywords.panel(), line) >= 0) {
      return LineKind.PANEL;
    }
    return endOf(keywords.scene(), line) >= 0 ? LineKind.SCENE : LineKind.DESCRIPTION;
  }

  /** Index after the keyword of a panel's or scene's line. */
  public static int end(Keywords keywords, ClassifiedLine line) {
    return endOf(
        line.kind() == LineKind.PANEL ? keywords.panel() : keywords.scene(), line.written());
  }

  /** Index after the keyword that a line begins with; -1 if it does not begin with it. */
  public static int endOf(String keyword, RawLine line) {
    int start = line.start();
    int exact = Keywords.endOf(keyword, line.text(), start);
    int end = Keywords.endInAnyCase(keyword, line.text(), start);
    if (exact >= 0 || end < 0) {
      return exact;
    }
    String rest = line.text().substring(end, Math.max(end, line.end()));
    boolean alone = Letters.isBlank(PanelHeading.withoutSigns(rest));
    boolean heading =
        alone ? Character.isUpperCase(line.text().charAt(start)) : PanelHeading.isNumbered(rest);
    return heading ? end : -1;
  }
}
