package io.github.readfall.plan;

import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.script.Cue;
import io.github.readfall.script.Panel;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.type.text.Languages;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Words as a reader meets them on the strip: a balloon, or lettering drawn by hand.
 *
 * @param cue id of the cue
 * @param panel its place in the script, from 1
 * @param topPx where it begins, in strip pixels
 * @param bottomPx where it ends, in strip pixels
 * @param words by {@link WordCount}
 * @param seconds needed to read them
 */
public record ReadWords(
    String cue, int panel, double topPx, double bottomPx, int words, double seconds) {

  /** The height at which the words count as seen. */
  public double middlePx() {
    return (topPx + bottomPx) / 2;
  }

  /** The placed balloons of a galley, in script order. */
  public static List<ReadWords> of(Galley galley) {
    return galley.balloons().stream().map(ReadWords::of).toList();
  }

  private static ReadWords of(PlacedBalloon placed) {
    Box box = placed.box();
    ReadingSpeed speed = ReadingSpeed.of(placed.set().language());
    return of(placed.cue(), box.y(), box.bottom(), speed);
  }

  /**
   * Every cue whose panel has a place, in script order: at its balloon in the layout, else at its
   * place in the {@link StackedHeight}, else in the middle of its panel.
   */
  public static List<ReadWords> planned(SetEpisode set, Layout layout) {
    return new Expected(set, layout).words();
  }

  private static ReadWords of(Cue cue, double topPx, double bottomPx, ReadingSpeed speed) {
    return new ReadWords(
        cue.id(),
        cue.panel(),
        topPx,
        bottomPx,
        WordCount.of(cue.text()),
        speed.seconds(cue.text()));
  }

  /** Places where words are expected before they are placed. */
  private record Expected(SetEpisode set, Layout layout) {

    List<ReadWords> words() {
      Map<String, Box> laid = new HashMap<>();
      for (LaidBalloon balloon : layout.balloons()) {
        balloon.box().ifPresent(box -> laid.put(balloon.id(), box));
      }
      Map<Integer, List<SetBalloon>> balloons = new HashMap<>();
      for (SetBalloon balloon : set.balloons()) {
        balloons.computeIfAbsent(balloon.cue().panel(), n -> new ArrayList<>()).add(balloon);
      }
      Map<Integer, Box> panels = new HashMap<>();
      layout.panels().forEach(panel -> panels.put(panel.panel(), panel.box()));
      List<ReadWords> words = new ArrayList<>();
      for (Panel panel : set.script().panels()) {
        Optional.ofNullable(panels.get(panel.number()))
            .ifPresent(
                box -> {
                  Map<String, Box> places =
                      stack(balloons.getOrDefault(panel.number(), List.of()), box);
                  places.putAll(laid);
                  panel.cues().forEach(cue -> words.add(at(cue, places, box)));
                });
      }
      return words;
    }

    private Map<String, Box> stack(List<SetBalloon> balloons, Box panel) {
      List<Double> tops = StackedHeight.topsPx(balloons, panel.width(), Spacing.of(set.style()));
      Map<String, Box> places = new HashMap<>();
      for (int i = 0; i < balloons.size(); i++) {
        Box own = balloons.get(i).box();
        double top = Math.min(panel.y() + tops.get(i), panel.bottom() - own.height());
        Box place = new Box(panel.x(), Math.max(panel.y(), top), own.width(), own.height());
        places.put(balloons.get(i).cue().id(), place);
      }
      return places;
    }

    private ReadWords at(Cue cue, Map<String, Box> places, Box panel) {
      ReadingSpeed speed = ReadingSpeed.of(Languages.of(set.script().language()));
      double middle = panel.centre().y();
      return Optional.ofNullable(places.get(cue.id()))
          .map(box -> of(cue, box.y(), box.bottom(), speed))
          .orElseGet(() -> of(cue, middle, middle, speed));
    }
  }
}
