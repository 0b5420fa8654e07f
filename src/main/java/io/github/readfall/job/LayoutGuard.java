package io.github.readfall.job;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.series.LayoutFile;
import java.util.List;
import java.util.Optional;

/** Keeps a layout from being written while the one on disk has faults that would be lost. */
public final class LayoutGuard {

  private LayoutGuard() {}

  /**
   * Refuses to replace a layout that could not be read.
   *
   * @throws UnusablePath with the first such fault
   */
  public static void refuse(List<Finding> findings, LayoutFile file) throws UnusablePath {
    Optional<Finding> lost =
        findings.stream()
            .filter(finding -> finding.rule().startsWith("layout/"))
            .filter(finding -> finding.severity() == Severity.ERROR)
            .findFirst();
    if (lost.isPresent()) {
      throw new UnusablePath(
          file.path()
              + " is not overwritten, since a part of it could not be read: "
              + lost.get().message()
              + " Fix it first, or move the file away.");
    }
  }
}
