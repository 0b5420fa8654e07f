package io.github.readfall.type.text;

import com.ibm.icu.lang.UScript;
import java.util.Set;

/** The script of a letter, by the codes of the chains of faces (ISO 15924). */
public final class ScriptCode {

  /** Signs and all that belongs to no one script. */
  public static final String SIGNS = "Zyyy";

  private static final Set<String> HAN = Set.of("Jpan", "Hans", "Hant", "Hang");

  private ScriptCode() {}

  /**
   * The script of a grapheme cluster.
   *
   * @param cluster its text; not empty
   * @param language decides whose Han letters they are
   */
  public static String of(String cluster, Language language) {
    int script = UScript.getScript(cluster.codePointAt(0));
    return switch (script) {
      case UScript.HAN -> HAN.contains(language.script()) ? language.script() : "Jpan";
      case UScript.HIRAGANA, UScript.KATAKANA -> "Jpan";
      case UScript.HANGUL -> "Hang";
      case UScript.COMMON, UScript.INHERITED, UScript.UNKNOWN -> SIGNS;
      default -> UScript.getShortName(script);
    };
  }
}
