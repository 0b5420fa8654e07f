package io.github.readfall.cli;

import io.github.readfall.base.finding.Finding;
import java.util.List;
import picocli.CommandLine.Option;

/** The options for a command's report. */
final class ReportOptions {

  @Option(names = "--json", description = "Print a JSON report and nothing else.")
  private boolean json;

  @Option(
      names = "--fail-on",
      paramLabel = "SEVERITY",
      defaultValue = "error",
      description =
          "Exit with status 1 if a finding is at least this severe: ${COMPLETION-CANDIDATES}"
              + " (default: error).")
  private FailOn failOn = FailOn.error;

  boolean json() {
    return json;
  }

  int status(List<Finding> findings) {
    return failOn.status(findings);
  }
}
