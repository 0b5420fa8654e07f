package io.github.readfall.art;

import java.nio.file.Path;

/** The reasons for not reading a picture, one sentence each. */
final class UnreadableReason {

  private UnreadableReason() {}

  static UnreadableArt closed(Path file) {
    return new UnreadableArt(
        "The picture " + name(file) + " cannot be opened: check that it is there and may be read.");
  }

  static UnreadableArt neither(Path file) {
    return new UnreadableArt(
        "The file " + name(file) + " is not really a PNG or JPEG: save the page as PNG again.");
  }

  static UnreadableArt broken(Path file) {
    return new UnreadableArt(
        "The picture " + name(file) + " is damaged or ends too early: save the page again.");
  }

  static UnreadableArt foreignColours(Path file) {
    return new UnreadableArt(
        "The picture "
            + name(file)
            + " has colours that are not for screens, such as CMYK: save it as RGB.");
  }

  static UnreadableArt interlaced(Path file) {
    return new UnreadableArt(
        "The picture "
            + name(file)
            + " is interlaced and large, so it cannot be read from the top: save it without"
            + " interlacing.");
  }

  static UnreadableArt turned(Path file) {
    return new UnreadableArt(
        "The picture "
            + name(file)
            + " is stored turned or mirrored and is large, so it cannot be read from the top: open"
            + " it in a drawing program and save it upright.");
  }

  static UnreadableArt changed(Path file) {
    return new UnreadableArt(
        "The picture " + name(file) + " has changed its size: load the art again.");
  }

  /** Refuses a size that is too large to be a page of a strip. */
  static void checkSize(Path file, long widthPx, long heightPx) throws UnreadableArt {
    boolean tooLarge =
        widthPx > ArtRows.WIDEST_PX
            || heightPx > ArtRows.TALLEST_PX
            || widthPx * heightPx > ArtRows.LARGEST_PX;
    if (tooLarge) {
      throw new UnreadableArt(
          "The picture "
              + name(file)
              + " is "
              + widthPx
              + " x "
              + heightPx
              + " px, more than Readfall reads ("
              + ArtRows.WIDEST_PX
              + " px wide, "
              + ArtRows.TALLEST_PX
              + " px tall, "
              + ArtRows.LARGEST_PX / 1_000_000
              + " million px in all): save it smaller or in several pages.");
    }
  }

  static String name(Path file) {
    Path name = file.getFileName();
    return name == null ? file.toString() : name.toString();
  }
}
