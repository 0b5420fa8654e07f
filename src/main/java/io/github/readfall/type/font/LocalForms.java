package io.github.readfall.type.font;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * The letters that a face draws in another way for some languages: the {@code locl} feature of its
 * GSUB table (OpenType specification, "GSUB" and "Language system tags"). Only substitutions of
 * single letters are looked at.
 *
 * @param glyphs for each language system tag, the glyphs that would be replaced
 */
record LocalForms(Map<String, Set<Integer>> glyphs) {

  static final LocalForms NONE = new LocalForms(Map.of());

  private static final int MOST_SINGLE = 3; // lookup types 1 to 3 replace one glyph
  private static final int EXTENSION = 7;
  private static final int MOST_ENTRIES = 500; // in one list; a damaged table may claim any number

  /** Language system tags of languages that faces are known to draw letters of their own for. */
  private static final Map<String, String> TAGS =
      Map.ofEntries(
          Map.entry("az", "AZE "),
          Map.entry("bg", "BGR "),
          Map.entry("ca", "CAT "),
          Map.entry("crh", "CRT "),
          Map.entry("hi", "HIN "),
          Map.entry("ja", "JAN "),
          Map.entry("kk", "KAZ "),
          Map.entry("ko", "KOR "),
          Map.entry("mk", "MKD "),
          Map.entry("mr", "MAR "),
          Map.entry("ne", "NEP "),
          Map.entry("nl", "NLD "),
          Map.entry("pl", "PLK "),
          Map.entry("ro", "ROM "),
          Map.entry("sr", "SRB "),
          Map.entry("tr", "TRK "),
          Map.entry("tt", "TAT "),
          Map.entry("ur", "URD "),
          Map.entry("zh", "ZHS "));

  LocalForms {
    glyphs = Map.copyOf(glyphs);
  }

  /** Returns true if a glyph would be another for a language, by its two- or three-letter code. */
  boolean replaces(int glyph, String language) {
    String tag = TAGS.getOrDefault(language, "");
    return glyphs.getOrDefault(tag, Set.of()).contains(glyph);
  }

  /** Reads a GSUB table; offsets outside the file throw IndexOutOfBoundsException. */
  static LocalForms read(ByteBuffer bytes, int gsub) {
    return new Reader(bytes, gsub).forms();
  }

  /** One walk through one table. */
  private record Reader(ByteBuffer bytes, int gsub) {

    LocalForms forms() {
      Map<String, Set<Integer>> glyphs = new HashMap<>();
      int scripts = gsub + u16(gsub + 4);
      for (int i = 0; i < Math.min(MOST_ENTRIES, u16(scripts)); i++) {
        int script = scripts + u16(scripts + 6 + 6 * i);
        Set<Integer> always = u16(script) == 0 ? Set.<Integer>of() : lookups(script + u16(script));
        for (int j = 0; j < Math.min(MOST_ENTRIES, u16(script + 2)); j++) {
          int entry = script + 4 + 6 * j;
          if (!TAGS.containsValue(tag(entry))) {
            continue;
          }
          Set<Integer> lookups = lookups(script + u16(entry + 4));
          lookups.removeAll(always);
          Set<Integer> replaced = glyphs.computeIfAbsent(tag(entry), t -> new HashSet<>());
          lookups.forEach(lookup -> addReplaced(lookup, replaced));
        }
      }
      return new LocalForms(glyphs);
    }

    /** The lookups of the locl features of a language system. */
    private Set<Integer> lookups(int languageSystem) {
      Set<Integer> lookups = new HashSet<>();
      int features = gsub + u16(gsub + 6);
      for (int i = 0; i < Math.min(MOST_ENTRIES, u16(languageSystem + 4)); i++) {
        int entry = features + 2 + 6 * u16(languageSystem + 6 + 2 * i);
        if (tag(entry).equals("locl")) {
          int feature = features + u16(entry + 4);
          for (int j = 0; j < Math.min(MOST_ENTRIES, u16(feature + 2)); j++) {
            lookups.add(u16(feature + 4 + 2 * j));
          }
        }
      }
      return lookups;
    }

    private void addReplaced(int index, Set<Integer> replaced) {
      int list = gsub + u16(gsub + 8);
      int lookup = list + u16(list + 2 + 2 * index);
      for (int i = 0; i < Math.min(MOST_ENTRIES, u16(lookup + 4)); i++) {
        int subtable = lookup + u16(lookup + 6 + 2 * i);
        int type = u16(lookup);
        if (type == EXTENSION) {
          type = u16(subtable + 2);
          subtable += bytes.getInt(subtable + 4);
        }
        if (type <= MOST_SINGLE) {
          addCovered(subtable + u16(subtable + 2), replaced);
        }
      }
    }

    private void addCovered(int coverage, Set<Integer> replaced) {
      boolean ranges = u16(coverage) == 2;
      for (int i = 0; i < u16(coverage + 2); i++) {
        int entry = coverage + 4 + (ranges ? 6 : 2) * i;
        int last = ranges ? u16(entry + 2) : u16(entry);
        for (int glyph = u16(entry); glyph <= last; glyph++) {
          replaced.add(glyph);
        }
      }
    }

    private int u16(int offset) {
      return Short.toUnsignedInt(bytes.getShort(offset));
    }

    private String tag(int offset) {
      byte[] letters = new byte[4];
      bytes.get(offset, letters);
      return new String(letters, StandardCharsets.ISO_8859_1);
    }
  }
}
