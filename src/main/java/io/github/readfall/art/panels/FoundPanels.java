package io.github.readfall.art.panels;

import java.util.List;

/**
 * The panels found in the art of a strip.
 *
 * @param widthPx of the strip
 * @param heightPx of the art, in strip pixels
 * @param panels in no order
 * @param sketch the art, small
 */
public record FoundPanels(int widthPx, int heightPx, List<FoundPanel> panels, ArtSketch sketch) {

  public FoundPanels {
    panels = List.copyOf(panels);
  }
}
