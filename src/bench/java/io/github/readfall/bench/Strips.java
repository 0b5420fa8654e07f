package io.github.readfall.bench;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.plan.PanelPlanner;
import io.github.readfall.plan.StripCuts;
import io.github.readfall.plan.place.Placer;
import io.github.readfall.script.Script;
import io.github.readfall.strip.CueMark;
import io.github.readfall.strip.Cuts;
import io.github.readfall.strip.Extra;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.galley.Compositor;
import io.github.readfall.strip.galley.Galley;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Strips of any length, with the scripts of {@link Cues}. */
final class Strips {

  private static final int WORDS = 8;
  private static final int FEW_WORDS = 5;

  private static final double WIDTH_PX = 1600;
  private static final double PANEL_PX = 600;
  private static final double GUTTER_PX = 20;

  private Strips() {}

  /** A script of a number of panels, two cues to each. */
  static Script script(int panels) {
    return Cues.script(2 * panels, WORDS);
  }

  static SetEpisode set(Script script) {
    return new Typesetter(Cues.shelf(), HouseStyle.DEFAULT).set(script);
  }

  /** The layout that {@code place} makes of a script without one. */
  static Layout placed(SetEpisode set) {
    return Placer.place(set, PanelPlanner.plan(set), Set.of()).layout();
  }

  /** The galley that {@code check} checks. */
  static Galley galley(SetEpisode set, Layout layout) {
    Galley uncut = Compositor.compose(set, layout, Cuts.NONE);
    return uncut.withCuts(StripCuts.of(layout, uncut));
  }

  /** A script with three short cues in each panel. */
  static Script crowdedScript(int panels) {
    return Cues.script(3 * panels, FEW_WORDS, 3);
  }

  /** Low panels, {@value #PANEL_PX} px each with its gutter, without balloons. */
  static Layout lowPanels(int panels) {
    List<PanelBox> boxes = new ArrayList<>();
    for (int panel = 0; panel < panels; panel++) {
      double top = panel * PANEL_PX + GUTTER_PX / 2;
      boxes.add(new PanelBox(panel + 1, new Box(0, top, WIDTH_PX, PANEL_PX - GUTTER_PX)));
    }
    return Layout.of(WIDTH_PX, panels * PANEL_PX, boxes);
  }

  /** Low panels whose three balloons descend side by side and hardly fit. */
  static Layout crowded(SetEpisode set, int panels) {
    Layout empty = lowPanels(panels);
    List<LaidBalloon> balloons = new ArrayList<>();
    for (SetBalloon balloon : set.balloons()) {
      int column = balloons.size() % 3;
      double middle = WIDTH_PX * (column + 0.5) / 3;
      double top = (balloon.cue().panel() - 1) * PANEL_PX + 60 * (column + 1);
      Box own = balloon.box();
      Box box = new Box(middle - own.width() / 2, top, own.width(), own.height());
      balloons.add(laid(balloon, box, new XY(middle + 20, box.bottom() + 60)));
    }
    return empty.withBalloons(balloons);
  }

  private static LaidBalloon laid(SetBalloon balloon, Box box, XY tip) {
    return new LaidBalloon(
        balloon.cue().id(),
        Optional.of(CueMark.of(balloon.cue())),
        Optional.empty(),
        Optional.of(box),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        List.of(tip),
        false,
        false,
        Extra.NONE);
  }
}
