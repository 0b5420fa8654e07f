package io.github.readfall.series;

import io.github.readfall.finding.Finding;
import io.github.readfall.finding.Severity;
import io.github.readfall.finding.Where;
import io.github.readfall.font.FontShelf;
import io.github.readfall.script.ReadScript;
import io.github.readfall.script.Script;
import io.github.readfall.script.ScriptFile;
import io.github.readfall.script.ScriptFileException;
import io.github.readfall.script.ScriptReader;
import io.github.readfall.strip.Anchored;
import io.github.readfall.strip.Anchoring;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.ReadLayout;
import io.github.readfall.style.HouseStyle;
import io.github.readfall.style.ReadStyle;
import io.github.readfall.style.StyleReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An episode read from disk.
 *
 * @param path of its script, as the person named it
 * @param script what it says
 * @param style how it is lettered
 * @param shelf the faces it may be lettered in
 * @param layout what its layout.json says, put onto the script as it is now; empty where there is
 *     none or it cannot be used
 * @param findings what was wrong with its files, the script's first, the layout's last
 */
public record Episode(
    Path path,
    Script script,
    HouseStyle style,
    FontShelf shelf,
    Optional<Layout> layout,
    List<Finding> findings) {

  public Episode {
    findings = List.copyOf(findings);
  }

  /**
   * Reads an episode.
   *
   * @param bundled the faces that come with the program
   * @throws UnusablePath where its script, series.toml or layout.json cannot be read at all
   */
  public static Episode read(EpisodeFiles files, FontShelf bundled) throws UnusablePath {
    ReadStyle style = style(files.seriesFolder());
    ReadScript read = new ScriptReader().read(text(files.script()), style.style().keywords());
    List<Finding> findings = new ArrayList<>(read.findings());
    findings.addAll(style.findings());
    FontShelf shelf = bundled;
    if (files.seriesFolder().isPresent()) {
      FontShelf.Stocked stocked = bundled.with(files.seriesFolder().get().resolve("fonts"));
      findings.addAll(stocked.findings());
      shelf = stocked.shelf();
    }
    Optional<ReadLayout> laid = LayoutFile.of(files).read();
    laid.ifPresent(layout -> findings.addAll(layout.findings()));
    Optional<Anchored> anchored =
        laid.flatMap(ReadLayout::layout).map(layout -> Anchoring.of(layout, read.script()));
    anchored.ifPresent(layout -> findings.addAll(layout.findings()));
    Optional<Layout> layout = anchored.map(Anchored::layout);
    HouseStyle own = style.style();
    int widthPx = layout.map(l -> (int) Math.rint(l.widthPx())).orElse(own.strip().widthPx());
    if (widthPx != own.strip().widthPx() && files.seriesFolder().isPresent()) {
      findings.add(otherWidth(widthPx, own.strip().widthPx()));
    }
    HouseStyle used = widthPx == own.strip().widthPx() ? own : own.onStripOf(Math.max(1, widthPx));
    return new Episode(files.script(), read.script(), used, shelf, layout, findings);
  }

  private static Finding otherWidth(int widthPx, int seriesPx) {
    return Finding.of(
        "layout/width",
        Severity.WARNING,
        Where.everywhere(),
        "The strip in layout.json is " + widthPx + " px wide, the series' " + seriesPx + " px.",
        "The layout's width is used here; make the two agree, in layout.json or in series.toml.");
  }

  /** The same episode laid out in another way. */
  public Episode withLayout(Layout other) {
    return new Episode(path, script, style, shelf, Optional.of(other), findings);
  }

  static ReadStyle style(Optional<Path> seriesFolder) throws UnusablePath {
    if (seriesFolder.isEmpty()) {
      return new ReadStyle(HouseStyle.DEFAULT, List.of());
    }
    Path file = seriesFolder.get().resolve(EpisodeFiles.STYLE);
    if (Files.isDirectory(file)) {
      throw new UnusablePath(file + " is a folder: it should be the file with the house style.");
    }
    String toml = text(file);
    return new StyleReader().read(toml, EpisodeFiles.STYLE);
  }

  private static String text(Path file) throws UnusablePath {
    try {
      return ScriptFile.text(file);
    } catch (ScriptFileException e) {
      throw new UnusablePath(String.valueOf(e.getMessage()));
    }
  }
}
