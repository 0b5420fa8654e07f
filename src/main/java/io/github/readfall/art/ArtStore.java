package io.github.readfall.art;

import io.github.readfall.base.OneCall;
import io.github.readfall.base.cache.ByteCache;
import java.awt.image.BufferedImage;
import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.ClosedChannelException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * The art of a strip, ready to be shown at any size: read once from the top, then kept in a file of
 * its own in bands, as wide as the strip and in halves of that. What has been read can be shown
 * while the rest is still being read. Bands may be asked for from any thread.
 */
public final class ArtStore implements Closeable {

  /** Rows of a band at every level, except the last band. */
  public static final int BAND_ROWS = BandLevel.BAND_ROWS;

  /** Width down to which it is halved. */
  private static final int NARROWEST_PX = 128;

  private static final int ROWS_BETWEEN_NEWS = 256;
  private static final long MOST_CACHED_BYTES = 24L << 20;
  private static final byte WHITE = (byte) 255;

  private final StripArt art;
  private final BandFile file;
  private final List<BandLevel> levels;
  private final ByteCache<BandKey, BufferedImage> cache =
      new ByteCache<>(MOST_CACHED_BYTES, band -> 4L * band.getWidth() * band.getHeight());
  private final List<String> problems = new CopyOnWriteArrayList<>();
  private final AtomicBoolean closed = new AtomicBoolean();

  private record BandKey(int level, int index) {}

  /** Reading was cancelled by the caller. */
  private static final class Stopped extends IOException {
    private static final long serialVersionUID = 1;
  }

  private ArtStore(StripArt art, BandFile file) {
    this.art = art;
    this.file = file;
    this.levels = levels(art, file);
  }

  /**
   * An empty store for the art of a strip.
   *
   * @throws UnreadableArt if there is no room for it on disk
   */
  public static ArtStore of(StripArt art) throws UnreadableArt {
    try {
      return new ArtStore(art, new BandFile());
    } catch (IOException e) {
      throw noRoom();
    }
  }

  private static UnreadableArt noRoom() {
    return new UnreadableArt(
        "The art cannot be shown, because the folder for temporary files is full or may not be"
            + " written to: make room there.");
  }

  private static List<BandLevel> levels(StripArt art, BandFile file) {
    List<int[]> sizes = new ArrayList<>();
    int width = art.widthPx();
    int height = art.heightPx();
    sizes.add(new int[] {width, height});
    while (width > NARROWEST_PX) {
      width = Halving.half(width);
      height = Halving.half(height);
      sizes.add(new int[] {width, height});
    }
    List<BandLevel> levels = new ArrayList<>();
    Optional<BandLevel> smaller = Optional.empty();
    for (int i = sizes.size() - 1; i >= 0; i--) {
      BandLevel level = new BandLevel(file, sizes.get(i)[0], sizes.get(i)[1], smaller);
      levels.add(0, level);
      smaller = Optional.of(level);
    }
    return List.copyOf(levels);
  }

  /** The art in the store. */
  public StripArt art() {
    return art;
  }

  /** The number of sizes: the strip's at 0, then half of it, and so on. */
  public int levels() {
    return levels.size();
  }

  public int widthPx(int level) {
    return levels.get(level).width();
  }

  public int heightPx(int level) {
    return levels.get(level).height();
  }

  /** The number of rows of a level, from the top, that can be shown now. */
  public int readyRows(int level) {
    return levels.get(level).readyRows();
  }

  /** One sentence for each page that could not be read. */
  public List<String> problems() {
    return List.copyOf(problems);
  }

  /**
   * Reads the art, once, on the calling thread; pages that cannot be read stay white and are named
   * in {@link #problems}.
   *
   * @return true if it came to the end
   */
  public boolean fill(ArtProgress progress) {
    try {
      for (ArtPage page : art.pages()) {
        fill(page, progress);
      }
      for (BandLevel level : levels) {
        level.end();
      }
      return true;
    } catch (Stopped | ClosedChannelException e) {
      return false;
    } catch (IOException e) {
      problems.add(noRoom().getMessage());
      return false;
    }
  }

  private void fill(ArtPage page, ArtProgress progress) throws IOException {
    int top = (int) page.box().y();
    int height = (int) page.box().height();
    CountedRows counted = new CountedRows(top, height, progress);
    try {
      page.pour(counted);
    } catch (UnreadableArt e) {
      problems.add(e.getMessage());
      byte[] white = new byte[3 * art.widthPx()];
      Arrays.fill(white, WHITE);
      while (counted.made < height) {
        counted.row(white);
      }
    }
  }

  /** Counts the rows of a page into the store, and reports them now and then. */
  @OneCall
  private final class CountedRows implements RowSink {

    private final int top;
    private final int height;
    private final ArtProgress progress;
    private int made;

    CountedRows(int top, int height, ArtProgress progress) {
      this.top = top;
      this.height = height;
      this.progress = progress;
    }

    @Override
    public void row(byte[] rgb) throws IOException {
      levels.get(0).row(rgb);
      made++;
      if (made % ROWS_BETWEEN_NEWS == 0 || made == height) {
        tell(progress, top + made);
      }
    }
  }

  private void tell(ArtProgress progress, int readPx) throws Stopped {
    if (closed.get() || !progress.goesOn(readPx, art.heightPx())) {
      throw new Stopped();
    }
  }

  /**
   * A band of the art at a size, as soon as it has been read; empty before that, below the art and
   * after closing.
   *
   * @param level 0 is the strip's own size
   * @param index from the top; a band has {@link #BAND_ROWS} rows
   */
  public Optional<BufferedImage> band(int level, int index) {
    BandLevel from = levels.get(level);
    if (closed.get() || index < 0 || (long) index * BAND_ROWS >= from.height()) {
      return Optional.empty();
    }
    BandKey key = new BandKey(level, index);
    Optional<BufferedImage> known = cache.get(key);
    if (known.isPresent()) {
      return known;
    }
    try {
      Optional<BufferedImage> read = from.band(index);
      read.ifPresent(band -> cache.put(key, band));
      return read;
    } catch (IOException e) {
      return Optional.empty(); // closed meanwhile
    }
  }

  /** The file of the bands. */
  Path file() {
    return file.path();
  }

  /** Deletes the file of the bands. */
  @Override
  public void close() {
    closed.set(true);
    cache.clear();
    try {
      file.close();
    } catch (IOException e) {
      // the system deletes it
    }
  }
}
