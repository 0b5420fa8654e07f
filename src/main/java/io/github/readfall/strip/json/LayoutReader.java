package io.github.readfall.strip.json;

import io.github.readfall.base.geom.Box;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.PanelBox;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * Reads layout.json. Whatever is wrong is a finding, such as {@code layout/missing} or {@code
 * layout/number}, and the rest is used.
 */
public final class LayoutReader {

  /**
   * Reads the text of a layout.json.
   *
   * @param json any text at all
   */
  public ReadLayout read(String json) {
    String text = json.startsWith("\uFEFF") ? json.substring(1) : json;
    LayoutFindings faults = new LayoutFindings(text);
    Optional<Layout> layout = JsonSource.read(text, faults).flatMap(root -> layout(root, faults));
    return new ReadLayout(layout, faults.inOrder());
  }

  private static Optional<Layout> layout(Json root, LayoutFindings faults) {
    if (root instanceof Json.Fields fields) {
      return layout(new Members(fields, "", faults), faults);
    }
    faults.error(
        "type",
        root.offset(),
        "The file should be one object in curly brackets, and cannot be used.",
        "Begin it with { \"strip\": …, \"panels\": … }.");
    return Optional.empty();
  }

  private static Optional<Layout> layout(Members root, LayoutFindings faults) {
    LayoutParts parts = new LayoutParts(faults);
    int version = version(root, faults);
    List<LocatedPart<PanelBox>> written = parts.panels(root);
    List<PanelBox> panels = written.stream().map(LocatedPart::part).toList();
    Optional<Members> strip = root.object("strip");
    if (strip.isPresent()) {
      root.need("panels", "no panel has a place");
    } else if (!panels.isEmpty()) {
      root.need("strip", "its size is computed from the panels");
    }
    OptionalDouble width = edge(strip, "widthPx", panels, Box::right);
    OptionalDouble height = edge(strip, "heightPx", panels, Box::bottom);
    if (width.isEmpty() || height.isEmpty()) {
      faults.error(
          "missing",
          root.offset(),
          "The strip has no size, and no panels to tell it, so the file cannot be used.",
          "Write \"strip\": {\"widthPx\": …, \"heightPx\": …} and \"panels\": […].");
      return Optional.empty();
    }
    double heightPx = height.getAsDouble();
    new Extents(width.getAsDouble(), heightPx, faults).judge(written);
    return Optional.of(
        new Layout(
            width.getAsDouble(),
            heightPx,
            panels,
            parts.keepClear(root),
            parts.mouths(root),
            new BalloonTwins(faults).onceEach(parts.balloons(root)),
            new CutList(root, faults).read(heightPx),
            parts.openings(root),
            parts.parked(root),
            version,
            root.extra()));
  }

  private static int version(Members root, LayoutFindings faults) {
    int version = root.count("readfall-layout").orElse(Layout.VERSION);
    if (version > Layout.VERSION) {
      faults.warning(
          "newer-version",
          root.offsetOf("readfall-layout"),
          "This layout is of version " + version + ", newer than this Readfall knows.",
          "What is understood is used and the rest is kept; get a newer Readfall to use it all.");
    }
    return version;
  }

  /** A side of the strip, or else the extent of the panels. */
  private static OptionalDouble edge(
      Optional<Members> strip, String key, List<PanelBox> panels, ToDoubleFunction<Box> far) {
    OptionalDouble given = strip.map(s -> s.length(key)).orElse(OptionalDouble.empty());
    if (given.isPresent()) {
      return given;
    }
    OptionalDouble reach =
        panels.stream().map(PanelBox::box).mapToDouble(far).filter(edge -> edge > 0).max();
    String loss =
        reach.isPresent()
            ? "the far edge of the panels, "
                + Math.round(reach.getAsDouble())
                + " px, is used instead"
            : "it is not known";
    strip.ifPresent(s -> s.need(key, loss));
    return reach;
  }
}
