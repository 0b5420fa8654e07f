package io.github.readfall.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A cue in each language is set whole: every letter, in capitals where the language has them. */
class ScriptsOfTheWorldTest {

  private final Path folder;

  ScriptsOfTheWorldTest(@TempDir Path folder) {
    this.folder = folder;
  }

  /**
   * The capitals are those of the Unicode Standard, section 5.18, and SpecialCasing.txt: a Turkish
   * i keeps its dot, a Greek word in capitals loses its accent, and a sharp s becomes SS.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "en | ltr | Mr. Quill isn't *here*. | MR. QUILL ISN’T HERE.",
        "de | ltr | Die Straße, große Güte! | DIE STRASSE, GROSSE GÜTE!",
        "tr | ltr | İki kişi ışık istiyor. | İKİ KİŞİ IŞIK İSTİYOR.",
        "el | ltr | Πού είναι η θάλασσα; | ΠΟΥ ΕΙΝΑΙ Η ΘΑΛΑΣΣΑ;",
        "ru | ltr | Ёлка стоит в грязи. | ЁЛКА СТОИТ В ГРЯЗИ.",
        "vi | ltr | Nước đã đi đâu rồi? | NƯỚC ĐÃ ĐI ĐÂU RỒI?",
        "fr | ltr | Où est l’œuf ? | OÙ EST L’ŒUF ?",
        "nl | ltr | Het ijs is dun. | HET IJS IS DUN.",
        "ko | ltr | 물은 어디에 있습니까? | 물은 어디에 있습니까?",
        "ja | ltr | 水はどこへ行ったの。 | 水はどこへ行ったの。",
        "zh | ltr | 水去哪儿了？ | 水去哪儿了？",
        "zh-Hant | ltr | 水去哪兒了？ | 水去哪兒了？",
        "th | ltr | น้ำหายไปไหน | น้ำหายไปไหน",
        "hi | ltr | पानी कहाँ गया? | पानी कहाँ गया?",
        "ar | rtl | أين ذهب الماء؟ | أين ذهب الماء؟",
        "he | rtl | לאן הלכו המים? | לאן הלכו המים?"
      })
  void everyLetterIsSet(String language, String direction, String text, String lettered)
      throws IOException {
    JsonNode report = report(language, text);
    JsonNode balloon = report.path("balloons").path(0);
    assertEquals(language, balloon.path("language").asString());
    assertEquals(direction, balloon.path("direction").asString());
    assertEquals(withoutSpaces(lettered), withoutSpaces(lines(balloon)));
    assertEquals(List.of(), missing(report));
  }

  /** Marked words, forced breaks, figures and Latin words in every script. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "en | It *is / count / ing* _a / gain_, at 6:12 (no).",
        "tr | *İki / kişi* _ış / ık_ istiyor, 6:12.",
        "de | *Stra / ße* _groß / e_ Güte, 6:12.",
        "el | *Πού / είναι* _η / θάλασσα_, 6:12 Quill;",
        "ru | *Ёлка / стоит* _в / грязи_, 6:12 Quill.",
        "vi | *Nước / đã* _đi / đâu_ rồi, 6:12?",
        "ko | *물은 / 어디에* _있습 / 니까_, 6:12 Quill?",
        "ja | *水は / どこへ* _行っ / たの_、6:12 Quill。",
        "zh | *水去 / 哪儿* _了 / 呢_，6:12 Quill？",
        "th | *น้ำ / หาย* _ไป / ไหน_ 6:12 Quill",
        "hi | *पानी / कहाँ* _गया / है_, 6:12 Quill?",
        "ar | *أين / ذهب* _الما / ء_، 6:12 (Quill)؟",
        "he | *לאן / הלכו* _המ / ים_, 6:12 (Quill)?"
      })
  void emphasisGoesOnOverForcedBreaks(String language, String text) throws IOException {
    JsonNode report = report(language, text);
    JsonNode balloon = report.path("balloons").path(0);
    assertTrue(balloon.path("lines").size() >= 3, balloon.path("lines").toString());
    assertTrue(lines(balloon).contains("6:12"), lines(balloon));
    assertTrue(lines(balloon).chars().noneMatch(c -> c == '*' || c == '_'), lines(balloon));
  }

  private static List<JsonNode> missing(JsonNode report) {
    return report
        .path("findings")
        .valueStream()
        .filter(finding -> finding.path("rule").asString().equals("legible/glyph-missing"))
        .toList();
  }

  private JsonNode report(String language, String text) throws IOException {
    Path script = folder.resolve("some.txt");
    Files.writeString(
        script, "Language: " + language + "\nCast: Ilse\n\nPANEL 1\n\nILSE: " + text + "\n");
    Ran ran = Ran.of("fit", script, "--json", "--picture", folder.resolve("out.svg"));
    assertEquals(0, ran.status(), ran.err() + ran.out());
    return JsonMapper.builder().build().readTree(ran.out());
  }

  private static String lines(JsonNode balloon) {
    return balloon
        .path("lines")
        .valueStream()
        .map(line -> line.path("text").asString())
        .collect(Collectors.joining("\n"));
  }

  private static String withoutSpaces(String text) {
    return text.replaceAll("[\\s\\h]", "");
  }
}
