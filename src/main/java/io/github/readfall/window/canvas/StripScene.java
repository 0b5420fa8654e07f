package io.github.readfall.window.canvas;

import io.github.readfall.art.ArtStore;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.draw.Layer;
import io.github.readfall.draw.Mark;
import io.github.readfall.draw.StripLayers;
import io.github.readfall.draw.render.MarksHash;
import io.github.readfall.draw.render.Reaches;
import io.github.readfall.strip.galley.Galley;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Everything that is visible of a strip, ready to be painted piece by piece on any thread. Lengths
 * are strip pixels.
 */
public final class StripScene {

  private final double widthPx;
  private final double heightPx;
  private final List<Sheet> underArt;
  private final List<Sheet> overArt;
  private final Optional<ArtStore> art;
  private final Colour paper;

  /** The marks of a part of a layer, indexed by height. */
  private record Sheet(Layer layer, Reaches marks) {}

  private StripScene(
      double widthPx,
      double heightPx,
      List<Sheet> underArt,
      List<Sheet> overArt,
      Optional<ArtStore> art,
      Colour paper) {
    this.widthPx = widthPx;
    this.heightPx = heightPx;
    this.underArt = underArt;
    this.overArt = overArt;
    this.art = art;
    this.paper = paper;
  }

  /** An empty strip. */
  public static StripScene empty(double widthPx) {
    return of(widthPx, 0, StripLayers.NONE, Optional.empty(), Colour.WHITE);
  }

  /** A strip with its layers and its art. Takes some milliseconds: not for the event thread. */
  public static StripScene of(Galley galley, StripLayers layers, Optional<ArtStore> art) {
    double artPx = art.map(store -> (double) store.art().heightPx()).orElse(0.0);
    double heightPx = Math.max(galley.heightPx(), artPx);
    return of(galley.widthPx(), heightPx, layers, art, Colour.WHITE);
  }

  /**
   * A strip from its parts.
   *
   * @param widthPx positive
   * @param heightPx not negative
   * @param paper the colour under everything
   */
  public static StripScene of(
      double widthPx, double heightPx, StripLayers layers, Optional<ArtStore> art, Colour paper) {
    return new StripScene(
        widthPx,
        heightPx,
        sheets(layers.underArt(), heightPx),
        sheets(layers.overArt(), heightPx),
        art,
        paper);
  }

  private static List<Sheet> sheets(List<StripLayers.Part> parts, double heightPx) {
    return parts.stream()
        .filter(part -> !part.marks().isEmpty())
        .map(part -> new Sheet(part.layer(), Reaches.of(part.marks(), heightPx)))
        .toList();
  }

  /** The same strip with other art; its marks are not indexed again. */
  public StripScene with(Optional<ArtStore> other) {
    double artPx = other.map(store -> (double) store.art().heightPx()).orElse(0.0);
    return new StripScene(widthPx, Math.max(heightPx, artPx), underArt, overArt, other, paper);
  }

  public double widthPx() {
    return widthPx;
  }

  public double heightPx() {
    return heightPx;
  }

  public Optional<ArtStore> art() {
    return art;
  }

  public Colour paper() {
    return paper;
  }

  /** Whether a layer has any marks. */
  public boolean has(Layer layer) {
    return Stream.concat(underArt.stream(), overArt.stream())
        .anyMatch(sheet -> sheet.layer() == layer);
  }

  /** The marks under the art between two heights, from back to front. */
  List<Mark> underArt(Set<Layer> layers, double fromPx, double toPx) {
    return between(underArt, layers, fromPx, toPx);
  }

  /** The marks over the art between two heights, from back to front. */
  List<Mark> overArt(Set<Layer> layers, double fromPx, double toPx) {
    return between(overArt, layers, fromPx, toPx);
  }

  private static List<Mark> between(
      List<Sheet> sheets, Set<Layer> layers, double fromPx, double toPx) {
    return sheets.stream()
        .filter(sheet -> layers.contains(sheet.layer()))
        .flatMap(sheet -> sheet.marks().between(fromPx, toPx).stream())
        .toList();
  }

  /** A hash of the marks between two heights; art is not part of it. */
  long fingerprint(Set<Layer> layers, double fromPx, double toPx) {
    long under = MarksHash.of(underArt(layers, fromPx, toPx));
    return 31 * under + MarksHash.of(overArt(layers, fromPx, toPx)) + 31L * 31 * paper.rgb();
  }
}
