package io.github.readfall.script.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ScriptFileTest {

  private final Path folder;

  ScriptFileTest(@TempDir Path folder) {
    this.folder = folder;
  }

  @Test
  void everyCharacterIsKept() throws Exception {
    String text = "\uFEFFPANEL\r\nILSE: Tide’s 花 😀 ";
    assertEquals(text, ScriptFile.text(file(text.getBytes(StandardCharsets.UTF_8))));
  }

  @Test
  void aByteThatIsNotUtf8IsNamedWithItsLine() throws IOException {
    Path file = file("PANEL\nILSE: caf\u00E9\n".getBytes(StandardCharsets.ISO_8859_1));
    assertEquals(
        file
            + " is not UTF-8: byte 15, on line 2, belongs to no character; save it as UTF-8 and try again.",
        refusal(file));
  }

  @Test
  void aCharacterCutOffAtTheEndIsNotUtf8() throws IOException {
    assertTrue(
        refusal(file(new byte[] {'a', (byte) 0xE8, (byte) 0x8A})).contains("byte 1, on line 1"));
  }

  @Test
  void anOverlongFormIsNotUtf8() throws IOException {
    // RFC 3629, section 3: C0 AF is an overlong slash and must be refused.
    assertTrue(refusal(file(new byte[] {(byte) 0xC0, (byte) 0xAF})).contains("not UTF-8"));
  }

  @Test
  void utf16IsNamed() throws IOException {
    for (String charset : new String[] {"UTF-16", "UTF-16LE", "UTF-16BE"}) {
      assertTrue(
          refusal(file("PANEL\nILSE: a\n".getBytes(Charset.forName(charset))))
              .contains("looks like UTF-16"),
          charset);
    }
  }

  @Test
  void aMissingFileAFolderAndAHugeFileAreNamed() throws IOException {
    assertEquals(
        "There is no file " + folder.resolve("none") + ".", refusal(folder.resolve("none")));
    assertEquals(folder + " is a folder, not a script.", refusal(folder));
    Path huge = folder.resolve("huge.txt");
    try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
      file.setLength(ScriptFile.MAX_BYTES + 1L);
    }
    assertEquals(huge + " is larger than 64 MiB, too large for a script.", refusal(huge));
  }

  private Path file(byte[] bytes) throws IOException {
    return Files.write(folder.resolve("script.txt"), bytes);
  }

  private static String refusal(Path file) {
    return String.valueOf(
        assertThrows(ScriptFileException.class, () -> ScriptFile.text(file)).getMessage());
  }
}
