package io.github.readfall.window.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ZoomTest {

  private static final Zoom.Room ROOM = new Zoom.Room(800, 1600, 2);

  @Test
  void fitWidthFillsTheRoom() {
    assertEquals(0.5, new Zoom.FitWidth().scale(ROOM));
  }

  @Test
  void actualPixelsGiveEachStripPixelOneOfTheDevice() {
    assertEquals(1, new Zoom.ActualPixels().scale(ROOM) * ROOM.devicePerPx());
  }

  @Test
  void phoneSizeIsOnePixelToADensityIndependentPixel() {
    assertEquals(360, new Zoom.PhoneSize(360).scale(ROOM) * ROOM.stripWidthPx(), 1e-9);
  }

  @Test
  void noFactorIsBeyondWhatCanBeShown() {
    assertEquals(Zoom.MOST, new Zoom.Factor(1000).scale(ROOM));
    assertEquals(Zoom.LEAST, new Zoom.Factor(1e-9).scale(ROOM));
    assertEquals(0.75, new Zoom.Factor(0.75).scale(ROOM));
  }
}
