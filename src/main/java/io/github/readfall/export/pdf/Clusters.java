package io.github.readfall.export.pdf;

import io.github.readfall.type.font.GlyphRow;
import io.github.readfall.type.text.PlacedRun;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Groups the glyphs of a run by the letters they show together. */
final class Clusters {

  /**
   * Glyphs that cannot be separated.
   *
   * @param glyphs from the left, those that are letters
   * @param text that they show
   */
  record Cluster(List<Integer> glyphs, String text) {
    Cluster {
      glyphs = List.copyOf(glyphs);
    }
  }

  private Clusters() {}

  /** The clusters in reading order. */
  static List<Cluster> of(PlacedRun run) {
    GlyphRow row = run.glyphs();
    TreeMap<Integer, List<Integer>> glyphs = new TreeMap<>();
    for (int i = 0; i < row.size(); i++) {
      List<Integer> some = glyphs.computeIfAbsent(row.charIndex(i), at -> new ArrayList<>());
      if (GlyphLine.isLetter(row, i)) {
        some.add(row.glyph(i));
      }
    }
    List<Cluster> clusters = new ArrayList<>();
    for (Map.Entry<Integer, List<Integer>> entry : glyphs.entrySet()) {
      Integer next = glyphs.higherKey(entry.getKey());
      int end = next == null ? run.text().length() : next;
      clusters.add(new Cluster(entry.getValue(), part(run.text(), entry.getKey(), end)));
    }
    return clusters;
  }

  private static String part(String text, int from, int to) {
    int end = Math.min(to, text.length());
    return from < end ? text.substring(from, end) : "";
  }
}
