package io.github.readfall.script;

/** The signs round a manner and behind a name, western or full-width. */
final class Brackets {

  private Brackets() {}

  static boolean opens(char c) {
    return c == '(' || c == '\uFF08';
  }

  static boolean closes(char c) {
    return c == ')' || c == '\uFF09';
  }

  static boolean isColon(char c) {
    return c == ':' || c == '\uFF1A';
  }
}
