package io.github.readfall.cli;

import io.github.readfall.art.ArtFiles;
import io.github.readfall.art.DetailMap;
import io.github.readfall.art.StripArt;
import io.github.readfall.art.StripRows;
import io.github.readfall.art.UnreadableArt;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.LayoutFile;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.json.ReadLayout;
import java.io.PrintWriter;
import java.util.Optional;

/** Finds the calm parts of an episode's art, if its layout is one of that art. */
final class CalmArt {

  /**
   * Difference up to which heights are of one strip: somebody rounded. House default, no source.
   */
  private static final double SAME = 0.01;

  private CalmArt() {}

  /**
   * The detail of the art; none if there is no art, or if the layout is of another strip, since
   * then places do not correspond.
   *
   * @param err receives what cannot be read
   * @throws UnusablePath if the layout cannot be read at all
   */
  static DetailMap of(EpisodeFiles files, PrintWriter err) throws UnusablePath {
    Optional<Layout> layout = LayoutFile.of(files).read().flatMap(ReadLayout::layout);
    ArtFiles pages = ArtFiles.of(files.script());
    if (layout.isEmpty() || !layout.get().openings().isEmpty() || pages.pages().isEmpty()) {
      return DetailMap.NONE;
    }
    int widthPx = (int) Math.max(1, Math.rint(layout.get().widthPx()));
    StripArt art = StripArt.of(pages, widthPx);
    double off = Math.abs(art.heightPx() - layout.get().heightPx());
    if (off > SAME * layout.get().heightPx()) {
      return DetailMap.NONE;
    }
    try {
      return DetailMap.of(new CountedRows(StripRows.of(art), err));
    } catch (UnreadableArt e) {
      err.println("readfall: " + e.getMessage() + " Balloons are placed as if there were no art.");
      return DetailMap.NONE;
    }
  }
}
