package io.github.readfall.transcript;

import io.github.readfall.outbox.Batch;
import io.github.readfall.outbox.Halted;
import io.github.readfall.outbox.Tray;
import io.github.readfall.outbox.Work;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * A transcript's two files.
 *
 * @param stem the beginning of their names
 */
public record TranscriptFiles(String stem, Transcript transcript) implements Batch {

  @Override
  public List<String> names() {
    return List.of(stem + "-transcript.txt", stem + "-transcript.html");
  }

  @Override
  public void writeTo(Tray tray, Work work) throws IOException, Halted {
    write(tray, names().get(0), TranscriptText.of(transcript));
    work.at(1, 2);
    write(tray, names().get(1), TranscriptPage.of(transcript));
    work.at(2, 2);
  }

  private static void write(Tray tray, String name, String text) throws IOException {
    try (OutputStream out = tray.open(name)) {
      out.write(text.getBytes(StandardCharsets.UTF_8));
    }
  }
}
