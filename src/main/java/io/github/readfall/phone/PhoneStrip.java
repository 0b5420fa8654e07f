package io.github.readfall.phone;

import io.github.readfall.finding.Finding;
import io.github.readfall.galley.Galley;
import io.github.readfall.transcript.Transcript;
import java.util.List;

/**
 * A strip in one language, as the phone proof shows it.
 *
 * @param galley the strip
 * @param findings what was found in it
 * @param transcript what it says
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
