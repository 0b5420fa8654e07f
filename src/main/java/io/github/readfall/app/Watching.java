package io.github.readfall.app;

import io.github.readfall.keeping.BackgroundThread;
import io.github.readfall.keeping.DiskWatch;
import io.github.readfall.keeping.Watched;
import io.github.readfall.series.Surroundings;
import java.util.Optional;
import java.util.Set;
import javax.swing.SwingUtilities;

/** Takes up what others change of the episode that is open: its script, style, layout or art. */
final class Watching {

  private final BackgroundThread thread = new BackgroundThread("readfall-watching");
  private final Workplace workplace;
  private final ArtLoading art;
  private final NoticeBar notices;
  private Optional<DiskWatch> watch = Optional.empty();
  private int stripWidthPx;

  Watching(Workplace workplace, Showing showing, NoticeBar notices) {
    this.workplace = workplace;
    this.notices = notices;
    this.art = new ArtLoading(showing::art, notices::tell, () -> notices.drop("art"));
    workplace.onSurrounded(this::surroundedBy);
  }

  /** Watches an episode in place of the one before. */
  void watch(Opened opened) {
    watch.ifPresent(DiskWatch::close);
    watch =
        Optional.of(
            DiskWatch.on(
                Watched.of(opened.files()),
                thread,
                kinds -> SwingUtilities.invokeLater(() -> changed(opened, kinds))));
    stripWidthPx = opened.surroundings().stripWidthPx();
    loadArt(opened);
  }

  private void loadArt(Opened opened) {
    notices.drop("art.problem");
    art.load(opened.files(), Math.max(1, stripWidthPx));
  }

  /** Art is as wide as the strip. */
  private void surroundedBy(Surroundings around) {
    if (around.stripWidthPx() != stripWidthPx) {
      stripWidthPx = around.stripWidthPx();
      workplace.opened().ifPresent(this::loadArt);
    }
  }

  private void changed(Opened opened, Set<Watched.Kind> kinds) {
    if (workplace.opened().filter(opened::equals).isEmpty()) {
      return;
    }
    for (Watched.Kind kind : kinds) {
      switch (kind) {
        case SCRIPT -> workplace.changedOnDisk();
        case LAYOUT -> workplace.layoutChangedOnDisk();
        case STYLE, ASIDE, FONTS -> workplace.surroundingsChanged();
        case ART -> loadArt(opened);
      }
    }
  }

  /** Looks soon: the person comes back from another program. */
  void lookSoon() {
    watch.ifPresent(DiskWatch::lookSoon);
  }

  /** Watches nothing. */
  void stop() {
    watch.ifPresent(DiskWatch::close);
    watch = Optional.empty();
    art.stop();
  }
}
