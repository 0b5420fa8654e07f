package io.github.readfall.cli;

import io.github.readfall.finding.Finding;
import io.github.readfall.finding.Severity;
import io.github.readfall.series.LayoutFile;
import java.util.List;
import java.util.Optional;

/** Keeps a layout from being written while the one on disk has faults that would be lost. */
final class Unsaved {

  private Unsaved() {}

  /**
   * Refuses to write over what could not be read.
   *
   * @throws CannotGoOn with the first such fault
   */
  static void refuse(List<Finding> findings, LayoutFile file) throws CannotGoOn {
    Optional<Finding> lost =
        findings.stream()
            .filter(finding -> finding.rule().startsWith("layout/"))
            .filter(finding -> finding.severity() == Severity.ERROR)
            .findFirst();
    if (lost.isPresent()) {
      throw new CannotGoOn(
          file.path()
              + " is not overwritten, since a part of it could not be read: "
              + lost.get().message()
              + " Mend it first, or move the file away.");
    }
  }
}
