package io.github.readfall.window.style;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.draw.BalloonSheet;
import io.github.readfall.window.canvas.DrawingView;
import io.github.readfall.window.model.Specimen;
import io.github.readfall.window.parts.WrappedLabel;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** A balloon as large as on the narrowest phone, and how readable it is there. */
final class SpecimenView extends JPanel {

  private static final long serialVersionUID = 1;

  private final DrawingView balloon = new DrawingView();
  private final WrappedLabel seen = new WrappedLabel("style.specimen.seen", "Readfall.quiet");
  private final WrappedLabel found = new WrappedLabel("style.specimen.found", "Readfall.warning");

  SpecimenView() {
    super(new MigLayout("insets 0 0 8 0, gap 0 4, fillx, hidemode 3", "[grow,fill]"));
    balloon.setName("style.specimen");
    balloon.getAccessibleContext().setAccessibleName(Wording.of("style.specimen"));
    add(balloon, "growx, wmin 0, wrap");
    add(seen, "growx, wmin 0, gapleft 14, gapright 10, gaptop 4, wrap");
    add(found, "growx, wmin 0, gapleft 14, gapright 10");
  }

  /** Shows a balloon, or none. */
  void show(Optional<Specimen> made) {
    balloon.show(
        made.flatMap(one -> BalloonSheet.of(one.set(), Colour.WHITE)),
        made.map(SpecimenView::scale).orElse(1.0));
    seen.showText(made.map(SpecimenView::words).orElse(""));
    found.showText(
        made.flatMap(one -> one.findings().stream().findFirst()).map(Finding::message).orElse(""));
  }

  /** The scale that shows one dp of the phone as one pixel of the window. */
  private static double scale(Specimen one) {
    return one.set().phone().dp(1, one.set().style().strip().widthPx());
  }

  private static String words(Specimen one) {
    String high = tenths(one.arcmin());
    String phone = one.set().phone().name();
    return one.contrast().isPresent()
        ? Wording.of("style.specimen.seen", high, phone, tenths(one.contrast().getAsDouble()))
        : Wording.of("style.specimen.onArt", high, phone);
  }

  /** A figure rounded down to a tenth: slightly too little must not look like enough. */
  private static String tenths(double figure) {
    return String.format(Locale.ROOT, "%.1f", Math.floor(figure * 10 + 1e-6) / 10);
  }
}
