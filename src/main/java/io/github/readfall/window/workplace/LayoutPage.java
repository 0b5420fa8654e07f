package io.github.readfall.window.workplace;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.window.model.LayoutModel;
import io.github.readfall.window.model.LayoutText;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The strip as the page of the layout.
 *
 * @param strip with the layout
 * @param script asks for files
 */
record LayoutPage(LayoutModel strip, WorkPage script) implements WorkPage {

  @Override
  public void open(String text) {
    strip.open(text, LayoutText.of(text).read());
  }

  @Override
  public void replace(String text) {
    strip.replace(Wording.of("undo.otherLayout"), "", LayoutText.of(text));
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
