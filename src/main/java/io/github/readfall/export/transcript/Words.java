package io.github.readfall.export.transcript;

import io.github.readfall.script.CueText;
import io.github.readfall.script.Emphasis;
import io.github.readfall.script.Span;
import io.github.readfall.script.read.JoinedLines;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A stretch of words, without markup.
 *
 * @param text in one line, not empty
 * @param emphasis of the words, if they have any
 */
public record Words(String text, Optional<Emphasis> emphasis) {

  /** The words of a cue; a forced break is a space if the script is written with spaces. */
  static List<Words> of(CueText text) {
    List<Words> words = new ArrayList<>();
    int at = 0;
    for (Span span : text.spans()) {
      add(text.plain(), at, span.start(), Optional.empty(), words);
      add(text.plain(), span.start(), span.end(), Optional.of(span.emphasis()), words);
      at = span.end();
    }
    add(text.plain(), at, text.plain().length(), Optional.empty(), words);
    return List.copyOf(words);
  }

  private static void add(
      String plain, int from, int to, Optional<Emphasis> emphasis, List<Words> words) {
    StringBuilder flowing = new StringBuilder();
    for (int i = from; i < to; i++) {
      flowing.append(
          plain.charAt(i) == '\n'
              ? JoinedLines.gap(plain.substring(0, i), plain.substring(i + 1))
              : Character.toString(plain.charAt(i)));
    }
    if (!flowing.isEmpty()) {
      words.add(new Words(flowing.toString(), emphasis));
    }
  }
}
