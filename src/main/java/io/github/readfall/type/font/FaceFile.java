package io.github.readfall.type.font;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * One font file on the shelf, not yet opened.
 *
 * @param id its name in reports, e.g. {@code fonts-open/family/File.ttf}; never machine dependent
 * @param path of the file
 * @param family the family a person knows it by
 * @param weight 100 to 900, 400 is regular
 * @param italic true if its letters are drawn slanted
 * @param barredCapitalI true if every capital I has bars, which only the pronoun wants: such a face
 *     is lettered as written, not in capitals, unless the style says otherwise
 * @param sha256 of the file, in lower-case hexadecimal; empty if nothing was promised
 */
public record FaceFile(
    String id,
    Path path,
    String family,
    int weight,
    boolean italic,
    boolean barredCapitalI,
    String sha256) {

  private static final int BUFFER_BYTES = 1 << 16;

  /**
   * Compares the file with its promised SHA-256 (FIPS 180-4). A bundled file that is unchanged is
   * known to be readable, so none of its letters has to be drawn to find out.
   *
   * @return false also if nothing was promised
   * @throws IOException if the file cannot be read
   */
  boolean isUnchanged() throws IOException {
    return !sha256.isEmpty() && HexFormat.of().formatHex(digest()).equals(sha256);
  }

  private byte[] digest() throws IOException {
    try (InputStream in = Files.newInputStream(path)) {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      byte[] buffer = new byte[BUFFER_BYTES];
      for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
        sha.update(buffer, 0, n);
      }
      return sha.digest();
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
