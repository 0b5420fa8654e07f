package io.github.readfall.pdf;

/** A face that may not be embedded: its letters are drawn as outlines. */
record OutlinedFace() implements PdfFace {

  @Override
  public void finish() {
    // nothing of it is in the document
  }
}
