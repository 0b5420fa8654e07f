package io.github.readfall.lettering.style;

import io.github.readfall.lettering.toml.ValueKind;

/**
 * One key of series.toml.
 *
 * @param name left of the equals sign
 * @param kind of the value right of it
 * @param example a possible value as written in TOML: the built-in default if there is one
 * @param meaning one sentence for the person, with the unit
 */
record Key<T>(String name, ValueKind<T> kind, String example, String meaning) {}
