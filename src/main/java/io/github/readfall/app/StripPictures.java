package io.github.readfall.app;

import io.github.readfall.canvas.StripScene;
import io.github.readfall.desk.Shown;
import io.github.readfall.draw.DrawnBefore;
import io.github.readfall.draw.StripLayers;
import io.github.readfall.font.FontShelf;
import io.github.readfall.style.HouseStyle;
import io.github.readfall.typeset.Labels;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** Makes the pictures of strips; what was drawn for the last is not drawn again. Any thread. */
final class StripPictures {

  private final DrawnBefore drawn = new DrawnBefore();
  private final Map<Faces, Labels> labels = new ConcurrentHashMap<>();

  /** What labels are set in. */
  private record Faces(FontShelf shelf, HouseStyle style) {}

  /** The picture of what is shown, without art. */
  StripScene of(Shown shown) {
    Faces faces = new Faces(shown.episode().shelf(), shown.episode().style());
    if (!labels.containsKey(faces)) {
      labels.clear(); // those of an episode that was put away
    }
    Labels own = labels.computeIfAbsent(faces, f -> new Labels(f.shelf(), f.style()));
    StripLayers layers = StripLayers.of(shown.galley(), shown.findings(), own, drawn);
    return StripScene.of(shown.galley(), layers, Optional.empty());
  }
}
