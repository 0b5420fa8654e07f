package io.github.readfall.languages.xliff;

/** Names that XLIFF 2.1 (OASIS Standard, 13 February 2018) and its modules fix. */
final class Names {

  /** The core, of 2.0 and 2.1 alike. */
  static final String CORE = "urn:oasis:names:tc:xliff:document:2.0";

  /** The size and length restriction module. */
  static final String SLR = "urn:oasis:names:tc:xliff:sizerestriction:2.0";

  /** Namespace of our data about a balloon. */
  static final String BALLOON = "urn:readfall:balloon";

  static final String BALLOON_PROFILE = "readfall:balloon";
  static final String CODEPOINTS = "xliff:codepoints";
  static final String UTF8 = "xliff:utf8";

  /** The sub-state of a target whose source has changed since. */
  static final String STALE = "readfall:stale";

  private Names() {}
}
