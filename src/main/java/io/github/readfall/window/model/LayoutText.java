package io.github.readfall.window.model;

import io.github.readfall.strip.Layout;
import io.github.readfall.strip.json.LayoutReader;
import io.github.readfall.strip.json.LayoutWriter;
import io.github.readfall.strip.json.ReadLayout;
import java.util.Optional;

/**
 * A layout as the text of its file and as read from it.
 *
 * @param json as in layout.json; empty if there is none
 * @param read empty if there is none
 */
public record LayoutText(String json, Optional<ReadLayout> read) {

  /** No layout: everything is computed. */
  public static final LayoutText NONE = new LayoutText("", Optional.empty());

  /** Reads a text. */
  public static LayoutText of(String json) {
    return json.isEmpty() ? NONE : new LayoutText(json, Optional.of(new LayoutReader().read(json)));
  }

  /** Writes a layout, and reads it again. */
  public static LayoutText of(Layout layout) {
    return of(LayoutWriter.write(layout));
  }
}
