package io.github.readfall.window.help;

import java.util.List;

/** The keys that are handled by parts of the window and are therefore in no menu. */
final class ViewKeys {

  private static final String SCRIPT = "script.title";
  private static final String FIND = "keys.find";
  private static final String STRIP = "strip.title";
  private static final String PHONE = "phone.title";
  private static final String TRANSLATION = "keys.translation";
  private static final String LISTS = "keys.lists";
  private static final String WINDOW = "menu.window";

  /** All of these keys, part by part. */
  static final List<KeyRow> ALL =
      List.of(
          KeyRow.of(SCRIPT, "keys.script.complete", "ctrl SPACE"),
          KeyRow.of(SCRIPT, "keys.script.take", "ENTER", "TAB"),
          KeyRow.of(SCRIPT, "keys.leave", "ctrl TAB"),
          KeyRow.of(FIND, "keys.find.next", "ENTER", "shift ENTER"),
          KeyRow.of(FIND, "keys.find.close", "ESCAPE"),
          KeyRow.of(STRIP, "keys.strip.move", "UP", "DOWN", "LEFT", "RIGHT"),
          KeyRow.of(STRIP, "keys.strip.size", "alt UP", "alt DOWN", "alt LEFT", "alt RIGHT"),
          KeyRow.of(STRIP, "keys.strip.aim", "T"),
          KeyRow.of(STRIP, "keys.strip.pin", "P"),
          KeyRow.of(STRIP, "keys.strip.gutter", "G", "shift G"),
          KeyRow.of(STRIP, "keys.strip.delete", "DELETE"),
          KeyRow.of(STRIP, "keys.strip.cancel", "ESCAPE"),
          KeyRow.of(STRIP, "keys.strip.draw", "ENTER"),
          KeyRow.of(STRIP, "keys.strip.menu", "CONTEXT_MENU", "shift F10"),
          KeyRow.of(STRIP, "keys.page", "PAGE_UP", "PAGE_DOWN", "HOME", "END"),
          KeyRow.of(STRIP, "keys.strip.zoom", "PLUS", "MINUS"),
          KeyRow.of(PHONE, "keys.phone.scroll", "UP", "DOWN"),
          KeyRow.of(PHONE, "keys.page", "PAGE_UP", "PAGE_DOWN", "HOME", "END"),
          KeyRow.of(PHONE, "keys.phone.move", "LEFT", "RIGHT", "ctrl UP", "ctrl DOWN"),
          KeyRow.of(TRANSLATION, "keys.translation.step", "PAGE_UP", "PAGE_DOWN"),
          KeyRow.of(TRANSLATION, "keys.translation.break", "ENTER"),
          KeyRow.of(LISTS, "keys.lists.choose", "ENTER"),
          KeyRow.of(WINDOW, "keys.window.split", "ctrl F8"),
          KeyRow.of(WINDOW, "keys.window.next", "TAB", "shift TAB"),
          KeyRow.of(WINDOW, "keys.window.close", "ESCAPE"));

  private ViewKeys() {}
}
