package io.github.readfall.strip.json;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.strip.Layout;
import java.util.List;
import java.util.Optional;

/**
 * The result of reading layout.json.
 *
 * @param layout what could be used; empty if nothing could
 * @param findings everything wrong with it
 */
public record ReadLayout(Optional<Layout> layout, List<Finding> findings) {
  public ReadLayout {
    findings = List.copyOf(findings);
  }
}
