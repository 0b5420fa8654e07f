package io.github.readfall.rules.legible;

import io.github.readfall.base.finding.Measurement;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.viewing.LetterKind;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.rules.model.RuleSpec;

/** How severe it is that letters are below the limit of {@code legible/size}. */
public final class SizeTier {

  /** The limit of a capital below which it is an error; it can be set like that of a rule. */
  private static final String ERROR_LIMIT = "legible/size-error";

  private SizeTier() {}

  /**
   * The severity of a finding about letters that are below their least height.
   *
   * @param arcmin how high they are seen, in minutes of arc
   */
  public static Severity of(LetterKind kind, double arcmin, HouseStyle style) {
    double limit = kind.errorArcmin(style.limit(ERROR_LIMIT));
    boolean error = arcmin < limit && new Measurement(arcmin, limit, "arcmin").canBeSeen();
    Severity usual = error ? Severity.ERROR : RuleSpec.SIZE.severity();
    return style.severity(RuleSpec.SIZE.id(), usual);
  }
}
