package io.github.readfall.cli.report;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Shortened;
import io.github.readfall.job.SeriesProof;
import io.github.readfall.job.StripProof;
import io.github.readfall.script.Script;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A whole series for people: its episodes one by one, and at the end an overview. */
public final class SeriesTable {

  private static final List<String> HEADS =
      List.of("episode", "title", "height px", "balloons", "errors", "warnings", "notes");
  private static final List<Boolean> RIGHT = List.of(false, false, true, true, true, true, true);
  private static final int LONGEST_TITLE = 28;

  private SeriesTable() {}

  /** Every episode's strip and findings, a table of them, and the findings between them. */
  public static String of(SeriesProof proof) {
    StringBuilder out = new StringBuilder();
    proof.episodes().forEach(episode -> out.append(StripTable.of(episode)).append('\n'));
    out.append(overview(proof)).append('\n');
    proof.findings().forEach(finding -> out.append(FindingLine.of(finding)));
    out.append(proof.findings().isEmpty() ? "" : "\n");
    return out.append(FindingLine.count(proof.episodes().size(), "episode"))
        .append(", ")
        .append(FindingLine.count(balloons(proof), "balloon"))
        .append("; ")
        .append(FindingLine.counts(proof.allFindings()))
        .append('\n')
        .toString();
  }

  /** One row for an episode, one for the series as a whole if that has findings. */
  private static String overview(SeriesProof proof) {
    List<List<String>> rows = new ArrayList<>(List.of(HEADS));
    proof.episodes().forEach(episode -> rows.add(row(episode)));
    if (!proof.findings().isEmpty()) {
      rows.add(row("series", "", "", "", proof.findings()));
    }
    return TextTable.of(rows, RIGHT);
  }

  private static List<String> row(StripProof episode) {
    Script script = episode.episode().script();
    return row(
        name(episode),
        Shortened.to(LONGEST_TITLE, script.title()),
        String.format(Locale.ROOT, "%.0f", episode.galley().heightPx()),
        String.valueOf(episode.galley().balloons().size()),
        episode.findings());
  }

  private static List<String> row(
      String name, String title, String height, String balloons, List<Finding> findings) {
    return List.of(
        name,
        title,
        height,
        balloons,
        count(findings, Severity.ERROR),
        count(findings, Severity.WARNING),
        count(findings, Severity.NOTE));
  }

  /** The episode's folder. */
  private static String name(StripProof episode) {
    var folder = episode.episode().path().toAbsolutePath().getParent();
    return folder == null ? "" : String.valueOf(folder.getFileName());
  }

  private static String count(List<Finding> findings, Severity severity) {
    return Integer.toString(Finding.countOpen(findings, severity));
  }

  private static int balloons(SeriesProof proof) {
    return proof.episodes().stream().mapToInt(e -> e.galley().balloons().size()).sum();
  }
}
