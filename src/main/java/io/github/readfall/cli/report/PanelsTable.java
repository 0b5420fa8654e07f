package io.github.readfall.cli.report;

import io.github.readfall.art.panels.FoundPanel;
import io.github.readfall.art.panels.MatchedPanel;
import io.github.readfall.base.geom.Box;
import io.github.readfall.job.PanelsProof;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Shows for people which panels were found in a strip's art. */
public final class PanelsTable {

  private static final List<String> HEADS =
      List.of("panel", "left", "top", "width", "height", "certainty", "reason");

  private static final List<Boolean> RIGHT = List.of(true, true, true, true, true, true, false);

  private PanelsTable() {}

  /** The panels in a line each, those boxes that are no panel, and the findings. */
  public static String of(PanelsProof proof) {
    List<List<String>> rows = new ArrayList<>(List.of(HEADS));
    for (MatchedPanel panel : proof.matched().panels()) {
      rows.add(row(Integer.toString(panel.number()), panel.found()));
    }
    proof.matched().extra().forEach(extra -> rows.add(row("none", extra)));
    String size =
        String.format(
            Locale.ROOT,
            "art %d × %d px on the strip; %s found, %s in the script",
            proof.found().widthPx(),
            proof.found().heightPx(),
            FindingLine.count(proof.found().panels().size(), "panel"),
            FindingLine.count(proof.fit().episode().script().panels().size(), "panel"));
    return FitTable.title(proof.fit())
        + "\n"
        + size
        + "\n\n"
        + TextTable.of(rows, RIGHT)
        + "\n"
        + StripTable.findings(proof.findings());
  }

  private static List<String> row(String panel, FoundPanel found) {
    Box box = found.box();
    return List.of(
        panel,
        px(box.x()),
        px(box.y()),
        px(box.width()),
        px(box.height()),
        String.format(Locale.ROOT, "%.0f %%", 100 * found.certainty()),
        found.reason());
  }

  private static String px(double length) {
    return String.format(Locale.ROOT, "%.0f", length);
  }
}
