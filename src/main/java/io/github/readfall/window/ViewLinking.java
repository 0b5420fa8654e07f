package io.github.readfall.window;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.window.canvas.PhoneView;
import io.github.readfall.window.canvas.StripPane;
import io.github.readfall.window.canvas.VisiblePart;
import io.github.readfall.window.model.EpisodeModel;
import io.github.readfall.window.model.EpisodeSnapshot;
import io.github.readfall.window.model.ScriptStripLinks;
import io.github.readfall.window.script.ScriptEditor;
import java.util.Optional;

/**
 * Keeps script, strip and phone at the same place: the caret, the element under the pointer, the
 * selected finding and the scroll positions. A view that follows moves no further than it must.
 */
final class ViewLinking {

  /**
   * The time in which no other view takes the lead, because views scroll smoothly. House default,
   * no source.
   */
  private static final long LEAD_NANOS = 700_000_000;

  private final EpisodeModel model;
  private final ScriptEditor editor;
  private final StripPane strip;
  private final PhoneView phone;
  private Leader leader = Leader.NOBODY;
  private long since;

  /** The view that moves, so that the others follow. */
  private enum Leader {
    NOBODY,
    SCRIPT,
    STRIP,
    PHONE
  }

  ViewLinking(EpisodeModel model, WorkView view) {
    this.model = model;
    this.editor = view.editor();
    this.strip = view.strip();
    this.phone = view.phone();
    editor.onCaretLine(this::goTo);
    strip.onClick(at -> goTo(at));
    strip.onScroll(seen -> lead(Leader.STRIP, () -> phoneInto(seen)));
    phone.onScroll(seen -> lead(Leader.PHONE, () -> strip.reveal(across(seen))));
  }

  private void lead(Leader who, Runnable step) {
    long now = System.nanoTime();
    if (leader == who || leader == Leader.NOBODY || now - since > LEAD_NANOS) {
      leader = who;
      since = now;
      step.run();
    }
  }

  /** Lets the next view that moves take the lead. */
  private void leadAnew(Leader who) {
    leader = who;
    since = System.nanoTime();
  }

  private Optional<ScriptStripLinks> links() {
    return model.shown().map(EpisodeSnapshot::links);
  }

  private void showLine(int line) {
    Optional<Box> place = links().flatMap(links -> links.placeOf(line));
    strip.highlight(place);
    place.ifPresent(this::show);
  }

  private void show(Box place) {
    strip.reveal(place);
    if (!phone.isPlaying()) {
      phoneOver(place.y(), place.bottom());
    }
  }

  private void goTo(int line) {
    leadAnew(Leader.SCRIPT);
    showLine(line);
  }

  /** Goes to a line of the script, from 1, even if the caret is already there. */
  void show(int line) {
    editor.goTo(line, 1);
    goTo(line);
  }

  private void goTo(XY at) {
    links().ifPresent(links -> links.lineAt(at).ifPresent(line -> editor.goTo(line, 1)));
  }

  /**
   * Scrolls the phone until a part of the strip is on its screen; its middle if no other position
   * is asked for.
   */
  private void phoneOver(double fromPx, double toPx) {
    boolean isSeen = fromPx >= phone.topPx() && toPx <= phone.topPx() + phone.screenPx();
    if (!isSeen) {
      phone.scrollTo((fromPx + toPx - phone.screenPx()) / 2);
    }
  }

  /** Scrolls the phone to the part of the strip that is visible. */
  private void phoneInto(VisiblePart seen) {
    if (!phone.isPlaying()) {
      double middle = phone.topPx() + phone.screenPx() / 2;
      double wanted = Math.max(seen.topPx(), Math.min(seen.bottomPx(), middle));
      if (wanted != middle) {
        phone.scrollTo(wanted - phone.screenPx() / 2);
      }
    }
  }

  private Box across(VisiblePart part) {
    return new Box(0, part.topPx(), strip.scene().widthPx(), part.bottomPx() - part.topPx());
  }

  /** Shows a finding in the script and on the strip. */
  void show(Finding finding) {
    links().ifPresent(links -> show(finding, links));
  }

  private void show(Finding finding, ScriptStripLinks links) {
    links.lineOf(finding).ifPresent(line -> editor.goTo(line, finding.where().column().orElse(1)));
    leadAnew(Leader.SCRIPT);
    Optional<Box> place = links.placeOf(finding);
    strip.highlight(place);
    place.ifPresent(this::show);
  }

  /** Marks the elements at the caret after the strip has changed. */
  void refresh() {
    strip.highlight(links().flatMap(links -> links.placeOf(editor.caret().line())));
  }
}
