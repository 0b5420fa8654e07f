package io.github.readfall.cli.report;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.job.FitProof;
import io.github.readfall.job.Proofer;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.type.font.OpenFaces;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * An episode fitted for tests, with its report read back.
 *
 * @param path of its script or folder
 */
record Fitted(String path, FitProof proof, JsonNode report) {

  private static final String OWN = "src/test/resources/report/";

  /** The samples, scripts in several languages, and one script in every shape. */
  static final List<String> PATHS =
      List.of(
          "sample-scripts/overdue-tide/ep01",
          "sample-scripts/overdue-tide/ep02",
          OWN + "shapes/ep01",
          OWN + "scripts/bare.txt",
          OWN + "scripts/faulty.txt",
          OWN + "scripts/ko.txt",
          OWN + "scripts/ja.txt",
          OWN + "scripts/ar.txt",
          OWN + "scripts/th.txt");

  private static final class All {
    static final List<Fitted> FITTED = PATHS.stream().map(Fitted::of).toList();
  }

  /** All of {@link #PATHS}, fitted once. */
  static List<Fitted> all() {
    return All.FITTED;
  }

  static Fitted of(String path) {
    try {
      Proofer proofer = new Proofer(OpenFaces.shelf(), () -> 0);
      FitProof proof = proofer.fit(EpisodeFiles.at(Path.of(path)).get(0));
      String json = new JsonReport("0.1.0").fit(proof);
      return new Fitted(path, proof, JsonMapper.builder().build().readTree(json));
    } catch (UnusablePath e) {
      throw new AssertionError(path, e);
    }
  }

  Stream<JsonNode> balloons() {
    return report.path("balloons").valueStream();
  }

  /** What to call a balloon where a check fails. */
  String nameOf(JsonNode balloon) {
    return path + " " + balloon.path("id").asString();
  }
}
