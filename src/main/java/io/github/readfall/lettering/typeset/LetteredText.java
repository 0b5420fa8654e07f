package io.github.readfall.lettering.typeset;

import io.github.readfall.script.CueText;
import io.github.readfall.script.Emphasis;
import io.github.readfall.script.Span;
import io.github.readfall.type.text.Capitals;
import io.github.readfall.type.text.Language;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;

/**
 * A cue's text as lettered: in capitals or as written, cut into stretches of one emphasis.
 *
 * @param text with {@code '\n'} for a forced break
 * @param parts in order, covering the text
 */
record LetteredText(String text, List<Part> parts) {

  /**
   * A stretch of one emphasis.
   *
   * @param start first UTF-16 unit
   * @param end one past the last
   * @param emphasis none for plain text
   */
  record Part(int start, int end, Optional<Emphasis> emphasis) {}

  LetteredText {
    parts = List.copyOf(parts);
  }

  /**
   * A cue's text by the conventions of its language.
   *
   * @param has whether the faces have a character
   */
  static LetteredText of(CueText cue, Language language, boolean capitals, IntPredicate has) {
    String plain = language.lettered(cue.plain(), has);
    if (!capitals) {
      return new LetteredText(plain, parts(plain.length(), cue.spans()));
    }
    Capitals upper = Capitals.of(plain, language);
    List<Span> moved =
        cue.spans().stream()
            .map(
                span ->
                    new Span(
                        upper.placeOf().applyAsInt(span.start()),
                        upper.placeOf().applyAsInt(span.end()),
                        span.emphasis()))
            .toList();
    return new LetteredText(upper.text(), parts(upper.text().length(), moved));
  }

  private static List<Part> parts(int length, List<Span> spans) {
    List<Part> parts = new ArrayList<>();
    int at = 0;
    for (Span span : spans) {
      addPlain(at, span.start(), parts);
      parts.add(new Part(span.start(), span.end(), Optional.of(span.emphasis())));
      at = span.end();
    }
    addPlain(at, length, parts);
    return parts;
  }

  private static void addPlain(int start, int end, List<Part> parts) {
    if (end > start) {
      parts.add(new Part(start, end, Optional.empty()));
    }
  }
}
