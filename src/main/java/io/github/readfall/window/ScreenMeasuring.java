package io.github.readfall.window;

import io.github.readfall.base.viewing.ScreenScale;
import io.github.readfall.series.autosave.ScreenName;
import io.github.readfall.series.autosave.WindowBox;
import io.github.readfall.window.phone.CardDialog;
import io.github.readfall.window.phone.TrueSizeControl;
import io.github.readfall.window.workplace.SavedWindowState;
import java.awt.GraphicsConfiguration;
import java.awt.Rectangle;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.Optional;
import javax.swing.JFrame;

/** Knows the scale of the screen that the window is on, or asks for it to be measured. */
final class ScreenMeasuring {

  private final JFrame frame;
  private final SavedWindowState state;
  private final TrueSizeControl control;

  ScreenMeasuring(JFrame frame, SavedWindowState state, TrueSizeControl control) {
    this.frame = frame;
    this.state = state;
    this.control = control;
    control.onUnknown(() -> measure(control::switchOn));
    frame.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentMoved(ComponentEvent event) {
            showScale();
          }

          @Override
          public void componentShown(ComponentEvent event) {
            showScale();
          }
        });
    showScale();
  }

  private void showScale() {
    control.setScale(known());
  }

  private Optional<ScreenScale> known() {
    return Optional.ofNullable(state.now().screens().get(name(frame.getGraphicsConfiguration())))
        .map(ScreenScale::new);
  }

  private static String name(GraphicsConfiguration screen) {
    Rectangle r = screen.getBounds();
    WindowBox box = new WindowBox(r.x, r.y, Math.max(1, r.width), Math.max(1, r.height));
    return new ScreenName(box, screen.getDefaultTransform().getScaleX()).word();
  }

  /** Opens the dialog that measures the screen. */
  void measure() {
    measure(() -> {});
  }

  private void measure(Runnable then) {
    CardDialog dialog = new CardDialog(frame, known().orElse(ScreenScale.NOMINAL));
    dialog.onMeasured(
        scale -> {
          String screen = name(dialog.getGraphicsConfiguration());
          state.change(remembered -> remembered.measured(screen, scale.pxPerMm()));
          showScale();
          then.run();
        });
    dialog.setVisible(true);
  }
}
