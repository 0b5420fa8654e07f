package io.github.readfall.lettering.typeset;

import io.github.readfall.lettering.style.Dashes;
import io.github.readfall.lettering.style.Lettering;
import io.github.readfall.script.CueText;
import io.github.readfall.script.Emphasis;
import io.github.readfall.script.Span;
import io.github.readfall.type.text.Capitals;
import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.PronounI;
import io.github.readfall.type.text.Typography;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.function.IntUnaryOperator;

/**
 * A cue's text as lettered: by the conventions of its language, in capitals or as written, cut into
 * stretches of one emphasis.
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
   * @param pronoun true for the English pronoun I, which is barred among capitals
   */
  record Part(int start, int end, Optional<Emphasis> emphasis, boolean pronoun) {}

  LetteredText {
    parts = List.copyOf(parts);
  }

  /** A cue's text as written. */
  private static LetteredText written(CueText cue) {
    List<Part> parts = new ArrayList<>();
    int at = 0;
    for (Span span : cue.spans()) {
      addPart(at, span.start(), Optional.empty(), parts);
      addPart(span.start(), span.end(), Optional.of(span.emphasis()), parts);
      at = span.end();
    }
    addPart(at, cue.plain().length(), Optional.empty(), parts);
    return new LetteredText(cue.plain(), parts);
  }

  private static void addPart(int start, int end, Optional<Emphasis> emphasis, List<Part> parts) {
    if (end > start) {
      parts.add(new Part(start, end, emphasis, false));
    }
  }

  /**
   * A cue's text by the conventions of its language and of the series.
   *
   * @param has whether the faces have a character
   */
  static LetteredText of(
      CueText cue, Language language, boolean capitals, Lettering series, IntPredicate has) {
    LetteredText text = written(cue);
    LetteredText printed =
        series.typographic() ? text.typeset(Typography.printed(text.text, language, has)) : text;
    LetteredText dashed =
        printed.typeset(Typography.dashed(printed.text, language, form(series.dashes()), has));
    LetteredText lettered = new LetteredText(language.lettered(dashed.text, has), dashed.parts);
    return capitals ? lettered.inCapitals(language) : lettered;
  }

  private static Optional<String> form(Dashes dashes) {
    return switch (dashes) {
      case AS_WRITTEN -> Optional.empty();
      case DOUBLE_HYPHEN -> Optional.of("--");
      case EM -> Optional.of("—");
    };
  }

  private LetteredText typeset(Typography typography) {
    return moved(typography.text(), typography.placeOf());
  }

  private LetteredText inCapitals(Language language) {
    Capitals upper = Capitals.of(text, language);
    return withPronouns(PronounI.in(text, language)).moved(upper.text(), upper.placeOf());
  }

  private LetteredText moved(String other, IntUnaryOperator placeOf) {
    return new LetteredText(
        other,
        parts.stream()
            .map(
                part ->
                    new Part(
                        placeOf.applyAsInt(part.start),
                        placeOf.applyAsInt(part.end),
                        part.emphasis,
                        part.pronoun))
            .toList());
  }

  private LetteredText withPronouns(List<Integer> places) {
    return new LetteredText(
        text, parts.stream().flatMap(part -> apart(part, places).stream()).toList());
  }

  private static List<Part> apart(Part part, List<Integer> pronouns) {
    List<Part> apart = new ArrayList<>();
    int at = part.start;
    for (int i : pronouns) {
      if (i >= part.start && i < part.end) {
        addPart(at, i, part.emphasis, apart);
        apart.add(new Part(i, i + 1, part.emphasis, true));
        at = i + 1;
      }
    }
    addPart(at, part.end, part.emphasis, apart);
    return apart;
  }
}
