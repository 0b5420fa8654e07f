package io.github.readfall.art.panels;

import java.util.List;

/** The probes of a frame's four sides. */
record FrameProbe(
    BorderProbe top, BorderProbe bottom, BorderProbe left, BorderProbe right, boolean parted) {

  List<BorderProbe> probes() {
    return List.of(top, bottom, left, right);
  }

  /** The frame as exactly as the strip's rows show. */
  PanelSides refined() {
    return new PanelSides(top.refined(), bottom.refined(), left.refined(), right.refined(), parted);
  }
}
