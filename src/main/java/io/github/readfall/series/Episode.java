package io.github.readfall.series;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.script.Script;
import io.github.readfall.series.ignored.IgnoredFindings;
import io.github.readfall.strip.Layout;
import io.github.readfall.type.font.FontShelf;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An episode read from disk.
 *
 * @param path of its script, as the person named it
 * @param script of the episode
 * @param style of its lettering, in its own language
 * @param series style of its series, without a language
 * @param shelf the faces it may be lettered in
 * @param layout its layout.json, matched to the present script; empty if there is none or it cannot
 *     be used
 * @param ignored its ignored findings
 * @param findings about its files, the script's first, the layout's last
 */
public record Episode(
    Path path,
    Script script,
    HouseStyle style,
    HouseStyle series,
    FontShelf shelf,
    Optional<Layout> layout,
    IgnoredFindings ignored,
    List<Finding> findings) {

  public Episode {
    findings = List.copyOf(findings);
  }

  /**
   * Reads an episode.
   *
   * @param bundled the faces that come with the program
   * @throws UnusablePath if its script, series.toml or layout.json cannot be read at all
   */
  public static Episode read(EpisodeFiles files, FontShelf bundled) throws UnusablePath {
    return Surroundings.read(files, bundled).with(EpisodeFiles.text(files.script()));
  }

  /** The style of its lettering in another language, on the same strip. */
  public HouseStyle styleIn(String tag) {
    return onThisStrip(series.in(tag));
  }

  /** Another house style as it would be for this episode: in its language, on its strip. */
  public HouseStyle lettered(HouseStyle other) {
    return onThisStrip(other.in(script.language()));
  }

  private HouseStyle onThisStrip(HouseStyle own) {
    int widthPx = style.strip().widthPx();
    return own.strip().widthPx() == widthPx ? own : own.onStripOf(widthPx);
  }

  /** The same episode with more findings. */
  public Episode with(List<Finding> more) {
    List<Finding> all = new ArrayList<>(findings);
    all.addAll(more);
    return new Episode(path, script, style, series, shelf, layout, ignored, all);
  }

  /** The same episode with another layout. */
  public Episode withLayout(Layout other) {
    return new Episode(path, script, style, series, shelf, Optional.of(other), ignored, findings);
  }
}
