package io.github.readfall.type.text;

/** The faces of one stretch of text: a preferred one, and others for letters it lacks. */
public interface FaceChain {

  /** The face the style asks for. */
  SizedFace preferred();

  /**
   * The face for one grapheme cluster: the one in use if it has every letter, else the first that
   * has; if none has, the preferred one, which shows the gap.
   *
   * @param cluster its text
   * @param inUse the face of the cluster before
   */
  SizedFace choose(String cluster, SizedFace inUse);
}
