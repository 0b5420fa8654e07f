package io.github.readfall.rules.order;

import io.github.readfall.rules.model.Rule;
import java.util.List;

/** Lists the rules about reading order. */
public final class OrderRules {

  private static final List<Rule> ALL =
      List.of(
          new AmbiguousOrder(),
          new InvertedBalloons(),
          new BackwardJump(),
          new PanelDisorder(),
          new EarlyText(),
          new WrongPanel(),
          new ReadingDirection());

  private OrderRules() {}

  /** Every rule of this package. */
  public static List<Rule> all() {
    return ALL;
  }
}
