package io.github.readfall.desk;

import io.github.readfall.strip.Layout;
import io.github.readfall.strip.LayoutReader;
import io.github.readfall.strip.LayoutWriter;
import io.github.readfall.strip.ReadLayout;
import java.util.Optional;

/**
 * A layout as the text of its file, and what that says.
 *
 * @param json as it stands in layout.json; empty where there is none
 * @param read empty where there is none
 */
public record LaidText(String json, Optional<ReadLayout> read) {

  /** No layout: everything is worked out. */
  public static final LaidText NONE = new LaidText("", Optional.empty());

  /** What a text says. */
  public static LaidText of(String json) {
    return json.isEmpty() ? NONE : new LaidText(json, Optional.of(new LayoutReader().read(json)));
  }

  /** A layout as it is read when it has been written. */
  public static LaidText of(Layout layout) {
    return of(LayoutWriter.write(layout));
  }
}
