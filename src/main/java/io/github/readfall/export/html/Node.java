package io.github.readfall.export.html;

/** A part of a page. */
public sealed interface Node permits Element, Text, StyleSheet {}
