package io.github.readfall.art;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The bands that were asked for last, as many as a fixed amount of memory holds. */
final class BandCache {

  private static final long MOST_BYTES = 24L << 20;
  private static final int FEW = 16;
  private static final float LOAD = 0.75f;

  private final Map<Key, BufferedImage> bands = new LinkedHashMap<>(FEW, LOAD, true);
  private final long[] bytes = {0};

  private record Key(int level, int index) {}

  /** Reads a band. */
  interface Reading {
    Optional<BufferedImage> read() throws IOException;
  }

  synchronized Optional<BufferedImage> get(int level, int index, Reading reading)
      throws IOException {
    Key key = new Key(level, index);
    BufferedImage known = bands.get(key);
    if (known != null) {
      return Optional.of(known);
    }
    Optional<BufferedImage> read = reading.read();
    read.ifPresent(image -> keep(key, image));
    return read;
  }

  private void keep(Key key, BufferedImage image) {
    bands.put(key, image);
    bytes[0] += size(image);
    Iterator<BufferedImage> oldest = bands.values().iterator();
    while (bytes[0] > MOST_BYTES && bands.size() > 1) {
      bytes[0] -= size(oldest.next());
      oldest.remove();
    }
  }

  synchronized void clear() {
    bands.clear();
    bytes[0] = 0;
  }

  private static long size(BufferedImage image) {
    return 4L * image.getWidth() * image.getHeight();
  }
}
