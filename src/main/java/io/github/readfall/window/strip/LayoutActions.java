package io.github.readfall.window.strip;

import io.github.readfall.art.ArtFiles;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.job.PanelsProof;
import io.github.readfall.job.PlaceOptions;
import io.github.readfall.job.Proofer;
import io.github.readfall.series.Episode;
import io.github.readfall.series.Surroundings;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.edits.StripItem;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.window.model.EpisodeModel;
import io.github.readfall.window.model.EpisodeSnapshot;
import io.github.readfall.window.model.LayoutModel;
import io.github.readfall.window.model.LayoutText;
import io.github.readfall.window.model.Selection;
import io.github.readfall.window.parts.Notice;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import javax.swing.SwingUtilities;

/**
 * Makes layouts in the background: places balloons, finds panels. The result is one step that can
 * be undone. If the strip has been changed in the meantime, the result is discarded, with a
 * message.
 */
public final class LayoutActions {

  private static final String TOPIC = "layout";

  private final Executor background;
  private final Proofer proofer;
  private final EpisodeModel desk;
  private final LayoutModel work;
  private final Consumer<Notice> tell;

  /**
   * Actions on an episode.
   *
   * @param background runs the work
   * @param tell shows the result, or why there is none
   */
  public LayoutActions(
      Executor background,
      Proofer proofer,
      EpisodeModel desk,
      LayoutModel work,
      Consumer<Notice> tell) {
    this.background = background;
    this.proofer = proofer;
    this.desk = desk;
    this.work = work;
    this.tell = tell;
  }

  /** A new layout, and the message about it. */
  private record Made(Layout layout, String sentence) {}

  /** Makes a layout. */
  private interface Making {
    Made make(Episode episode) throws UnusablePath;
  }

  /** Places every balloon again except pinned ones. */
  public void placeAll() {
    make(Wording.of("undo.placeAll"), episode -> placed(episode, new PlaceOptions(false, true)));
  }

  /**
   * Places every balloon again except pinned ones, and opens gutters if there is too little room.
   */
  public void placeWithRoom() {
    make(Wording.of("undo.placeAll"), episode -> placed(episode, new PlaceOptions(true, true)));
  }

  private Made placed(Episode episode, PlaceOptions wish) {
    Layout layout = proofer.place(episode, wish).layout();
    return new Made(layout, Wording.of("layout.placed", layout.balloons().size()));
  }

  /** Places the selected balloons again. */
  void placeChosen(Selection chosen) {
    placeOnly(balloon -> chosen.balloons().contains(balloon.id()));
  }

  /** Places the selected balloons and all that follow in the script again. */
  void placeFrom(Selection chosen) {
    desk.shown()
        .map(EpisodeSnapshot::galley)
        .ifPresent(
            galley -> {
              int first = first(galley, chosen);
              placeOnly(balloon -> first >= 0 && galley.balloons().indexOf(balloon) >= first);
            });
  }

  private static int first(Galley galley, Selection chosen) {
    for (int i = 0; i < galley.balloons().size(); i++) {
      PlacedBalloon balloon = galley.balloons().get(i);
      if (chosen.balloons().contains(balloon.id())
          || chosen.items().contains(new StripItem.Panel(balloon.panel()))) {
        return i;
      }
    }
    return -1;
  }

  private void placeOnly(Predicate<PlacedBalloon> meant) {
    Set<String> ids =
        desk.shown().stream()
            .flatMap(shown -> shown.galley().balloons().stream())
            .filter(meant)
            .map(PlacedBalloon::id)
            .collect(Collectors.toSet());
    if (ids.isEmpty()) {
      tell.accept(Notice.of(TOPIC, Wording.of("layout.nothingChosen")));
    } else {
      make(
          Wording.of("undo.place", ids.size()),
          episode ->
              new Made(
                  proofer.placeOnly(episode, ids).layout(),
                  Wording.of("layout.placed", ids.size())));
    }
  }

  /** Moves the boxes of panels to the panels found in the art. */
  public void findPanels() {
    desk.surroundings()
        .map(Surroundings::files)
        .ifPresent(
            files ->
                make(
                    Wording.of("undo.panels"),
                    episode -> found(episode, ArtFiles.of(files.script()))));
  }

  private Made found(Episode episode, ArtFiles pages) throws UnusablePath {
    PanelsProof proof = proofer.panels(episode, pages, UnaryOperator.identity());
    int boxes = proof.layout().panels().size();
    String sentence = Wording.of("layout.panels", boxes, proof.found().panels().size());
    if (boxes == 0) {
      throw new UnusablePath(sentence);
    }
    return new Made(proof.layout(), sentence);
  }

  private void make(String name, Making making) {
    tell.accept(Notice.of(TOPIC, Wording.of("layout.working")));
    desk.whenSettled(() -> begin(name, making));
  }

  private void begin(String name, Making making) {
    if (work.editableLayout().isEmpty()
        || desk.shown().isEmpty()
        || desk.surroundings().isEmpty()) {
      return;
    }
    String text = desk.shown().get().text();
    String layout = work.text();
    Surroundings around = desk.surroundings().get();
    background.execute(
        () -> {
          try {
            Made made = making.make(around.with(text));
            SwingUtilities.invokeLater(() -> take(name, made, text, layout));
          } catch (UnusablePath e) {
            Notice notice = Notice.of(TOPIC, String.valueOf(e.getMessage()));
            SwingUtilities.invokeLater(() -> tell.accept(notice));
          }
        });
  }

  private void take(String name, Made made, String text, String layout) {
    boolean same =
        layout.equals(work.text())
            && desk.shown().filter(shown -> shown.text().equals(text)).isPresent();
    if (same) {
      work.replace(name, "", LayoutText.of(made.layout()));
    }
    tell.accept(Notice.of(TOPIC, same ? made.sentence() : Wording.of("layout.overtaken")));
  }
}
