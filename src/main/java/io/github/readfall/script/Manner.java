package io.github.readfall.script;

import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A manner of speaking, in brackets after the speaker.
 *
 * @param word in lower case; one of the constants' words, or the person's
 */
public record Manner(String word) {

  public static final Manner THOUGHT = new Manner("thought");
  public static final Manner WHISPER = new Manner("whisper");
  public static final Manner SHOUT = new Manner("shout");
  public static final Manner OFF = new Manner("off");
  public static final Manner VOICE_OVER = new Manner("voice-over");
  public static final Manner CAPTION = new Manner("caption");
  public static final Manner EFFECT = new Manner("sound effect");
  public static final Manner ELECTRONIC = new Manner("electronic");
  public static final Manner WAVY = new Manner("wavy");

  /** Goes on from the same speaker's cue before, in a connected balloon. */
  public static final Manner JOINED = new Manner("joined");

  /** Lettered by hand: counted and transcribed, but not set. */
  public static final Manner DRAWN = new Manner("drawn");

  public static final Manner CONTINUED = new Manner("continued");

  private static final List<Manner> ALL =
      List.of(
          THOUGHT,
          WHISPER,
          SHOUT,
          OFF,
          VOICE_OVER,
          CAPTION,
          EFFECT,
          ELECTRONIC,
          WAVY,
          JOINED,
          DRAWN,
          CONTINUED);

  /** Other ways to write them, without dots, hyphens and apostrophes. Common practice. */
  private static final Map<String, Manner> ALIASES =
      Map.ofEntries(
          Map.entry("thinks", THOUGHT),
          Map.entry("thinking", THOUGHT),
          Map.entry("thoughts", THOUGHT),
          Map.entry("whispers", WHISPER),
          Map.entry("whispering", WHISPER),
          Map.entry("whispered", WHISPER),
          Map.entry("shouts", SHOUT),
          Map.entry("shouting", SHOUT),
          Map.entry("shouted", SHOUT),
          Map.entry("yells", SHOUT),
          Map.entry("yelling", SHOUT),
          Map.entry("os", OFF),
          Map.entry("op", OFF),
          Map.entry("oc", OFF),
          Map.entry("off panel", OFF),
          Map.entry("offpanel", OFF),
          Map.entry("off screen", OFF),
          Map.entry("offscreen", OFF),
          Map.entry("off stage", OFF),
          Map.entry("vo", VOICE_OVER),
          Map.entry("voice over", VOICE_OVER),
          Map.entry("voiceover", VOICE_OVER),
          Map.entry("sfx", EFFECT),
          Map.entry("sound", EFFECT),
          Map.entry("sound effects", EFFECT),
          Map.entry("radio", ELECTRONIC),
          Map.entry("phone", ELECTRONIC),
          Map.entry("telephone", ELECTRONIC),
          Map.entry("on radio", ELECTRONIC),
          Map.entry("on phone", ELECTRONIC),
          Map.entry("faint", WAVY),
          Map.entry("faintly", WAVY),
          Map.entry("weak", WAVY),
          Map.entry("eerie", WAVY),
          Map.entry("joins", JOINED),
          Map.entry("hand lettered", DRAWN),
          Map.entry("contd", CONTINUED),
          Map.entry("cont", CONTINUED),
          Map.entry("continues", CONTINUED),
          Map.entry("continuing", CONTINUED));

  /** The manner that a word means; one with that word if none is known. */
  public static Manner of(String written) {
    String word = Letters.collapse(written).toLowerCase(Locale.ROOT);
    String key = Letters.collapse(bare(word));
    for (Manner manner : ALL) {
      if (manner.word.equals(key) || manner.word.equals(word)) {
        return manner;
      }
    }
    return ALIASES.getOrDefault(key, new Manner(word));
  }

  /** All that are known, the commonest first. */
  public static List<Manner> known() {
    return ALL;
  }

  /** Returns true if it is one of the constants here. */
  public boolean isKnown() {
    return ALL.contains(this);
  }

  private static String bare(String word) {
    StringBuilder bare = new StringBuilder(word.length());
    for (int i = 0; i < word.length(); i++) {
      char c = word.charAt(i);
      if (".'\u2018\u2019\u02BC".indexOf(c) < 0) {
        bare.append("-\u2010\u2011\u2013_".indexOf(c) < 0 ? c : ' ');
      }
    }
    return bare.toString();
  }
}
