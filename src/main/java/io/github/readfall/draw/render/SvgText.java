package io.github.readfall.draw.render;

import io.github.readfall.base.geom.SvgPath;
import io.github.readfall.base.geom.XY;
import io.github.readfall.draw.Mark;
import io.github.readfall.type.font.FaceFile;
import io.github.readfall.type.font.Ornament;
import io.github.readfall.type.text.PlacedRun;
import io.github.readfall.type.text.SizedFace;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Writes lines as text that can be edited. Each letter has its place if letters go from left to
 * right; if they join or are read from the right, each run has its start.
 */
record SvgText(XMLStreamWriter xml) {

  private static final int REGULAR = 400;

  /** One line: the runs of it, which start at one place. */
  void line(List<Mark.Glyphs> runs) throws XMLStreamException {
    xml.writeStartElement("text");
    xml.writeAttribute("xml:space", "preserve");
    lean(runs.get(0));
    for (Mark.Glyphs run : runs) {
      for (Piece piece : pieces(run.run())) {
        tspan(run, piece);
      }
    }
    xml.writeEndElement();
  }

  /** Text whose first letters have places; the rest follows by itself. */
  private record Piece(String text, List<Double> xPx, boolean leftwards) {}

  /** A line that leans does so from its own baseline. */
  private void lean(Mark.Glyphs first) throws XMLStreamException {
    double slantDeg = first.run().type().slantDeg();
    if (slantDeg != 0) {
      String x = SvgPath.number(first.at().x());
      String y = SvgPath.number(first.at().y());
      xml.writeAttribute(
          "transform", "translate(" + x + " " + y + ") skewX(" + SvgPath.number(-slantDeg) + ")");
    }
  }

  private void tspan(Mark.Glyphs glyphs, Piece piece) throws XMLStreamException {
    SizedFace type = glyphs.run().type();
    XY from = type.slantDeg() == 0 ? glyphs.at() : new XY(0, 0);
    xml.writeStartElement("tspan");
    List<String> places = new ArrayList<>();
    piece.xPx().forEach(x -> places.add(SvgPath.number(from.x() + x)));
    xml.writeAttribute("x", String.join(" ", places));
    xml.writeAttribute("y", SvgPath.number(from.y()));
    if (piece.leftwards()) {
      xml.writeAttribute("direction", "rtl");
      xml.writeAttribute("unicode-bidi", "bidi-override");
    }
    face(type);
    boolean isSeen = glyphs.run().ornament() == Ornament.NONE;
    xml.writeAttribute("fill", isSeen ? glyphs.colour().hex() : "none");
    xml.writeCharacters(SvgMarks.readable(piece.text()));
    xml.writeEndElement();
  }

  private void face(SizedFace type) throws XMLStreamException {
    FaceFile file = type.face().file();
    xml.writeAttribute("font-family", type.face().familyName());
    xml.writeAttribute("font-size", SvgPath.number(type.fontPx()));
    if (file.weight() != REGULAR) {
      xml.writeAttribute("font-weight", Integer.toString(file.weight()));
    }
    if (file.italic()) {
      xml.writeAttribute("font-style", "italic");
    }
  }

  private static List<Piece> pieces(PlacedRun run) {
    int[] starts = new int[run.glyphs().size()];
    for (int i = 0; i < starts.length; i++) {
      starts[i] = run.glyphs().charIndex(i);
    }
    boolean rises = IntStream.range(1, starts.length).allMatch(i -> starts[i] >= starts[i - 1]);
    if (!rises || run.type().face().isContextual()) {
      boolean leftwards = starts.length > 1 && starts[0] > starts[starts.length - 1];
      return List.of(new Piece(run.text(), List.of(run.xPx()), leftwards));
    }
    return lettersOf(run);
  }

  private static List<Piece> lettersOf(PlacedRun run) {
    String text = run.text();
    List<Piece> pieces = new ArrayList<>();
    StringBuilder some = new StringBuilder();
    List<Double> places = new ArrayList<>();
    int i = 0;
    while (i < run.glyphs().size()) {
      int start = run.glyphs().charIndex(i);
      int next = i + 1;
      while (next < run.glyphs().size() && goesOn(text, start, run.glyphs().charIndex(next))) {
        next++;
      }
      int end = next < run.glyphs().size() ? run.glyphs().charIndex(next) : text.length();
      some.append(text, start, end);
      places.add(run.glyphXPx(i));
      if (text.codePointCount(start, end)
          > 1) { // only the first has a place: the next starts afresh
        pieces.add(new Piece(some.toString(), List.copyOf(places), false));
        some.setLength(0);
        places.clear();
      }
      i = next;
    }
    if (!some.isEmpty()) {
      pieces.add(new Piece(some.toString(), List.copyOf(places), false));
    }
    return pieces;
  }

  /**
   * Returns true if a glyph belongs to the letter that starts at a character, as an accent does.
   */
  private static boolean goesOn(String text, int start, int charIndex) {
    if (charIndex <= start || charIndex >= text.length()) {
      return charIndex <= start;
    }
    int type = Character.getType(text.codePointAt(charIndex));
    return type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || type == Character.COMBINING_SPACING_MARK;
  }
}
