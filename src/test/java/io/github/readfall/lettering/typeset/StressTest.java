package io.github.readfall.lettering.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.font.Ornament;
import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.Languages;
import io.github.readfall.type.text.SizedFace;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** How each language makes a word stand out, with the first words of the UDHR. */
class StressTest {

  private static final FontShelf SHELF = Sample.shelf();

  static Stream<Language> languages() {
    return Languages.all().stream();
  }

  @ParameterizedTest
  @MethodSource("languages")
  void aStrongWordLeansOrIsHeavierAndNeverLooksLikeTheOthers(Language language) {
    SizedFace plain = type(language, "");
    SizedFace strong = type(language, "*");
    boolean leans = strong.slantDeg() > 0 || strong.face().file().italic();
    boolean heavier = strong.face().file().weight() > plain.face().file().weight();
    assertEquals(language.canSlant(), leans);
    boolean dotted = strong.face().ornament() != Ornament.NONE;
    assertTrue(heavier || dotted || strong.fontPx() > plain.fontPx() * 1.1, strong::toString);
    assertTrue(!dotted || Set.of("Jpan", "Hans", "Hant").contains(language.script()));
    assertTrue(heavier || !language.canSlant(), "larger in place of bold is for upright scripts");
  }

  @ParameterizedTest
  @MethodSource("languages")
  void aSlantedWordIsToldFromTheOthersToo(Language language) {
    SizedFace plain = type(language, "");
    SizedFace slanted = type(language, "_");
    assertTrue(!slanted.equals(plain));
    assertEquals(language.canSlant(), slanted.slantDeg() > 0 || slanted.face().file().italic());
  }

  private static SizedFace type(Language language, String mark) {
    String text = Declaration.texts(language.tag()).get(0);
    String cue = "ILSE: " + mark + text.replaceAll("[*_]", "") + mark;
    List<SizedFace> types = Sample.set(SHELF, language.tag(), cue).get(0).types();
    return types.get(0);
  }
}
