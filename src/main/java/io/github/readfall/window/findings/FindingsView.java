package io.github.readfall.window.findings;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Fix;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.window.model.FindingFilter;
import io.github.readfall.window.parts.Listen;
import io.github.readfall.window.parts.ProportionalSplit;
import io.github.readfall.window.parts.SecondaryLabel;
import io.github.readfall.window.parts.SeverityIcon;
import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import javax.swing.ListSelectionModel;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;

/** The list of findings with its filter, and beside it why the selected one matters. */
public final class FindingsView extends JPanel {

  private static final long serialVersionUID = 1;

  private final DefaultListModel<Finding> rows = new DefaultListModel<>();
  private final JList<Finding> list = new FittingList(rows);
  private final JTextField words = new JTextField(14);
  private final Map<Severity, JToggleButton> switches = new EnumMap<>(Severity.class);
  private final JLabel none = new JLabel();
  private final WhyView why = new WhyView();
  private final FindingBar bar = new FindingBar();
  private final ProportionalSplit split;
  private final transient List<Consumer<Finding>> chosenListeners = new ArrayList<>();
  private transient List<Finding> findings = List.of();
  private transient Optional<Phrase.Balloons> balloons = Optional.empty();
  private boolean isRefreshing;

  /**
   * A view without findings.
   *
   * @param switcher buttons that show other views in its place
   */
  public FindingsView(JComponent switcher) {
    super(new MigLayout("insets 0, gap 0, fill, hidemode 3", "[grow,fill]", "[]0[grow,fill]"));
    setName("findings");
    add(head(switcher), "growx, wrap");
    split = new ProportionalSplit("why", JSplitPane.HORIZONTAL_SPLIT, listPane(), whyPane(), 0.5);
    add(split, "grow");
    setUpList();
    setFilter(FindingFilter.ALL);
  }

  private JPanel head(JComponent switcher) {
    JPanel head =
        new JPanel(new MigLayout("insets 8 12 6 12, gap 8", "[]12[][][]8:push[shrink 200]"));
    head.add(switcher);
    for (Severity severity : Severity.values()) {
      JToggleButton button = new JToggleButton();
      button.setName("findings." + severity.word());
      button.setSelected(true);
      button.putClientProperty("JButton.buttonType", "toolBarButton");
      button.addActionListener(event -> refresh());
      switches.put(severity, button);
      head.add(button);
    }
    words.setName("findings.words");
    words.putClientProperty("JTextField.placeholderText", Wording.of("findings.filter"));
    words.putClientProperty("JTextField.showClearButton", true);
    words.getAccessibleContext().setAccessibleName(Wording.of("findings.filter"));
    Listen.toText(words, this::refresh);
    head.add(words, "wmin 5lp");
    return head;
  }

  private JPanel listPane() {
    JPanel pane =
        new JPanel(
            new MigLayout("insets 0, gap 0, fill, hidemode 3", "[grow,fill]", "[][grow,fill]"));
    none.setBorder(BorderFactory.createEmptyBorder(10, 14, 10, 14));
    SecondaryLabel.style(none);
    pane.putClientProperty("FlatLaf.style", "background: $List.background");
    pane.add(none, "wrap");
    JScrollPane scroll = new JScrollPane(list);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    pane.add(scroll, "wmin 0");
    return pane;
  }

  private JPanel whyPane() {
    JPanel pane = new JPanel(new BorderLayout());
    pane.add(bar, BorderLayout.NORTH);
    pane.add(why);
    return pane;
  }

  /** The buttons for the selected finding. */
  public FindingBar bar() {
    return bar;
  }

  private void setUpList() {
    list.setName("findings.list");
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setCellRenderer(new FindingRow());
    list.getAccessibleContext().setAccessibleName(Wording.of("findings.title"));
    list.addListSelectionListener(
        event -> {
          if (!event.getValueIsAdjusting() && !isRefreshing) {
            choose();
          }
        });
    Listen.toChoice(list, this::choose);
  }

  /** A list as wide as its viewport, so that long sentences end in an ellipsis. */
  private static final class FittingList extends JList<Finding> {
    private static final long serialVersionUID = 1;

    FittingList(DefaultListModel<Finding> rows) {
      super(rows);
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
      return true;
    }
  }

  private void choose() {
    Finding finding = list.getSelectedValue();
    if (finding != null) {
      why.show(finding);
      bar.show(finding, finding.fix().flatMap(this::words));
      chosenListeners.forEach(listener -> listener.accept(finding));
    }
  }

  /**
   * Shows findings; the selected one stays selected if it is still among them.
   *
   * @param shown the balloons that they are about
   */
  public void show(List<Finding> found, Phrase.Balloons shown) {
    balloons = Optional.of(shown);
    findings = found.stream().map(finding -> finding.inWindow(shown)).toList();
    showAgain();
  }

  private void showAgain() {
    switches.forEach((severity, button) -> count(severity, button, findings));
    refresh();
  }

  private Optional<String> words(Fix fix) {
    return balloons.map(shown -> fix.sentence().inWindow(shown));
  }

  private static void count(Severity severity, JToggleButton button, List<Finding> found) {
    int count = FindingFilter.count(found, severity);
    String said = Wording.of("findings." + severity.word(), count);
    int size = UIManager.getFont("defaultFont").getSize() * 3 / 4;
    button.setIcon(new SeverityIcon(severity, size));
    button.setText(said);
    button.setToolTipText(Wording.of("findings.switch", said));
  }

  private void refresh() {
    isRefreshing = true;
    Finding before = list.getSelectedValue();
    List<Finding> seen = filter().of(findings);
    rows.clear();
    rows.addAll(seen);
    if (before != null && seen.contains(before)) {
      list.setSelectedValue(before, false);
    } else if (before != null) {
      why.clear();
      bar.clear();
    }
    none.setText(Wording.of(findings.isEmpty() ? "findings.none" : "findings.hidden"));
    none.setVisible(seen.isEmpty());
    isRefreshing = false;
  }

  /** The filter: severities and words. */
  public FindingFilter filter() {
    Set<Severity> on = EnumSet.noneOf(Severity.class);
    switches.forEach(
        (severity, button) -> {
          if (button.isSelected()) {
            on.add(severity);
          }
        });
    return new FindingFilter(on, words.getText());
  }

  /** Sets the filter. */
  public void setFilter(FindingFilter filter) {
    switches.forEach(
        (severity, button) -> button.setSelected(filter.severities().contains(severity)));
    words.setText(filter.words());
    refresh();
  }

  public void onChosen(Consumer<Finding> listener) {
    chosenListeners.add(listener);
  }

  /** The split between the list and the explanation. */
  public ProportionalSplit split() {
    return split;
  }

  public JList<Finding> shownList() {
    return list;
  }

  /** Selects the next finding (1) or the previous one (-1). */
  public void step(int by) {
    if (!rows.isEmpty()) {
      int at = list.getSelectedIndex();
      int next = at < 0 ? (by > 0 ? 0 : rows.size() - 1) : Math.floorMod(at + by, rows.size());
      list.setSelectedIndex(next);
      list.ensureIndexIsVisible(next);
    }
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (why != null) { // the superclass calls this before the fields are set
      showAgain();
    }
  }
}
