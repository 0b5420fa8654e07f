package io.github.readfall.type.text;

/** A chain of one face, whatever it lacks. */
record OneFace(SizedFace preferred) implements FaceChain {

  @Override
  public SizedFace choose(String cluster, SizedFace inUse) {
    return preferred;
  }
}
