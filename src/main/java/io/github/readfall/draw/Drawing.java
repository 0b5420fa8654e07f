package io.github.readfall.draw;

import io.github.readfall.base.viewing.Colour;
import java.util.List;

/**
 * A finished picture.
 *
 * @param title its subject, in a few words
 * @param language BCP 47, of the words in it
 * @param widthPx positive
 * @param heightPx positive
 * @param paper background colour
 * @param marks from back to front, and in reading order
 */
public record Drawing(
    String title, String language, int widthPx, int heightPx, Colour paper, List<Mark> marks) {

  public Drawing {
    if (widthPx <= 0 || heightPx <= 0) {
      throw new IllegalArgumentException("not a picture: " + widthPx + " x " + heightPx);
    }
    marks = List.copyOf(marks);
  }
}
