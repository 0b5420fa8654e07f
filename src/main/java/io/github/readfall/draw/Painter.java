package io.github.readfall.draw;

/** What a renderer must be able to draw; a new kind of mark breaks each one's build. */
public interface Painter {

  void fill(Mark.Fill fill);

  void line(Mark.Line line);

  void glyphs(Mark.Glyphs glyphs);

  void clip(Mark.Clip clip);

  void group(Mark.Group group);
}
