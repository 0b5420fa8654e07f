package io.github.readfall.window.model;

/** Where what was done is written down, so that it can be taken back and done again. */
@FunctionalInterface
public interface UndoSteps {

  /**
   * Something that was done.
   *
   * @param name in words, for a person
   * @param kind steps of one kind right after each other are taken back together; empty for a step
   *     that stands by itself
   * @param back takes it back
   * @param again does it again
   */
  record Step(String name, String kind, Runnable back, Runnable again) {}

  /** Writes down something that has just been done. */
  void add(Step step);
}
