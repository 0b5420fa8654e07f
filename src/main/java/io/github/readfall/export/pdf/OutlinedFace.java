package io.github.readfall.export.pdf;

/** A face that may not be embedded: its letters are drawn as outlines. */
record OutlinedFace() implements PdfFace {

  @Override
  public void finish() {
    // nothing of it is in the document
  }
}
