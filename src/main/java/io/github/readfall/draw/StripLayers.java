package io.github.readfall.draw;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.strip.galley.Galley;
import java.util.List;
import java.util.stream.Stream;

/**
 * The drawing of a strip, sorted into layers, in strip pixels. The strip's art goes between the two
 * lists.
 *
 * @param underArt from back to front, hidden by art
 * @param overArt from back to front, over art
 */
public record StripLayers(List<Part> underArt, List<Part> overArt) {

  /** Colour of the reading path, and of the numbers on it. */
  public static final Colour PATH = Pen.PATH;

  /** Nothing at all. */
  public static final StripLayers NONE = new StripLayers(List.of(), List.of());

  /**
   * Marks that are seen or hidden together.
   *
   * @param layer that they belong to
   * @param marks from back to front
   */
  public record Part(Layer layer, List<Mark> marks) {
    public Part {
      marks = List.copyOf(marks);
    }
  }

  public StripLayers {
    underArt = List.copyOf(underArt);
    overArt = List.copyOf(overArt);
  }

  /**
   * The layers of a strip.
   *
   * @param findings those with a place on the strip are marked, unless they are ignored
   */
  public static StripLayers of(Galley galley, List<Finding> findings, Labels labels) {
    return of(galley, findings, labels, new DrawnCache());
  }

  /**
   * The layers of a strip that was drawn before.
   *
   * @param findings those with a place on the strip are marked, unless they are ignored
   * @param before saves drawing again what has not changed
   */
  public static StripLayers of(
      Galley galley, List<Finding> findings, Labels labels, DrawnCache before) {
    return new LayerArtist(galley, findings, Pen.of(galley, labels)).layers(before);
  }

  /**
   * The layers of a strip that is seen small, such as on paper.
   *
   * @param findings those with a place on the strip are marked; others are left out
   * @param larger by which factor lines and notes are larger than they are on a screen
   */
  public static StripLayers of(
      Galley galley, List<Finding> findings, Labels labels, double larger) {
    return new LayerArtist(galley, findings, Pen.of(galley, labels, larger))
        .layers(new DrawnCache());
  }

  /** The colour of a finding's mark. */
  public static Colour colourOf(Finding finding) {
    return finding.isOpen() ? FindingArtist.colour(finding.severity()) : Pen.QUIET;
  }

  /** Every mark of a layer, from back to front. */
  public List<Mark> marks(Layer layer) {
    return Stream.concat(underArt.stream(), overArt.stream())
        .filter(part -> part.layer() == layer)
        .flatMap(part -> part.marks().stream())
        .toList();
  }
}
