package io.github.readfall.art.panels;

import io.github.readfall.art.UnreadableArt;
import io.github.readfall.base.geom.Box;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;

/** Counts hits and misses on many strips of every kind; its figures are in docs/panels.md. */
final class FinderFigures {

  private FinderFigures() {}

  /**
   * Prints a row for each kind.
   *
   * @param args first seed, how many strips, the folder for pictures of strips with a miss if any,
   *     and the kinds if not all
   */
  public static void main(String[] args) throws UnreadableArt, IOException {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    long first = Long.parseLong(args[0]);
    int strips = Integer.parseInt(args[1]);
    for (DrawnKind kind : DrawnKind.values()) {
      if (args.length > 3 && !List.of(args).subList(3, args.length).contains(kind.name())) {
        continue;
      }
      Hits all = Hits.NONE;
      for (long seed = first; seed < first + strips; seed++) {
        DrawnStrip strip = StripDrawer.draw(kind, 800, seed);
        List<FoundPanel> found = PanelFinder.find(strip.rows()).panels();
        Hits hits = Hits.of(strip.panels(), found.stream().map(FoundPanel::box).toList());
        all = all.and(hits);
        if (hits.rate() < 1 && args.length > 2 && !args[2].isEmpty()) {
          show(out, kind + "-" + seed, strip, found, Path.of(args[2]));
        }
      }
      out.printf(
          Locale.ROOT,
          "| %s | %d | %d | %d | %d | %.1f %% |%n",
          kind,
          strips,
          all.panels(),
          all.found(),
          all.extra(),
          100 * all.rate());
    }
  }

  private static void show(
      PrintStream out, String name, DrawnStrip strip, List<FoundPanel> found, Path folder)
      throws IOException {
    out.println(name);
    for (Box panel : strip.panels()) {
      if (found.stream().noneMatch(box -> Hits.isNear(panel, box.box()))) {
        out.println("  missed " + panel);
      }
    }
    for (FoundPanel box : found) {
      if (strip.panels().stream().noneMatch(panel -> Hits.isNear(panel, box.box()))) {
        out.println("  extra " + box);
      }
    }
    Files.createDirectories(folder);
    ImageIO.write(strip.image(), "png", folder.resolve(name + ".png").toFile());
  }
}
