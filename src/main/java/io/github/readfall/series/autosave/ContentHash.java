package io.github.readfall.series.autosave;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * The SHA-256 of a content (FIPS 180-4). Two contents with the same hash are the same.
 *
 * @param hex 64 digits
 */
public record ContentHash(String hex) {

  /** That of some bytes. */
  public static ContentHash of(byte[] bytes) {
    return new ContentHash(HexFormat.of().formatHex(sha256().digest(bytes)));
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** Its first digits, enough to tell a person's scripts apart. */
  String begin() {
    return hex.substring(0, 12);
  }

  /** A number from it, 0 to 2⁶⁰ - 1. */
  long number() {
    return Long.parseLong(hex, 0, 15, 16);
  }
}
