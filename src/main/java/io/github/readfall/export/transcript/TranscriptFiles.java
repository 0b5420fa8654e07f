package io.github.readfall.export.transcript;

import io.github.readfall.base.files.Batch;
import io.github.readfall.base.files.Cancelled;
import io.github.readfall.base.files.OutputTray;
import io.github.readfall.base.files.Progress;
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
  public void writeTo(OutputTray tray, Progress work) throws IOException, Cancelled {
    write(tray, names().get(0), TranscriptText.of(transcript));
    work.at(1, 2);
    write(tray, names().get(1), TranscriptPage.of(transcript));
    work.at(2, 2);
  }

  private static void write(OutputTray tray, String name, String text) throws IOException {
    try (OutputStream out = tray.open(name)) {
      out.write(text.getBytes(StandardCharsets.UTF_8));
    }
  }
}
