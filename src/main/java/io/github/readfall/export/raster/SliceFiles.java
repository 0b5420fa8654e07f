package io.github.readfall.export.raster;

import io.github.readfall.art.Resampler;
import io.github.readfall.art.RowSink;
import io.github.readfall.base.files.Batch;
import io.github.readfall.base.files.Cancelled;
import io.github.readfall.base.files.CannotWrite;
import io.github.readfall.base.files.OutputTray;
import io.github.readfall.base.files.Progress;
import io.github.readfall.lettering.style.Delivery;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The finished strip, scaled and cut for a delivery.
 *
 * @param strip shown in the slices
 * @param stem the beginning of their names
 * @param delivery their width, and limits of height and size
 */
public record SliceFiles(StripPicture strip, String stem, Delivery delivery) implements Batch {

  /**
   * The slices of a strip.
   *
   * @param name of one of the style's deliveries; none for the usual one
   */
  public static SliceFiles of(StripPicture strip, Optional<String> name) {
    Delivery delivery =
        name.map(strip.galley().style().deliveries()::get)
            .orElse(strip.galley().style().delivery());
    return new SliceFiles(
        strip, strip.stem() + name.map(n -> "-" + n).orElse("") + "-slice-", delivery);
  }

  @Override
  public List<String> names() {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < plan().ends().size(); i++) {
      names.add(name(i));
    }
    return names;
  }

  private String name(int index) {
    return String.format(Locale.ROOT, "%s%03d.%s", stem, index + 1, delivery.format().ending());
  }

  private SlicePlan plan() {
    return SlicePlan.of(strip, delivery);
  }

  @Override
  public boolean isOutdated(String name) {
    return Pattern.matches(Pattern.quote(stem) + "\\d{3,}\\.(png|jpg)", name);
  }

  @Override
  public List<String> notes() {
    return plan().notes(strip.galley());
  }

  @Override
  public void writeTo(OutputTray tray, Progress work) throws IOException, CannotWrite, Cancelled {
    SlicePlan plan = plan();
    SlicePress press = new SlicePress(this, plan, index -> tray.open(name(index)));
    SliceRows rows = new SliceRows(plan.widthPx(), plan.ends(), press::press);
    strip.pour(scaled(plan, rows), work);
  }

  private RowSink scaled(SlicePlan plan, RowSink to) {
    boolean asItIs = plan.widthPx() == strip.widthPx() && plan.heightPx() == strip.heightPx();
    return asItIs
        ? to
        : new Resampler(strip.widthPx(), strip.heightPx(), plan.widthPx(), plan.heightPx(), to);
  }
}
