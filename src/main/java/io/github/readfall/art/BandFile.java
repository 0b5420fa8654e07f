package io.github.readfall.art;

import java.io.Closeable;
import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.atomic.AtomicLong;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.Inflater;

/** A temporary file of pixel bands, lightly compressed, deleted when it is closed. */
final class BandFile implements Closeable {

  private final Path file;
  private final FileChannel channel;
  private final AtomicLong end = new AtomicLong(); // bands are read by others meanwhile

  /** The place of a band in the file. */
  record Place(long at, int length) {}

  BandFile() throws IOException {
    this.file = Files.createTempFile("readfall-art-", ".bands");
    this.channel =
        FileChannel.open(
            file,
            StandardOpenOption.READ,
            StandardOpenOption.WRITE,
            StandardOpenOption.DELETE_ON_CLOSE);
  }

  Path path() {
    return file;
  }

  /**
   * Writes a band; one thread at a time.
   *
   * @param bytes not changed
   */
  Place write(byte[] bytes, int length) throws IOException {
    byte[] packed = new byte[length + length / 8 + 64];
    Deflater deflater = new Deflater(Deflater.BEST_SPEED, true);
    try {
      deflater.setInput(bytes, 0, length);
      deflater.finish();
      int size = 0;
      while (!deflater.finished()) {
        size += deflater.deflate(packed, size, packed.length - size);
      }
      long at = end.getAndAdd(size);
      ByteBuffer out = ByteBuffer.wrap(packed, 0, size);
      while (out.hasRemaining()) {
        channel.write(out, at + out.position());
      }
      return new Place(at, size);
    } finally {
      deflater.end();
    }
  }

  /** Reads a band; any thread may. */
  void read(Place place, byte[] bytes) throws IOException {
    ByteBuffer in = ByteBuffer.allocate(place.length());
    while (in.hasRemaining()) {
      if (channel.read(in, place.at() + in.position()) < 0) {
        throw new EOFException(file.toString());
      }
    }
    Inflater inflater = new Inflater(true);
    try {
      inflater.setInput(in.array());
      int got = 0;
      while (got < bytes.length) {
        int more = inflater.inflate(bytes, got, bytes.length - got);
        if (more == 0) {
          throw new EOFException(file + " holds a band that is cut short");
        }
        got += more;
      }
    } catch (DataFormatException e) {
      throw new IOException(e);
    } finally {
      inflater.end();
    }
  }

  @Override
  public void close() throws IOException {
    channel.close();
    Files.deleteIfExists(file);
  }
}
