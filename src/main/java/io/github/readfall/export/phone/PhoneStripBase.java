package io.github.readfall.export.phone;

import io.github.readfall.art.StripArt;
import io.github.readfall.base.geom.Box;
import io.github.readfall.export.html.Element;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.List;

/**
 * The common part of the strip in every language: its size, its art, and its pieces.
 *
 * @param widthPx of the strip
 * @param heightPx of the strip, or of its art if that continues below
 * @param artHeightPx down to the end of the art; 0 if there is none
 * @param pieces from the top
 */
record PhoneStripBase(double widthPx, int heightPx, int artHeightPx, List<StripPiece> pieces) {

  PhoneStripBase {
    pieces = List.copyOf(pieces);
  }

  static PhoneStripBase of(List<PhoneStrip> strips, StripArt art) {
    double tallest = strips.stream().mapToDouble(s -> s.galley().heightPx()).max().orElse(0);
    int heightPx = Math.max((int) Math.ceil(tallest), art.heightPx());
    List<Box> balloons =
        strips.stream()
            .flatMap(strip -> strip.galley().balloons().stream())
            .map(PlacedBalloon::reach)
            .toList();
    return new PhoneStripBase(
        strips.get(0).galley().widthPx(),
        heightPx,
        art.heightPx(),
        StripPiece.of(heightPx, balloons));
  }

  /** A piece with its lettering. */
  Element piece(int index, List<Element> drawn) {
    StripPiece piece = pieces.get(index);
    String width = Long.toString(Math.round(widthPx));
    String style = "aspect-ratio:" + width + "/" + piece.drawnPx();
    String overlap =
        piece.overlapPx() == 0 ? "" : ";margin-bottom:-" + Percent.of(piece.overlapPx() / widthPx);
    Element svg =
        Element.of("svg")
            .with("viewBox", "0 " + piece.topPx() + " " + width + " " + piece.drawnPx())
            .with("aria-hidden", "true")
            .holding(drawn);
    return Element.of("div").as("piece a" + index).with("style", style + overlap).holding(svg);
  }
}
