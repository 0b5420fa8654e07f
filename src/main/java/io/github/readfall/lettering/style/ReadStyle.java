package io.github.readfall.lettering.style;

import io.github.readfall.base.finding.Finding;
import java.util.List;

/**
 * A house style and what was wrong with the file it came from.
 *
 * @param style to letter by: the built-in value stands wherever the file's is of no use
 * @param findings in the order of the file
 */
public record ReadStyle(HouseStyle style, List<Finding> findings) {

  public ReadStyle {
    findings = List.copyOf(findings);
  }
}
