package io.github.readfall.script.read;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.script.Script;
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
