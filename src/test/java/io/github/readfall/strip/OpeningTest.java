package io.github.readfall.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.readfall.base.geom.Box;
import io.github.readfall.strip.json.LayoutReader;
import io.github.readfall.strip.json.LayoutWriter;
import io.github.readfall.strip.json.ReadLayout;
import java.util.List;
import org.junit.jupiter.api.Test;

class OpeningTest {

  @Test
  void roomThatWasTakenIsWrittenAndReadAgain() {
    Layout closed =
        new Opening(1500, -80)
            .in(Layout.of(1600, 3000, List.of(new PanelBox(1, new Box(0, 1500, 1600, 900)))));
    Layout again = new LayoutReader().read(LayoutWriter.write(closed)).layout().orElseThrow();
    assertEquals(closed.openings(), again.openings());
    assertEquals(2920, again.heightPx());
    assertEquals(1420, again.panels().get(0).box().y());
  }

  @Test
  void roomOfNothingIsNone() {
    assertThrows(IllegalArgumentException.class, () -> new Opening(100, 0));
    ReadLayout read =
        new LayoutReader()
            .read(
                "{\"strip\": {\"widthPx\": 1, \"heightPx\": 1}, \"panels\": [],"
                    + " \"openings\": [{\"atPx\": 1, \"byPx\": 0}]}");
    assertEquals("layout/number", read.findings().get(0).rule());
  }
}
