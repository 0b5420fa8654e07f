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
  private final EpisodeModel model;
  private final LayoutModel layoutModel;
  private final Consumer<Notice> notices;

  /**
   * Actions on an episode.
   *
   * @param background runs the layoutModel
   * @param notices shows the result, or why there is none
   */
  public LayoutActions(
      Executor background,
      Proofer proofer,
      EpisodeModel model,
      LayoutModel layoutModel,
      Consumer<Notice> notices) {
    this.background = background;
    this.proofer = proofer;
    this.model = model;
    this.layoutModel = layoutModel;
    this.notices = notices;
  }

  /** A new layout, and the message about it. */
  private record MadeLayout(Layout layout, String sentence) {}

  /** Makes a layout. */
  private interface LayoutMaker {
    MadeLayout make(Episode episode) throws UnusablePath;
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

  private MadeLayout placed(Episode episode, PlaceOptions wish) {
    Layout layout = proofer.place(episode, wish).layout();
    return new MadeLayout(layout, Wording.of("layout.placed", layout.balloons().size()));
  }

  /** Places the selected balloons again. */
  void placeChosen(Selection selection) {
    placeOnly(balloon -> selection.balloons().contains(balloon.id()));
  }

  /** Places the selected balloons and all that follow in the script again. */
  void placeFrom(Selection selection) {
    model
        .shown()
        .map(EpisodeSnapshot::galley)
        .ifPresent(
            galley -> {
              int first = first(galley, selection);
              placeOnly(balloon -> first >= 0 && galley.balloons().indexOf(balloon) >= first);
            });
  }

  private static int first(Galley galley, Selection selection) {
    for (int i = 0; i < galley.balloons().size(); i++) {
      PlacedBalloon balloon = galley.balloons().get(i);
      if (selection.balloons().contains(balloon.id())
          || selection.items().contains(new StripItem.Panel(balloon.panel()))) {
        return i;
      }
    }
    return -1;
  }

  private void placeOnly(Predicate<PlacedBalloon> wanted) {
    Set<String> ids =
        model.shown().stream()
            .flatMap(shown -> shown.galley().balloons().stream())
            .filter(wanted)
            .map(PlacedBalloon::id)
            .collect(Collectors.toSet());
    if (ids.isEmpty()) {
      notices.accept(Notice.of(TOPIC, Wording.of("layout.nothingChosen")));
    } else {
      make(
          Wording.of("undo.place", ids.size()),
          episode ->
              new MadeLayout(
                  proofer.placeOnly(episode, ids).layout(),
                  Wording.of("layout.placed", ids.size())));
    }
  }

  /** Moves the boxes of panels to the panels found in the art. */
  public void findPanels() {
    model
        .surroundings()
        .map(Surroundings::files)
        .ifPresent(
            files ->
                make(
                    Wording.of("undo.panels"),
                    episode -> found(episode, ArtFiles.of(files.script()))));
  }

  private MadeLayout found(Episode episode, ArtFiles pages) throws UnusablePath {
    PanelsProof proof = proofer.panels(episode, pages, UnaryOperator.identity());
    int boxes = proof.layout().panels().size();
    String sentence = Wording.of("layout.panels", boxes, proof.found().panels().size());
    if (boxes == 0) {
      throw new UnusablePath(sentence);
    }
    return new MadeLayout(proof.layout(), sentence);
  }

  private void make(String name, LayoutMaker maker) {
    notices.accept(Notice.of(TOPIC, Wording.of("layout.working")));
    model.whenSettled(() -> begin(name, maker));
  }

  private void begin(String name, LayoutMaker maker) {
    if (layoutModel.editableLayout().isEmpty()
        || model.shown().isEmpty()
        || model.surroundings().isEmpty()) {
      return;
    }
    String text = model.shown().get().text();
    String layout = layoutModel.text();
    Surroundings around = model.surroundings().get();
    background.execute(
        () -> {
          try {
            MadeLayout made = maker.make(around.with(text));
            SwingUtilities.invokeLater(() -> apply(name, made, text, layout));
          } catch (UnusablePath e) {
            Notice notice = Notice.of(TOPIC, String.valueOf(e.getMessage()));
            SwingUtilities.invokeLater(() -> notices.accept(notice));
          }
        });
  }

  private void apply(String name, MadeLayout made, String text, String layout) {
    boolean isUnchanged =
        layout.equals(layoutModel.text())
            && model.shown().filter(shown -> shown.text().equals(text)).isPresent();
    if (isUnchanged) {
      layoutModel.replace(name, "", LayoutText.of(made.layout()));
    }
    notices.accept(
        Notice.of(TOPIC, isUnchanged ? made.sentence() : Wording.of("layout.overtaken")));
  }
}
