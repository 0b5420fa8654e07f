package io.github.readfall.art.panels;

import io.github.readfall.art.RowTaker;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Passes the rows of a strip to the probes that need them. */
final class BorderSweep implements RowTaker {

  private final List<BorderProbe> waiting; // the first to begin is last
  private final List<BorderProbe> looking = new ArrayList<>();

  BorderSweep(List<BorderProbe> probes) {
    this.waiting = new ArrayList<>(probes);
    waiting.sort(Comparator.comparingInt(BorderProbe::firstRow).reversed());
  }

  @Override
  public void row(int y, byte[] rgb) {
    while (!waiting.isEmpty() && waiting.get(waiting.size() - 1).firstRow() <= y) {
      looking.add(waiting.remove(waiting.size() - 1));
    }
    looking.removeIf(probe -> probe.endRow() <= y);
    looking.forEach(probe -> probe.row(y, rgb));
  }
}
