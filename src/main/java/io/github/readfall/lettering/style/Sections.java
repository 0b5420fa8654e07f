package io.github.readfall.lettering.style;

import static io.github.readfall.lettering.toml.ValueKind.colour;
import static io.github.readfall.lettering.toml.ValueKind.number;
import static io.github.readfall.lettering.toml.ValueKind.numberOr;
import static io.github.readfall.lettering.toml.ValueKind.text;
import static io.github.readfall.lettering.toml.ValueKind.truth;
import static io.github.readfall.lettering.toml.ValueKind.whole;
import static io.github.readfall.lettering.toml.ValueKind.wholeLong;
import static io.github.readfall.lettering.toml.ValueKind.word;

import io.github.readfall.base.viewing.Colour;
import io.github.readfall.base.viewing.Phone;
import io.github.readfall.lettering.toml.ValueKind;
import io.github.readfall.script.Keywords;
import io.github.readfall.type.balloon.ShapeKind;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Every table and key of series.toml: its name, its possible values, its use.
 *
 * <p>A new key is an entry here, named in its section's list and used in its {@code build}, and a
 * commented line in the template.
 */
final class Sections {

  private static final int MAX_PX = 1_000_000;

  private static final Key<Integer> WIDTH =
      new Key<>("width", whole("pixels", 200, 20_000), "1600", "Width of the strip, in pixels.");
  private static final Key<Integer> PAGE_HEIGHT =
      new Key<>(
          "page-height",
          whole("pixels", 200, MAX_PX),
          "15360",
          "Height of one canvas page, in pixels.");
  private static final Key<Integer> DPI =
      new Key<>(
          "dpi", whole("", 1, 10_000), "350", "Pixels to the inch that images are marked with.");
  private static final Key<Double> SAFE_MARGIN =
      new Key<>(
          "safe-margin",
          number("pixels", 0, 10_000),
          "64",
          "How far balloons keep from the strip's left and right edge, in pixels.");
  private static final Key<ReadingSide> READS =
      new Key<>(
          "reads",
          word(List.of("ltr", "rtl"), ReadingSide::of),
          "\"ltr\"",
          "The side the strip is read from: ltr from the left, rtl from the right.");

  static final Section<StripStyle> STRIP =
      new Section<>(
          "strip", false, List.of(WIDTH, PAGE_HEIGHT, DPI, SAFE_MARGIN, READS), Sections::strip);

  private static final Key<Double> WIDTH_DP =
      new Key<>(
          "width-dp",
          number("dp", 100, 10_000),
          "360",
          "Width of the screen, in density-independent pixels (160 to the inch).");
  private static final Key<Double> HEIGHT_DP =
      new Key<>(
          "height-dp",
          number("dp", 100, 10_000),
          "640",
          "Height of the screen, in density-independent pixels.");
  private static final Key<Double> DISTANCE_MM =
      new Key<>(
          "distance-mm",
          number("millimetres", 50, 5_000),
          "362",
          "From the reader's eye to the screen, in millimetres.");

  static final Section<Phone> PHONES =
      new Section<>(
          "phones",
          true,
          List.of(WIDTH_DP, HEIGHT_DP, DISTANCE_MM),
          (v, d) ->
              new Phone(
                  d.name(),
                  v.or(WIDTH_DP, d.widthDp()),
                  v.or(HEIGHT_DP, d.heightDp()),
                  v.or(DISTANCE_MM, d.distanceMm())));

  private static final Key<Double> READING_SIZE =
      new Key<>(
          "reading-size",
          numberOr("comfortable", Lettering.COMFORTABLE_ARCMIN, number("minutes of arc", 1, 600)),
          "17.2",
          "Height of a capital as the reader sees it, in minutes of arc; other letters go with it."
              + " comfortable is 20.");
  private static final Key<Double> MARGIN =
      new Key<>(
          "margin",
          number("capital heights", 0, 10),
          "0.75",
          "Air between letters and outline, in capital heights.");
  private static final Key<Double> SQUARENESS =
      new Key<>(
          "squareness",
          number("", 2, 6),
          "2.5",
          "Exponent of the outline of speech: 2 is an ellipse, more is squarer.");
  private static final Key<Boolean> TYPOGRAPHIC =
      new Key<>(
          "typographic",
          truth(),
          "true",
          "Letters quotes, apostrophes and ellipses in the form that the language prints.");
  private static final Key<Dashes> DASHES =
      new Key<>(
          "dashes",
          word(Dashes.words(), Dashes::of),
          "\"as-written\"",
          "One form for all dashes, or each as the script has it.");
  private static final Key<Double> LEADING =
      new Key<>("leading", number("em", 0.5, 5), "1.15", "From baseline to baseline, in em.");
  private static final Key<Double> TRACKING =
      new Key<>("tracking", number("em", -0.5, 5), "0", "Letterspacing after every letter, in em.");
  private static final Key<Double> MIN_ASPECT =
      new Key<>(
          "min-aspect", number("", 0.1, 20), "1.0", "Narrowest balloon, as width over height.");
  private static final Key<Double> MAX_ASPECT =
      new Key<>("max-aspect", number("", 0.1, 20), "2.6", "Widest balloon, as width over height.");

  static final Section<Lettering> LETTERING =
      new Section<>(
          "lettering",
          false,
          List.of(
              READING_SIZE,
              MARGIN,
              SQUARENESS,
              TYPOGRAPHIC,
              DASHES,
              LEADING,
              TRACKING,
              MIN_ASPECT,
              MAX_ASPECT),
          Sections::lettering);

  private static final Key<String> FACE =
      new Key<>(
          "face",
          text(),
          "\"fonts/MyHand.ttf\"",
          "A family that comes with Readfall, or a file beside series.toml.");
  private static final Key<Integer> WEIGHT =
      new Key<>("weight", whole("", 1, 1000), "400", "400 is regular, 700 bold.");
  private static final Key<Boolean> ITALIC =
      new Key<>("italic", truth(), "false", "The face's own italic.");
  private static final Key<Double> SLANT =
      new Key<>(
          "slant",
          number("degrees", -45, 45),
          "0",
          "Leans upright letters over, in degrees to the right.");
  private static final Key<Double> SIZE =
      new Key<>("size", number("", 0.1, 10), "1.0", "Times the usual size.");
  private static final Key<Boolean> CAPITALS =
      new Key<>("capitals", truth(), "true", "All in capitals; left out, the face decides.");
  private static final Key<Colour> FILL =
      new Key<>("fill", colour(), "\"#ffffff\"", "Colour of the balloon.");
  private static final Key<Colour> TEXT =
      new Key<>("text", colour(), "\"#111111\"", "Colour of the letters.");
  private static final Key<Colour> LINE =
      new Key<>("line", colour(), "\"#111111\"", "Colour of the line round the balloon.");
  private static final Key<ShapeKind> SHAPE =
      new Key<>(
          "shape",
          word(Arrays.stream(ShapeKind.values()).map(ShapeKind::word).toList(), ShapeKind::of),
          "\"ellipse\"",
          "Shape of the balloon.");
  private static final Key<LineStyle> LINE_STYLE =
      new Key<>(
          "line-style",
          word(List.of("solid", "dashed"), LineStyle::of),
          "\"solid\"",
          "How the line round the balloon is drawn.");

  private static final List<Key<?>> LOOK =
      List.of(
          FACE,
          WEIGHT,
          ITALIC,
          SLANT,
          SIZE,
          CAPITALS,
          FILL,
          TEXT,
          LINE,
          SHAPE,
          LINE_STYLE,
          TRACKING);

  static final Section<LookChange> VOICES = new Section<>("voices", true, LOOK, Sections::look);
  static final Section<LookChange> MANNERS = new Section<>("manners", true, LOOK, Sections::look);

  private static final Key<Double> LANGUAGE_LEADING =
      new Key<>("leading", number("", 0.5, 3), "1.0", "Times the usual leading of the language.");

  static final Section<LanguageStyle> LANGUAGES =
      new Section<>(
          "languages", true, List.of(FACE, SIZE, LANGUAGE_LEADING, READS), Sections::language);

  private static final Key<Integer> SLICE_WIDTH =
      new Key<>("width", whole("pixels", 1, MAX_PX), "900", "Width of a slice, in pixels.");
  private static final Key<Integer> MAX_SLICE_HEIGHT =
      new Key<>(
          "max-slice-height",
          whole("pixels", 1, MAX_PX),
          "2000",
          "Greatest height of a slice, in pixels.");
  private static final Key<Long> MAX_SLICE_BYTES =
      new Key<>(
          "max-slice-bytes",
          wholeLong("bytes", 1, 1_000_000_000_000L),
          "3000000",
          "Greatest size of a slice's file, in bytes.");
  private static final Key<Integer> MAX_EPISODE_HEIGHT =
      new Key<>(
          "max-episode-height",
          whole("pixels", 1, 1000 * MAX_PX),
          "60000",
          "Greatest height of an episode, in pixels of the slices.");

  private static final Key<SliceFormat> FORMAT =
      new Key<>(
          "format",
          word(List.of("png", "jpeg"), SliceFormat::of),
          "\"png\"",
          "Format of a slice's file.");
  private static final Key<Integer> QUALITY =
      new Key<>(
          "quality",
          whole("", 1, 100),
          "95",
          "Quality of a JPEG; lowered in steps down to 80 if a file would be too large.");

  static final Section<Delivery> DELIVERY =
      new Section<>(
          "delivery",
          false,
          List.of(
              SLICE_WIDTH, MAX_SLICE_HEIGHT, MAX_SLICE_BYTES, MAX_EPISODE_HEIGHT, FORMAT, QUALITY),
          (v, d) ->
              new Delivery(
                  v.or(SLICE_WIDTH, d.widthPx()),
                  v.or(MAX_SLICE_HEIGHT, d.maxSliceHeightPx()),
                  v.or(MAX_SLICE_BYTES, d.maxSliceBytes()),
                  v.or(MAX_EPISODE_HEIGHT, d.maxEpisodeHeightPx()),
                  v.or(FORMAT, d.format()),
                  v.or(QUALITY, d.quality())));

  private static final Key<String> PANEL =
      new Key<>("panel", text(), "\"PANEL\"", "Begins a panel.");
  private static final Key<String> SCENE =
      new Key<>("scene", text(), "\"SCENE\"", "Begins a scene.");
  private static final Key<String> CAPTION =
      new Key<>("caption", text(), "\"CAPTION\"", "Written in place of a caption's speaker.");
  private static final Key<String> SFX =
      new Key<>("sfx", text(), "\"SFX\"", "Written in place of a sound effect's speaker.");

  static final Section<Keywords> KEYWORDS =
      new Section<>("keywords", false, List.of(PANEL, SCENE, CAPTION, SFX), Sections::keywords);

  /** The tables whose keys are listed here, in the order of the file. */
  static final List<Section<?>> ALL =
      List.of(STRIP, PHONES, LETTERING, VOICES, MANNERS, LANGUAGES, DELIVERY, KEYWORDS);

  private Sections() {}

  /** The header of the first table that knows a key. */
  static Optional<String> headerOf(String key) {
    return ALL.stream()
        .filter(section -> section.keyNames().contains(key))
        .map(Section::header)
        .findFirst();
  }

  private static StripStyle strip(Values v, StripStyle d) {
    int widthPx = v.or(WIDTH, d.widthPx());
    double marginPx = v.or(SAFE_MARGIN, d.safeMarginPx());
    if (2 * marginPx >= widthPx) {
      v.clash("safe-margin on both sides leaves nothing of a strip " + widthPx + " px wide");
      marginPx = d.safeMarginPx();
    }
    return new StripStyle(
        widthPx,
        v.or(PAGE_HEIGHT, d.pageHeightPx()),
        v.or(DPI, d.dpi()),
        marginPx,
        v.or(READS, d.reads()));
  }

  private static Lettering lettering(Values v, Lettering d) {
    double minAspect = v.or(MIN_ASPECT, d.minAspect());
    double maxAspect = v.or(MAX_ASPECT, d.maxAspect());
    if (minAspect > maxAspect) {
      v.clash(
          "min-aspect "
              + ValueKind.plain(minAspect)
              + " is above max-aspect "
              + ValueKind.plain(maxAspect));
      minAspect = d.minAspect();
      maxAspect = d.maxAspect();
    }
    return new Lettering(
        v.or(READING_SIZE, d.readingArcmin()),
        v.or(MARGIN, d.marginCaps()),
        v.or(SQUARENESS, d.squareness()),
        v.or(TYPOGRAPHIC, d.typographic()),
        v.or(DASHES, d.dashes()),
        v.or(LEADING, d.leadingEm()),
        v.or(TRACKING, d.tracking()),
        minAspect,
        maxAspect);
  }

  private static LanguageStyle language(Values v, LanguageStyle d) {
    return new LanguageStyle(
        v.get(FACE).or(d::face),
        v.or(SIZE, d.size()),
        v.or(LANGUAGE_LEADING, d.leading()),
        v.get(READS).or(d::reads));
  }

  private static LookChange look(Values v, LookChange d) {
    return new LookChange(
        v.get(FACE).or(d::face),
        v.get(WEIGHT).map(OptionalInt::of).orElse(d.weight()),
        v.get(ITALIC).or(d::italic),
        v.get(SLANT).map(OptionalDouble::of).orElse(d.slantDeg()),
        v.get(SIZE).map(OptionalDouble::of).orElse(d.size()),
        v.get(CAPITALS).or(d::capitals),
        v.get(FILL).or(d::fill),
        v.get(TEXT).or(d::text),
        v.get(LINE).or(d::line),
        v.get(SHAPE).or(d::shape),
        v.get(LINE_STYLE).or(d::lineStyle),
        v.get(TRACKING).map(OptionalDouble::of).orElse(d.tracking()));
  }

  private static Keywords keywords(Values v, Keywords d) {
    Keywords words =
        new Keywords(
            v.or(PANEL, d.panel()),
            v.or(SCENE, d.scene()),
            v.or(CAPTION, d.caption()),
            v.or(SFX, d.effect()),
            d.manners());
    List<String> all = List.of(words.panel(), words.scene(), words.caption(), words.effect());
    if (all.stream().map(word -> word.toUpperCase(Locale.ROOT)).distinct().count() < all.size()) {
      v.clash("two keywords are the same word");
      return d;
    }
    return words;
  }
}
