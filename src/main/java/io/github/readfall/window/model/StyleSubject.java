package io.github.readfall.window.model;

import io.github.readfall.script.Keywords;
import io.github.readfall.script.Letters;
import io.github.readfall.script.Manner;

/** A subject of a house style: a voice, a manner or a rule. */
public sealed interface StyleSubject {

  /** The name, as shown and as written if the file does not have it yet. */
  String name();

  /** The table of the file that it belongs to, e.g. {@code voices}. */
  String table();

  /** Whether a name in the file means this subject. */
  boolean isNamed(String written, Keywords keywords);

  /** The lettering of a voice. */
  record Voice(String name) implements StyleSubject {
    @Override
    public String table() {
      return "voices";
    }

    @Override
    public boolean isNamed(String written, Keywords keywords) {
      return Letters.fold(written).equals(Letters.fold(name));
    }
  }

  /** The changes that a manner makes to the lettering of a voice. */
  record MannerLook(Manner manner) implements StyleSubject {
    @Override
    public String name() {
      return manner.word();
    }

    @Override
    public String table() {
      return "manners";
    }

    @Override
    public boolean isNamed(String written, Keywords keywords) {
      return keywords.manner(written).equals(manner);
    }
  }

  /** The limit of a rule. */
  record Limit(String name) implements StyleSubject {
    @Override
    public String table() {
      return "limits";
    }

    @Override
    public boolean isNamed(String written, Keywords keywords) {
      return written.equals(name);
    }
  }
}
