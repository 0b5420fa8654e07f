package io.github.readfall.window.model;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.draw.DrawnCache;
import io.github.readfall.draw.StripLayers;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.series.Episode;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.window.canvas.StripScene;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Makes the scenes of strips; marks drawn for the last scene are not drawn again. For any thread.
 */
public final class StripScenes {

  private final DrawnCache drawn = new DrawnCache();
  private final Map<Faces, Labels> labels = new ConcurrentHashMap<>();

  /** The fonts and style of labels. */
  private record Faces(FontShelf shelf, HouseStyle style) {}

  /** The scene of a snapshot, without art. */
  public StripScene of(EpisodeSnapshot shown) {
    return of(shown.episode(), shown.galley(), shown.findings());
  }

  /** The scene of an episode in another language, without art. */
  public StripScene of(EditionSnapshot edition) {
    return of(edition.episode(), edition.fitted().galley(), edition.fitted().findings());
  }

  private StripScene of(Episode episode, Galley galley, List<Finding> findings) {
    Faces faces = new Faces(episode.shelf(), episode.style());
    if (!labels.containsKey(faces)) {
      labels.clear(); // those of an episode that was closed
    }
    Labels own = labels.computeIfAbsent(faces, f -> new Labels(f.shelf(), f.style()));
    StripLayers layers = StripLayers.of(galley, findings, own, drawn);
    return StripScene.of(galley, layers, Optional.empty());
  }
}
