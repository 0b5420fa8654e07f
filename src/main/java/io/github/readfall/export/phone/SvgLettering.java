package io.github.readfall.export.phone;

import io.github.readfall.base.geom.SvgPath;
import io.github.readfall.draw.Mark;
import io.github.readfall.draw.Painter;
import io.github.readfall.export.html.Element;
import io.github.readfall.type.text.PlacedRun;
import io.github.readfall.type.text.SizedFace;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Turns marks into SVG whose outlines are described elsewhere in the page. */
final class SvgLettering implements Painter {

  private static final int SCALE_DECIMALS = 6;

  private final Symbols symbols;
  private final List<Element> drawn = new ArrayList<>();

  private SvgLettering(Symbols symbols) {
    this.symbols = symbols;
  }

  /** The elements that draw marks, from back to front. */
  static List<Element> of(List<Mark> marks, Symbols symbols) {
    SvgLettering lettering = new SvgLettering(symbols);
    marks.forEach(mark -> mark.paintOn(lettering));
    return List.copyOf(lettering.drawn);
  }

  @Override
  public void fill(Mark.Fill fill) {
    drawn.add(use(symbols.outline(fill.outline())).with("fill", fill.colour().hex()));
  }

  /** Draws a line round what was filled just before in the same element. */
  @Override
  public void line(Mark.Line line) {
    Element use = use(symbols.outline(line.outline()));
    boolean isFilled = !drawn.isEmpty() && isFillOf(drawn.get(drawn.size() - 1), use);
    Element under = isFilled ? drawn.remove(drawn.size() - 1) : use.with("fill", "none");
    Element lined =
        under
            .with("stroke", line.colour().hex())
            .with("stroke-width", SvgPath.number(line.widthPx()));
    drawn.add(line.dashesPx().isEmpty() ? lined : lined.with("stroke-dasharray", dashes(line)));
  }

  private static boolean isFillOf(Element last, Element use) {
    return last.attributes().size() == use.attributes().size() + 1
        && last.attributes().containsAll(use.attributes());
  }

  private static String dashes(Mark.Line line) {
    return line.dashesPx().stream().map(SvgPath::number).collect(Collectors.joining(" "));
  }

  @Override
  public void glyphs(Mark.Glyphs glyphs) {
    PlacedRun run = glyphs.run();
    SizedFace type = run.type();
    List<Element> uses = new ArrayList<>();
    for (int i = 0; i < run.glyphs().size(); i++) {
      if (run.glyphs().isDrawn(i)) {
        String id = symbols.glyph(type.face(), run.glyphs().glyph(i), type.slantDeg());
        if (!id.isEmpty()) {
          uses.add(at(use(id), run.glyphXPx(i), -run.glyphYPx(i), type.pxPerUnit()));
        }
      }
    }
    if (!uses.isEmpty()) {
      drawn.add(
          Element.of("g")
              .with("transform", placed(glyphs, type.pxPerUnit()))
              .with("fill", glyphs.colour().hex())
              .holding(uses));
    }
  }

  /** Moved by whole design units, each far less than a pixel of any screen. */
  private static Element at(Element use, double xPx, double yPx, double pxPerUnit) {
    long x = Math.round(xPx / pxPerUnit);
    long y = Math.round(yPx / pxPerUnit);
    Element across = x == 0 ? use : use.with("x", Long.toString(x));
    return y == 0 ? across : across.with("y", Long.toString(y));
  }

  private static String placed(Mark.Glyphs glyphs, double pxPerUnit) {
    String scale =
        BigDecimal.valueOf(pxPerUnit)
            .setScale(SCALE_DECIMALS, RoundingMode.HALF_EVEN)
            .stripTrailingZeros()
            .toPlainString();
    String x = SvgPath.number(glyphs.at().x());
    String y = SvgPath.number(glyphs.at().y());
    return "translate(" + x + " " + y + ")scale(" + scale + ")";
  }

  private static Element use(String id) {
    return Element.of("use").with("href", "#" + id);
  }

  @Override
  public void clip(Mark.Clip clip) {
    drawn.add(
        Element.of("g")
            .with("style", "clip-path:path('" + SvgPath.of(clip.within()) + "')")
            .holding(of(clip.marks(), symbols)));
  }

  @Override
  public void group(Mark.Group group) {
    group.marks().forEach(mark -> mark.paintOn(this));
  }
}
