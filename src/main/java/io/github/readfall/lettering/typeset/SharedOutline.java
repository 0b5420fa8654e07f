package io.github.readfall.lettering.typeset;

import io.github.readfall.base.geom.Box;
import io.github.readfall.type.balloon.DrawnOutline;
import io.github.readfall.type.balloon.Enclosure;
import io.github.readfall.type.balloon.FitText;
import io.github.readfall.type.balloon.OutlineStyle;
import io.github.readfall.type.balloon.ShapeKind;
import io.github.readfall.type.balloon.SharedFit;
import io.github.readfall.type.balloon.SharedFitter;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The smallest outline that one cue's words fit in each of several languages, every one at its own
 * reading size.
 *
 * @param size width and height of the outline as drawn, in strip pixels, at the origin; the room of
 *     the widest and the highest if there is no outline
 * @param decidedBy index of the language that needs this size
 */
public record SharedOutline(Box size, int decidedBy) {

  /**
   * Finds it.
   *
   * @param cues one cue in each language, all of one shape; not empty
   */
  public static SharedOutline round(List<ShapedCue> cues) {
    ShapeKind shape = cues.get(0).look().shape();
    return shape == ShapeKind.NONE ? unboxed(cues) : boxed(cues, shape);
  }

  private static SharedOutline boxed(List<ShapedCue> cues, ShapeKind shape) {
    Enclosure enclosure = cues.get(0).enclosure();
    SharedFit fit =
        SharedFitter.fit(cues.stream().map(cue -> text(cue)).toList(), enclosure)
            .or(() -> SharedFitter.fit(withoutMaxWidth(cues), enclosure))
            .orElseThrow(() -> new IllegalStateException("no balloon for " + id(cues)));
    OutlineStyle largest =
        cues.stream()
            .map(ShapedCue::outlineStyle)
            .max(Comparator.comparingDouble(OutlineStyle::capitalPx))
            .orElseThrow();
    Box drawn = DrawnOutline.round(shape, fit.enclosed(), largest).bounds();
    return new SharedOutline(new Box(0, 0, drawn.width(), drawn.height()), fit.decidedBy());
  }

  private static FitText text(ShapedCue cue) {
    return new FitText(cue.table(), cue.rules());
  }

  /** A single letter wider than the strip gets its balloon all the same; that is a finding. */
  private static List<FitText> withoutMaxWidth(List<ShapedCue> cues) {
    return cues.stream()
        .map(cue -> new FitText(cue.table(), cue.rules().withoutMaxWidth()))
        .toList();
  }

  private static SharedOutline unboxed(List<ShapedCue> cues) {
    BalloonSetter setter = new BalloonSetter();
    List<Box> inks = cues.stream().map(cue -> setter.set(cue).box()).toList();
    double width = inks.stream().mapToDouble(Box::width).max().orElseThrow();
    double height = inks.stream().mapToDouble(Box::height).max().orElseThrow();
    int largest =
        IntStream.range(0, inks.size())
            .boxed()
            .max(Comparator.comparingDouble(i -> inks.get(i).width() * inks.get(i).height()))
            .orElseThrow();
    return new SharedOutline(new Box(0, 0, width, height), largest);
  }

  private static String id(List<ShapedCue> cues) {
    return cues.get(0).cue().id();
  }
}
