package io.github.readfall.window;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.lettering.toml.TomlValue;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.window.model.EpisodeModel;
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

/**
 * The page of the house style: what is wanted there goes to the desk, and comes back to be seen.
 */
final class StylePage implements StyleModelListener, StyleViewListener {

  private final Workplace workplace;
  private final Consumer<Throwable> fault;
  private final StyleModel style;
  private final StyleView view;

  private StylePage(Workplace workplace, Executor disk, Consumer<Throwable> fault) {
    this.workplace = workplace;
    this.fault = fault;
    ModelThreads threads = ModelThreads.real(SwingUtilities::invokeLater);
    style = new StyleModel(threads, disk, this, Wording.of("style.sample"));
    view = new StyleView(this);
  }

  /**
   * Adds the page to those beside the strip.
   *
   * @param disk reads and writes, one job after the other
   * @param fault hears of faults of our own
   */
  static void in(
      WorkView work,
      Workplace workplace,
      EpisodeModel desk,
      Executor disk,
      Consumer<Throwable> fault) {
    StylePage page = new StylePage(workplace, disk, fault);
    work.side().page("style", page.view);
    workplace.onOpened(opened -> page.open(opened.files()));
    workplace.onSurrounded(around -> page.style.readAgain());
    desk.onSettled(
        proof -> {
          page.view.show(proof.episode());
          page.style.setEpisode(proof.episode());
        });
  }

  private void open(EpisodeFiles files) {
    view.accept(); // what was refused was of another series
    style.open(files);
  }

  @Override
  public void see(StyleSubject subject) {
    style.selectSubject(subject);
  }

  @Override
  public void tryOut(StyleEntry spot, TomlValue value) {
    style.preview(spot, Optional.of(value));
  }

  @Override
  public void write(StyleEntry spot, Optional<TomlValue> value) {
    style.write(spot, value);
  }

  @Override
  public void takeBack() {
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
    fault.accept(thrown);
  }
}
