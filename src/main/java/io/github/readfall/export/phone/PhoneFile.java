package io.github.readfall.export.phone;

import io.github.readfall.art.StripArt;
import io.github.readfall.base.files.Batch;
import io.github.readfall.base.files.Cancelled;
import io.github.readfall.base.files.CannotWrite;
import io.github.readfall.base.files.OutputTray;
import io.github.readfall.base.files.Progress;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.export.html.Element;
import io.github.readfall.export.html.Markup;
import io.github.readfall.export.html.Node;
import io.github.readfall.export.html.StyleSheet;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The phone proof: one file, written from the top, so that the art of one piece at a time is in
 * memory.
 *
 * @param name of the episode
 * @param strips in every wanted language, the first shown at first; at least one
 * @param art under all of them
 */
public record PhoneFile(String name, List<PhoneStrip> strips, StripArt art) implements Batch {

  /** Pixels of art for each CSS pixel of the narrowest phone. House default, no source. */
  private static final double ART_SHARPNESS = 2;

  public PhoneFile {
    strips = List.copyOf(strips);
  }

  @Override
  public List<String> names() {
    return List.of(name + "-phone.html");
  }

  @Override
  public void writeTo(OutputTray tray, Progress work) throws IOException, CannotWrite, Cancelled {
    PhoneStripBase ground = PhoneStripBase.of(strips, art);
    PhonePage page = new PhonePage(strips, ground);
    Element html = Element.of("html").with("lang", Wording.of("transcript.language"));
    Element head = page.head();
    Element body = Element.of("body").holding(page.top());
    try (OutputStream out = tray.open(names().get(0))) {
      write(out, Markup.DOCTYPE + Markup.begun(html) + Markup.begun(head));
      art(out, ground, work);
      write(out, Markup.ended(head) + Markup.begun(body));
      editions(out, ground, work);
      write(out, Markup.ended(body) + Markup.ended(html));
    }
  }

  private void art(OutputStream out, PhoneStripBase ground, Progress work)
      throws IOException, CannotWrite, Cancelled {
    if (art.pages().isEmpty()) {
      return;
    }
    int steps = ground.pieces().size();
    double leastWidthPx = ART_SHARPNESS * phoneWidthDp();
    try (ArtSlices slices = ArtSlices.of(art, leastWidthPx, part(work, 0, 2))) {
      for (int i = 0; i < steps; i++) {
        Optional<String> rule = slices.rule(".a" + i, ground.pieces().get(i));
        if (rule.isPresent()) {
          write(out, Markup.of(new StyleSheet(rule.get())));
        }
        part(work, 1, 2).at(i + 1, steps);
      }
    }
  }

  private double phoneWidthDp() {
    return strips.get(0).galley().style().narrowestPhone().widthDp();
  }

  /** Writes the strips in every language, after the outlines that they are drawn with. */
  private void editions(OutputStream out, PhoneStripBase ground, Progress work)
      throws IOException, Cancelled {
    Symbols symbols = new Symbols();
    List<Node> editions = new ArrayList<>();
    for (PhoneStrip strip : strips) {
      editions.add(new EditionHtml(strip, ground, symbols).html());
      part(work, 2, 2).at(editions.size(), strips.size());
    }
    write(out, Markup.of(symbols.defs()));
    write(out, Markup.of(Element.of("main").holding(editions)));
  }

  /** A third of the work. */
  private static Progress part(Progress work, long before, long others) {
    return (done, of) -> work.at(before * of + done, (others + 1) * of);
  }

  private static void write(OutputStream out, String text) throws IOException {
    out.write(text.getBytes(StandardCharsets.UTF_8));
  }
}
