package io.github.readfall.lettering.style;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The page about series.toml has the table of keys that the reader goes by. */
class StyleDocsTest {

  @Test
  void thePageHasEveryKey() throws IOException {
    String page = Files.readString(Path.of("docs/series-toml.md"));
    assertTrue(page.contains(StyleKeys.markdown()), "docs/series-toml.md is out of date");
  }
}
