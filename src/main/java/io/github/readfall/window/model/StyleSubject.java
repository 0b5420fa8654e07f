package io.github.readfall.window.model;

import io.github.readfall.script.Keywords;
import io.github.readfall.script.Letters;
import io.github.readfall.script.Manner;

/** What a house style says something of. */
public sealed interface StyleSubject {

  /** Its name, as it is shown and as it is written where the file has none yet. */
  String name();

  /** The table that it lies in, e.g. {@code voices}. */
  String table();

  /** Whether it is what a name in the file means. */
  boolean isNamed(String written, Keywords keywords);

  /** How somebody is lettered. */
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

  /** What a manner changes in the voice it is spoken in. */
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
