package io.github.readfall.window.plan;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.plan.EpisodePlan;
import io.github.readfall.plan.ReadingTime;
import io.github.readfall.window.model.EpisodeSnapshot;
import io.github.readfall.window.parts.SecondaryLabel;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;

/**
 * The status line of the window: the figures of the episode, and of the cue and panel at the caret.
 */
public final class FiguresLine extends JPanel {

  private static final long serialVersionUID = 1;

  private final JLabel episode = new JLabel(" ");
  private final JLabel caret = new JLabel(" ");

  public FiguresLine() {
    super(new MigLayout("insets 5 14 6 14, fillx", "[grow,fill]20[]"));
    setName("figures");
    episode.setName("figures.episode");
    caret.setName("figures.caret");
    SecondaryLabel.style(episode);
    SecondaryLabel.style(caret);
    add(episode, "wmin 0");
    add(caret);
    updateUI();
  }

  /** Shows the figures of an episode. */
  public void show(EpisodeSnapshot shown) {
    EpisodePlan plan = shown.plan();
    episode.setText(
        Wording.of(
            "figures.episode",
            shown.episode().script().panels().size(),
            shown.galley().balloons().size(),
            plan.words(),
            Long.toString(Math.round(plan.heightPx())),
            EpisodeFigures.tenths(plan.screens().count()),
            ReadingTime.of(plan.seconds())));
  }

  /** Shows the figures at the caret. */
  public void atCaret(String words) {
    caret.setText(words);
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (caret != null) { // the superclass calls this before the fields are set
      setBorder(BorderFactory.createMatteBorder(1, 0, 0, 0, UIManager.getColor("Readfall.line")));
    }
  }
}
