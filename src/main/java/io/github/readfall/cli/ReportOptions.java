package io.github.readfall.cli;

import io.github.readfall.base.finding.Finding;
import java.util.List;
import picocli.CommandLine.Option;

/** How a command reports what it found. */
final class ReportOptions {

  @Option(names = "--json", description = "Print a JSON report and nothing else.")
  private boolean json;

  @Option(
      names = "--fail-on",
      paramLabel = "SEVERITY",
      defaultValue = "error",
      description = "Exit 1 from this severity on: ${COMPLETION-CANDIDATES}.")
  private FailOn failOn = FailOn.error;

  boolean json() {
    return json;
  }

  int status(List<Finding> findings) {
    return failOn.status(findings);
  }
}
