package io.github.readfall.series.autosave;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.autosave.WatchedFile.Kind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DiskWatchTest {

  private final Path series;
  private final Path episode;
  private final Path script;
  private final FakeLater later = new FakeLater();
  private final List<Set<Kind>> reported = new ArrayList<>();
  private final DiskWatch watch;

  DiskWatchTest(@TempDir Path series) throws Exception {
    this.series = series;
    episode = Files.createDirectories(series.resolve("ep01"));
    Files.createDirectories(episode.resolve("art"));
    Files.createDirectories(series.resolve("fonts"));
    Files.writeString(series.resolve("series.toml"), "");
    Files.writeString(episode.resolve("layout.json"), "{}");
    Files.writeString(episode.resolve("art").resolve("1.png"), "picture");
    script = Files.writeString(episode.resolve("script.txt"), "first");
    watch =
        DiskWatch.on(
            WatchedFile.of(EpisodeFiles.at(script).get(0)), later, set -> reported.add(set));
  }

  @AfterEach
  void end() {
    watch.close();
  }

  private Path file(Kind kind) {
    return switch (kind) {
      case SCRIPT -> script;
      case STYLE -> series.resolve("series.toml");
      case LAYOUT -> episode.resolve("layout.json");
      case IGNORED -> episode.resolve("ignored.toml");
      case FONTS -> series.resolve("fonts").resolve("New.ttf");
      case ART -> episode.resolve("art").resolve("1.png");
    };
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void eachChangeIsReportedOnceWithinASecondAndAHalf(Kind kind) throws IOException {
    Files.writeString(file(kind), "changed by others");
    later.pass(1500);
    assertEquals(List.of(Set.of(kind)), reported);
    later.pass(10_000);
    assertEquals(1, reported.size());
    Files.delete(file(kind));
    later.pass(1500);
    assertEquals(List.of(Set.of(kind), Set.of(kind)), reported);
  }

  @Test
  void ignoredFindingsUnderTheFormerNameAreWatchedToo() throws IOException {
    Files.writeString(episode.resolve("set-aside.toml"), "changed by others");
    later.pass(1500);
    assertEquals(List.of(Set.of(Kind.IGNORED)), reported);
  }

  @Test
  void nothingIsReportedIfNothingChanged() throws IOException {
    later.pass(5000);
    Files.setLastModifiedTime(script, FileTime.fromMillis(0));
    later.pass(5000);
    assertEquals(List.of(), reported);
  }

  @Test
  void changesAtTheSameTimeAreReportedTogether() throws IOException {
    Files.writeString(script, "second");
    Files.writeString(file(Kind.ART), "other picture");
    later.pass(1500);
    assertEquals(List.of(Set.of(Kind.SCRIPT, Kind.ART)), reported);
  }

  @Test
  void aChangeThatKeepsSizeAndTimeIsSeenInAScript() throws IOException {
    FileTime at = Files.getLastModifiedTime(script);
    Files.writeString(script, "FIRST");
    Files.setLastModifiedTime(script, at);
    later.pass(1500);
    assertEquals(List.of(Set.of(Kind.SCRIPT)), reported);
  }

  @Test
  void checkingSoonReportsSoon() throws IOException {
    later.pass(10);
    Files.writeString(script, "second");
    watch.checkSoon();
    later.pass(250);
    assertEquals(List.of(Set.of(Kind.SCRIPT)), reported);
  }

  @Test
  void aFileThatIsBeingWrittenIsReportedWhenItIsComplete() throws IOException {
    StringBuilder text = new StringBuilder();
    for (int part = 0; part < 30; part++) {
      Files.writeString(script, text.append("more"));
      later.pass(100);
    }
    assertEquals(List.of(), reported);
    later.pass(1500);
    assertEquals(List.of(Set.of(Kind.SCRIPT)), reported);
  }

  @Test
  void aChangeThatIsUndoneAtOnceIsNotReported() throws IOException {
    Files.writeString(script, "second");
    watch.checkSoon();
    later.pass(100);
    Files.writeString(script, "first");
    later.pass(5000);
    assertEquals(List.of(), reported);
  }

  @Test
  void nothingIsReportedAfterTheEnd() throws IOException {
    Files.writeString(script, "second");
    watch.close();
    later.pass(10_000);
    assertEquals(List.of(), reported);
    assertEquals(0, later.waiting());
  }
}
