package io.github.readfall.lettering.style;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.lettering.toml.Range;
import io.github.readfall.lettering.toml.TomlValue;
import io.github.readfall.lettering.toml.TomlValue.Figure;
import io.github.readfall.lettering.toml.TomlValue.Truth;
import io.github.readfall.lettering.toml.TomlValue.Words;
import io.github.readfall.lettering.toml.UnchangeableText;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is offered is what the reader of the file knows. */
class LookKeyTest {

  /** A value that nothing has by itself. */
  private static TomlValue unusual(LookKey key) {
    return switch (key.kind()) {
      case NUMBER -> new Figure(key.range().orElseThrow().isWhole() ? 650 : 1.25);
      case TRUTH -> new Truth(true);
      case FACE -> new Words("Comic Neue");
      case COLOUR -> new Words("#a1b2c3");
      case WORD -> new Words(key.words().get(key.words().size() - 1));
    };
  }

  private static ReadStyle read(LookKey key, TomlValue value) throws UnchangeableText {
    StyleText text =
        StyleText.of("", "series.toml").with(List.of("voices", "ILSE", key.word()), value);
    return new StyleReader().read(text.text(), "series.toml");
  }

  @ParameterizedTest
  @EnumSource
  void aValueThatIsWrittenIsTheOneThatIsRead(LookKey key) throws UnchangeableText {
    ReadStyle read = read(key, unusual(key));
    assertEquals(List.of(), read.findings());
    LookChange ilse = read.style().voice("ILSE").orElseThrow();
    assertEquals(Optional.of(unusual(key)), key.of(ilse));
    assertEquals(Optional.of(unusual(key)), key.of(ilse.apply(Look.SPEECH)));
    assertEquals(
        List.of(key), Stream.of(LookKey.values()).filter(k -> k.of(ilse).isPresent()).toList());
  }

  @ParameterizedTest
  @EnumSource
  void theRangeIsTheReaders(LookKey key) throws UnchangeableText {
    if (key.kind() == LookKey.Kind.NUMBER) {
      Range range = key.range().orElseThrow();
      for (double inside : new double[] {range.least(), range.most()}) {
        assertEquals(List.of(), read(key, new Figure(inside)).findings());
      }
      for (double outside : new double[] {range.least() - 0.01, range.most() + 0.01}) {
        assertEquals(1, read(key, new Figure(outside)).findings().size());
      }
    } else {
      assertTrue(key.range().isEmpty());
    }
  }

  @Test
  void everyKeyOfAVoiceIsOfferedAndSaysWhatItMeans() {
    List<String> offered = Stream.of(LookKey.values()).map(LookKey::word).sorted().toList();
    assertEquals(Sections.VOICES.keyNames().stream().sorted().toList(), offered);
    assertEquals(Sections.MANNERS.keyNames().stream().sorted().toList(), offered);
    for (LookKey key : LookKey.values()) {
      assertFalse(key.meaning().isBlank());
    }
  }
}
