package io.github.readfall.lettering.style;

import io.github.readfall.base.viewing.Colour;
import io.github.readfall.base.viewing.Phone;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Manner;
import io.github.readfall.type.balloon.ShapeKind;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** The house style of a series that says nothing of its own. */
final class BuiltIn {

  /** House default, no source; a dark letter on it has a contrast of 17 to 1. */
  private static final Colour CAPTION_FILL = new Colour(0xfff6d8);

  /** House default, no source: 14.6′ if capitals have 17.2′, and the least is 13.5′. */
  private static final double QUIET_SIZE = 0.85;

  /** Common practice: an effect is louder than speech. The figure is a house default, no source. */
  private static final double EFFECT_SIZE = 1.6;

  private static final int BOLD = 700;

  private BuiltIn() {}

  static HouseStyle style() {
    return new HouseStyle(
        StripStyle.DEFAULT,
        List.of(Phone.SMALL),
        Lettering.DEFAULT,
        Map.of(HouseStyle.DEFAULT_VOICE, speech()),
        manners(),
        limits(),
        Map.of(),
        Delivery.DEFAULT,
        deliveries(),
        Keywords.ENGLISH,
        Map.of());
  }

  /** House defaults, no source. */
  private static Map<String, Delivery> deliveries() {
    return Map.of(
        "narrow", new Delivery(800, 1280, 2_000_000, 100_000, SliceFormat.JPEG, 90),
        "tall", new Delivery(1080, 10_000, 20_000_000, 200_000, SliceFormat.PNG, 95));
  }

  private static Map<String, Double> limits() {
    return Map.of(
        // minutes of arc; ISO 9241-3 as quoted in U.S. NRC NUREG-0700 Rev. 2, 1.3.1-4
        "legible/size",
        16.0,
        // minutes of arc; three quarters of that: house default, no source
        "legible/size-error",
        12.0,
        // minutes of arc; 0.85 of the least of a usual voice: house default, no source
        "legible/small-voice",
        13.5,
        // words in a balloon; common practice
        "words/long",
        25.0);
  }

  /** The default voice: {@link Look#SPEECH}, said key by key. */
  private static LookChange speech() {
    Look speech = Look.SPEECH;
    return new LookChange(
        Optional.empty(),
        OptionalInt.of(speech.weight()),
        Optional.of(speech.italic()),
        OptionalDouble.of(speech.slantDeg()),
        OptionalDouble.of(speech.size()),
        Optional.empty(),
        Optional.of(speech.fill()),
        Optional.of(speech.text()),
        Optional.of(speech.line()),
        Optional.of(speech.shape()),
        Optional.of(speech.lineStyle()),
        OptionalDouble.empty());
  }

  /**
   * The built-in manners, common practice. A whisper keeps its voice's shape, an ellipse for most,
   * so that a whispered thought is still a thought; so does a voice from off.
   */
  private static Map<Manner, LookChange> manners() {
    Map<Manner, LookChange> manners = new LinkedHashMap<>();
    manners.put(Manner.THOUGHT, shape(ShapeKind.CLOUD));
    manners.put(Manner.WHISPER, whisper());
    manners.put(Manner.SMALL, sized(QUIET_SIZE, Optional.empty(), Optional.empty()));
    manners.put(Manner.SHOUT, shout());
    manners.put(Manner.LOUD, change(OptionalInt.of(BOLD), Optional.empty(), Optional.empty()));
    manners.put(Manner.SINGING, LookChange.NONE);
    manners.put(Manner.OFF, LookChange.NONE);
    manners.put(Manner.VOICE_OVER, shape(ShapeKind.CAPTION_BOX));
    manners.put(Manner.CAPTION, caption());
    manners.put(Manner.EFFECT, effect());
    manners.put(Manner.ELECTRONIC, shape(ShapeKind.ELECTRONIC));
    manners.put(Manner.WAVY, shape(ShapeKind.WAVY));
    manners.put(Manner.JOINED, LookChange.NONE);
    manners.put(Manner.DRAWN, LookChange.NONE);
    manners.put(Manner.UNBOXED, shape(ShapeKind.NONE));
    manners.put(Manner.BLEED, LookChange.NONE);
    manners.put(Manner.CONTINUED, LookChange.NONE);
    return manners;
  }

  private static LookChange shape(ShapeKind shape) {
    return change(OptionalInt.empty(), Optional.empty(), Optional.of(shape));
  }

  private static LookChange effect() {
    return sized(EFFECT_SIZE, Optional.of(ShapeKind.NONE), Optional.empty());
  }

  private static LookChange shout() {
    return change(OptionalInt.of(BOLD), Optional.empty(), Optional.of(ShapeKind.BURST));
  }

  private static LookChange caption() {
    return change(
        OptionalInt.empty(), Optional.of(CAPTION_FILL), Optional.of(ShapeKind.CAPTION_BOX));
  }

  private static LookChange whisper() {
    return sized(QUIET_SIZE, Optional.empty(), Optional.of(LineStyle.DASHED));
  }

  private static LookChange sized(
      double size, Optional<ShapeKind> shape, Optional<LineStyle> lineStyle) {
    LookChange none = LookChange.NONE;
    return new LookChange(
        none.face(),
        none.weight(),
        none.italic(),
        none.slantDeg(),
        OptionalDouble.of(size),
        none.capitals(),
        none.fill(),
        none.text(),
        none.line(),
        shape,
        lineStyle,
        none.tracking());
  }

  private static LookChange change(
      OptionalInt weight, Optional<Colour> fill, Optional<ShapeKind> shape) {
    LookChange none = LookChange.NONE;
    return new LookChange(
        none.face(),
        weight,
        none.italic(),
        none.slantDeg(),
        none.size(),
        none.capitals(),
        fill,
        none.text(),
        none.line(),
        shape,
        none.lineStyle(),
        none.tracking());
  }
}
