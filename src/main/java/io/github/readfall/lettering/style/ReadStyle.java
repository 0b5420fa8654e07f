package io.github.readfall.lettering.style;

import io.github.readfall.base.finding.Finding;
import java.util.List;

/**
 * A house style and everything wrong with the file it came from.
 *
 * @param style to letter by, with the built-in value wherever the file's cannot be used
 * @param findings in the order of the file
 */
public record ReadStyle(HouseStyle style, List<Finding> findings) {

  public ReadStyle {
    findings = List.copyOf(findings);
  }
}
