package io.github.readfall.window.model;

import io.github.readfall.strip.Layout;
import io.github.readfall.strip.json.LayoutReader;
import io.github.readfall.strip.json.LayoutWriter;
import io.github.readfall.strip.json.ReadLayout;
import java.util.Optional;

/**
 * A layout as the text of its file, and what that says.
 *
 * @param json as it stands in layout.json; empty where there is none
 * @param read empty where there is none
 */
public record LayoutText(String json, Optional<ReadLayout> read) {

  /** No layout: everything is worked out. */
  public static final LayoutText NONE = new LayoutText("", Optional.empty());

  /** What a text says. */
  public static LayoutText of(String json) {
    return json.isEmpty() ? NONE : new LayoutText(json, Optional.of(new LayoutReader().read(json)));
  }

  /** A layout as it is read when it has been written. */
  public static LayoutText of(Layout layout) {
    return of(LayoutWriter.write(layout));
  }
}
