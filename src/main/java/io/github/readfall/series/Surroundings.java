package io.github.readfall.series;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.style.ReadStyle;
import io.github.readfall.lettering.style.StyleReader;
import io.github.readfall.script.read.ReadScript;
import io.github.readfall.script.read.ScriptReader;
import io.github.readfall.series.ignored.IgnoredFindings;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.anchor.Anchored;
import io.github.readfall.strip.anchor.Anchoring;
import io.github.readfall.strip.json.ReadLayout;
import io.github.readfall.type.font.FontShelf;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Everything an episode is made from besides the words of its script: read once, valid for any
 * number of versions of the script.
 *
 * @param files of the episode
 * @param style the house style, with its findings
 * @param faces that it may be lettered in, with their findings
 * @param laid layout.json, if there is one
 * @param ignored its ignored findings
 */
public record Surroundings(
    EpisodeFiles files,
    ReadStyle style,
    FontShelf.Stocked faces,
    Optional<ReadLayout> laid,
    IgnoredFindings ignored) {

  /**
   * Reads the surroundings of a script.
   *
   * @param bundled the faces that come with the program
   * @throws UnusablePath if series.toml or layout.json cannot be read at all
   */
  public static Surroundings read(EpisodeFiles files, FontShelf bundled) throws UnusablePath {
    ReadStyle style = style(files.seriesFolder());
    FontShelf.Stocked faces =
        files
            .seriesFolder()
            .map(folder -> bundled.with(folder.resolve("fonts")))
            .orElseGet(() -> new FontShelf.Stocked(bundled, List.of()));
    return new Surroundings(
        files, style, faces, LayoutFile.of(files).read(), IgnoredFile.of(files).read());
  }

  static ReadStyle style(Optional<Path> seriesFolder) throws UnusablePath {
    if (seriesFolder.isEmpty()) {
      return new ReadStyle(HouseStyle.DEFAULT, List.of());
    }
    Path file = seriesFolder.get().resolve(EpisodeFiles.STYLE);
    if (Files.isDirectory(file)) {
      throw new UnusablePath(file + " is a folder: it should be the file with the house style.");
    }
    return new StyleReader().read(EpisodeFiles.text(file), EpisodeFiles.STYLE);
  }

  /** The same with another layout than the one on disk. */
  public Surroundings withLaid(Optional<ReadLayout> other) {
    return new Surroundings(files, style, faces, other, ignored);
  }

  /**
   * The episode of a script with these words.
   *
   * @param text the script's
   */
  public Episode with(String text) {
    ReadScript read = new ScriptReader().read(text, style.style().keywords());
    List<Finding> findings = new ArrayList<>(read.findings());
    findings.addAll(style.findings());
    findings.addAll(faces.findings());
    laid.ifPresent(layout -> findings.addAll(layout.findings()));
    Optional<Anchored> anchored =
        laid.flatMap(ReadLayout::layout).map(layout -> Anchoring.of(layout, read.script()));
    anchored.ifPresent(layout -> findings.addAll(layout.findings()));
    findings.addAll(ignored.findings());
    Optional<Layout> layout = anchored.map(Anchored::layout);
    HouseStyle own = style.style().in(read.script().language());
    int widthPx = stripWidthPx();
    boolean other = widthPx != own.strip().widthPx();
    if (other && files.seriesFolder().isPresent()) {
      findings.add(otherWidth(widthPx, own.strip().widthPx()));
    }
    HouseStyle used = other ? own.onStripOf(Math.max(1, widthPx)) : own;
    return new Episode(
        files.script(),
        read.script(),
        used,
        style.style(),
        faces.shelf(),
        layout,
        ignored,
        findings);
  }

  /** The width of the strip, in px: the layout's if there is one, else the series'. */
  public int stripWidthPx() {
    return laid.flatMap(ReadLayout::layout)
        .map(layout -> (int) Math.rint(layout.widthPx()))
        .orElse(style.style().strip().widthPx());
  }

  private static Finding otherWidth(int widthPx, int seriesPx) {
    return Finding.of(
        "layout/width",
        Severity.WARNING,
        Where.everywhere(),
        Phrase.of("The strip")
            .either(" in layout.json", "")
            .then(" is " + widthPx + " px wide, the series' " + seriesPx + " px."),
        Phrase.of("The layout's width is used here; make the two agree")
            .either(", in layout.json or in series.toml", "")
            .then("."));
  }
}
