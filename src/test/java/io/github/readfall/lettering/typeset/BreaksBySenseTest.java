package io.github.readfall.lettering.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.type.balloon.Fit;
import io.github.readfall.type.balloon.Fitter;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.text.LineBreaks.Segment;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Lines broken by sense, on sentences of treebanks of Universal Dependencies with a verdict for
 * every place between words: see {@code src/test/resources/sentences/LICENCE.md}.
 */
class BreaksBySenseTest {

  private static final FontShelf SHELF = Sample.shelf();
  private static final Path SENTENCES = Path.of("src", "test", "resources", "sentences");

  /** A balloon may be as much larger on average, so that its lines are broken by sense. */
  private static final double MOST_AREA = 1.12;

  /** A sentence and the verdict on each place between its words. */
  private record Sentence(String text, Map<Integer, String> gaps) {

    static Sentence of(String row) {
      String[] cells = row.split("\t", -1);
      Map<Integer, String> gaps = new HashMap<>();
      for (String gap : cells[1].split(",", -1)) {
        String at = gap.replaceAll("\\D", "");
        gaps.put(Integer.parseInt(at), gap.substring(at.length()));
      }
      return new Sentence(cells[2], gaps);
    }

    /** Returns true if a line that ends there parts a word, or words that belong together. */
    boolean isPartedAt(int at) {
      return gaps.getOrDefault(at, "x").equals("x");
    }
  }

  /** Shares of breaks that part what belongs together; the limits are house defaults. */
  @ParameterizedTest
  @CsvSource({
    "de, 0.10", "en, 0.10", "es, 0.10", "fr, 0.10", "id, 0.10", "pt-BR, 0.10", "ro, 0.10",
    "ru, 0.10", "sv, 0.10", "he, 0.15", "ko, 0.15", "vi, 0.15", "ja, 0.15", "zh-Hans, 0.15"
  })
  void fewBreaksPartWhatBelongsTogether(String language, double most) throws IOException {
    List<Sentence> sentences = sentences(language);
    int breaks = 0;
    List<String> parted = new ArrayList<>();
    double areas = 0;
    int judged = 0;
    for (Sentence sentence : sentences) {
      ShapedCue cue = Sample.shaped(SHELF, language, "ANA: " + sentence.text()).get(0);
      if (cue.passage().text().length() == sentence.text().length()) { // not so if ß becomes SS
        judged++;
        Fit fit = Fitter.fit(cue.table(), cue.enclosure(), cue.rules()).orElseThrow();
        List<Integer> ends = ends(cue, fit);
        breaks += ends.size();
        parted.addAll(
            ends.stream().filter(sentence::isPartedAt).map(at -> parted(sentence, at)).toList());
        areas += fit.enclosed().areaPx2() / smallest(cue);
      }
    }
    double share = (double) parted.size() / breaks;
    assertTrue(judged > 0.8 * sentences.size(), judged + " judged");
    assertTrue(share <= most, share + " of " + breaks + " breaks: " + parted);
    assertTrue(areas / judged <= MOST_AREA, "area " + areas / judged);
  }

  private static double smallest(ShapedCue cue) {
    return Fitter.fit(cue.table(), cue.enclosure(), cue.rules().withoutCosts())
        .orElseThrow()
        .enclosed()
        .areaPx2();
  }

  private static String parted(Sentence sentence, int at) {
    return sentence.text().substring(Math.max(0, at - 9), at)
        + " / "
        + sentence.text().substring(at, Math.min(sentence.text().length(), at + 9)).strip();
  }

  /** The ends of all lines but the last, without the spaces there. */
  private static List<Integer> ends(ShapedCue cue, Fit fit) {
    List<Segment> segments = cue.passage().segments();
    List<Integer> lasts = fit.lastSegments();
    return lasts.subList(0, lasts.size() - 1).stream()
        .map(last -> segments.get(last))
        .map(
            s ->
                s.start()
                    + cue.passage().text().substring(s.start(), s.end()).stripTrailing().length())
        .toList();
  }

  private static List<Sentence> sentences(String language) throws IOException {
    return Files.readAllLines(SENTENCES.resolve(language + ".tsv")).stream()
        .map(Sentence::of)
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "en, It's on. It's on!, IT'S ON. / IT'S ON!",
    "en, Do not let him see the stairs., DO NOT LET HIM / SEE THE STAIRS.",
    "en, I know who she's carrying., I KNOW WHO / SHE'S CARRYING.",
    "en, Nobody tells the board., NOBODY TELLS / THE BOARD.",
    "en, The lamp! It's the lamp!, THE LAMP! / IT'S THE LAMP!"
  })
  void linesArePhrases(String language, String text, String lines) {
    assertEquals(lines.replace('\'', '’'), set(language, text));
  }

  @ParameterizedTest
  @CsvSource({
    "de, Ich brauche heute noch 25 Schüsseln für die Suppe., 25 SCHÜSSELN",
    "ja, もう夜中の三時を過ぎているのに誰も寝ていない。, 三時",
    "ja, あと十五分で船が港を出てしまいます。, 十五分",
    "tr, Bugün ne kadar güzel bir gün olacak bilmiyorum., BİR GÜN",
    "pl, Kot śpi w ogrodzie i nikt go nie widział., W OGRODZIE",
    "ru, Мы идём в лес и больше никуда не пойдём., В ЛЕС",
    "ko, 그는 “됐어”라고 말하고 문을 닫았다., “됐어”라고",
    "ja, 昨日おばあちゃんに会いに行ったんだよ。, おばあちゃん"
  })
  void whatBelongsTogetherIsInOneLine(String language, String text, String together) {
    String lines = set(language, text);
    assertTrue(lines.contains(together), lines);
  }

  /** The maker's breaks are the only ones wherever each part fits. */
  @ParameterizedTest
  @CsvSource({
    "Do not touch it / yet., DO NOT TOUCH IT / YET.",
    "One / two / three., ONE / TWO / THREE.",
    "Do / not touch what is not yours., DO / NOT TOUCH WHAT IS NOT YOURS."
  })
  void whereTheMakerBrokeTheLineNothingElseIsBroken(String text, String lines) {
    assertEquals(lines, set("en", text));
  }

  private static String set(String language, String text) {
    return Sample.set(SHELF, language, "ANA: " + text).get(0).lines().stream()
        .map(line -> line.line().text())
        .collect(Collectors.joining(" / "));
  }
}
