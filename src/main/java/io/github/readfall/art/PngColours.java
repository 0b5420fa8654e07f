package io.github.readfall.art;

import ar.com.hjg.pngj.ImageInfo;
import ar.com.hjg.pngj.ImageLineByte;
import ar.com.hjg.pngj.chunks.PngChunkPLTE;
import ar.com.hjg.pngj.chunks.PngChunkTRNS;
import org.jspecify.annotations.Nullable;

/**
 * Turns the samples of a PNG into red, green and blue over white (PNG specification, third edition,
 * 6.1 "Colour types and values", 11.3.1 "Transparency information").
 */
final class PngColours {

  private static final int OPAQUE = 255;

  private final ImageInfo info;
  private final byte[] looked;
  private final int[] clear;

  /**
   * The colours of one kind of picture.
   *
   * @param looked the colour of each value of a sample, if there is only one sample and no alpha
   * @param clear the one colour that is transparent; empty if there is none
   */
  private PngColours(ImageInfo info, byte[] looked, int[] clear) {
    this.info = info;
    this.looked = looked;
    this.clear = clear;
  }

  static PngColours of(
      ImageInfo info, @Nullable PngChunkPLTE palette, @Nullable PngChunkTRNS transparency) {
    if (palette != null && info.indexed) {
      return new PngColours(info, paletteOver(palette, transparency), new int[0]);
    }
    if (info.greyscale && !info.alpha) {
      return new PngColours(info, greys(info, transparency), new int[0]);
    }
    boolean keyed = transparency != null && !info.alpha;
    return new PngColours(
        info, new byte[0], keyed && transparency != null ? transparency.getRGB() : new int[0]);
  }

  private static byte[] paletteOver(PngChunkPLTE palette, @Nullable PngChunkTRNS transparency) {
    int[] alphas = transparency == null ? new int[0] : transparency.getPalletteAlpha();
    byte[] looked = new byte[3 * 256];
    int[] rgb = new int[3];
    for (int i = 0; i < palette.getNentries(); i++) {
      palette.getEntryRgb(i, rgb);
      for (int channel = 0; channel < 3; channel++) {
        looked[3 * i + channel] = overWhite(rgb[channel], i < alphas.length ? alphas[i] : OPAQUE);
      }
    }
    return looked;
  }

  /** The grey of each value, by the high byte if a sample has two. */
  private static byte[] greys(ImageInfo info, @Nullable PngChunkTRNS transparency) {
    int depth = Math.min(8, info.bitDepth);
    int most = (1 << depth) - 1;
    int none = transparency == null ? -1 : transparency.getGray() >> (info.bitDepth - depth);
    byte[] looked = new byte[3 * 256];
    for (int i = 0; i <= most; i++) {
      int grey = i == none ? OPAQUE : i * OPAQUE / most;
      looked[3 * i] = (byte) grey;
      looked[3 * i + 1] = (byte) grey;
      looked[3 * i + 2] = (byte) grey;
    }
    return looked;
  }

  void toRgb(ImageLineByte line, byte[] rgb) {
    byte[] samples = line.getScanlineByte();
    if (looked.length > 0) {
      lookUp(samples, rgb);
    } else if (info.alpha) {
      blend(samples, rgb);
    } else {
      System.arraycopy(samples, 0, rgb, 0, 3 * info.cols);
      clear(line, rgb);
    }
  }

  private void lookUp(byte[] samples, byte[] rgb) {
    for (int x = 0; x < info.cols; x++) {
      int at = 3 * (samples[x] & 0xff);
      rgb[3 * x] = looked[at];
      rgb[3 * x + 1] = looked[at + 1];
      rgb[3 * x + 2] = looked[at + 2];
    }
  }

  private void blend(byte[] samples, byte[] rgb) {
    int channels = info.channels;
    boolean grey = channels == 2;
    for (int x = 0; x < info.cols; x++) {
      int at = channels * x;
      int alpha = samples[at + channels - 1] & 0xff;
      rgb[3 * x] = overWhite(samples[at] & 0xff, alpha);
      rgb[3 * x + 1] = overWhite(samples[grey ? at : at + 1] & 0xff, alpha);
      rgb[3 * x + 2] = overWhite(samples[grey ? at : at + 2] & 0xff, alpha);
    }
  }

  private void clear(ImageLineByte line, byte[] rgb) {
    if (clear.length == 0) {
      return;
    }
    for (int x = 0; x < info.cols; x++) {
      if (line.getElem(3 * x) == clear[0]
          && line.getElem(3 * x + 1) == clear[1]
          && line.getElem(3 * x + 2) == clear[2]) {
        rgb[3 * x] = (byte) OPAQUE;
        rgb[3 * x + 1] = (byte) OPAQUE;
        rgb[3 * x + 2] = (byte) OPAQUE;
      }
    }
  }

  private static byte overWhite(int value, int alpha) {
    return (byte) (alpha == OPAQUE ? value : OPAQUE - (OPAQUE - value) * alpha / OPAQUE);
  }
}
