package io.github.readfall.rules.model;

import static io.github.readfall.base.finding.Severity.ERROR;
import static io.github.readfall.base.finding.Severity.NOTE;
import static io.github.readfall.base.finding.Severity.WARNING;

import io.github.readfall.base.finding.Severity;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.plan.order.EyeTolerances;
import java.util.OptionalDouble;

/**
 * The id, severity, unit and limit of every rule: all that its page in docs/rules states as well,
 * and that a test compares with it. Sorted by id. Sources of the limits are beside them.
 */
public enum RuleSpec {
  AMBIGUOUS(
      "flow/ambiguous",
      WARNING,
      "of the smaller height",
      EyeTolerances.CLEARLY_HIGHER,
      "The limit is the difference of tops from which all readers agree, in heights of the smaller"
          + " balloon."),
  INVERTED("flow/inverted", ERROR, "balloons"),

  /** House default, no source: what is seen at once, without scrolling back. */
  JUMP("flow/jump", WARNING, "screens", 0.25, "The limit is in screens of the narrowest phone."),
  PANEL_ORDER("flow/panel-order", ERROR, "panels"),

  /** About the width of a hand at arm's length. House default, no source. */
  TAIL_ASTRAY("flow/tail-astray", WARNING, "degrees", 20, "The limit is in degrees."),
  TAIL_CROSSES("flow/tail-crosses", ERROR, "px", 0, "The limit is in pixels of the strip."),

  /** An eighth of the height of a small phone's screen. House default, no source. */
  TAIL_LONG("flow/tail-long", WARNING, "dp", 80, "The limit is in dp."),
  TEXT_BEFORE_PICTURE("flow/text-before-picture", WARNING, "px"),
  WRONG_PANEL("flow/wrong-panel", ERROR, "px"),
  DIRECTION("language/direction", NOTE),

  /** 4.5:1, and 3:1 for large text: WCAG 2.2, success criterion 1.4.3. */
  CONTRAST(
      "legible/contrast",
      ERROR,
      "ratio",
      4.5,
      "The limit is the ratio for usual text; for large text it is two thirds of that. 7 asks for"
          + " the stricter level AAA."),
  FACE_LICENCE("legible/face-licence", WARNING),
  FALLBACK("legible/fallback", NOTE),
  GLYPH_MISSING("legible/glyph-missing", ERROR, "letters"),

  /** Half a character: U.S. NRC NUREG-0700 Rev. 3, 11.4.1.5-7. */
  LEADING(
      "legible/leading",
      WARNING,
      "character heights",
      0.5,
      "The limit is the space in heights of a capital."),
  LOCAL_FORMS("legible/local-forms", NOTE),

  /** The limit, with its source, is the built-in house style's; well below it is an error. */
  SIZE(
      "legible/size",
      WARNING,
      "arcmin",
      HouseStyle.DEFAULT.limit("legible/size"),
      "The limit is the height of a capital in minutes of arc, and the other heights go with it."),

  /** The limit, with its source, is the built-in house style's. */
  SMALL_VOICE(
      "legible/small-voice",
      WARNING,
      "arcmin",
      HouseStyle.DEFAULT.limit("legible/small-voice"),
      "The limit is the height of a capital in minutes of arc, and the other heights go with it."),
  COVERS_ART("space/covers-art", ERROR, "%", 0, "The limit is in per cent of the area."),

  /** House default, no source: some two thirds of the margin round the letters on either side. */
  CROWDED("space/crowded", WARNING, "dp", 6, "The limit is in dp."),
  CUT(
      "space/cut",
      ERROR,
      "px",
      0,
      "The limit is in pixels of the strip. The severity, once set, is that of cuts through panels,"
          + " too."),

  /** The limit is the safe margin of the series. */
  MARGIN("space/margin", WARNING, "px"),
  OUTSIDE("space/outside", ERROR, "px", 0, "The limit is in pixels of the strip."),
  OVERFLOW("space/overflow", ERROR, "letters too many"),
  OVERLAP(
      "space/overlap",
      ERROR,
      "px",
      0,
      "The limit is in pixels of the strip. An overlap that is allowed, but is less than the limit"
          + " of space/tangent, is a tangent."),

  /** House default, no source. */
  SLACK("space/slack", NOTE, "times", 2.5, "The limit is how many times as large it may be."),

  /** House default, no source: twice the line round a balloon and more. */
  TANGENT("space/tangent", WARNING, "dp", 3, "The limit is in dp."),
  TIGHT("space/tight", WARNING, "px"),

  /** House default, no source. */
  DRIFTED("voice/drifted", WARNING, "%", 5, "The limit is in per cent."),
  STRAYED("voice/strayed", WARNING, "balloons"),
  UNKNOWN_VOICE("voice/unknown", NOTE),

  DASHES("words/dashes", NOTE, "balloons"),

  /** The limit, with its source, is the built-in house style's. */
  LONG(
      "words/long",
      WARNING,
      "words",
      HouseStyle.DEFAULT.limit("words/long"),
      "The limit is a number of words."),

  /** House default, no source; the rule's page compares it with published figures. */
  PACE("words/pace", WARNING, "words", 150, "The limit is a number of words."),

  PARTED("words/parted", NOTE, "line breaks"),

  /**
   * 60 words a page: Gertler and Lieber, The Complete Idiot's Guide to Creating a Graphic Novel, as
   * quoted on wyliecomm.com. A page and a phone screen are not the same.
   */
  SCREEN("words/screen", WARNING, "words", 60, "The limit is a number of words."),
  STRESS("words/stress", NOTE, "words");

  private final String id;
  private final Severity severity;
  private final String unit;
  private final OptionalDouble limit;
  private final String limitMeaning;

  RuleSpec(String id, Severity severity) {
    this(id, severity, "");
  }

  RuleSpec(String id, Severity severity, String unit) {
    this(id, severity, unit, OptionalDouble.empty(), "");
  }

  RuleSpec(String id, Severity severity, String unit, double limit, String limitMeaning) {
    this(id, severity, unit, OptionalDouble.of(limit), limitMeaning);
  }

  RuleSpec(String id, Severity severity, String unit, OptionalDouble limit, String limitMeaning) {
    this.id = id;
    this.severity = severity;
    this.unit = unit;
    this.limit = limit;
    this.limitMeaning = limitMeaning;
  }

  /** The name by which the rule is set and explained, e.g. {@code words/long}. */
  public String id() {
    return id;
  }

  /** The severity of its findings unless the person sets another. */
  public Severity severity() {
    return severity;
  }

  /** The unit of what it measures, as reports write it; empty if it measures nothing. */
  public String unit() {
    return unit;
  }

  /** The built-in limit, in {@link #unit()}; empty if none can be set under [limits]. */
  public OptionalDouble limit() {
    return limit;
  }

  /** A sentence about the limit and its unit; empty if there is none. */
  public String limitMeaning() {
    return limitMeaning;
  }

  /**
   * The limit that a house style sets, else the built-in one.
   *
   * @throws java.util.NoSuchElementException if the rule has no limit
   */
  public double limitIn(HouseStyle style) {
    return style.limit(id, limit.orElseThrow());
  }
}
