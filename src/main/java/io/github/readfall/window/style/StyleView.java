package io.github.readfall.window.style;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.series.Episode;
import io.github.readfall.type.font.FaceFile;
import io.github.readfall.window.model.Specimen;
import io.github.readfall.window.model.StyleSnapshot;
import io.github.readfall.window.model.StyleSubject;
import io.github.readfall.window.parts.Heading;
import io.github.readfall.window.parts.WidePanel;
import io.github.readfall.window.parts.WindowAction;
import io.github.readfall.window.parts.WrappedLabel;
import java.awt.CardLayout;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;

/**
 * The page of the style: select a voice, a manner or a limit, see it on a balloon, and change it.
 */
public final class StyleView extends JPanel {

  private static final long serialVersionUID = 1;

  private static final String LOOK = "look";
  private static final String LIMIT = "limit";
  private static final String WHOLE = "growx, wmin 0, wrap";

  private final transient StyleViewListener listener;
  private final JComboBox<Choice> kinds = new JComboBox<>();
  private final DefaultListModel<SubjectList.Entry> entries = new DefaultListModel<>();
  private final JList<SubjectList.Entry> list = new JList<>(entries);
  private final SpecimenView specimen = new SpecimenView();
  private final LookForm looks;
  private final LimitForm limits;
  private final CardLayout cards = new CardLayout();
  private final JPanel forms = new JPanel(cards);
  private final WrappedLabel remark = new WrappedLabel("style.remark", "Readfall.warning");
  private final JButton revert;
  private transient StyleSnapshot shown = StyleSnapshot.BUILT_IN;
  private transient Optional<Episode> episode = Optional.empty();
  private String refusal = "";
  private boolean isFilling;

  /** A kind with its name. */
  private record Choice(SubjectList.Kind kind) {
    @Override
    public String toString() {
      return Wording.of("style.kind." + kind.word());
    }
  }

  public StyleView(StyleViewListener listener) {
    super(new MigLayout("insets 0, gap 0, fill, hidemode 3", "[grow,fill]", "[][][][grow,fill][]"));
    this.listener = listener;
    looks = new LookForm(listener);
    limits = new LimitForm(listener);
    setName("style");
    setUpKinds();
    setUpList();
    revert = new JButton(new WindowAction("style.revert", listener::revert));
    revert.setName("style.revert");
    revert.setEnabled(false);
    forms.add(scrolled(looks), LOOK);
    forms.add(scrolled(limits), LIMIT);
    layOut();
    updateUI();
  }

  private void setUpKinds() {
    for (SubjectList.Kind kind : SubjectList.Kind.values()) {
      kinds.addItem(new Choice(kind));
    }
    kinds.setName("style.kind");
    kinds.getAccessibleContext().setAccessibleName(Wording.of("style.kind"));
    kinds.addActionListener(event -> fill());
  }

  private void setUpList() {
    list.setName("style.list");
    list.getAccessibleContext().setAccessibleName(Wording.of("style.list"));
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setCellRenderer(new SubjectRow());
    list.setVisibleRowCount(6);
    list.addListSelectionListener(
        event -> {
          if (!isFilling && !event.getValueIsAdjusting()) {
            see();
          }
        });
  }

  private void layOut() {
    Heading heading = new Heading(Wording.of("style.title"), kinds);
    heading.setLabelFor(list);
    add(heading, WHOLE);
    JScrollPane listed = scrolled(list);
    listed.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            list.ensureIndexIsVisible(list.getSelectedIndex());
          }
        });
    add(listed, "grow, wmin 0, hmin 80lp, wrap");
    add(specimen, WHOLE);
    add(forms, "grow, wmin 0, hmin 80lp, wrap");
    JPanel foot = new JPanel(new MigLayout("insets 8 14 10 12, gap 10, fillx", "[grow,fill][]"));
    foot.add(remark, "wmin 0");
    foot.add(revert);
    add(foot, "growx, wmin 0");
  }

  private static JScrollPane scrolled(JComponent inner) {
    JScrollPane scroll = new JScrollPane(inner instanceof JList ? inner : new WidePanel(inner));
    scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.getVerticalScrollBar().setUnitIncrement(16);
    return scroll;
  }

  private Optional<StyleSubject> chosen() {
    return Optional.ofNullable(list.getSelectedValue()).map(SubjectList.Entry::subject);
  }

  private SubjectList.Kind kind() {
    return kinds.getSelectedItem() instanceof Choice choice
        ? choice.kind()
        : SubjectList.Kind.VOICES;
  }

  /** Lists the selected kind; the selected entry stays selected. */
  private void fill() {
    Optional<StyleSubject> before = chosen();
    List<SubjectList.Entry> now = SubjectList.of(kind(), shown, episode.map(Episode::script));
    isFilling = true;
    entries.clear();
    entries.addAll(now);
    List<StyleSubject> subjects = now.stream().map(SubjectList.Entry::subject).toList();
    list.setSelectedIndex(Math.max(0, before.map(subjects::indexOf).orElse(0)));
    isFilling = false;
    if (before.isEmpty() || !before.equals(chosen())) {
      see();
    }
  }

  private void see() {
    chosen()
        .ifPresent(
            subject -> {
              list.ensureIndexIsVisible(list.getSelectedIndex());
              boolean isLimit = subject instanceof StyleSubject.Limit;
              cards.show(forms, isLimit ? LIMIT : LOOK);
              specimen.setVisible(!isLimit);
              if (isLimit) {
                limits.see(subject, shown);
              } else {
                looks.see(subject, shown);
              }
              listener.select(subject);
            });
  }

  /** Selects a voice, a manner or a limit, as a person would. */
  public void choose(StyleSubject subject) {
    int kind =
        subject instanceof StyleSubject.Voice
            ? 0
            : subject instanceof StyleSubject.MannerLook ? 1 : 2;
    kinds.setSelectedIndex(kind);
    for (int i = 0; i < entries.size(); i++) {
      if (entries.get(i).subject().equals(subject)) {
        list.setSelectedIndex(i);
      }
    }
  }

  /** Shows another style. */
  public void show(StyleSnapshot style, boolean canRevert) {
    shown = style;
    revert.setEnabled(canRevert);
    remark.showText(
        style.text().isPresent() ? "" : style.remark().orElse(Wording.of("style.noSeries")));
    fill();
    chosen().ifPresent(subject -> again(subject, style));
  }

  /** Shows why nothing can be changed, else why the last change was refused. */
  private void remark() {
    remark.showText(
        shown.text().isPresent() ? refusal : shown.remark().orElse(Wording.of("style.noSeries")));
  }

  private void again(StyleSubject subject, StyleSnapshot style) {
    if (subject instanceof StyleSubject.Limit) {
      limits.see(subject, style);
    } else {
      looks.see(subject, style);
    }
  }

  /** Offers the speakers of an episode, and the faces it may be lettered in. */
  public void show(Episode now) {
    episode = Optional.of(now);
    looks.offerFaces(now.shelf().files().stream().map(StyleView::face).distinct().toList());
    fill();
  }

  /** The name of a face in series.toml: a file of the series, else a family. */
  private static String face(FaceFile file) {
    return file.id().startsWith("fonts/") ? file.id() : file.family();
  }

  /** Shows a balloon. */
  public void show(StyleSnapshot style, Optional<Specimen> made) {
    specimen.show(made);
    if (style.equals(shown)) {
      looks.show(style, made);
    }
  }

  /** Shows why a change was refused; the values in effect are shown again. */
  public void refuse(String sentence) {
    refusal = sentence;
    remark();
    looks.forget();
    limits.forget();
  }

  /** Clears the refusal after a change was made. */
  public void accept() {
    refusal = "";
    remark();
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (specimen != null) { // the superclass calls this before the fields are set
      specimen.setBorder(
          BorderFactory.createMatteBorder(1, 0, 1, 0, UIManager.getColor("Readfall.line")));
    }
  }
}
