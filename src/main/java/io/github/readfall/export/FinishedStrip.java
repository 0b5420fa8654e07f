package io.github.readfall.export;

import io.github.readfall.art.StripArt;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.export.transcript.Original;
import io.github.readfall.script.Script;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.type.font.FontShelf;
import java.util.List;

/**
 * An episode's strip in one language, ready for export.
 *
 * @param name of the episode, for names of files, such as {@code ep01}
 * @param galley the strip; its script names the language
 * @param original language it was written in
 * @param findings on it
 * @param art under it; {@link StripArt#none} if nothing is drawn yet
 * @param shelf the faces of labels
 */
public record FinishedStrip(
    String name,
    Galley galley,
    Original original,
    List<Finding> findings,
    StripArt art,
    FontShelf shelf) {

  public FinishedStrip {
    findings = List.copyOf(findings);
  }

  /** The script of the strip. */
  public Script script() {
    return galley.set().script();
  }

  /** BCP 47. */
  public String language() {
    return script().language();
  }

  /** The beginning of all its files' names, such as {@code ep01-de}. */
  public String stem() {
    return name + "-" + language();
  }
}
