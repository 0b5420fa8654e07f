package io.github.readfall.script;

import io.github.readfall.finding.Finding;
import java.util.List;

/**
 * A script and what was wrong with it.
 *
 * @param script all that could be read
 * @param findings in the order of the lines they are on
 */
public record ReadScript(Script script, List<Finding> findings) {

  public ReadScript {
    findings = List.copyOf(findings);
  }
}
