package io.github.readfall.window;

import io.github.readfall.series.Surroundings;
import io.github.readfall.series.autosave.BackgroundThread;
import io.github.readfall.series.autosave.DiskWatch;
import io.github.readfall.series.autosave.WatchedFile;
import io.github.readfall.window.parts.NoticeBar;
import io.github.readfall.window.strip.ArtLoader;
import io.github.readfall.window.workplace.OpenEpisode;
import io.github.readfall.window.workplace.Workplace;
import java.util.Optional;
import java.util.Set;
import javax.swing.SwingUtilities;

/**
 * Reacts to changes that other programs make to the open episode: its script, style, layout or art.
 */
final class OutsideChanges {

  private final BackgroundThread thread = new BackgroundThread("readfall-watching");
  private final Workplace workplace;
  private final ArtLoader art;
  private final NoticeBar notices;
  private Optional<DiskWatch> watch = Optional.empty();
  private int stripWidthPx;

  OutsideChanges(Workplace workplace, ViewUpdater updater, NoticeBar notices) {
    this.workplace = workplace;
    this.notices = notices;
    this.art = new ArtLoader(updater::showArt, notices::show, () -> notices.close("art"));
  }

  /** Watches an episode instead of the previous one. */
  void watch(OpenEpisode opened) {
    watch.ifPresent(DiskWatch::close);
    watch =
        Optional.of(
            DiskWatch.on(
                WatchedFile.of(opened.files()),
                thread,
                kinds -> SwingUtilities.invokeLater(() -> changed(opened, kinds))));
    stripWidthPx = opened.surroundings().stripWidthPx();
    loadArt(opened);
  }

  private void loadArt(OpenEpisode opened) {
    notices.close("art.problem");
    art.load(opened.files(), Math.max(1, stripWidthPx));
  }

  /** Loads the art again if the strip has another width now. */
  void surroundingsRead(Surroundings surroundings) {
    if (surroundings.stripWidthPx() != stripWidthPx) {
      stripWidthPx = surroundings.stripWidthPx();
      workplace.opened().ifPresent(this::loadArt);
    }
  }

  private void changed(OpenEpisode opened, Set<WatchedFile.Kind> kinds) {
    if (workplace.opened().filter(opened::equals).isEmpty()) {
      return;
    }
    for (WatchedFile.Kind kind : kinds) {
      switch (kind) {
        case SCRIPT -> workplace.changedOnDisk();
        case LAYOUT -> workplace.layoutChangedOnDisk();
        case STYLE, IGNORED, FONTS -> workplace.surroundingsChanged();
        case ART -> loadArt(opened);
      }
    }
  }

  /** Checks the files soon: the person has come back from another program. */
  void checkSoon() {
    watch.ifPresent(DiskWatch::checkSoon);
  }

  /** Stops watching. */
  void stop() {
    watch.ifPresent(DiskWatch::close);
    watch = Optional.empty();
    art.stop();
  }
}
