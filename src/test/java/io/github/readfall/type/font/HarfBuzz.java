package io.github.readfall.type.font;

import static org.lwjgl.util.harfbuzz.HarfBuzz.HB_DIRECTION_LTR;
import static org.lwjgl.util.harfbuzz.HarfBuzz.HB_DIRECTION_RTL;
import static org.lwjgl.util.harfbuzz.HarfBuzz.HB_MEMORY_MODE_READONLY;
import static org.lwjgl.util.harfbuzz.HarfBuzz.hb_blob_create;
import static org.lwjgl.util.harfbuzz.HarfBuzz.hb_blob_destroy;
import static org.lwjgl.util.harfbuzz.HarfBuzz.hb_buffer_add_utf16;
import static org.lwjgl.util.harfbuzz.HarfBuzz.hb_buffer_create;
import static org.lwjgl.util.harfbuzz.HarfBuzz.hb_buffer_destroy;
import static org.lwjgl.util.harfbuzz.HarfBuzz.hb_buffer_get_glyph_infos;
import static org.lwjgl.util.harfbuzz.HarfBuzz.hb_buffer_get_glyph_positions;
import static org.lwjgl.util.harfbuzz.HarfBuzz.hb_buffer_guess_segment_properties;
import static org.lwjgl.util.harfbuzz.HarfBuzz.hb_buffer_set_direction;
import static org.lwjgl.util.harfbuzz.HarfBuzz.hb_buffer_set_language;
import static org.lwjgl.util.harfbuzz.HarfBuzz.hb_face_create;
import static org.lwjgl.util.harfbuzz.HarfBuzz.hb_face_destroy;
import static org.lwjgl.util.harfbuzz.HarfBuzz.hb_face_get_upem;
import static org.lwjgl.util.harfbuzz.HarfBuzz.hb_font_create;
import static org.lwjgl.util.harfbuzz.HarfBuzz.hb_font_destroy;
import static org.lwjgl.util.harfbuzz.HarfBuzz.hb_font_get_glyph_extents;
import static org.lwjgl.util.harfbuzz.HarfBuzz.hb_font_get_nominal_glyph;
import static org.lwjgl.util.harfbuzz.HarfBuzz.hb_font_set_scale;
import static org.lwjgl.util.harfbuzz.HarfBuzz.hb_language_from_string;
import static org.lwjgl.util.harfbuzz.HarfBuzz.hb_shape;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.IntBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.lwjgl.system.MemoryStack;
import org.lwjgl.system.MemoryUtil;
import org.lwjgl.util.harfbuzz.hb_glyph_extents_t;
import org.lwjgl.util.harfbuzz.hb_glyph_info_t;
import org.lwjgl.util.harfbuzz.hb_glyph_position_t;

/**
 * One font file in the HarfBuzz library, the reference shaper (https://harfbuzz.github.io), built
 * apart from the JDK's own copy. Its lengths are design units.
 */
public final class HarfBuzz implements AutoCloseable {

  /**
   * What it makes of a text.
   *
   * @param glyphs in visual order from the left
   * @param advanceUnits the pen's whole way
   */
  public record Shaped(List<Integer> glyphs, double advanceUnits) {}

  private final ByteBuffer bytes;
  private final long blob;
  private final long face;
  private final long font;

  public HarfBuzz(Path file) throws IOException {
    byte[] read = Files.readAllBytes(file);
    bytes = MemoryUtil.memAlloc(read.length).put(read).flip();
    blob = hb_blob_create(bytes, HB_MEMORY_MODE_READONLY, 0, null);
    face = hb_face_create(blob, 0);
    font = hb_font_create(face);
    hb_font_set_scale(font, hb_face_get_upem(face), hb_face_get_upem(face));
  }

  /** Shapes with its default features; the script is guessed, the language left undetermined. */
  public Shaped shape(String text, boolean rightToLeft) {
    long buffer = hb_buffer_create();
    hb_buffer_add_utf16(buffer, text, 0, text.length());
    hb_buffer_set_language(buffer, hb_language_from_string("und"));
    hb_buffer_set_direction(buffer, rightToLeft ? HB_DIRECTION_RTL : HB_DIRECTION_LTR);
    hb_buffer_guess_segment_properties(buffer);
    hb_shape(font, buffer, null);
    Shaped shaped = read(buffer);
    hb_buffer_destroy(buffer);
    return shaped;
  }

  /** Whether the file's character map has a glyph for a character. */
  boolean covers(int codePoint) {
    try (MemoryStack stack = MemoryStack.stackPush()) {
      IntBuffer glyph = stack.mallocInt(1);
      return hb_font_get_nominal_glyph(font, codePoint, glyph) && glyph.get(0) != 0;
    }
  }

  /** The bounds of a glyph's ink. */
  Ink ink(int glyph) {
    try (MemoryStack stack = MemoryStack.stackPush()) {
      hb_glyph_extents_t extents = hb_glyph_extents_t.malloc(stack);
      if (!hb_font_get_glyph_extents(font, glyph, extents)) {
        throw new AssertionError("no extents of glyph " + glyph);
      }
      double left = extents.x_bearing();
      double top = extents.y_bearing();
      return new Ink(left, top + extents.height(), left + extents.width(), top);
    }
  }

  private static Shaped read(long buffer) {
    hb_glyph_info_t.Buffer infos = hb_buffer_get_glyph_infos(buffer);
    hb_glyph_position_t.Buffer positions = hb_buffer_get_glyph_positions(buffer);
    List<Integer> glyphs = new ArrayList<>();
    double advanceUnits = 0;
    if (infos != null && positions != null) {
      for (int i = 0; i < infos.remaining(); i++) {
        glyphs.add(infos.get(i).codepoint());
        advanceUnits += positions.get(i).x_advance();
      }
    }
    return new Shaped(glyphs, advanceUnits);
  }

  @Override
  public void close() {
    hb_font_destroy(font);
    hb_face_destroy(face);
    hb_blob_destroy(blob);
    MemoryUtil.memFree(bytes);
  }
}
