package io.github.readfall.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.job.OtherLanguages;
import io.github.readfall.job.Proofer;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.type.font.OpenFaces;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class PlanTableTest {

  private static final Path GOLDEN = Path.of("src/test/resources/report/ep01.plan.txt");
  private static final boolean ACCEPT = "accept".equals(System.getProperty("golden"));

  @Test
  void theSamplesPlanIsTheAcceptedOne() throws Exception {
    Proofer proofer = new Proofer(OpenFaces.shelf(), () -> 0);
    List<EpisodeFiles> episode = EpisodeFiles.at(Path.of("sample-scripts/overdue-tide/ep01"));
    String table =
        PlanTable.of(proofer.plan(episode, OptionalInt.of(2), OtherLanguages.NONE).get(0));
    if (ACCEPT) {
      Files.writeString(GOLDEN, table);
    }
    assertEquals(Files.readString(GOLDEN), table);
  }
}
