package io.github.readfall.export.phone;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.export.transcript.Transcript;
import io.github.readfall.strip.galley.Galley;
import java.util.List;

/**
 * A strip in one language, as the phone proof shows it.
 *
 * @param galley the strip
 * @param findings on it
 * @param transcript of it
 */
public record PhoneStrip(Galley galley, List<Finding> findings, Transcript transcript) {

  public PhoneStrip {
    findings = List.copyOf(findings);
  }

  /** BCP 47. */
  String language() {
    return transcript.language();
  }
}
