package io.github.readfall.export.pdf;

import io.github.readfall.art.StripArt;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.script.Script;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.type.font.FontShelf;
import java.util.List;

/**
 * A strip in one language, to be proofed.
 *
 * @param file to be written, with its ending
 * @param galley the strip
 * @param findings on it
 * @param art under it
 * @param shelf the faces of notes
 */
public record ProofStrip(
    String file, Galley galley, List<Finding> findings, StripArt art, FontShelf shelf) {

  public ProofStrip {
    findings = List.copyOf(findings);
  }

  Script script() {
    return galley.set().script();
  }

  /** The episode's title, for people. */
  String title() {
    String title = script().title();
    return title.isBlank() ? "Untitled" : title;
  }
}
