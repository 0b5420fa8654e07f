package io.github.readfall.place;

import io.github.readfall.draw.Drawing;
import io.github.readfall.galley.Compositor;
import io.github.readfall.galley.Galley;
import io.github.readfall.render.PngWriter;
import io.github.readfall.script.ScriptReader;
import io.github.readfall.strip.Cuts;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.style.HouseStyle;
import io.github.readfall.style.StyleReader;
import io.github.readfall.typeset.Sample;
import io.github.readfall.typeset.SetEpisode;
import io.github.readfall.typeset.Typesetter;
import java.nio.file.Files;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ScratchTest {
  @Test
  void draws() throws Exception {
    HouseStyle style =
        new StyleReader()
            .read(
                Files.readString(java.nio.file.Path.of("sample-scripts/overdue-tide/series.toml")),
                "s")
            .style();
    SetEpisode set =
        new Typesetter(Sample.shelf(), style)
            .set(
                new ScriptReader()
                    .read(
                        Files.readString(
                            java.nio.file.Path.of("sample-scripts/overdue-tide/ep01/script.txt")),
                        style.keywords())
                    .script());
    Layout plan = io.github.readfall.plan.PanelPlanner.plan(set);
    List<PanelBox> panels = plan.panels();
    double y = plan.heightPx();
    for (int i = 0; i < 20; i++) Placer.place(set, Layout.of(1600, y, panels), Set.of());
    long t = System.nanoTime();
    Placing placing = Placer.place(set, Layout.of(1600, y, panels), Set.of());
    System.out.println("place ms " + (System.nanoTime() - t) / 1e6 + " " + placing.shortfalls());
    Galley galley = Compositor.compose(set, placing.layout(), Cuts.NONE);
    Drawing d =
        io.github.readfall.draw.StripSheet.of(
            galley, List.of(), new io.github.readfall.typeset.Labels(Sample.shelf(), style));
    try (var out = Files.newOutputStream(java.nio.file.Path.of("/work/tmp/galley.png"))) {
      PngWriter.write(d, 100, out);
    }
  }
}
