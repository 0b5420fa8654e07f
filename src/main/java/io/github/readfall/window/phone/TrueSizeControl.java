package io.github.readfall.window.phone;

import io.github.readfall.base.viewing.Phone;
import io.github.readfall.base.viewing.ScreenScale;
import io.github.readfall.base.viewing.TrueSize;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.window.canvas.PhoneView;
import io.github.readfall.window.parts.WrappedLabel;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/**
 * Switches phones between the size that fits the column and true size, and says from what distance
 * to look at the latter.
 */
public final class TrueSizeControl {

  private static final double MM_PER_CM = 10;

  private final List<PhoneView> views;
  private final JToggleButton toggle = new JToggleButton(Wording.of("phone.true"));
  private final WrappedLabel sentence = new WrappedLabel("phone.true.how", "Readfall.quiet");
  private final JPanel how = new JPanel(new MigLayout("insets 8 14 10 14, fillx"));
  private Optional<ScreenScale> scale = Optional.empty();
  private Runnable unknown = () -> {};

  TrueSizeControl(PhoneView... views) {
    this.views = List.of(views);
    toggle.setName("phone.true");
    toggle.putClientProperty("JButton.buttonType", "toolBarButton");
    toggle.setToolTipText(Wording.of("phone.true.tip"));
    toggle.addActionListener(event -> switched());
    how.add(sentence, "growx, wmin 0");
    apply();
  }

  /** The button that switches true size on and off. */
  JToggleButton toggle() {
    return toggle;
  }

  /** The line that says from what distance to look; visible while true size is on. */
  JPanel how() {
    return how;
  }

  /** Sets the listener called when the screen must be measured first. */
  public void onUnknown(Runnable listener) {
    unknown = listener;
  }

  /** Sets the scale of the screen; empty if it was never measured. */
  public void setScale(Optional<ScreenScale> other) {
    if (!other.equals(scale)) {
      scale = other;
      apply();
    }
  }

  /** Switches true size on. */
  public void switchOn() {
    toggle.setSelected(true);
    switched();
  }

  private void switched() {
    boolean mustMeasure = toggle.isSelected() && scale.isEmpty();
    apply();
    if (mustMeasure) {
      unknown.run();
    }
  }

  /** Updates the views and the line, e.g. for another phone. */
  void apply() {
    toggle.setSelected(toggle.isSelected() && scale.isPresent());
    Optional<ScreenScale> active = scale.filter(known -> toggle.isSelected());
    views.forEach(view -> view.setScale(active));
    how.setVisible(active.isPresent());
    active.ifPresent(known -> sentence.showText(words(new TrueSize(views.get(0).phone(), known))));
  }

  private static String words(TrueSize size) {
    Phone phone = size.phone();
    return Wording.of(
        "phone.true.how",
        String.format(Locale.ROOT, "%.1f", size.widthMm()),
        String.format(Locale.ROOT, "%.0f", phone.distanceMm() / MM_PER_CM),
        Math.round(100 * size.shareFromAnArmsLength()));
  }
}
