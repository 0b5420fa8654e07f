package io.github.readfall.app;

import io.github.readfall.art.ArtFiles;
import io.github.readfall.proof.PanelsProof;
import io.github.readfall.proof.PlaceWish;
import io.github.readfall.proof.Proofer;
import io.github.readfall.proof.StripProof;
import io.github.readfall.proof.Unsaved;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.LayoutFile;
import io.github.readfall.series.UnusablePath;
import io.github.readfall.wording.Wording;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/** Writes layout.json for what is open, as it is saved; the layout before is kept beside it. */
final class LayoutWays {

  private final Executor thorough;
  private final Proofer proofer;
  private final Consumer<Notice> tell;
  private final Runnable changed;

  /**
   * Writes nothing yet.
   *
   * @param thorough works where nobody waits for it
   * @param tell tells on any thread what was done, or why it could not be
   * @param changed is told on any thread that there is another layout
   */
  LayoutWays(Executor thorough, Proofer proofer, Consumer<Notice> tell, Runnable changed) {
    this.thorough = thorough;
    this.proofer = proofer;
    this.tell = tell;
    this.changed = changed;
  }

  /** Something that makes a layout. */
  private interface Making {
    String make(EpisodeFiles files) throws UnusablePath;
  }

  /** Gives every balloon that has none a place. */
  void place(EpisodeFiles files) {
    make(files, this::placed);
  }

  private String placed(EpisodeFiles files) throws UnusablePath {
    StripProof proof = proofer.place(files, new PlaceWish(false, false));
    LayoutFile file = LayoutFile.of(files);
    Unsaved.refuse(proof.findings(), file);
    file.save(proof.layout());
    return Wording.of("layout.placed", proof.galley().balloons().size(), file.path());
  }

  /** Puts the boxes of panels where they are in the art. */
  void panels(EpisodeFiles files) {
    make(files, this::found);
  }

  private String found(EpisodeFiles files) throws UnusablePath {
    PanelsProof proof = proofer.panels(files, ArtFiles.of(files), UnaryOperator.identity());
    LayoutFile file = LayoutFile.of(files);
    int boxes = proof.layout().panels().size();
    if (boxes > 0) {
      file.save(proof.layout());
    }
    return Wording.of("layout.panels", boxes, proof.found().panels().size(), file.path());
  }

  private void make(EpisodeFiles files, Making making) {
    tell.accept(Notice.of("layout", Wording.of("layout.working")));
    thorough.execute(
        () -> {
          try {
            String done = making.make(files);
            changed.run();
            tell.accept(Notice.of("layout", done));
          } catch (UnusablePath e) {
            tell.accept(Notice.of("layout", String.valueOf(e.getMessage())));
          }
        });
  }
}
