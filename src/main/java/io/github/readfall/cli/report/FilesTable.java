package io.github.readfall.cli.report;

import io.github.readfall.base.finding.Finding;
import java.util.List;

/** Lists the files that a command wrote, and its findings, for people. */
public final class FilesTable {

  private FilesTable() {}

  /** A line for each. */
  public static String of(List<String> files, List<Finding> findings) {
    StringBuilder out = new StringBuilder();
    files.forEach(file -> out.append("wrote ").append(file).append('\n'));
    return out.append(files.isEmpty() ? "nothing changed, nothing written\n" : "")
        .append('\n')
        .append(StripTable.findings(findings))
        .toString();
  }
}
