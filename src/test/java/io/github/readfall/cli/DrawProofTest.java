package io.github.readfall.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrawProofTest {

  private static final Path STRIP = Path.of("docs/pictures/strip");

  private final Path temp;

  DrawProofTest(@TempDir Path temp) {
    this.temp = temp;
  }

  @Test
  void aProofIsWrittenForTheLanguageOfTheScript() throws Exception {
    Ran ran = Ran.of("draw", STRIP, "--as", "proof", "--to", temp);
    Path file = temp.resolve("strip-en-proof.pdf");
    assertTrue(ran.out().contains("wrote " + file), ran.out() + ran.err());
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      assertTrue(new PDFTextStripper().getText(document).contains("Low Water"));
    }
  }

  @Test
  void damagedArtIsRefusedInOneSentence() throws Exception {
    Path episode = temp.resolve("ep01");
    Files.createDirectories(episode.resolve("art"));
    Files.copy(STRIP.resolve("script.txt"), episode.resolve("script.txt"));
    Files.write(episode.resolve("art/page1.png"), new byte[] {1, 2, 3});
    Ran ran = Ran.of("draw", episode, "--as", "proof", "--to", temp.resolve("out"));
    assertTrue(ran.isRefusedInOneSentence(), ran.out() + ran.err());
    assertFalse(Files.exists(temp.resolve("out")));
  }
}
