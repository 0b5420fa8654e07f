package io.github.readfall.window.model;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.job.LayoutGuard;
import io.github.readfall.job.StripProof;
import io.github.readfall.series.LayoutFile;
import io.github.readfall.series.Surroundings;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.edits.StripEdit;
import io.github.readfall.strip.json.ReadLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * The layout of the open episode, as it is changed by hand: every change can be undone, and is on
 * the strip at once. Used on the event thread.
 *
 * <p>The first change stores everything computed so far; before it the layout is the file's, to the
 * letter.
 */
public final class LayoutModel {

  private final EpisodeModel model;
  private final UndoSteps steps;
  private final Consumer<String> refused;
  private final List<Consumer<String>> listeners = new ArrayList<>();
  private LayoutText now = LayoutText.NONE;
  private boolean isPreviewing;

  /**
   * A model without a layout.
   *
   * @param steps the history that changes are added to
   * @param refused is given a sentence if something cannot be changed
   */
  public LayoutModel(EpisodeModel model, UndoSteps steps, Consumer<String> refused) {
    this.model = model;
    this.steps = steps;
    this.refused = refused;
  }

  /** Adds a listener for the text of the layout; called after every change but {@link #open}. */
  public void onChange(Consumer<String> listener) {
    listeners.add(listener);
  }

  /** Takes a layout as it was read; the episode model has it already. */
  public void open(String json, Optional<ReadLayout> read) {
    now = new LayoutText(json, read);
    isPreviewing = false;
  }

  /** The layout as it is to be saved in its file; empty if there is to be none. */
  public String text() {
    return now.json();
  }

  /** The layout as read from that text. */
  public Optional<ReadLayout> readLayout() {
    return now.read();
  }

  /** Changes the layout as soon as the strip is settled. */
  public void edit(String name, String kind, StripEdit edit) {
    edit(name, kind, layout -> edit);
  }

  /** Makes a change that depends on the layout, as soon as the strip is settled. */
  public void edit(String name, String kind, Function<Layout, StripEdit> edit) {
    model.whenSettled(
        () -> editableLayout().ifPresent(from -> edit(name, kind, edit.apply(from), from)));
  }

  /** Makes a change that may have been previewed. */
  public void edit(String name, String kind, StripEdit edit, Layout from) {
    Layout changed = edit.in(from);
    if (changed.equals(from)) {
      endPreview();
    } else {
      replace(name, kind, LayoutText.of(changed));
    }
  }

  /** Shows the result of a change, until the next preview or {@link #endPreview}. */
  public void preview(StripEdit edit, Layout from) {
    isPreviewing = true;
    model.setLayout(Optional.of(new ReadLayout(Optional.of(edit.in(from)), List.of())));
  }

  /** Shows the layout without a preview again. */
  public void endPreview() {
    if (isPreviewing) {
      isPreviewing = false;
      model.setLayout(now.read());
    }
  }

  /**
   * The layout that a change by hand begins with: the whole strip as computed. It is empty, with a
   * sentence to {@code refused}, if something in the file could not be read and would be lost.
   */
  public Optional<Layout> editableLayout() {
    Optional<StripProof> proof = model.proof();
    try {
      if (proof.isPresent()) {
        refuseLosses(proof.get());
      }
      return proof.map(StripProof::layout);
    } catch (UnusablePath e) {
      refused.accept(String.valueOf(e.getMessage()));
      return Optional.empty();
    }
  }

  private void refuseLosses(StripProof proof) throws UnusablePath {
    Optional<LayoutFile> file = model.surroundings().map(Surroundings::files).map(LayoutFile::of);
    if (file.isPresent()) {
      LayoutGuard.refuse(proof.findings(), file.get());
    }
  }

  /** Replaces the whole layout, as one step. */
  public void replace(String name, String kind, LayoutText next) {
    LayoutText before = now;
    if (!next.json().equals(before.json())) {
      show(next);
      steps.add(new UndoSteps.Step(name, kind, () -> show(before), () -> show(next)));
    } else {
      endPreview();
    }
  }

  private void show(LayoutText next) {
    now = next;
    isPreviewing = false;
    model.setLayout(next.read());
    listeners.forEach(listener -> listener.accept(next.json()));
  }
}
