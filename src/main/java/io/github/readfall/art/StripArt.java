package io.github.readfall.art;

import io.github.readfall.base.geom.Box;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The art of a strip: its pages one below the other, each as wide as the strip.
 *
 * @param widthPx of the strip
 * @param pages from the top
 * @param problems one sentence for each file that cannot be shown
 */
public record StripArt(int widthPx, List<ArtPage> pages, List<String> problems) {

  public StripArt {
    pages = List.copyOf(pages);
    problems = List.copyOf(problems);
  }

  /** A strip without art. */
  public static StripArt none(int widthPx) {
    return new StripArt(widthPx, List.of(), List.of());
  }

  /**
   * Reads the head of each page; pages that cannot be read are left out and named.
   *
   * @param widthPx of the strip; positive
   */
  public static StripArt of(ArtFiles files, int widthPx) {
    List<ArtPage> pages = new ArrayList<>();
    List<String> problems = new ArrayList<>(files.problems());
    double top = 0;
    for (Path file : files.pages()) {
      try (ArtRows rows = ArtRows.open(file)) {
        double height = Math.max(1, Math.rint((double) rows.heightPx() * widthPx / rows.widthPx()));
        Box box = new Box(0, top, widthPx, height);
        pages.add(new ArtPage(file, rows.widthPx(), rows.heightPx(), box));
        top = box.bottom();
      } catch (UnreadableArt e) {
        problems.add(e.getMessage());
      }
    }
    return new StripArt(widthPx, pages, problems);
  }

  /** The end of the last page, in strip pixels; 0 if there is none. */
  public int heightPx() {
    return pages.isEmpty() ? 0 : (int) pages.get(pages.size() - 1).box().bottom();
  }
}
