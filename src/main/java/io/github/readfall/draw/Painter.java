package io.github.readfall.draw;

/** Draws every kind of mark; a new kind breaks each painter's build. */
public interface Painter {

  void fill(Mark.Fill fill);

  void line(Mark.Line line);

  void glyphs(Mark.Glyphs glyphs);

  void clip(Mark.Clip clip);

  void group(Mark.Group group);
}
