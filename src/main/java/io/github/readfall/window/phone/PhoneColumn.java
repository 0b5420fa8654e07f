package io.github.readfall.window.phone;

import io.github.readfall.base.viewing.Phone;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.series.Surroundings;
import io.github.readfall.window.canvas.PhonePane;
import io.github.readfall.window.canvas.PhoneView;
import io.github.readfall.window.model.ReadingPace;
import io.github.readfall.window.parts.Heading;
import io.github.readfall.window.parts.SecondaryLabel;
import io.github.readfall.window.parts.SideBySidePane;
import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javax.swing.BorderFactory;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;

/** The phone with the strip on it, the list of the series' phones, and playing at reading speed. */
public final class PhoneColumn extends JPanel {

  private static final long serialVersionUID = 1;

  private final PhoneView view;
  private final PhoneView beside = new PhoneView();
  private final JLabel language = caption();
  private final JLabel otherLanguage = caption();
  private final TrueSizeControl trueSize;
  private final SideBySidePane both;
  private final JComboBox<Choice> phones = new JComboBox<>();
  private final JToggleButton read = new JToggleButton(Wording.of("phone.read"));
  private transient Optional<ReadingPace> pace = Optional.empty();
  private transient Consumer<Phone> chosen = phone -> {};
  private boolean isFilling;
  private int own;

  /** A phone in the list. */
  private record Choice(Phone phone) {
    @Override
    public String toString() {
      return Wording.of(
          "phone.size",
          phone.name(),
          Long.toString(Math.round(phone.widthDp())),
          Long.toString(Math.round(phone.heightDp())));
    }
  }

  public PhoneColumn(PhoneView view) {
    super(new BorderLayout());
    this.view = view;
    phones.setName("phones");
    phones.getAccessibleContext().setAccessibleName(Wording.of("phone.which"));
    phones.addActionListener(event -> choose());
    read.setName("phone.read");
    read.putClientProperty("JButton.buttonType", "toolBarButton");
    read.setToolTipText(Wording.of("phone.read.tip"));
    read.addActionListener(event -> playOrPause());
    view.onPlay(read::setSelected);
    trueSize = new TrueSizeControl(view, beside);
    Heading heading = new Heading(Wording.of("phone.title"), read, trueSize.toggle(), phones);
    heading.setLabelFor(view);
    add(heading, BorderLayout.NORTH);
    beside.setName("canvas.phone.beside");
    beside.follow(view);
    language.setLabelFor(view);
    otherLanguage.setLabelFor(beside);
    both =
        new SideBySidePane(
            new PhonePane(view),
            new PhonePane(beside),
            new SideBySidePane.Above(language, otherLanguage));
    add(both);
    add(trueSize.how(), BorderLayout.SOUTH);
    alone();
  }

  private static JLabel caption() {
    JLabel caption = new JLabel();
    caption.setBorder(BorderFactory.createEmptyBorder(5, 14, 5, 14));
    SecondaryLabel.style(caption);
    return caption;
  }

  /** Shows one phone. */
  public void alone() {
    language.setVisible(false);
    otherLanguage.setVisible(false);
    both.alone();
  }

  /** Shows two phones, with the languages of their strips above them. */
  public void twice(String one, String other) {
    language.setText(one);
    otherLanguage.setText(other);
    language.setVisible(true);
    otherLanguage.setVisible(true);
    both.both();
  }

  /** The control that shows the phones at true size. */
  public TrueSizeControl trueSize() {
    return trueSize;
  }

  /** Shows a phone, even one that is not in the series. */
  public void see(Phone phone) {
    Choice choice = new Choice(phone);
    isFilling = true;
    while (phones.getItemCount() > own) {
      phones.removeItemAt(own);
    }
    if (!isOffered(choice)) {
      phones.addItem(choice);
    }
    phones.setSelectedItem(choice);
    isFilling = false;
    choose();
  }

  private boolean isOffered(Choice choice) {
    return IntStream.range(0, phones.getItemCount())
        .anyMatch(i -> choice.equals(phones.getItemAt(i)));
  }

  /** The second phone. */
  public PhoneView beside() {
    return beside;
  }

  private void choose() {
    if (!isFilling && phones.getSelectedItem() instanceof Choice choice) {
      view.setPhone(choice.phone());
      beside.setPhone(choice.phone());
      trueSize.apply();
      chosen.accept(choice.phone());
    }
  }

  private void playOrPause() {
    if (read.isSelected() && pace.isPresent()) {
      ReadingPace now = pace.get();
      view.play(now::pxPerSecond);
    } else {
      read.setSelected(false);
      view.pause();
    }
  }

  /** Starts or stops playing at reading speed. */
  public void toggleReading() {
    read.doClick();
  }

  /** Adds a listener for every phone that is selected. */
  public void onChosen(Consumer<Phone> listener) {
    chosen = listener;
  }

  /**
   * Offers the phones of a series.
   *
   * @param wanted name of the phone to show; the first one if there is none of that name
   */
  public void offer(Surroundings around, String wanted) {
    List<Phone> all = around.style().style().phones();
    isFilling = true;
    phones.removeAllItems();
    own = all.size();
    all.forEach(phone -> phones.addItem(new Choice(phone)));
    Phone phone =
        all.stream().filter(one -> one.name().equals(wanted)).findFirst().orElse(all.get(0));
    phones.setSelectedIndex(all.indexOf(phone));
    isFilling = false;
    choose();
  }

  /** The name of the phone that is shown. */
  public String phone() {
    return phones.getSelectedItem() instanceof Choice choice ? choice.phone().name() : "";
  }

  /** Sets the reading speed. */
  public void pace(ReadingPace next) {
    pace = Optional.of(next);
  }
}
