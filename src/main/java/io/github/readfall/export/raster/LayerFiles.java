package io.github.readfall.export.raster;

import io.github.readfall.base.files.Batch;
import io.github.readfall.base.files.Cancelled;
import io.github.readfall.base.files.CannotWrite;
import io.github.readfall.base.files.OutputTray;
import io.github.readfall.base.files.Progress;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.draw.Drawing;
import io.github.readfall.draw.LayeredChain;
import io.github.readfall.draw.Mark;
import io.github.readfall.draw.render.PngStream;
import io.github.readfall.draw.render.SvgWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * Lettering to lay over art: for each canvas page its layers as transparent PNGs, for the strip one
 * SVG with the same layers as groups and, if there is art, each page flattened.
 *
 * @param strip of the lettering
 * @param letters form of letters in the SVG
 */
public record LayerFiles(StripPicture strip, SvgWriter.Letters letters) implements Batch {

  private static final int BAND_ROWS = 256;

  /** Time to paint the layers of a row, over that to compose it. */
  private static final int LAYERS_SHARE = 2;

  @Override
  public List<String> names() {
    List<String> names = new ArrayList<>();
    for (int page = 0; page < pageEnds().size(); page++) {
      for (LetteringLayer layer : LetteringLayer.values()) {
        names.add(name(page, "-" + layer.word()));
      }
    }
    for (int page = 0; strip.hasArt() && page < pageEnds().size(); page++) {
      names.add(name(page, ""));
    }
    names.add(strip.stem() + "-" + LetteringLayer.LETTERING.word() + ".svg");
    return names;
  }

  private String name(int page, String layer) {
    return String.format(Locale.ROOT, "%s-page-%02d%s.png", strip.stem(), page + 1, layer);
  }

  private List<Integer> pageEnds() {
    return PageEnds.of(strip);
  }

  @Override
  public void writeTo(OutputTray tray, Progress work) throws IOException, CannotWrite, Cancelled {
    layers(tray, (done, of) -> work.at(LAYERS_SHARE * done, (LAYERS_SHARE + 1) * of));
    if (strip.hasArt()) {
      flattened(tray, (done, of) -> work.at(LAYERS_SHARE * of + done, (LAYERS_SHARE + 1) * of));
    }
    List<String> names = names();
    try (OutputStream out = tray.open(names.get(names.size() - 1))) {
      SvgWriter.write(drawing(), SvgWriter.Ground.NONE, letters, out);
    }
  }

  private void layers(OutputTray tray, Progress work) throws IOException, Cancelled {
    LayerPainter painter =
        new LayerPainter(strip.galley(), strip.widthPx(), strip.heightPx(), BAND_ROWS);
    int top = 0;
    for (int page = 0; page < pageEnds().size(); page++) {
      int end = pageEnds().get(page);
      try (LayerStreams streams = open(tray, page, end - top)) {
        for (int row = top; row < end; row += BAND_ROWS) {
          work.at(row, strip.heightPx());
          int rows = Math.min(BAND_ROWS, end - row);
          painter.paint(row, rows);
          streams.rows(painter, rows);
        }
        streams.end();
      }
      top = end;
    }
  }

  private LayerStreams open(OutputTray tray, int page, int rows) throws IOException {
    LayerStreams streams = new LayerStreams(strip.widthPx(), new EnumMap<>(LetteringLayer.class));
    for (LetteringLayer layer : LetteringLayer.values()) {
      OutputStream out = tray.open(name(page, "-" + layer.word()));
      streams.add(
          layer, new PngStream(out, strip.widthPx(), rows, PngStream.Samples.RGBA, strip.dpi()));
    }
    return streams;
  }

  private void flattened(OutputTray tray, Progress work)
      throws IOException, CannotWrite, Cancelled {
    Pieces pages =
        new Pieces(
            pageEnds(),
            (page, top, rows) ->
                new PngStream(
                    tray.open(name(page, "")),
                    strip.widthPx(),
                    rows,
                    PngStream.Samples.RGB,
                    strip.dpi()));
    try (pages) {
      strip.pour(pages, work);
    }
  }

  private Drawing drawing() {
    List<LayeredChain> chains = LayeredChain.of(strip.galley());
    List<Mark> letters = chains.stream().flatMap(c -> c.letters().stream()).toList();
    List<Mark> groups =
        List.of(
            group(
                LetteringLayer.BALLOONS,
                each(LetteringLayer.BALLOONS, chains, LayeredChain::balloons)),
            group(LetteringLayer.TAILS, each(LetteringLayer.TAILS, chains, LayeredChain::tails)),
            group(LetteringLayer.TEXT, letters));
    return new Drawing(
        strip.title(), strip.language(), strip.widthPx(), strip.heightPx(), Colour.WHITE, groups);
  }

  private static Mark group(LetteringLayer layer, List<Mark> marks) {
    return new Mark.Group(layer.word(), layer.title(), marks);
  }

  /** A group for each chain that has marks in a layer. */
  private static List<Mark> each(
      LetteringLayer layer, List<LayeredChain> chains, Function<LayeredChain, List<Mark>> marks) {
    return chains.stream()
        .filter(chain -> !marks.apply(chain).isEmpty())
        .map(
            chain -> (Mark) new Mark.Group(chain.id() + "-" + layer.word(), "", marks.apply(chain)))
        .toList();
  }
}
