package io.github.readfall.lettering.typeset;

import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.style.Lettering;
import io.github.readfall.lettering.style.Look;
import io.github.readfall.lettering.typeset.VoiceFaces.Cut;
import io.github.readfall.script.Cue;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.Emphasis;
import io.github.readfall.script.Manner;
import io.github.readfall.type.balloon.FitRules;
import io.github.readfall.type.balloon.OutlineStyle;
import io.github.readfall.type.balloon.ShapeKind;
import io.github.readfall.type.text.FaceChain;
import io.github.readfall.type.text.KeptNames;
import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.LineBreaks;
import io.github.readfall.type.text.LineTable;
import io.github.readfall.type.text.Passage;
import io.github.readfall.type.text.SizedFace;
import io.github.readfall.type.text.StyledText;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/** Shapes one cue at reading size and measures every line it could have. */
final class CueShaper {

  /** Shift of a text from the middle that still looks centred, in capitals. House default. */
  private static final double MAX_SHIFT_CAPS = 0.2;

  private static final double ANY_ASPECT = 1000;

  /** Lines in the widest round outline are narrower than it: about so wide, if there are a few. */
  private static final double ROUND_SHARE = 0.85;

  private final HouseStyle style;
  private final VoiceFaces faces;
  private final LineBreaks breaks;
  private final double capitalPx;
  private final Map<Speaking, VoicePlan> plans = new ConcurrentHashMap<>();

  /** A voice with its manners: cues that share these are lettered alike. */
  private record Speaking(
      String voice,
      CueKind kind,
      List<Manner> manners,
      String language,
      Optional<ShapeKind> shape) {}

  CueShaper(HouseStyle style, VoiceFaces faces, LineBreaks breaks) {
    this.style = style;
    this.faces = faces;
    this.breaks = breaks;
    this.capitalPx = ReadingSize.of(style).capitalPx();
  }

  ShapedCue shape(CueToSet asked) {
    Cue cue = asked.cue();
    BalloonRequest wanted = asked.wanted();
    VoicePlan usual =
        plans.computeIfAbsent(
            new Speaking(
                asked.voice(), cue.kind(), cue.manners(), asked.language().tag(), wanted.shape()),
            speaking -> plan(speaking, asked.language()));
    if (wanted.isLettered()) {
      return shape(asked, scaled(usual, scale(usual, wanted), Tightening.NONE));
    }
    ShapedCue first = shape(asked, louder(usual, Loudness.of(cue)));
    boolean mayGrow = asked.alone() && cue.kind() == CueKind.EFFECT;
    double widthPx = first.table().widestPx();
    double grown = mayGrow ? Loudness.alone(cue, widthPx, first.rules().maxWidthPx()) : 1;
    return grown == 1 ? first : shape(asked, louder(usual, Loudness.of(cue) * grown));
  }

  private VoicePlan louder(VoicePlan usual, double times) {
    return times == 1 ? usual : scaled(usual, times, Tightening.NONE);
  }

  private ShapedCue shape(CueToSet asked, VoicePlan sized) {
    Cue cue = asked.cue();
    Language language = asked.language();
    BalloonRequest wanted = asked.wanted();
    Tightening tightening = wanted.tightening();
    VoicePlan plan =
        tightening.equals(Tightening.NONE) ? sized : scaled(sized, tightening.size(), tightening);
    LetteredText lettered =
        LetteredText.of(cue.text(), language, plan.capitals(), style.lettering(), plan::has);
    List<StyledText> stretches =
        lettered.parts().stream()
            .map(part -> new StyledText(part.start(), part.end(), plan.faces(part)))
            .toList();
    double widestPx = plan.rules().maxWidthPx() - 2 * plan.rules().marginPx();
    Passage read =
        Passage.of(
            lettered.text(),
            language,
            stretches,
            plan.trackingPx(),
            breaks,
            KeptNames.in(asked.cast(), cue.text().plain(), language));
    boolean unboxed = plan.look().shape() == ShapeKind.NONE;
    Passage whole = plan.look().shape().isRound() ? read.centredByEye() : read;
    double roomPx = plan.look().shape().isRound() ? ROUND_SHARE * widestPx : widestPx;
    Passage passage = unboxed ? whole.cutIntoLines(widestPx) : whole.cutWhereForced(roomPx);
    LineTable table = passage.measure(widestPx);
    List<String> broken = table.widerThan(widestPx).stream().map(passage::word).toList();
    Passage cut = broken.isEmpty() ? passage : passage.cutFiner(widestPx, breaks);
    return new ShapedCue(
        cue,
        plan.look(),
        language,
        plan.type(),
        plan.capitals(),
        whole,
        cut,
        broken.isEmpty() ? table : cut.measure(widestPx),
        plan.rules(),
        plan.outlineStyle().seededBy(cue.id()),
        plan.trackingPx(),
        asked.joinedTo(),
        asked.alone(),
        broken,
        wanted);
  }

  /** The size of lettering that exists over the size that the voice asks for. */
  private static double scale(VoicePlan usual, BalloonRequest wanted) {
    SizedFace type = usual.type();
    return wanted.fontPx().isPresent()
        ? wanted.fontPx().getAsDouble() / type.fontPx()
        : wanted.capitalPx().orElseThrow() / SetBalloon.characterPx(type, usual.language());
  }

  /**
   * The same voice at another size, its leading, margin and letterspacing in proportion, and
   * tighter.
   */
  private VoicePlan scaled(VoicePlan usual, double scale, Tightening tightening) {
    Map<Optional<Emphasis>, FaceChain> chains = new HashMap<>();
    usual.faces().forEach((emphasis, chain) -> chains.put(emphasis, new ScaledFaces(chain, scale)));
    SizedFace type = new ScaledFaces(usual.faces(Optional.empty()), scale).preferred();
    FitRules rules = rules(usual.look(), usual.language(), type, usual.look().size() * scale);
    double spaced = usual.language().habits().canBeSpaced() ? tightening.trackingEm() : 0;
    return new VoicePlan(
        usual.look(),
        usual.language(),
        usual.capitals(),
        type,
        chains,
        rules.withLeading(rules.leadingPx() * tightening.leading()),
        outlineStyle(usual.look(), usual.look().size() * scale),
        usual.trackingPx() * scale + spaced * type.fontPx());
  }

  private VoicePlan plan(Speaking speaking, Language language) {
    Look own = style.look(speaking.voice(), speaking.kind(), speaking.manners());
    Look look = speaking.shape().map(own::withShape).orElse(own);
    Cut plain = cut(look, language, Optional.empty());
    boolean capitals = capitals(speaking.kind(), look, plain, language);
    SizedFace type = faces.preferred(look, speaking.kind(), plain, language, capitals);
    Map<Optional<Emphasis>, FaceChain> chains = new HashMap<>();
    Stream.concat(Stream.of(Optional.<Emphasis>empty()), emphases())
        .forEach(
            emphasis ->
                chains.put(
                    emphasis,
                    faces.chain(
                        look, speaking.kind(), cut(look, language, emphasis), language, capitals)));
    return new VoicePlan(
        look,
        language,
        capitals,
        type,
        chains,
        rules(look, language, type, look.size()),
        outlineStyle(look, look.size()),
        tracking(look, language) * type.fontPx());
  }

  private static Stream<Optional<Emphasis>> emphases() {
    return Arrays.stream(Emphasis.values()).map(Optional::of);
  }

  private boolean capitals(CueKind kind, Look look, Cut cut, Language language) {
    boolean byFace = !faces.latin(look, kind, cut).file().barredCapitalI();
    return language.hasCapitals() && look.capitals().orElse(byFace);
  }

  private double tracking(Look look, Language language) {
    return language.habits().canBeSpaced() ? look.tracking() + style.lettering().tracking() : 0;
  }

  /**
   * The cut of a face that emphasis asks for. Strong is bold and leans, as is common practice;
   * slanted is the other slant than the voice's own. A script that does not lean shows both by
   * weight, or by size.
   */
  private static Cut cut(Look look, Language language, Optional<Emphasis> emphasis) {
    int bold = Math.max(look.weight(), VoiceFaces.BOLD);
    if (emphasis.isEmpty()) {
      return new Cut(look.weight(), look.italic() && language.canSlant(), look.slantDeg());
    }
    if (!language.canSlant()) {
      return new Cut(bold, false, 0, true);
    }
    boolean leans = look.italic() || look.slantDeg() != 0;
    return switch (emphasis.get()) {
      case STRONG, STRONG_SLANTED -> new Cut(bold, true, 0);
      case SLANTED -> new Cut(look.weight(), !leans, 0);
    };
  }

  /**
   * The rules of outlines for capitals of {@code size} times their height at reading size. A
   * caption may be as wide or narrow as its lines, so that its margin is the same on all sides.
   */
  private FitRules rules(Look look, Language language, SizedFace type, double size) {
    Lettering lettering = style.lettering();
    boolean anyAspect = look.shape() == ShapeKind.NONE || look.shape() == ShapeKind.CAPTION_BOX;
    OutlineStyle drawn = outlineStyle(look, size);
    double stripPx = style.strip().widthPx() - 2 * style.strip().safeMarginPx();
    double roomPx = Math.max(stripPx, 1) - 2 * look.shape().reachPx(drawn.capitalPx());
    return new FitRules(
        drawn.marginPx(),
        lettering.leadingEm() * language.leadingFactor() * type.fontPx(),
        anyAspect ? 1 / ANY_ASPECT : lettering.minAspect(),
        anyAspect ? ANY_ASPECT : lettering.maxAspect(),
        Math.max(roomPx, 2 * drawn.marginPx() + 1),
        MAX_SHIFT_CAPS * capitalPx * size,
        true);
  }

  /** Measured in capitals of the voice, whatever its language, so that all share an outline. */
  private OutlineStyle outlineStyle(Look look, double size) {
    Lettering lettering = style.lettering();
    double marginCaps = look.shape() == ShapeKind.NONE ? 0 : lettering.marginCaps();
    return new OutlineStyle(
        marginCaps * capitalPx * size, capitalPx * size, lettering.squareness(), 0);
  }
}
