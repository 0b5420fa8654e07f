package io.github.readfall.draw;

import io.github.readfall.finding.Finding;
import io.github.readfall.galley.Galley;
import io.github.readfall.typeset.Labels;
import java.util.List;
import java.util.stream.Stream;

/**
 * What can be seen of a strip, sorted into layers, in strip pixels. Between the two lists there is
 * room for the strip's art.
 *
 * @param underArt from back to front, what art hides
 * @param overArt from back to front, what is seen over art
 */
public record StripLayers(List<Part> underArt, List<Part> overArt) {

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
   * @param findings those with a place on the strip are marked, unless they are set aside
   */
  public static StripLayers of(Galley galley, List<Finding> findings, Labels labels) {
    return of(galley, findings, labels, new DrawnBefore());
  }

  /**
   * The layers of a strip that was drawn before.
   *
   * @param findings those with a place on the strip are marked, unless they are set aside
   * @param before spares drawing again what has not changed
   */
  public static StripLayers of(
      Galley galley, List<Finding> findings, Labels labels, DrawnBefore before) {
    List<Finding> open = findings.stream().filter(Finding::isOpen).toList();
    return new LayerArtist(galley, open, labels).layers(before);
  }

  /** Every mark of a layer, from back to front. */
  public List<Mark> marks(Layer layer) {
    return Stream.concat(underArt.stream(), overArt.stream())
        .filter(part -> part.layer() == layer)
        .flatMap(part -> part.marks().stream())
        .toList();
  }
}
