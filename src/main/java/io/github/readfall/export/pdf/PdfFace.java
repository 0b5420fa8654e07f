package io.github.readfall.export.pdf;

import java.io.IOException;

/** A face in a document. */
sealed interface PdfFace permits EmbeddedFace, OutlinedFace {

  /** Completes it, when every glyph that is needed was drawn. */
  void finish() throws IOException;
}
