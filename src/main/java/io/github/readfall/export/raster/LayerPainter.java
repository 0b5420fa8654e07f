package io.github.readfall.export.raster;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.draw.GalleyArtist;
import io.github.readfall.draw.LayeredChain;
import io.github.readfall.draw.Mark;
import io.github.readfall.draw.render.Java2dPainter;
import io.github.readfall.draw.render.Reaches;
import io.github.readfall.strip.galley.Galley;
import java.awt.AlphaComposite;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/** Paints the layers of a strip's lettering, some rows at a time. */
final class LayerPainter {

  private final Map<LetteringLayer, BufferedImage> bands = new EnumMap<>(LetteringLayer.class);
  private final List<Reaching> chains;
  private final Reaches lettering;
  private final TailSplit split;

  /** A chain, and how far its ink reaches. */
  private record Reaching(LayeredChain chain, Reaches reaches) {
    static Reaching of(LayeredChain chain) {
      List<Mark> all =
          Stream.of(chain.balloons(), chain.tails(), chain.letters())
              .flatMap(List::stream)
              .toList();
      return new Reaching(chain, Reaches.of(all, 0));
    }
  }

  LayerPainter(Galley galley, int widthPx, int heightPx, int mostRows) {
    this.chains = LayeredChain.of(galley).stream().map(Reaching::of).toList();
    this.lettering = Reaches.of(GalleyArtist.lettering(galley), heightPx);
    this.split = new TailSplit(widthPx, mostRows);
    for (LetteringLayer layer : LetteringLayer.values()) {
      bands.put(layer, new BufferedImage(widthPx, mostRows, BufferedImage.TYPE_INT_ARGB));
    }
  }

  private BufferedImage band(LetteringLayer layer) {
    return Objects.requireNonNull(bands.get(layer));
  }

  /** The pixels of a layer's rows that were painted last: alpha, red, green, blue. */
  int[] pixels(LetteringLayer layer) {
    return ((DataBufferInt) band(layer).getRaster().getDataBuffer()).getData();
  }

  /**
   * Paints the layers again.
   *
   * @param top the first row's place on the strip
   * @param rows their number; not more than announced
   */
  void paint(int top, int rows) {
    for (LetteringLayer layer : LetteringLayer.values()) {
      Arrays.fill(pixels(layer), 0);
    }
    List<LayeredChain> here = new ArrayList<>();
    for (Reaching one : chains) {
      if (one.reaches().isInkBetween(top, top + rows)) {
        paint(one.chain(), here, top);
        here.add(one.chain());
      }
    }
    paint(LetteringLayer.LETTERING, lettering.between(top, top + rows), top);
  }

  private void paint(LayeredChain chain, List<LayeredChain> before, int top) {
    if (!before.isEmpty()) {
      clear(LetteringLayer.TAILS, chain.covered(), top);
      clear(LetteringLayer.TEXT, chain.covered(), top);
    }
    if (chain.joined().isPresent()) {
      Mark.Clip joined = chain.joined().get();
      split.paint(
          joined, chain.balloons(), top, band(LetteringLayer.BALLOONS), band(LetteringLayer.TAILS));
    } else {
      paint(LetteringLayer.BALLOONS, chain.balloons(), top);
    }
    paint(LetteringLayer.TAILS, chain.bubbles(), top);
    paint(LetteringLayer.TEXT, chain.letters(), top);
  }

  private void paint(LetteringLayer layer, List<Mark> marks, int top) {
    if (!marks.isEmpty()) {
      Graphics2D g = band(layer).createGraphics();
      g.translate(0, -top);
      Java2dPainter painter = new Java2dPainter(g);
      marks.forEach(mark -> mark.paintOn(painter));
      g.dispose();
    }
  }

  /** Clears what a later balloon covers from a layer. */
  private void clear(LetteringLayer layer, Path covered, int top) {
    if (!covered.steps().isEmpty()) {
      Graphics2D g = band(layer).createGraphics();
      g.translate(0, -top);
      g.setComposite(AlphaComposite.DstOut);
      new Java2dPainter(g).fill(new Mark.Fill(covered, Colour.WHITE));
      g.dispose();
    }
  }
}
