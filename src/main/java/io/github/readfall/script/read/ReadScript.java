package io.github.readfall.script.read;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.script.Script;
import java.util.List;

/**
 * A script and everything wrong with it.
 *
 * @param script everything that could be read
 * @param findings in the order of their lines
 */
public record ReadScript(Script script, List<Finding> findings) {

  public ReadScript {
    findings = List.copyOf(findings);
  }
}
