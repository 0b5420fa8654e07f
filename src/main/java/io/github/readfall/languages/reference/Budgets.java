package io.github.readfall.languages.reference;

import io.github.readfall.base.geom.Box;
import io.github.readfall.languages.translate.Budget;
import io.github.readfall.lettering.style.Look;
import io.github.readfall.lettering.typeset.BalloonRequest;
import io.github.readfall.lettering.typeset.OutlineCapacity;
import io.github.readfall.lettering.typeset.OutlineRoom;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.lettering.typeset.ShapedCue;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.CueText;
import io.github.readfall.script.Script;
import io.github.readfall.type.balloon.ShapeKind;
import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.LineBreaks;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Computes how many characters of a language fit the balloons of an episode, as they are drawn: the
 * longest beginnings of stretches of the reference text, set as the cue is (its voice, manners,
 * size and shape; no word of it stressed) in that language's faces, by its breaks and at its
 * reading size.
 *
 * <p>A cue without an outline, such as most sound effects, has no budget: nothing can overflow.
 */
public final class Budgets {

  /** House default: more of them change a budget by a character or two. */
  static final int SAMPLES = 40;

  /** No text is set that is longer. */
  private static final int MOST_CHARACTERS = 4_000;

  /** About this many characters fit a square of the leading. From bundled faces and languages. */
  private static final double CHARACTERS_PER_SQUARE = 2.2;

  /** A stretch that ends this near to the limit may have been too short to tell. */
  private static final int SPARE_CHARACTERS = 16;

  private static final CueText NOTHING = new CueText("", "", List.of());

  private final Script script;
  private final Typesetter typesetter;
  private final Language target;
  private final Stretches stretches;

  /** Traits of cues that are lettered alike. */
  private record Lettering(Look look, CueKind kind, BalloonRequest wanted) {

    static Lettering of(SetBalloon balloon) {
      BalloonRequest asked = balloon.wanted();
      return new Lettering(
          balloon.look(),
          balloon.cue().kind(),
          new BalloonRequest(asked.shape(), Optional.empty(), asked.fontPx(), asked.capitalPx()));
    }
  }

  private Budgets(SetEpisode source, Typesetter typesetter, Stretches stretches, Language target) {
    this.script = source.script();
    this.typesetter = typesetter;
    this.target = target;
    this.stretches = stretches;
  }

  /**
   * The budget of a translator for every cue that has an outline, by its id, in script order.
   *
   * @param source the episode as it is set, in the boxes that its layout asks for
   * @param target language of the translation
   * @param typesetter of the episode's style and faces
   * @throws NoReferenceText if there is no text to measure with
   */
  public static Map<String, Budget> of(SetEpisode source, Language target, Typesetter typesetter)
      throws NoReferenceText {
    Map<String, Budget> budgets = new LinkedHashMap<>();
    measured(source, target, typesetter)
        .forEach((id, measured) -> budgets.put(id, measured.budget()));
    return budgets;
  }

  /** The budgets with their spread. */
  public static Map<String, Measured> measured(
      SetEpisode source, Language target, Typesetter typesetter) throws NoReferenceText {
    Stretches stretches = Stretches.of(ReferenceText.of(target), SAMPLES, 0);
    return measured(source, target, typesetter, stretches);
  }

  static Map<String, Measured> measured(
      SetEpisode source, Language target, Typesetter typesetter, Stretches stretches) {
    List<SetBalloon> balloons =
        source.balloons().stream().filter(b -> b.look().shape() != ShapeKind.NONE).toList();
    Budgets budgets = new Budgets(source, typesetter, stretches, target);
    Map<String, Measured> found = new LinkedHashMap<>();
    balloons.stream()
        .collect(Collectors.groupingBy(Lettering::of, LinkedHashMap::new, Collectors.toList()))
        .forEach((lettering, alike) -> found.putAll(budgets.measure(lettering, alike)));
    Map<String, Measured> inOrder = new LinkedHashMap<>();
    balloons.forEach(
        balloon ->
            Optional.ofNullable(found.get(balloon.cue().id()))
                .ifPresent(measured -> inOrder.put(balloon.cue().id(), measured)));
    return inOrder;
  }

  /** Measures with stretches so long that no outline holds one whole. */
  private Map<String, Measured> measure(Lettering lettering, List<SetBalloon> alike) {
    int length = alike.stream().mapToInt(Budgets::charactersExpected).max().orElse(0);
    Map<String, Measured> measured = measure(lettering, alike, length);
    while (length < MOST_CHARACTERS && most(measured) > length - SPARE_CHARACTERS) {
      length = Math.min(MOST_CHARACTERS, 2 * length);
      measured = measure(lettering, alike, length);
    }
    return measured;
  }

  private static int most(Map<String, Measured> measured) {
    return measured.values().stream().mapToInt(Measured::most).max().orElse(0);
  }

  private Map<String, Measured> measure(Lettering lettering, List<SetBalloon> alike, int length) {
    String voice = alike.get(0).cue().id();
    List<ShapedCue> shaped =
        stretches.ofLength(length).stream()
            .map(text -> shape(voice, text, lettering.wanted()))
            .toList();
    LineBreaks breaks = new LineBreaks();
    List<OutlineCapacity> texts =
        shaped.stream().map(cue -> OutlineCapacity.of(cue, breaks)).toList();
    Map<String, Measured> measured = new LinkedHashMap<>();
    for (SetBalloon balloon : alike) {
      OutlineRoom room =
          OutlineRoom.of(shaped.get(0), balloon.box().width(), balloon.box().height());
      measured.put(
          balloon.cue().id(),
          Measured.of(texts.stream().map(text -> text.charactersInto(room)).toList()));
    }
    return measured;
  }

  private static int charactersExpected(SetBalloon balloon) {
    Box box = balloon.box();
    double squares = box.width() * box.height() / (balloon.leadingPx() * balloon.leadingPx());
    return (int) Math.min(MOST_CHARACTERS, 2 * SPARE_CHARACTERS + CHARACTERS_PER_SQUARE * squares);
  }

  /** The cue with a text of the other language in place of its words. */
  private ShapedCue shape(String id, String text, BalloonRequest wanted) {
    Script other =
        script.inLanguage(
            target.tag(),
            cue -> cue.id().equals(id) ? new CueText(text, text, List.of()) : NOTHING);
    return typesetter.shape(other, Map.of(id, wanted)).get(0);
  }
}
