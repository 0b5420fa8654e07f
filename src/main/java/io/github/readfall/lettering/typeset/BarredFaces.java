package io.github.readfall.lettering.typeset;

import io.github.readfall.type.font.Ornament;
import io.github.readfall.type.text.FaceChain;
import io.github.readfall.type.text.SizedFace;

/**
 * A chain of faces whose capital I has bars.
 *
 * @param chain the faces
 */
record BarredFaces(FaceChain chain) implements FaceChain {

  @Override
  public SizedFace preferred() {
    return barred(chain.preferred());
  }

  @Override
  public SizedFace choose(String cluster, SizedFace inUse) {
    return barred(chain.choose(cluster, inUse));
  }

  private static SizedFace barred(SizedFace type) {
    return type.face().file().barredCapitalI() ? type : type.with(Ornament.BARRED_I);
  }
}
