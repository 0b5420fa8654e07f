package io.github.readfall.cli;

/** The kinds of file that translations travel in. */
enum TranslationFormat {
  xliff,
  csv
}
