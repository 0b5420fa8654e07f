package io.github.readfall.art;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.EOFException;
import java.io.IOException;
import java.time.Duration;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BandFileTest {

  private final byte[] written = noise();
  private final byte[] read = new byte[written.length];

  private static byte[] noise() {
    byte[] bytes = new byte[10_000];
    new Random(1).nextBytes(bytes);
    return bytes;
  }

  @Test
  void aBandComesBackAsItWasWritten() throws IOException {
    try (BandFile file = new BandFile()) {
      file.write(new byte[500], 500);
      file.read(file.write(written, written.length), read);
      assertArrayEquals(written, read);
    }
  }

  @Test
  void aBandThatIsCutShortIsAnErrorAndNoEndlessLoop() throws IOException {
    try (BandFile file = new BandFile()) {
      BandFile.Place whole = file.write(written, written.length);
      for (int length : new int[] {0, 1, whole.length() / 2, whole.length() - 1}) {
        BandFile.Place cut = new BandFile.Place(whole.at(), length);
        assertTimeoutPreemptively(
            Duration.ofSeconds(10),
            () -> assertThrows(EOFException.class, () -> file.read(cut, read)));
      }
    }
  }
}
