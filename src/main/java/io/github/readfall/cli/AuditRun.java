package io.github.readfall.cli;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.viewing.Audit;
import io.github.readfall.base.viewing.LetterKind;
import io.github.readfall.cli.report.AuditTable;
import io.github.readfall.cli.report.JsonReport;
import io.github.readfall.draw.AuditSheet;
import io.github.readfall.draw.Drawing;
import io.github.readfall.job.LetteringAudit;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.style.ReadStyle;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.series.SeriesStyle;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An audit of lettering by its measured heights alone.
 *
 * @param audits one for each given height
 * @param findings of series.toml, then of the heights
 * @param style that they were judged by
 * @param labels that set the words of the picture
 */
record AuditRun(List<Audit> audits, List<Finding> findings, HouseStyle style, Labels labels) {

  AuditRun {
    audits = List.copyOf(audits);
    findings = List.copyOf(findings);
  }

  /**
   * Audits the heights that were given.
   *
   * @param path a series, an episode or a script, for its strip and its phones; may be left out
   */
  static AuditRun of(AuditOptions options, Optional<Path> path) throws CannotProceed {
    ReadStyle read = style(path);
    HouseStyle style = read.style();
    double widthPx = options.stripWidthPx().orElse((double) style.strip().widthPx());
    boolean itsPhones = path.filter(SeriesStyle::isIn).isPresent();
    List<Audit> audits = new ArrayList<>();
    for (Map.Entry<LetterKind, Double> height : options.heightsPx().entrySet()) {
      audits.add(LetteringAudit.of(height.getKey(), height.getValue(), widthPx, style, itsPhones));
    }
    List<Finding> findings = new ArrayList<>(read.findings());
    audits.forEach(audit -> LetteringAudit.finding(audit, style).ifPresent(findings::add));
    return new AuditRun(audits, findings, style, new Labels(ProgramFiles.bundledFonts(), style));
  }

  private static ReadStyle style(Optional<Path> path) throws CannotProceed {
    try {
      return path.isPresent()
          ? SeriesStyle.at(path.get())
          : new ReadStyle(HouseStyle.DEFAULT, List.of());
    } catch (UnusablePath e) {
      throw new CannotProceed(e.getMessage());
    }
  }

  /** Prints tables, or a JSON report and nothing else. */
  void print(PrintWriter out, boolean json) {
    if (json) {
      out.println(new JsonReport(Version.number()).audit(audits, findings));
      return;
    }
    audits.forEach(audit -> out.println(AuditTable.of(audit)));
    findings.forEach(finding -> out.println(AuditTable.sentence(finding)));
    out.println((findings.isEmpty() ? "" : "\n") + AuditTable.CAUTION);
  }

  /** The first height, on the narrowest phone. */
  Drawing picture() {
    return AuditSheet.of(audits.get(0), style.narrowestPhone(), labels);
  }
}
