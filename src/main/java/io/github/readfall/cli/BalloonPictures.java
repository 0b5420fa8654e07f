package io.github.readfall.cli;

import io.github.readfall.base.files.Folders;
import io.github.readfall.base.files.SafeFile;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.draw.BalloonArtist;
import io.github.readfall.draw.Drawing;
import io.github.readfall.draw.render.PictureFormat;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Pictures of the balloons of an episode, one file each, in a folder beside the one sent out. */
final class BalloonPictures {

  private static final Colour PAPER = new Colour(0xffffff);

  private final SetEpisode episode;
  private final Path folder;

  BalloonPictures(SetEpisode episode, Path besideFile) {
    this.episode = episode;
    String name = String.valueOf(besideFile.getFileName());
    int dot = name.lastIndexOf('.');
    String stem = dot > 0 ? name.substring(0, dot) : name;
    this.folder = besideFile.resolveSibling(stem + "-balloons");
  }

  /** The path of a balloon's picture, relative to the file. */
  String link(String cueId) {
    return folder.getFileName() + "/" + cueId + ".png";
  }

  /** Draws them all; the paths of the files. */
  List<String> write() throws UnusablePath {
    Folders.make(folder);
    List<String> files = new ArrayList<>();
    for (SetBalloon balloon : episode.balloons()) {
      Path file = folder.resolve(balloon.cue().id() + ".png");
      int dpi = episode.style().strip().dpi();
      SafeFile.write(file, out -> PictureFormat.PNG.write(drawing(balloon), dpi, out));
      files.add(file.toString());
    }
    return files;
  }

  private Drawing drawing(SetBalloon balloon) {
    double edgePx = balloon.marginPx();
    return new Drawing(
        balloon.cue().id(),
        episode.script().language(),
        (int) Math.ceil(Math.max(1, balloon.box().width() + 2 * edgePx)),
        (int) Math.ceil(Math.max(1, balloon.box().height() + 2 * edgePx)),
        PAPER,
        List.of(BalloonArtist.draw(balloon, new XY(edgePx, edgePx), List.of())));
  }
}
