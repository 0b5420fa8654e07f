package io.github.readfall.lettering.typeset;

import io.github.readfall.type.text.FaceChain;
import io.github.readfall.type.text.SizedFace;

/**
 * A chain of faces at another size.
 *
 * @param chain the faces
 * @param scale the size wanted over theirs; positive
 */
record ScaledFaces(FaceChain chain, double scale) implements FaceChain {

  @Override
  public SizedFace preferred() {
    return scaled(chain.preferred());
  }

  @Override
  public SizedFace choose(String cluster, SizedFace inUse) {
    SizedFace real = new SizedFace(inUse.face(), inUse.fontPx() / scale, inUse.slantDeg());
    return scaled(chain.choose(cluster, real));
  }

  private SizedFace scaled(SizedFace face) {
    return new SizedFace(face.face(), face.fontPx() * scale, face.slantDeg());
  }
}
