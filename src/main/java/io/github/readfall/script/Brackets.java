package io.github.readfall.script;

/** The signs round a manner and after a name, western or full-width. */
public final class Brackets {

  private Brackets() {}

  public static boolean opens(char c) {
    return c == '(' || c == '\uFF08';
  }

  public static boolean closes(char c) {
    return c == ')' || c == '\uFF09';
  }

  public static boolean isColon(char c) {
    return c == ':' || c == '\uFF1A';
  }
}
