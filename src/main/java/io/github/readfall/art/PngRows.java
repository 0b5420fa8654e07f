package io.github.readfall.art;

import ar.com.hjg.pngj.ImageInfo;
import ar.com.hjg.pngj.PngReaderByte;
import ar.com.hjg.pngj.PngjException;
import ar.com.hjg.pngj.chunks.PngChunkPLTE;
import ar.com.hjg.pngj.chunks.PngChunkTRNS;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads a PNG of any kind row by row. */
final class PngRows implements ArtRows {

  /** Most pixels of an interlaced picture, which is wholly in memory. */
  private static final long MOST_INTERLACED_PX = 24_000_000;

  private static final int WIDTH_AT = 16;
  private static final int HEAD = 24;

  private final Path file;
  private final PngReaderByte reader;
  private final PngColours colours;

  private PngRows(Path file, PngReaderByte reader, PngColours colours) {
    this.file = file;
    this.reader = reader;
    this.colours = colours;
  }

  static PngRows open(Path file) throws UnreadableArt {
    try {
      checkSize(file);
      PngReaderByte reader =
          new PngReaderByte(new BufferedInputStream(Files.newInputStream(file), 1 << 16));
      try {
        return of(file, reader);
      } catch (UnreadableArt | PngjException e) {
        reader.close();
        throw e;
      }
    } catch (IOException e) {
      throw UnreadableReason.closed(file);
    } catch (PngjException e) {
      throw UnreadableReason.broken(file);
    }
  }

  /** Checks width and height, which follow the signature and the head of the first chunk. */
  private static void checkSize(Path file) throws IOException, UnreadableArt {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] head = in.readNBytes(HEAD);
      if (head.length == HEAD) {
        ByteBuffer sizes = ByteBuffer.wrap(head);
        int width = sizes.getInt(WIDTH_AT);
        int height = sizes.getInt(WIDTH_AT + Integer.BYTES);
        UnreadableReason.checkSize(
            file, Integer.toUnsignedLong(width), Integer.toUnsignedLong(height));
      }
    }
  }

  private static PngRows of(Path file, PngReaderByte reader) throws UnreadableArt {
    ImageInfo info = reader.imgInfo;
    if (reader.isInterlaced() && (long) info.cols * info.rows > MOST_INTERLACED_PX) {
      throw UnreadableReason.interlaced(file);
    }
    reader.setMaxTotalBytesRead(0); // as long as the file is
    reader.setChunksToSkip("iCCP", "zTXt", "iTXt", "tEXt", "eXIf");
    PngChunkPLTE palette = reader.getMetadata().getPLTE();
    PngChunkTRNS transparency = reader.getMetadata().getTRNS();
    if (info.indexed && palette == null) {
      throw UnreadableReason.broken(file);
    }
    return new PngRows(file, reader, PngColours.of(info, palette, transparency));
  }

  @Override
  public int widthPx() {
    return reader.imgInfo.cols;
  }

  @Override
  public int heightPx() {
    return reader.imgInfo.rows;
  }

  @Override
  public void read(byte[] rgb) throws UnreadableArt {
    if (!reader.hasMoreRows()) {
      throw new IllegalStateException("no more rows in " + file);
    }
    try {
      colours.toRgb(reader.readRowByte(), rgb);
    } catch (PngjException e) {
      throw UnreadableReason.broken(file);
    }
  }

  @Override
  public void close() {
    reader.close();
  }
}
