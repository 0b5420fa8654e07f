package io.github.readfall.cli;

/** A request that cannot be carried out. The message is one plain sentence for people. */
final class CannotProceed extends Exception {

  private static final long serialVersionUID = 1;

  CannotProceed(String sentence) {
    super(sentence);
  }
}
