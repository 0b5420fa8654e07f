package io.github.readfall.window.languages;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.languages.translate.Budget;
import io.github.readfall.languages.translate.State;
import io.github.readfall.script.MarkupReader;
import io.github.readfall.window.model.LanguageMatrix;
import io.github.readfall.window.parts.LanguageName;
import io.github.readfall.window.parts.SecondaryLabel;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.BorderFactory;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;

/** One cue in another language: its translation, its status and how well it fits. */
public final class TranslationPanel extends JPanel {

  private static final long serialVersionUID = 1;

  private final JLabel title = new JLabel();
  private final JComboBox<Choice> states = new JComboBox<>();
  private final JTextArea source = new JTextArea();
  private final TargetField target = new TargetField();
  private final JLabel verdict = new JLabel(" ");
  private final BudgetBar budget = new BudgetBar();
  private final JLabel count = new JLabel(" ");
  private transient Optional<Shown> shown = Optional.empty();
  private boolean isFilling;

  /** The status of a translation. */
  private record Choice(State state) {
    @Override
    public String toString() {
      return Wording.of("translation.state." + state.word());
    }
  }

  /**
   * The content of the panel.
   *
   * @param language as a BCP 47 tag
   * @param cell the cue in that language
   * @param budget how many characters fit, if known
   */
  public record Shown(String language, LanguageMatrix.Cell cell, Optional<Budget> budget) {
    private boolean isOfSameCue(Shown other) {
      return language.equals(other.language) && id().equals(other.id());
    }

    /** The cue's id. */
    String id() {
      return cell.translated().cue().id();
    }
  }

  public TranslationPanel() {
    super(new MigLayout("insets 9 14 10 14, gap 10 6, fillx, hidemode 3", "[grow,fill][][]"));
    setName("translation");
    title.putClientProperty("FlatLaf.styleClass", "h4");
    title.setLabelFor(target);
    setUp();
    add(title, "wmin 0");
    add(states, "span 2, right, wrap");
    add(source, "span 3, growx, wmin 0, wrap");
    JScrollPane scroll = new JScrollPane(target);
    scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    add(scroll, "span 3, growx, wmin 0, wrap");
    add(verdict, "span 3, growx, wmin 0, wrap");
    add(budget, "growx, wmin 0");
    add(count, "span 2, right");
    setVisible(false);
    updateUI();
  }

  private void setUp() {
    states.setName("translation.state");
    states.getAccessibleContext().setAccessibleName(Wording.of("translation.state"));
    Stream.of(State.values()).map(Choice::new).forEach(states::addItem);
    source.setName("translation.source");
    source.setEditable(false);
    source.setFocusable(false);
    source.setLineWrap(true);
    source.setWrapStyleWord(true);
    source.setOpaque(false);
    source.setBorder(BorderFactory.createEmptyBorder());
    source.putClientProperty("FlatLaf.style", "foreground: $Readfall.quiet");
    source.getAccessibleContext().setAccessibleName(Wording.of("translation.source"));
    verdict.setName("translation.verdict");
    count.setName("translation.count");
    SecondaryLabel.style(count);
  }

  /** Shows a cue; nothing if empty. */
  public void show(Optional<Shown> next) {
    boolean isOther =
        next.isPresent() != shown.isPresent()
            || next.filter(n -> !shown.orElse(n).isOfSameCue(n)).isPresent();
    shown = next;
    setVisible(next.isPresent());
    next.ifPresent(now -> fill(now, isOther));
  }

  private void fill(Shown now, boolean isOther) {
    var cue = now.cell().translated();
    isFilling = true;
    String who = cue.cue().names();
    String language = LanguageName.of(now.language());
    title.setText(who.isBlank() ? language : Wording.of("translation.title", who, language));
    source.setText(
        cue.formerSource()
            .map(former -> Wording.of("translation.former", cue.cue().text().raw(), former))
            .orElse(cue.cue().text().raw()));
    states.setSelectedItem(new Choice(cue.state()));
    if (isOther || !target.getText().equals(cue.target())) {
      target.open(now.language(), cue.target());
      target
          .getAccessibleContext()
          .setAccessibleName(Wording.of("translation.target", LanguageName.of(now.language())));
    }
    isFilling = false;
    judge(now);
  }

  private void judge(Shown now) {
    int characters = MarkupReader.text(target.getText()).characters();
    count.setText(Wording.of("translation.count", characters));
    budget.show(characters, now.budget());
    verdict.setIcon(new VerdictIcon(now.cell(), verdict.getFont().getSize() * 3 / 4));
    verdict.setText(VerdictWords.sentence(now.cell()));
    verdict.setToolTipText(verdict.getText());
  }

  /** Adds a listener for the translation after every key. */
  public void onTyped(Consumer<String> listener) {
    target.onTyped(listener);
  }

  /** Adds a listener for the status that the person sets. */
  public void onState(Consumer<State> listener) {
    states.addActionListener(
        event -> {
          if (!isFilling && states.getSelectedItem() instanceof Choice choice) {
            listener.accept(choice.state());
          }
        });
  }

  /** Adds a listener for when the panel loses the focus. */
  public void onLeft(Runnable listener) {
    target.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent event) {
            listener.run();
          }
        });
  }

  /** Adds a listener for the keys that go to the previous (-1) and next (1) cue. */
  public void onStep(Consumer<Integer> listener) {
    target.bind(KeyEvent.VK_PAGE_UP, 0, "cueBefore", () -> listener.accept(-1));
    target.bind(KeyEvent.VK_PAGE_DOWN, 0, "cueAfter", () -> listener.accept(1));
  }

  /** Moves the focus to the translation. */
  public void focusWords() {
    target.requestFocusInWindow();
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setBorder(BorderFactory.createMatteBorder(1, 0, 0, 0, UIManager.getColor("Readfall.line")));
  }
}
