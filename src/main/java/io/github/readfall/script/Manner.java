package io.github.readfall.script;

import io.github.readfall.base.finding.Spelling;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A manner of speaking, in brackets after the speaker.
 *
 * @param word in lower case; one of the constants' words, or the person's
 */
public record Manner(String word) {

  public static final Manner THOUGHT = new Manner("thought");
  public static final Manner WHISPER = new Manner("whisper");

  /** Spoken quietly: lettered smaller than plain speech. */
  public static final Manner SMALL = new Manner("small");

  public static final Manner SHOUT = new Manner("shout");

  /** Louder than plain speech, or than other sound effects, without being a shout. */
  public static final Manner LOUD = new Manner("loud");

  public static final Manner SINGING = new Manner("singing");
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

  /** Narration without a box. */
  public static final Manner UNBOXED = new Manner("unboxed");

  /** Meant to run off its panel or the strip. */
  public static final Manner BLEED = new Manner("bleed");

  public static final Manner CONTINUED = new Manner("continued");

  private static final List<Manner> ALL =
      List.of(
          THOUGHT,
          WHISPER,
          SMALL,
          SHOUT,
          LOUD,
          SINGING,
          OFF,
          VOICE_OVER,
          CAPTION,
          EFFECT,
          ELECTRONIC,
          WAVY,
          JOINED,
          DRAWN,
          UNBOXED,
          BLEED,
          CONTINUED);

  /** Other ways to write them, without dots, hyphens and apostrophes. Common practice. */
  private static final Map<String, Manner> ALIASES =
      aliases(
          Map.ofEntries(
              Map.entry(THOUGHT, "thinks, thinking, thoughts, think, thought balloon"),
              Map.entry(
                  WHISPER,
                  "whispers, whispering, whispered, hushed, in a whisper, under breath,"
                      + " under her breath, under his breath, under their breath"),
              Map.entry(
                  SMALL,
                  "quietly, quiet, softly, soft, low, in a low voice, muttering, mutters, muttered,"
                      + " mumbles, mumbling, mumbled, murmurs, murmuring, murmured"),
              Map.entry(
                  SHOUT,
                  "shouts, shouting, shouted, yell, yells, yelling, yelled, scream, screams,"
                      + " screaming, screamed, bellows, bellowing"),
              Map.entry(LOUD, "loudly, louder"),
              Map.entry(SINGING, "sings, sing, sung, song"),
              Map.entry(
                  OFF,
                  "os, op, oc, off panel, offpanel, off screen, offscreen, off stage, offstage,"
                      + " off camera, out of panel, out of frame"),
              Map.entry(VOICE_OVER, "vo, voice over, voiceover"),
              Map.entry(EFFECT, "sfx, fx, sound, sound effects"),
              Map.entry(
                  ELECTRONIC,
                  "radio, phone, telephone, tv, television, speaker, loudspeaker,"
                      + " intercom, computer"),
              Map.entry(WAVY, "faint, faintly, weak, weakly, eerie"),
              Map.entry(JOINED, "joins, connected"),
              Map.entry(DRAWN, "hand lettered, hand drawn"),
              Map.entry(UNBOXED, "no box, without a box"),
              Map.entry(BLEED, "bleeds"),
              Map.entry(CONTINUED, "contd, cont, continues, continuing")));

  /** {@code on the radio} is the manner of {@code radio}. */
  private static final Pattern THROUGH =
      Pattern.compile("(?:on|over|via|from|through|by)(?: the| a)? (.+)");

  private static Map<String, Manner> aliases(Map<Manner, String> words) {
    Map<String, Manner> aliases = new TreeMap<>();
    words.forEach(
        (manner, list) -> CommaList.parts(list).forEach(word -> aliases.put(word, manner)));
    return Map.copyOf(aliases);
  }

  /** The manner that a word means; one with that word if none is known. */
  public static Manner of(String written) {
    String word = Letters.collapse(written).toLowerCase(Locale.ROOT);
    String key = Letters.collapse(bare(word));
    for (Manner manner : ALL) {
      if (manner.word.equals(key) || manner.word.equals(word)) {
        return manner;
      }
    }
    Manner alias = ALIASES.get(key);
    return alias == null ? throughDevice(key).orElse(new Manner(word)) : alias;
  }

  private static Optional<Manner> throughDevice(String key) {
    Matcher through = THROUGH.matcher(key);
    return through.matches()
        ? Optional.ofNullable(ALIASES.get(through.group(1))).filter(ELECTRONIC::equals)
        : Optional.empty();
  }

  /** The known word that was probably meant by an unknown one; empty if none is near. */
  public static Optional<String> near(String written) {
    List<String> words =
        Stream.concat(ALL.stream().map(Manner::word), ALIASES.keySet().stream().sorted()).toList();
    return Spelling.nearestName(written, words, Letters::fold);
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
