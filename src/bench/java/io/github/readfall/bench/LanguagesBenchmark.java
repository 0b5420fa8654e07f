package io.github.readfall.bench;

import io.github.readfall.job.polyglot.Edition;
import io.github.readfall.job.polyglot.SharedBalloons;
import io.github.readfall.languages.reference.NoReferenceText;
import io.github.readfall.languages.reference.ReferenceText;
import io.github.readfall.languages.translate.Translation;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ScriptReader;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.text.Languages;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/**
 * Balloons for fifteen languages in one go, compared with its floor: fitting each language by
 * itself. A script has {@link #CUES} cues, each the beginning of an article of the Universal
 * Declaration of Human Rights, the same article in every language.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 4)
@Measurement(iterations = 6, time = 4)
@Fork(1)
public class LanguagesBenchmark {

  static final int CUES = 200;

  private static final int ENGLISH_CHARACTERS = 60;
  private static final List<String> TAGS =
      List.of(
          "en", "de", "fr", "es", "it", "nl", "pl", "ru", "tr", "fi", "vi", "ko", "ja", "th", "ar");

  private final FontShelf shelf = Cues.shelf();
  private List<Edition> editions = List.of();

  /** Makes a script in every language. */
  @Setup
  public void prepare() throws NoReferenceText {
    List<Edition> made = new ArrayList<>();
    for (String tag : TAGS) {
      Script script = script(tag);
      made.add(
          new Edition(
              Translation.empty(tag, script),
              script,
              new Typesetter(shelf, HouseStyle.DEFAULT),
              Set.of(),
              List.of()));
    }
    editions = List.copyOf(made);
  }

  private static Script script(String tag) throws NoReferenceText {
    List<ReferenceText.Article> articles = ReferenceText.of(Languages.of(tag)).articles();
    List<ReferenceText.Article> english = ReferenceText.of(Languages.of("en")).articles();
    StringBuilder text = new StringBuilder("Language: " + tag + "\n\n");
    for (int cue = 0; cue < CUES; cue++) {
      int article = cue % articles.size();
      double share = (double) ENGLISH_CHARACTERS / english.get(article).text().length();
      text.append(cue % 2 == 0 ? "PANEL\n\n" : "");
      text.append("PIM: ").append(beginning(articles.get(article).text(), share)).append("\n\n");
    }
    return new ScriptReader().read(text.toString(), Keywords.ENGLISH).script();
  }

  /** A share of an article, up to the end of a word in languages that separate words. */
  private static String beginning(String article, double share) {
    String line = article.replace('\n', ' ');
    int end = Math.min(line.length(), Math.max(1, (int) Math.round(line.length() * share)));
    int space = line.indexOf(' ', end);
    return space >= 0 && space < 2 * end ? line.substring(0, space) : line.substring(0, end);
  }

  /** The floor: every language by itself. */
  @Benchmark
  public void eachByItself(Blackhole hole) {
    for (Edition edition : editions) {
      hole.consume(edition.typesetter().set(edition.script()));
    }
  }

  /** The balloons that fit every language, and the script set into them. */
  @Benchmark
  public SetEpisode allInOneGo() {
    Edition original = editions.get(0);
    SharedBalloons shared =
        SharedBalloons.of(original, editions.subList(1, editions.size()), Map.of());
    return original.typesetter().set(original.script(), shared.wanted(Map.of()));
  }
}
