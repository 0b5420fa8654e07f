package io.github.readfall.window;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.job.StripProof;
import io.github.readfall.lettering.toml.TomlValue;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.window.model.ModelThreads;
import io.github.readfall.window.model.Specimen;
import io.github.readfall.window.model.StyleEntry;
import io.github.readfall.window.model.StyleModel;
import io.github.readfall.window.model.StyleModelListener;
import io.github.readfall.window.model.StyleSnapshot;
import io.github.readfall.window.model.StyleSubject;
import io.github.readfall.window.style.StyleView;
import io.github.readfall.window.style.StyleViewListener;
import io.github.readfall.window.workplace.Workplace;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/** The page of the house style: passes changes to the model, and shows what comes back. */
final class StylePage implements StyleModelListener, StyleViewListener {

  private final Workplace workplace;
  private final Consumer<Throwable> faults;
  private final StyleModel style;
  private final StyleView view;

  /**
   * A page that shows no style yet.
   *
   * @param disk reads and writes, one job after the other
   * @param faults called with errors of the program itself
   */
  StylePage(Workplace workplace, Executor disk, Consumer<Throwable> faults) {
    this.workplace = workplace;
    this.faults = faults;
    ModelThreads threads = ModelThreads.real(SwingUtilities::invokeLater);
    style = new StyleModel(threads, disk, this, Wording.of("style.sample"));
    view = new StyleView(this);
  }

  StyleView view() {
    return view;
  }

  /** Shows the style of the series of an episode. */
  void open(EpisodeFiles files) {
    view.accept(); // the last refusal was about another series
    style.open(files);
  }

  /** Shows the episode as it has been placed and checked. */
  void settled(StripProof proof) {
    view.show(proof.episode());
    style.setEpisode(proof.episode());
  }

  /** Reads the style again after another program has changed it. */
  void readAgain() {
    style.readAgain();
  }

  @Override
  public void select(StyleSubject subject) {
    style.selectSubject(subject);
  }

  @Override
  public void preview(StyleEntry entry, TomlValue value) {
    style.preview(entry, Optional.of(value));
  }

  @Override
  public void write(StyleEntry entry, Optional<TomlValue> value) {
    style.write(entry, value);
  }

  @Override
  public void revert() {
    style.revert();
  }

  @Override
  public void shown(StyleSnapshot now) {
    view.show(now, style.canRevert());
  }

  @Override
  public void previewed(StyleSnapshot now, Optional<Specimen> specimen) {
    view.show(now, specimen);
  }

  @Override
  public void written() {
    view.accept();
    workplace.surroundingsChanged();
  }

  @Override
  public void refused(String sentence) {
    view.refuse(sentence);
  }

  @Override
  public void failed(Throwable thrown) {
    faults.accept(thrown);
  }
}
