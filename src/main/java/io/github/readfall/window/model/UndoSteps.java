package io.github.readfall.window.model;

/** A history of changes, to be undone and redone. */
@FunctionalInterface
public interface UndoSteps {

  /**
   * A change that was made.
   *
   * @param name for the user
   * @param kind consecutive steps of one kind are undone together; empty for a step of its own
   * @param back undoes it
   * @param again redoes it
   */
  record Step(String name, String kind, Runnable back, Runnable again) {}

  /** Adds a change that has just been made. */
  void add(Step step);
}
