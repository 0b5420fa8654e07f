package io.github.readfall.rules.voice;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.rules.model.RuleSpec;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Stream;

/**
 * A voice that is lettered larger or smaller in one episode than in most, for example where
 * layout.json says that the lettering exists already.
 */
final class DriftedSize implements SeriesRule {

  private static final int MOST_NAMED = 3;
  private static final double PERCENT = 100;

  /**
   * The size of a voice in one episode.
   *
   * @param arcmin height of a character on the narrowest phone, in minutes of arc: the median
   */
  private record Size(SpeakerBalloons uses, double arcmin) {

    static Size of(SpeakerBalloons uses) {
      List<Double> sizes =
          uses.balloons().stream().map(b -> arcmin(b, uses.strip())).sorted().toList();
      return new Size(uses, sizes.get(sizes.size() / 2));
    }

    private static double arcmin(SetBalloon balloon, SeriesStrip strip) {
      double widthPx = strip.galley().widthPx();
      return strip.set().phone().angleOf(balloon.characterPx(), widthPx).arcmin();
    }

    double percentFrom(Size other) {
      return StrictMath.abs(arcmin / other.arcmin - 1) * PERCENT;
    }
  }

  /** A size beside the one that most episodes have. */
  private record Drift(Size size, Size usual) {

    double percent() {
      return size.percentFrom(usual);
    }

    String path() {
      return size.uses().strip().path();
    }

    String speaker() {
      return size.uses().speaker();
    }
  }

  @Override
  public RuleSpec spec() {
    return RuleSpec.DRIFTED;
  }

  @Override
  public Stream<Finding> check(List<SeriesStrip> strips) {
    double limit = RuleSpec.DRIFTED.limitIn(strips.get(0).galley().style());
    return SeriesVoice.of(strips).stream()
        .flatMap(voice -> drifts(voice, limit).stream())
        .collect(groupingBy(Drift::path, LinkedHashMap::new, toList()))
        .values()
        .stream()
        .map(drifts -> finding(drifts, limit));
  }

  /**
   * The sizes of a voice that differ from most episodes; only the same lettering style is compared.
   */
  private static List<Drift> drifts(SeriesVoice voice, double limit) {
    LetteringStyle style = voice.usual();
    List<Size> sizes = voice.where(style::agreesWith).stream().map(Size::of).toList();
    Size usual = sizes.get(0);
    for (Size size : sizes) {
      usual = near(size, sizes, limit) > near(usual, sizes, limit) ? size : usual;
    }
    List<Drift> drifts = new ArrayList<>();
    for (Size size : sizes) {
      if (isBeyond(size, usual, limit)) {
        drifts.add(new Drift(size, usual));
      }
    }
    return drifts;
  }

  private static long near(Size size, List<Size> sizes, double limit) {
    return sizes.stream().filter(other -> !isBeyond(other, size, limit)).count();
  }

  private static boolean isBeyond(Size size, Size usual, double limit) {
    return NumberText.isShort(limit, size.percentFrom(usual));
  }

  /** One finding for an episode, by the voice that drifted furthest. */
  private Finding finding(List<Drift> drifts, double limit) {
    Drift worst = drifts.stream().max(Comparator.comparingDouble(Drift::percent)).orElseThrow();
    Size size = worst.size();
    List<String> others =
        drifts.stream()
            .map(Drift::speaker)
            .filter(name -> !name.equals(worst.speaker()))
            .distinct()
            .toList();
    List<SetBalloon> balloons =
        drifts.stream()
            .flatMap(drift -> drift.size().uses().balloons().stream())
            .sorted(Comparator.comparingInt(balloon -> balloon.cue().line()))
            .toList();
    SpeakerBalloons uses = new SpeakerBalloons(size.uses().strip(), balloons);
    return uses.finding(RuleSpec.DRIFTED, message(worst, others), advice(worst))
        .measured(worst.percent(), limit, RuleSpec.DRIFTED.unit());
  }

  private static String message(Drift drift, List<String> others) {
    boolean smaller = drift.size().arcmin() < drift.usual().arcmin();
    return drift.speaker()
        + " is lettered "
        + NumberText.up(drift.percent(), 1)
        + " % "
        + (smaller ? "smaller" : "larger")
        + " here than in "
        + drift.usual().uses().strip().name()
        + ": "
        + NumberText.down(drift.size().arcmin(), 1)
        + " instead of "
        + NumberText.down(drift.usual().arcmin(), 1)
        + " minutes of arc on the narrowest phone"
        + (others.isEmpty()
            ? "."
            : "; other sizes also for " + NumberText.list(others, MOST_NAMED, name -> name) + ".");
  }

  private static String advice(Drift drift) {
    double fontPx = drift.size().uses().balloons().get(0).type().fontPx();
    double goal = fontPx * drift.usual().arcmin() / drift.size().arcmin();
    return "Letter "
        + drift.speaker()
        + " at an em of "
        + NumberText.up(goal, 1)
        + " px here, or change the other episodes alike.";
  }
}
