package io.github.readfall.rules;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Measurement;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.style.ReadStyle;
import io.github.readfall.lettering.style.StyleReader;
import io.github.readfall.lettering.typeset.BalloonRequest;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.script.read.ReadScript;
import io.github.readfall.script.read.ScriptReader;
import io.github.readfall.strip.Cuts;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.galley.Compositor;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.json.LayoutReader;
import io.github.readfall.strip.json.ReadLayout;
import io.github.readfall.type.font.FaceException;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.font.OpenFaces;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A tiny episode on disk, and what a rule has to find in it. {@code fonts.txt} makes faces of the
 * series' own out of bundled ones: {@code File.ttf = fonts-open/…, fsType 2}.
 */
record Fixture(Galley galley, List<String> expected) {

  /** The lettering that the boxes of layouts were drawn for, whatever the built-in one is. */
  static final String LETTERING = "[lettering]\nreading-size = 20\nmargin = 0.4\nsquareness = 2\n";

  private static final int FS_TYPE = 8; // where the field is in OS/2 (OpenType specification)

  static Fixture read(Path folder, Path scratch) throws IOException, FaceException {
    return read(folder, scratch, "");
  }

  /** The same episode with more said in its series.toml. */
  static Fixture read(Path folder, Path scratch, String moreToml)
      throws IOException, FaceException {
    Path toml = folder.resolve("series.toml");
    String said = Files.exists(toml) ? Files.readString(toml) : "";
    FontShelf shelf = OpenFaces.shelf();
    if (Files.exists(folder.resolve("fonts.txt"))) {
      FontShelf.Stocked stocked = shelf.with(fonts(folder, scratch));
      mustBeFaultless(stocked.findings());
      shelf = stocked.shelf();
    }
    String script = Files.readString(folder.resolve("script.txt"));
    return new Fixture(
        galley(script, said + "\n" + moreToml, shelf, folder.resolve("layout.json")),
        Files.readAllLines(folder.resolve("expect.txt")).stream()
            .filter(line -> !line.startsWith("#"))
            .toList());
  }

  /** The strip of a fixture with a layout; what has no place yet, of one without. */
  private static Galley galley(String script, String toml, FontShelf shelf, Path json)
      throws IOException {
    if (!Files.exists(json)) {
      return Galley.unplaced(set(script, toml, shelf, Map.of()));
    }
    Layout layout = layout(Files.readString(json));
    String own = toml.contains("[lettering]") ? toml : LETTERING + toml;
    return galley(set(script, own, shelf, Compositor.wanted(layout)), layout);
  }

  private static Layout layout(String json) {
    ReadLayout read = new LayoutReader().read(json);
    mustBeFaultless(read.findings());
    return read.layout().orElseThrow();
  }

  /** The strip of an episode whose layout gives every balloon a box; only its middle counts. */
  static Galley galley(SetEpisode set, String layoutJson) {
    return galley(set, layout(layoutJson));
  }

  private static Galley galley(SetEpisode set, Layout layout) {
    Cuts cuts = new Cuts(layout.cuts().orElse(List.of()), layout.cuts().isPresent(), List.of());
    return Compositor.compose(set, layout, cuts);
  }

  static SetEpisode set(String script, String toml) throws FaceException {
    return set(script, toml, OpenFaces.shelf(), Map.of());
  }

  private static SetEpisode set(
      String script, String toml, FontShelf shelf, Map<String, BalloonRequest> wanted) {
    ReadStyle style = new StyleReader().read(toml, "series.toml");
    mustBeFaultless(style.findings());
    ReadScript read = new ScriptReader().read(script, style.style().keywords());
    HouseStyle own = style.style().in(read.script().language());
    return new Typesetter(shelf, own).set(read.script(), wanted);
  }

  private static void mustBeFaultless(List<Finding> findings) {
    if (!findings.isEmpty()) {
      throw new AssertionError(findings);
    }
  }

  private static Path fonts(Path folder, Path scratch) throws IOException {
    Path own = Files.createTempDirectory(scratch, "fonts");
    for (String line : Files.readAllLines(folder.resolve("fonts.txt"))) {
      String[] parts = line.split(" = |, fsType ", -1);
      byte[] bytes = Files.readAllBytes(Path.of(parts[1]));
      ByteBuffer font = ByteBuffer.wrap(bytes);
      font.putShort(startOf("OS/2", font) + FS_TYPE, Short.parseShort(parts[2]));
      Files.write(own.resolve(parts[0]), bytes);
    }
    return own;
  }

  private static int startOf(String table, ByteBuffer font) {
    for (int entry = 12; ; entry += 16) {
      byte[] tag = new byte[4];
      font.get(entry, tag);
      if (new String(tag, StandardCharsets.ISO_8859_1).equals(table)) {
        return font.getInt(entry + 8);
      }
    }
  }

  /** What {@code expect.txt} must name, word for word. */
  List<String> expectedFindings() {
    return expected.stream().filter(line -> !line.startsWith("  ")).toList();
  }

  /** What the sentences of the finding at an index must contain. */
  List<String> expectedWords(int index) {
    int at = expected.indexOf(expectedFindings().get(index));
    return expected.stream()
        .skip(at + 1L)
        .takeWhile(line -> line.startsWith("  "))
        .map(String::strip)
        .toList();
  }

  /** For example {@code p1-1: legible/size, 12.4 arcmin, limit 16}. */
  static String print(Finding finding) {
    return String.join(" ", finding.where().balloons())
        + ": "
        + finding.rule()
        + finding.measurement().map(Fixture::print).orElse("");
  }

  private static String print(Measurement m) {
    return ", " + number(m.measured()) + " " + m.unit() + ", limit " + number(m.limit());
  }

  private static String number(double value) {
    return BigDecimal.valueOf(value)
        .setScale(2, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  static Rule rule(String id) {
    return RuleBook.rule(id).orElseThrow();
  }

  static List<Path> folders(Path parent) {
    try (Stream<Path> entries = Files.list(parent)) {
      return entries.sorted().toList();
    } catch (IOException e) {
      throw new AssertionError("no fixtures in " + parent, e);
    }
  }
}
