package io.github.readfall.cli.report;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.viewing.Audit;
import io.github.readfall.job.LetteringAudit;
import io.github.readfall.job.StripProof;
import io.github.readfall.plan.order.Kendall;
import io.github.readfall.plan.order.ReadingOrder;
import io.github.readfall.strip.galley.Galley;
import java.util.List;
import java.util.Locale;

/** The findings on a strip, for people. */
public final class StripTable {

  private StripTable() {}

  /** The strip in a few lines, its findings, and how many there are. */
  public static String of(StripProof proof) {
    StringBuilder out = new StringBuilder();
    out.append(FitTable.title(proof.episode(), proof.galley().set())).append("\n\n");
    out.append(TextTable.of(facts(proof), List.of(false, false))).append('\n');
    List<Audit> audits = LetteringAudit.of(proof.galley().set());
    out.append(audits.isEmpty() ? "" : AuditTable.ofBalloons(audits) + "\n");
    out.append(audits.isEmpty() ? "" : AuditTable.CAUTION + "\n\n");
    out.append(findings(proof.findings()));
    return out.toString();
  }

  /** Findings, a line each, and their number. */
  static String findings(List<Finding> findings) {
    StringBuilder out = new StringBuilder();
    findings.forEach(finding -> out.append(FindingLine.of(finding)));
    return out.append(findings.isEmpty() ? "" : "\n")
        .append(FindingLine.counts(findings))
        .append('\n')
        .toString();
  }

  private static List<List<String>> facts(StripProof proof) {
    Galley galley = proof.galley();
    return List.of(
        List.of("strip", size(galley)),
        List.of(
            "content",
            FindingLine.count(galley.balloons().size(), "balloon")
                + " in "
                + FindingLine.count(galley.panels().size(), "panel")),
        List.of("places", places(proof)),
        List.of("order", order(galley)));
  }

  private static String size(Galley galley) {
    return String.format(Locale.ROOT, "%.0f × %.0f px", galley.widthPx(), galley.heightPx());
  }

  private static String places(StripProof proof) {
    return proof.episode().layout().isPresent()
        ? "from layout.json; the rest is computed"
        : "computed; there is no layout.json";
  }

  /** For example {@code as the script has it}, or the distance from it. */
  private static String order(Galley galley) {
    ReadingOrder order = ReadingOrder.of(galley);
    Kendall kendall = order.kendall();
    int moved = order.displaced().size();
    return kendall.inversions() == 0
        ? "as in the script"
        : String.format(
            Locale.ROOT,
            "%s out of order; %d of %d pairs are read the other way round (Kendall's tau %.3f)",
            FindingLine.count(moved, "balloon"),
            kendall.inversions(),
            kendall.pairs(),
            kendall.tau());
  }
}
