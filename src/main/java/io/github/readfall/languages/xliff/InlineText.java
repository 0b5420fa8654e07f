package io.github.readfall.languages.xliff;

import io.github.readfall.script.CueText;
import io.github.readfall.script.Emphasis;
import io.github.readfall.script.MarkupWriter;
import io.github.readfall.script.Span;
import java.util.ArrayList;
import java.util.List;

/**
 * The content of a source or a target.
 *
 * @param plain its letters, white space collapsed, a forced break as {@code '\n'}
 * @param looks for each unit of {@code plain} the sum of the looks of its signs
 * @param codes codes that are not of the script's markup, in order
 * @param signs codes that are, each as its tag is written, in order
 */
record InlineText(String plain, String looks, List<Code> codes, List<Written> signs) {

  /** Nothing. */
  static final InlineText EMPTY = new InlineText("", "", List.of(), List.of());

  InlineText {
    codes = List.copyOf(codes);
    signs = List.copyOf(signs);
  }

  /**
   * A code without a sign in the script's markup.
   *
   * @param at the unit of the text that it precedes
   * @param pair true if something opens or closes here, so that nothing else may cross it
   * @param written as written
   */
  record Code(int at, boolean pair, String written) {

    Code at(int other) {
      return new Code(other, pair, written);
    }
  }

  /**
   * A code for a sign of the script's markup.
   *
   * @param sign of the markup
   * @param id its id
   * @param attributes the rest of its tag, as written, each after a space
   */
  record Written(Sign sign, String id, String attributes) {}

  /** The text of a cue. */
  static InlineText of(CueText text) {
    char[] looks = new char[text.plain().length()];
    for (Span span : text.spans()) {
      for (int i = span.start(); i < span.end(); i++) {
        looks[i] = (char) look(span.emphasis());
      }
    }
    return new InlineText(text.plain(), new String(looks), List.of(), List.of());
  }

  private static int look(Emphasis emphasis) {
    return switch (emphasis) {
      case STRONG -> Sign.STRONG.look();
      case SLANTED -> Sign.SLANTED.look();
      case STRONG_SLANTED -> Sign.STRONG.look() | Sign.SLANTED.look();
    };
  }

  /** This text and the one that follows it. */
  InlineText and(InlineText next) {
    List<Code> allCodes = new ArrayList<>(codes);
    next.codes.forEach(code -> allCodes.add(code.at(code.at() + plain.length())));
    List<Written> allSigns = new ArrayList<>(signs);
    allSigns.addAll(next.signs);
    return new InlineText(plain + next.plain, looks + next.looks, allCodes, allSigns);
  }

  /** The text with the script's markup. */
  String raw() {
    return MarkupWriter.raw(plain, spans());
  }

  /** Returns true if it has the same letters with the same looks. */
  boolean says(InlineText other) {
    return plain.equals(other.plain) && looks.equals(other.looks);
  }

  private List<Span> spans() {
    List<Span> spans = new ArrayList<>();
    int start = 0;
    for (int i = 1; i <= looks.length(); i++) {
      if (i == looks.length() || looks.charAt(i) != looks.charAt(start)) {
        if (looks.charAt(start) != 0) {
          spans.add(new Span(start, i, emphasis(looks.charAt(start))));
        }
        start = i;
      }
    }
    return spans;
  }

  private static Emphasis emphasis(int look) {
    if (look == Sign.STRONG.look()) {
      return Emphasis.STRONG;
    }
    return look == Sign.SLANTED.look() ? Emphasis.SLANTED : Emphasis.STRONG_SLANTED;
  }
}
