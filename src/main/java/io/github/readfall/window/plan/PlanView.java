package io.github.readfall.window.plan;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.plan.EpisodeOverview;
import io.github.readfall.plan.PartSpan;
import io.github.readfall.plan.Split;
import io.github.readfall.window.canvas.OverviewPane;
import io.github.readfall.window.canvas.VisiblePart;
import io.github.readfall.window.parts.Heading;
import io.github.readfall.window.parts.WrappedLabel;
import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JFormattedTextField;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;

/** The plan page: the figures of the episode, its overview, and how it can be split. */
public final class PlanView extends JPanel {

  private static final long serialVersionUID = 1;

  private final OverviewPane overview = new OverviewPane();
  private final WrappedLabel figures = new WrappedLabel("plan.figures", "Label.foreground");
  private final WrappedLabel why = new WrappedLabel("plan.why", "Label.foreground");
  private final JSpinner count = new JSpinner(new SpinnerNumberModel(1, 1, Split.MOST_PARTS, 1));
  private final PartsTable parts = new PartsTable();
  private final JScrollPane list = new PartsScroll(parts);
  private final JButton make = named(new JButton(Wording.of("plan.make")), "plan.make");
  private transient Runnable counted = () -> {};
  private transient Optional<PlanContent> shown = Optional.empty();
  private transient Optional<VisiblePart> seen = Optional.empty();
  private boolean isFilling;

  public PlanView() {
    super(new BorderLayout());
    setName("plan");
    JLabel label = new JLabel(Wording.of("plan.count"));
    label.setLabelFor(count);
    nameCount();
    Heading heading = new Heading(Wording.of("plan.title"), label, count);
    heading.setLabelFor(overview);
    add(heading, BorderLayout.NORTH);
    JPanel body =
        new JPanel(
            new MigLayout(
                "insets 10 14 12 14, gap 0 10, fill, wrap 1, hidemode 3",
                "[grow,fill]",
                "[][grow,fill][][][]"));
    body.add(figures, "wmin 0");
    body.add(overview, "wmin 0");
    body.add(list, "wmin 0");
    body.add(why, "wmin 0");
    body.add(make, "growx 0, alignx right");
    add(body);
    count.addChangeListener(event -> countChanged());
    parts.onChosen(part -> explain());
    clear();
  }

  private static <T extends JComponent> T named(T part, String name) {
    part.setName(name);
    return part;
  }

  private void nameCount() {
    count.setName("plan.count");
    if (count.getEditor() instanceof JSpinner.DefaultEditor editor) {
      JFormattedTextField field = editor.getTextField();
      field.setName("plan.count.field");
      field.setColumns(2);
      field.getAccessibleContext().setAccessibleName(Wording.of("plan.count.name"));
    }
  }

  private void countChanged() {
    if (!isFilling) {
      counted.run();
    }
  }

  /** Sets the listener for another number of parts. */
  void onCounted(Runnable listener) {
    counted = listener;
  }

  /** Adds a listener for the position to scroll the strip to, in strip pixels. */
  void onScrollRequest(DoubleConsumer listener) {
    overview.onScrollRequest(listener);
    parts.onChosen(part -> listener.accept(part.topPx()));
  }

  /** Adds a listener for the button that writes the parts. */
  public void onWriteParts(Runnable listener) {
    make.addActionListener(event -> listener.run());
  }

  /** The number of parts asked for; 1 for no split. */
  public int count() {
    return count.getValue() instanceof Number number ? number.intValue() : 1;
  }

  /** Sets the number of parts without calling the listener. */
  void setCount(int wanted) {
    isFilling = true;
    count.setValue(wanted);
    isFilling = false;
  }

  /** Shows a plan and its split. */
  public void show(PlanContent next) {
    shown = Optional.of(next);
    figures.showText(EpisodeFigures.sentence(next.plan()));
    overview.show(Optional.of(next.overview()));
    overview.showParts(next.spans());
    parts.show(next.spans(), next.overview().tallestPx());
    list.setVisible(!next.spans().isEmpty());
    make.setEnabled(!next.spans().isEmpty());
    count.setEnabled(true);
    explain();
    describe();
    revalidate();
  }

  /** Shows nothing. */
  void clear() {
    shown = Optional.empty();
    figures.showText(" ");
    why.showText(" ");
    overview.show(Optional.empty());
    overview.showParts(List.of());
    parts.show(List.of(), 0);
    list.setVisible(false);
    make.setEnabled(false);
    count.setEnabled(false);
  }

  /**
   * Shows why there is no split, else why the selected part (or the second) begins where it does.
   */
  private void explain() {
    shown.ifPresent(
        plan -> {
          List<PartSpan> spans = plan.spans();
          why.showText(
              spans.isEmpty() ? plan.whyNone() : plan.why(parts.chosen().orElse(spans.get(1))));
        });
  }

  /** Marks the part of the strip that is visible. */
  void see(VisiblePart part) {
    overview.markVisible(part);
    seen = Optional.of(part);
    describe();
  }

  private void describe() {
    shown.ifPresent(
        plan ->
            overview
                .getAccessibleContext()
                .setAccessibleDescription(
                    Wording.of(
                        "plan.described",
                        EpisodeFigures.sentence(plan.plan()),
                        fullest(plan.overview()),
                        seen.map(part -> inView(part, plan)).orElse(""))));
  }

  private static String inView(VisiblePart part, PlanContent plan) {
    double screenPx = plan.plan().screens().screenPx();
    return Wording.of(
        "plan.inView",
        EpisodeFigures.tenths(part.topPx() / screenPx),
        EpisodeFigures.tenths(part.bottomPx() / screenPx));
  }

  private static String fullest(EpisodeOverview of) {
    return of.fullest()
        .map(step -> Wording.of("plan.fullest", step.screen(), step.words()))
        .orElse("");
  }

  public OverviewPane overview() {
    return overview;
  }
}
