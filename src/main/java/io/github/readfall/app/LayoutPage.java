package io.github.readfall.app;

import io.github.readfall.desk.LaidText;
import io.github.readfall.desk.StripWork;
import io.github.readfall.wording.Wording;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The strip as the place where the layout is made.
 *
 * @param strip where it is worked on
 * @param script asks for files
 */
record LayoutPage(StripWork strip, Page script) implements Page {

  @Override
  public void open(String text) {
    strip.open(text, LaidText.of(text).read());
  }

  @Override
  public void replace(String text) {
    strip.replace(Wording.of("undo.otherLayout"), "", LaidText.of(text));
  }

  @Override
  public String text() {
    return strip.text();
  }

  @Override
  public Optional<Path> copyTo() {
    return script.copyTo();
  }
}
