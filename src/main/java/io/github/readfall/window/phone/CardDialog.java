package io.github.readfall.window.phone;

import io.github.readfall.base.viewing.ScreenScale;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.window.parts.SecondaryLabel;
import io.github.readfall.window.parts.WrappedLabel;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.Window;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;

/** Measures a screen with a bank card that is held against it. */
public final class CardDialog extends JDialog {

  private static final long serialVersionUID = 1;

  /** Steps per pixel of the card's width: half a pixel is visible on a high-resolution screen. */
  static final int STEPS_PER_PX = 2;

  /** The lowest and highest resolutions that can be measured, in pixels per inch. No source. */
  private static final double LEAST_PER_INCH = 50;

  private static final double MOST_PER_INCH = 350;

  private static final double INCH_MM = 25.4;

  /** Distance by which Page Up and Page Down move the edge, in pixels. House default, no source. */
  private static final int LEAP_PX = 10;

  private final JSlider slider = new JSlider(steps(LEAST_PER_INCH), steps(MOST_PER_INCH));
  private final CardFrame card = new CardFrame(slider.getModel());
  private final JLabel result = new JLabel();
  private transient Consumer<ScreenScale> measured = scale -> {};

  /**
   * A dialog that is not open yet.
   *
   * @param before the known or assumed scale of the screen
   */
  public CardDialog(Window owner, ScreenScale before) {
    super(owner, Wording.of("card.title"), ModalityType.MODELESS);
    setName("card");
    slider.setName("card.width");
    slider.getModel().addChangeListener(event -> changed());
    slider.setValue(steps(before.pxPerInch()));
    leap("PAGE_UP", LEAP_PX);
    leap("PAGE_DOWN", -LEAP_PX);
    result.setName("card.result");
    SecondaryLabel.style(result);
    layOut();
    showResult();
  }

  private static int steps(double perInch) {
    return (int) Math.rint(perInch / INCH_MM * ScreenScale.CARD_WIDTH_MM * STEPS_PER_PX);
  }

  private void leap(String key, int byPx) {
    slider.getInputMap().put(KeyStroke.getKeyStroke(key), key);
    slider
        .getActionMap()
        .put(
            key,
            new AbstractAction() {
              private static final long serialVersionUID = 1;

              @Override
              public void actionPerformed(ActionEvent event) {
                slider.setValue(slider.getValue() + byPx * STEPS_PER_PX);
              }
            });
  }

  /** Sets the listener for the measured scale, called when the person confirms it. */
  public void onMeasured(Consumer<ScreenScale> listener) {
    measured = listener;
  }

  private void layOut() {
    JPanel content = new JPanel(new MigLayout("insets 18, gap 6 12, fill, wrap 1", "[grow,fill]"));
    WrappedLabel how = new WrappedLabel("card.how", "Label.foreground");
    how.showText(Wording.of("card.how"));
    how.setColumns(46);
    content.add(how, "wmin 0");
    content.add(card, "alignx left, aligny top, growx 0, pushy");
    JLabel label = new JLabel(Wording.of("card.width"));
    label.setLabelFor(slider);
    content.add(label, "gaptop 6");
    content.add(slider);
    content.add(result);
    content.add(end(), "gaptop 6");
    setContentPane(content);
    getRootPane()
        .registerKeyboardAction(
            event -> dispose(),
            KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
    setDefaultCloseOperation(DISPOSE_ON_CLOSE);
    pack();
    pack(); // the sentence now knows how many lines it has
    setLocationRelativeTo(getOwner());
  }

  private JPanel end() {
    JPanel end = new JPanel(new MigLayout("insets 0, gap 8, fillx", "[grow][][]"));
    JButton cancel = new JButton(Wording.of("card.cancel"));
    cancel.setName("card.cancel");
    cancel.addActionListener(event -> dispose());
    JButton keep = new JButton(Wording.of("card.keep"));
    keep.setName("card.keep");
    keep.addActionListener(event -> keep());
    end.add(cancel, "cell 1 0");
    end.add(keep, "cell 2 0");
    getRootPane().setDefaultButton(keep);
    return end;
  }

  private void keep() {
    measured.accept(scale());
    dispose();
  }

  private ScreenScale scale() {
    return ScreenScale.ofCard((double) slider.getValue() / STEPS_PER_PX);
  }

  private void changed() {
    showResult();
    if (isShowing()) {
      makeRoom();
    }
  }

  private void showResult() {
    ScreenScale scale = scale();
    String perMm = String.format(Locale.ROOT, "%.2f", scale.pxPerMm());
    String perInch = String.format(Locale.ROOT, "%.1f", scale.pxPerInch());
    result.setText(Wording.of("card.result", perMm, perInch));
    slider.getAccessibleContext().setAccessibleDescription(result.getText());
  }

  /** Enlarges the dialog with the frame, as far as the screen allows. */
  private void makeRoom() {
    Dimension wanted = getPreferredSize();
    Rectangle screen = getGraphicsConfiguration().getBounds();
    int width = Math.min(Math.max(getWidth(), wanted.width), screen.width);
    int height = Math.min(Math.max(getHeight(), wanted.height), screen.height);
    if (width != getWidth() || height != getHeight()) {
      setSize(width, height);
    }
  }
}
