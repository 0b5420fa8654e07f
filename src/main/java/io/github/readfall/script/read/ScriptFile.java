package io.github.readfall.script.read;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** A script on disk: plain UTF-8, with or without a byte order mark. */
public final class ScriptFile {

  /** The largest file that is read, in bytes: 64 MiB. House default, no source. */
  public static final int MAX_BYTES = 64 * 1024 * 1024;

  private ScriptFile() {}

  /**
   * The text of a file, with its byte order mark.
   *
   * @throws ScriptFileException if there is no such file, or it cannot be read or is not UTF-8
   */
  public static String text(Path file) throws ScriptFileException {
    return decode(bytes(file), file.toString());
  }

  /**
   * The text in some bytes.
   *
   * @param name of the file in a message
   * @throws ScriptFileException if they are not UTF-8
   */
  public static String decode(byte[] bytes, String name) throws ScriptFileException {
    if (startsWith(bytes, 0xFE, 0xFF) || startsWith(bytes, 0xFF, 0xFE) || isMostlyUtf16(bytes)) {
      throw new ScriptFileException(
          name + " looks like UTF-16, not UTF-8; save it as UTF-8 and try again.");
    }
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length);
    CoderResult result = decoder.decode(in, out, true);
    if (result.isError()) {
      int offset = in.position();
      throw new ScriptFileException(
          name
              + " is not UTF-8: byte "
              + offset
              + ", on line "
              + lineOf(bytes, offset)
              + ", belongs to no character; save it as UTF-8 and try again.");
    }
    return out.flip().toString();
  }

  /**
   * What is in a file, text or not.
   *
   * @throws ScriptFileException if there is no such file, or it cannot be read
   */
  public static byte[] bytes(Path file) throws ScriptFileException {
    if (Files.isDirectory(file)) {
      throw new ScriptFileException(file + " is a folder, not a script.");
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(MAX_BYTES + 1);
      if (bytes.length > MAX_BYTES) {
        throw new ScriptFileException(
            file + " is larger than " + (MAX_BYTES >> 20) + " MiB, too large for a script.");
      }
      return bytes;
    } catch (NoSuchFileException e) {
      throw new ScriptFileException("There is no file " + file + ".", e);
    } catch (AccessDeniedException e) {
      throw new ScriptFileException("You are not allowed to read " + file + ".", e);
    } catch (IOException e) {
      throw new ScriptFileException(file + " could not be read: " + e.getMessage() + ".", e);
    }
  }

  private static boolean startsWith(byte[] bytes, int first, int second) {
    return bytes.length >= 2 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
  }

  /** UTF-16 without a mark: every other byte of western text is zero. */
  private static boolean isMostlyUtf16(byte[] bytes) {
    int zeros = 0;
    int looked = Math.min(bytes.length, 1000);
    for (int i = 0; i < looked; i++) {
      zeros += bytes[i] == 0 ? 1 : 0;
    }
    return looked >= 4 && zeros * 3 > looked;
  }

  private static int lineOf(byte[] bytes, int offset) {
    int line = 1;
    for (int i = 0; i < offset; i++) {
      boolean carriageReturn = bytes[i] == '\r' && !(i + 1 < bytes.length && bytes[i + 1] == '\n');
      line += bytes[i] == '\n' || carriageReturn ? 1 : 0;
    }
    return line;
  }
}
