package io.github.readfall.languages.reference;

import io.github.readfall.languages.translate.State;
import io.github.readfall.languages.translate.TranslatedCue;
import io.github.readfall.languages.translate.Translation;
import io.github.readfall.script.Cue;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.CueText;
import io.github.readfall.script.Script;
import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.Languages;
import java.util.List;
import java.util.Optional;

/**
 * Makes text that stands in for a missing translation: of the expected length, in its language's
 * letters and words, and without a meaning.
 *
 * <p>Its words are the reference text's, with lengths spread over all that occur there and in an
 * order drawn from the cue, so that the same cue has the same stand-in every time. Emphasis, forced
 * breaks, capitals and the marks round a sentence are the cue's; marks inside a sentence, such as a
 * comma, are left out. A sound effect is one word.
 */
public final class StandIn {

  /** The mark of scripts; one character of the lettered text. */
  private static final String FORCED_BREAK = " / ";

  private final Language target;
  private final ExpectedLength lengths;
  private final WordPool pool;
  private final Marks marks;

  private StandIn(Language target, ExpectedLength lengths, WordPool pool) {
    this.target = target;
    this.lengths = lengths;
    this.pool = pool;
    this.marks = Marks.of(target);
  }

  /**
   * Stand-ins in a language.
   *
   * @param lengths expected lengths of translations
   * @throws NoReferenceText if there are no words to take
   */
  public static StandIn in(Language target, ExpectedLength lengths) throws NoReferenceText {
    return new StandIn(target, lengths, WordPool.of(ReferenceText.of(target)));
  }

  /**
   * A whole script in another language, every cue a stand-in.
   *
   * @throws NoReferenceText if there are no words to take
   */
  public static Translation translation(Script script, Language target, ExpectedLength lengths)
      throws NoReferenceText {
    StandIn standIn = in(target, lengths);
    Language source = Languages.of(script.language());
    return new Translation(
        target.tag(),
        script.cues().stream()
            .map(
                cue ->
                    new TranslatedCue(
                        cue, standIn.of(cue, source), State.INITIAL, Optional.empty()))
            .toList());
  }

  /**
   * The stand-in of a cue, with the script's markup; empty for a cue without words.
   *
   * @param source language of the cue
   */
  public String of(Cue cue, Language source) {
    Scramble lot = Scramble.of(target.tag() + " " + cue.id() + " " + cue.text().raw());
    boolean effect = cue.kind() == CueKind.EFFECT;
    return effect ? effect(cue.text(), source, lot) : text(cue.text(), source, lot);
  }

  private String effect(CueText text, Language source, Scramble lot) {
    List<Sentence> sentences = Sentence.of(text.plain().replace('\n', ' '));
    if (sentences.isEmpty()) {
      return "";
    }
    Sentence last = sentences.get(sentences.size() - 1);
    Sentence first = sentences.get(0);
    Sentence whole =
        new Sentence(first.start(), first.opening(), text.plain(), last.ending(), false);
    String opening = marks.opening(first.opening(), last.ending());
    String ending = marks.ending(last.ending());
    int room = expected(text) - WordPool.characters(opening + ending);
    String word = pool.nearest(Math.max(1, room), lot.share(0));
    RawWriter raw = new RawWriter();
    List<String> words = Capitalised.of(List.of(word), whole, source, target);
    raw.add(opening, words, Emphasised.of(words, whole, text.spans()), pool.gap(), ending);
    return raw.toString();
  }

  private int expected(CueText text) {
    return lengths.of(Math.max(1, text.characters())).likely();
  }

  private String text(CueText text, Language source, Scramble lot) {
    List<Sentence> sentences = Sentence.of(text.plain());
    int said = sentences.stream().mapToInt(Sentence::characters).sum();
    double ratio = roomForWords(text, sentences) / (double) Math.max(1, said);
    int saidBefore = 0;
    int written = 0;
    RawWriter raw = new RawWriter();
    for (int i = 0; i < sentences.size(); i++) {
      Sentence sentence = sentences.get(i);
      saidBefore += sentence.characters();
      int length = (int) Math.max(1, Math.round(ratio * saidBefore) - written);
      List<String> words = sentence.words().isEmpty() ? List.of() : pool.draw(length, lot.part(i));
      written += WordPool.characters(String.join(pool.gap(), words));
      raw.addGap(i == 0 ? "" : gapAfter(sentences.get(i - 1)));
      add(sentence, Capitalised.of(words, sentence, source, target), text, raw);
    }
    return raw.toString();
  }

  /** Characters expected, without those of marks and of gaps between sentences. */
  private int roomForWords(CueText text, List<Sentence> sentences) {
    int taken = 0;
    for (int i = 0; i < sentences.size(); i++) {
      Sentence sentence = sentences.get(i);
      taken += WordPool.characters(marks.opening(sentence.opening(), sentence.ending()));
      taken += WordPool.characters(marks.ending(sentence.ending()));
      taken += i == 0 ? 0 : Math.min(1, gapAfter(sentences.get(i - 1)).length());
    }
    return Math.max(0, expected(text) - taken);
  }

  private String gapAfter(Sentence sentence) {
    return sentence.endsLine() ? FORCED_BREAK : Spaces.betweenSentences(target);
  }

  private void add(Sentence sentence, List<String> words, CueText text, RawWriter raw) {
    raw.add(
        marks.opening(sentence.opening(), sentence.ending()),
        words,
        Emphasised.of(words, sentence, text.spans()),
        pool.gap(),
        marks.ending(sentence.ending()));
  }
}
