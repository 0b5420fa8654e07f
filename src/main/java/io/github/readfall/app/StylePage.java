package io.github.readfall.app;

import io.github.readfall.canvas.StripScene;
import io.github.readfall.desk.Desk;
import io.github.readfall.desk.ShownStyle;
import io.github.readfall.desk.Specimen;
import io.github.readfall.desk.StyleDesk;
import io.github.readfall.desk.StyleSpot;
import io.github.readfall.desk.StyleSubject;
import io.github.readfall.desk.StyleWatcher;
import io.github.readfall.desk.Threads;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.style.StyleValue;
import io.github.readfall.wording.Wording;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/**
 * The page of the house style: what is wanted there goes to the desk, and comes back to be seen.
 */
final class StylePage implements StyleWatcher, StyleWishes {

  private final Workplace workplace;
  private final Consumer<Throwable> fault;
  private final StyleDesk style;
  private final StyleView view;

  private StylePage(Workplace workplace, Executor disk, Consumer<Throwable> fault) {
    this.workplace = workplace;
    this.fault = fault;
    Threads threads = Threads.real(SwingUtilities::invokeLater);
    style = new StyleDesk(threads, disk, this, Wording.of("style.sample"));
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
      Desk<StripScene> desk,
      Executor disk,
      Consumer<Throwable> fault) {
    StylePage page = new StylePage(workplace, disk, fault);
    work.side().page("style", page.view);
    workplace.onOpened(opened -> page.open(opened.files()));
    workplace.onSurrounded(around -> page.style.readAgain());
    desk.onSettled(
        proof -> {
          page.view.show(proof.episode());
          page.style.seeIn(proof.episode());
        });
  }

  private void open(EpisodeFiles files) {
    view.accept(); // what was refused was of another series
    style.open(files);
  }

  @Override
  public void see(StyleSubject subject) {
    style.see(subject);
  }

  @Override
  public void tryOut(StyleSpot spot, StyleValue value) {
    style.tryOut(spot, Optional.of(value));
  }

  @Override
  public void write(StyleSpot spot, Optional<StyleValue> value) {
    style.write(spot, value);
  }

  @Override
  public void takeBack() {
    style.takeBack();
  }

  @Override
  public void shown(ShownStyle now) {
    view.show(now, style.canTakeBack());
  }

  @Override
  public void tried(ShownStyle now, Optional<Specimen> specimen) {
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
