package io.github.readfall.art;

import io.github.readfall.base.OneCall;
import java.io.IOException;
import java.util.Arrays;

/** Scales a picture row by row, each new pixel being the mean of what it covers. */
@OneCall
public final class Resampler implements RowSink {

  private final int fromHeight;
  private final int toHeight;
  private final int toWidth;
  private final Weights across;
  private final float[] row;
  private final float[] sum;
  private final byte[] done;
  private final RowSink to;
  private long at;

  /**
   * A resampler from one size to another; all are positive.
   *
   * @param to takes the new rows
   */
  public Resampler(int fromWidth, int fromHeight, int toWidth, int toHeight, RowSink to) {
    this.fromHeight = fromHeight;
    this.toHeight = toHeight;
    this.toWidth = toWidth;
    this.across = Weights.of(fromWidth, toWidth);
    this.row = new float[3 * toWidth];
    this.sum = new float[3 * toWidth];
    this.done = new byte[3 * toWidth];
    this.to = to;
  }

  /** The share of each old pixel in each new one. */
  private static final class Weights {

    private final int[] from;
    private final int[] to;
    private final float[] share;

    private Weights(int[] from, int[] to, float[] share) {
      this.from = from;
      this.to = to;
      this.share = share;
    }

    /** The weights of a row: both rows are cut wherever either has an edge, in whole numbers. */
    static Weights of(int fromWidth, int toWidth) {
      int most = fromWidth + toWidth;
      int[] from = new int[most];
      int[] to = new int[most];
      float[] share = new float[most];
      long length = (long) fromWidth * toWidth;
      int parts = 0;
      for (long at = 0; at < length; parts++) {
        int old = (int) (at / toWidth);
        int made = (int) (at / fromWidth);
        long end = Math.min((old + 1L) * toWidth, (made + 1L) * fromWidth);
        from[parts] = old;
        to[parts] = made;
        share[parts] = (float) (end - at) / fromWidth;
        at = end;
      }
      return new Weights(
          Arrays.copyOf(from, parts), Arrays.copyOf(to, parts), Arrays.copyOf(share, parts));
    }

    void apply(byte[] rgb, float[] row) {
      Arrays.fill(row, 0);
      for (int i = 0; i < from.length; i++) {
        int old = 3 * from[i];
        int made = 3 * to[i];
        row[made] += share[i] * (rgb[old] & 0xff);
        row[made + 1] += share[i] * (rgb[old + 1] & 0xff);
        row[made + 2] += share[i] * (rgb[old + 2] & 0xff);
      }
    }
  }

  @Override
  public void row(byte[] rgb) throws IOException {
    across.apply(rgb, row);
    long end = at + toHeight;
    while (at < end) {
      long madeEnd = (at / fromHeight + 1) * fromHeight;
      long partEnd = Math.min(end, madeEnd);
      float share = (float) (partEnd - at) / fromHeight;
      for (int i = 0; i < sum.length; i++) {
        sum[i] += share * row[i];
      }
      at = partEnd;
      if (partEnd == madeEnd) {
        pass();
      }
    }
  }

  private void pass() throws IOException {
    for (int i = 0; i < 3 * toWidth; i++) {
      done[i] = (byte) Math.round(sum[i]);
    }
    Arrays.fill(sum, 0);
    to.row(done);
  }
}
