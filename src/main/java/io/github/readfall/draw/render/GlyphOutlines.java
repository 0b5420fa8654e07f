package io.github.readfall.draw.render;

import io.github.readfall.draw.Mark;
import io.github.readfall.type.text.PlacedRun;
import io.github.readfall.type.text.SizedFace;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;

/** The outlines of a run's glyphs, each in its place: the same for every surface. */
final class GlyphOutlines {

  private GlyphOutlines() {}

  static Path2D of(Mark.Glyphs glyphs) {
    PlacedRun run = glyphs.run();
    SizedFace type = run.type();
    Path2D all = new Path2D.Double(Path2D.WIND_NON_ZERO);
    for (int i = 0; i < run.glyphs().size(); i++) {
      if (run.glyphs().isDrawn(i)) {
        double x = glyphs.at().x() + run.glyphXPx(i);
        double y = glyphs.at().y() - run.glyphYPx(i);
        AffineTransform place = AffineTransform.getTranslateInstance(x, y);
        place.scale(type.pxPerUnit(), type.pxPerUnit());
        all.append(
            type.face().outline(run.glyphs().glyph(i), type.slantDeg()).getPathIterator(place),
            false);
      }
    }
    return all;
  }
}
