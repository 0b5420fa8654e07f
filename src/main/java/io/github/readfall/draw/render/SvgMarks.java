package io.github.readfall.draw.render;

import io.github.readfall.base.OneCall;
import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.SvgPath;
import io.github.readfall.draw.Mark;
import io.github.readfall.draw.Painter;
import io.github.readfall.type.font.Ornament;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes marks as elements of SVG 1.1, one for each. */
@OneCall
final class SvgMarks implements Painter {

  private final XMLStreamWriter xml;
  private final SvgWriter.Letters letters;
  private int clips;

  SvgMarks(XMLStreamWriter xml, SvgWriter.Letters letters) {
    this.xml = xml;
    this.letters = letters;
  }

  /** Carries a stream's fault out of a painter. */
  static final class Unwritable extends IllegalStateException {
    private static final long serialVersionUID = 1;

    Unwritable(XMLStreamException cause) {
      super(cause.getMessage(), cause);
    }
  }

  /** Something that can fail as the stream does. */
  private interface Writing {
    void write() throws XMLStreamException;
  }

  private static void safely(Writing writing) {
    try {
      writing.write();
    } catch (XMLStreamException e) {
      throw new Unwritable(e);
    }
  }

  static void title(XMLStreamWriter xml, String text) throws XMLStreamException {
    xml.writeStartElement("title");
    xml.writeCharacters(readable(text));
    xml.writeEndElement();
  }

  /** Without the characters that no XML 1.0 file may hold. */
  static String readable(String text) {
    return text.codePoints()
        .filter(c -> c >= 0x20 && c != 0xFFFE && c != 0xFFFF && (c < 0xD800 || c > 0xDFFF))
        .mapToObj(Character::toString)
        .collect(Collectors.joining());
  }

  @Override
  public void fill(Mark.Fill fill) {
    safely(() -> path(SvgPath.of(fill.outline()), fill.colour().hex()));
  }

  @Override
  public void glyphs(Mark.Glyphs glyphs) {
    if (letters == SvgWriter.Letters.LIVE) {
      safely(() -> text(List.of(glyphs)));
      return;
    }
    String outline = SvgPath.of(Path.of(GlyphOutlines.of(glyphs)));
    if (!outline.isEmpty()) {
      safely(() -> path(outline, glyphs.colour().hex()));
    }
  }

  private void path(String d, String fill) throws XMLStreamException {
    xml.writeEmptyElement("path");
    xml.writeAttribute("d", d);
    xml.writeAttribute("fill", fill);
  }

  @Override
  public void line(Mark.Line line) {
    safely(
        () -> {
          path(SvgPath.of(line.outline()), "none");
          xml.writeAttribute("stroke", line.colour().hex());
          xml.writeAttribute("stroke-width", SvgPath.number(line.widthPx()));
          xml.writeAttribute("stroke-linecap", "round");
          xml.writeAttribute("stroke-linejoin", "round");
          if (!line.dashesPx().isEmpty()) {
            xml.writeAttribute(
                "stroke-dasharray",
                line.dashesPx().stream().map(SvgPath::number).collect(Collectors.joining(" ")));
          }
        });
  }

  @Override
  public void clip(Mark.Clip clip) {
    String id = "clip-" + ++clips;
    safely(
        () -> {
          xml.writeStartElement("clipPath");
          xml.writeAttribute("id", id);
          xml.writeEmptyElement("path");
          xml.writeAttribute("d", SvgPath.of(clip.within()));
          xml.writeEndElement();
          xml.writeStartElement("g");
          xml.writeAttribute("clip-path", "url(#" + id + ")");
          clip.marks().forEach(mark -> mark.paintOn(this));
          xml.writeEndElement();
        });
  }

  @Override
  public void group(Mark.Group group) {
    safely(
        () -> {
          xml.writeStartElement("g");
          xml.writeAttribute("id", group.id());
          if (!group.text().isEmpty()) {
            if (group.marks().stream().noneMatch(Mark.Group.class::isInstance)) {
              xml.writeAttribute("role", "img");
            }
            title(xml, group.text());
          }
          paint(group.marks());
          xml.writeEndElement();
        });
  }

  /** Paints runs of one line as one text if it can be edited. */
  private void paint(List<Mark> marks) throws XMLStreamException {
    List<Mark.Glyphs> line = new ArrayList<>();
    for (Mark mark : marks) {
      boolean goesOn =
          letters == SvgWriter.Letters.LIVE
              && mark instanceof Mark.Glyphs glyphs
              && (line.isEmpty() || line.get(0).at().equals(glyphs.at()));
      if (!goesOn) {
        end(line);
      }
      if (letters == SvgWriter.Letters.LIVE && mark instanceof Mark.Glyphs glyphs) {
        line.add(glyphs);
      } else {
        mark.paintOn(this);
      }
    }
    end(line);
  }

  private void end(List<Mark.Glyphs> line) throws XMLStreamException {
    if (!line.isEmpty()) {
      text(line);
      line.clear();
    }
  }

  /** Letters with bars or dots are outlines, since no font has them, and unseen text. */
  private void text(List<Mark.Glyphs> line) throws XMLStreamException {
    for (Mark.Glyphs run : line) {
      if (run.run().ornament() != Ornament.NONE) {
        path(SvgPath.of(Path.of(GlyphOutlines.of(run))), run.colour().hex());
      }
    }
    new SvgText(xml).line(line);
  }
}
