package io.github.readfall.export.pdf;

import java.io.IOException;

/** How the letters of a face come into a document. */
sealed interface PdfFace permits EmbeddedFace, OutlinedFace {

  /** Completes it, when every glyph that is needed was drawn. */
  void finish() throws IOException;
}
