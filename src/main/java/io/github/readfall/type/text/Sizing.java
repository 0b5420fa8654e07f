package io.github.readfall.type.text;

import io.github.readfall.base.viewing.LetterKind;
import java.util.List;

/**
 * The size of a language's letters, and the distance of its lines.
 *
 * @param letters that decide its size, the most telling first; not empty
 * @param leadingFactor its leading over the series' leading; more than 1 if marks stack
 */
public record Sizing(List<LetterKind> letters, double leadingFactor) {

  public Sizing {
    letters = List.copyOf(letters);
  }
}
