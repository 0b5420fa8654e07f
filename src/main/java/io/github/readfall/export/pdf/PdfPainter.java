package io.github.readfall.export.pdf;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.draw.Mark;
import io.github.readfall.draw.Painter;
import io.github.readfall.type.font.Ornament;
import io.github.readfall.type.text.PlacedRun;
import io.github.readfall.type.text.SizedFace;
import io.github.readfall.type.text.TextLine;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/** Paints marks on a page. Letters stay letters: each line carries its text, in reading order. */
final class PdfPainter implements Painter {

  /** Ways to draw letters (ISO 32000-1, 9.3.6). */
  private static final int SEEN = 0;

  private static final int UNSEEN = 3;

  private final ContentWriter out;
  private final PdfFaces faces;
  private final TextLine carrier;

  /**
   * A painter through a matrix that is already set: lengths are those of the marks, y downwards,
   * ends and corners of lines round.
   *
   * @param carrier a letter that may be embedded, invisible in place of letters that may not
   */
  PdfPainter(ContentWriter out, PdfFaces faces, TextLine carrier) {
    this.out = out;
    this.faces = faces;
    this.carrier = carrier;
  }

  @Override
  public void fill(Mark.Fill fill) {
    out.fillColour(fill.colour());
    out.path(fill.outline());
    out.op("f");
  }

  @Override
  public void line(Mark.Line line) {
    out.lineColour(line.colour());
    out.op("w", line.widthPx());
    out.dashes(line.dashesPx());
    out.path(line.outline());
    out.op("S");
  }

  @Override
  public void glyphs(Mark.Glyphs glyphs) {
    saying(glyphs.run().text(), List.of(glyphs));
  }

  @Override
  public void clip(Mark.Clip clip) {
    out.save();
    out.path(clip.within());
    out.op("W");
    out.op("n");
    clip.marks().forEach(mark -> mark.paintOn(this));
    out.restore();
  }

  @Override
  public void group(Mark.Group group) {
    List<Mark.Glyphs> line = new ArrayList<>();
    for (Mark mark : group.marks()) {
      if (!line.isEmpty() && !continues(line.get(0), mark)) {
        saying(line, group.text());
        line.clear();
      }
      if (mark instanceof Mark.Glyphs glyphs) {
        line.add(glyphs);
      } else {
        mark.paintOn(this);
      }
    }
    if (!line.isEmpty()) {
      saying(line, group.text());
    }
  }

  /** Runs of a line of text have their place in common. */
  private static boolean continues(Mark.Glyphs first, Mark mark) {
    return mark instanceof Mark.Glyphs glyphs && glyphs.at().equals(first.at());
  }

  private void saying(List<Mark.Glyphs> line, String all) {
    saying(line.size() == 1 ? line.get(0).run().text() : LogicalOrder.of(line, all), line);
  }

  /** Paints a line of text. */
  void text(TextLine line, XY at, Colour colour) {
    saying(line.text(), line.runs().stream().map(run -> new Mark.Glyphs(run, at, colour)).toList());
  }

  private void saying(String text, List<Mark.Glyphs> runs) {
    out.beginSaying(text);
    runs.forEach(this::paint);
    out.end();
  }

  private void paint(Mark.Glyphs glyphs) {
    out.fillColour(glyphs.colour());
    PdfFace face = faces.of(glyphs.run().type().face());
    boolean isInFile = glyphs.run().ornament() == Ornament.NONE;
    if (isInFile && face instanceof EmbeddedFace embedded) {
      embedded.use(glyphs.run());
      List<GlyphLine> lines = GlyphLine.of(glyphs.run(), embedded);
      show(glyphs, embedded, lines);
      outlines(glyphs, i -> !GlyphLine.isLetter(glyphs.run().glyphs(), i));
      if (lines.isEmpty()) {
        carry(glyphs);
      }
    } else {
      outlines(glyphs, i -> true);
      carry(glyphs);
    }
  }

  private void show(Mark.Glyphs glyphs, EmbeddedFace face, List<GlyphLine> lines) {
    SizedFace type = glyphs.run().type();
    double lean = type.slantDeg() == 0 ? 0 : StrictMath.tan(StrictMath.toRadians(type.slantDeg()));
    out.op("BT");
    out.font(face.name(), type.fontPx());
    for (GlyphLine line : lines) {
      out.textAt(glyphs.at().x() + line.xPx(), glyphs.at().y() - line.risePx(), lean);
      out.show(line.shown());
    }
    out.op("ET");
  }

  /**
   * Puts an invisible letter of another face in the place of a run, because most programs do not
   * find text without any letter.
   */
  private void carry(Mark.Glyphs glyphs) {
    PlacedRun letter = carrier.runs().get(0);
    if (faces.of(letter.type().face()) instanceof EmbeddedFace face) {
      int glyph = letter.glyphs().glyph(0);
      face.use(glyph);
      double fontPx = glyphs.run().type().fontPx();
      double wide = face.advance(glyph) / EmbeddedFace.EM * fontPx;
      out.op("BT");
      out.font(face.name(), fontPx);
      out.op("Tr", UNSEEN);
      out.op("Tz", 100 * Math.max(glyphs.run().advancePx(), 1) / wide);
      out.textAt(glyphs.at().x() + glyphs.run().xPx(), glyphs.at().y(), 0);
      out.show(GlyphLine.hex(face.code(glyph)));
      out.op("Tz", 100);
      out.op("Tr", SEEN);
      out.op("ET");
    }
  }

  private void outlines(Mark.Glyphs glyphs, IntPredicate which) {
    PlacedRun run = glyphs.run();
    SizedFace type = run.type();
    for (int i = 0; i < run.glyphs().size(); i++) {
      if (run.glyphs().isDrawn(i) && which.test(i)) {
        AffineTransform place =
            AffineTransform.getTranslateInstance(
                glyphs.at().x() + run.glyphXPx(i), glyphs.at().y() - run.glyphYPx(i));
        place.scale(type.pxPerUnit(), type.pxPerUnit());
        out.path(
            Path.of(
                place.createTransformedShape(
                    type.face().outline(run.glyphs().glyph(i), type.slantDeg()))));
      }
    }
    out.op("f");
  }
}
