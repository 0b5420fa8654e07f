package io.github.readfall.rules.space;

import io.github.readfall.rules.model.Rule;
import java.util.List;

/** Lists the rules about room, tails and cuts. */
public final class SpaceRules {

  private static final List<Rule> ALL =
      List.of(
          new AstrayTail(),
          new CrossingTail(),
          new LongTail(),
          new CoveredArt(),
          new CrowdedBalloons(),
          new CutThrough(),
          new MarginIntrusion(),
          new OutsideStrip(),
          new OversetText(),
          new OverlappingBalloons(),
          new BaggyBalloon(),
          new TangentOutline(),
          new CrampedText());

  private SpaceRules() {}

  /** Every rule of this package. */
  public static List<Rule> all() {
    return ALL;
  }
}
