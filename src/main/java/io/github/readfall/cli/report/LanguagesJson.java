package io.github.readfall.cli.report;

import static io.github.readfall.cli.report.JsonReport.number;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.job.LanguagesProof;
import io.github.readfall.job.polyglot.FittedCue;
import io.github.readfall.job.polyglot.FittedEdition;
import io.github.readfall.job.polyglot.SharedBalloon;
import io.github.readfall.job.polyglot.Verdict;
import io.github.readfall.lettering.typeset.Tightening;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Translations in their balloons as JSON: one balloon for each cue and language.
 *
 * @param balloons how a balloon is written
 */
record LanguagesJson(BalloonJson balloons) {

  /** Writes the balloons in each language. */
  void write(ObjectNode report, LanguagesProof proof) {
    ArrayNode languages = report.putArray("languages");
    ArrayNode all = report.putArray("balloons");
    ArrayNode findings = report.putArray("findings");
    for (FittedEdition edition : proof.matrix().editions()) {
      String language = edition.edition().language();
      languages.add(sums(edition));
      balloons(all, edition);
      for (Finding finding : edition.findings()) {
        findings.add(FindingJson.of(finding).put("language", language));
      }
    }
  }

  private static ObjectNode sums(FittedEdition edition) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("language", edition.edition().language());
    for (Verdict verdict : Verdict.values()) {
      json.put(field(verdict), edition.count(verdict));
    }
    json.put("expected", edition.cues().stream().filter(FittedCue::expected).count());
    return json;
  }

  private static String field(Verdict verdict) {
    return switch (verdict) {
      case AS_IS -> "asIs";
      case TIGHTER -> "tighter";
      case LARGER -> "larger";
      case SHORTER -> "shorter";
    };
  }

  private void balloons(ArrayNode all, FittedEdition edition) {
    Map<String, PlacedBalloon> placed =
        edition.galley().balloons().stream()
            .collect(Collectors.toMap(PlacedBalloon::id, balloon -> balloon));
    for (FittedCue cue : edition.cues()) {
      ObjectNode json =
          Optional.ofNullable(placed.get(cue.id()))
              .map(balloons::of)
              .orElseGet(() -> balloons.of(cue.refit().balloon()));
      json.put("fits", cue.refit().goesIn());
      if (cue.expected()) {
        json.put("expected", true);
      }
      if (cue.verdict() != Verdict.AS_IS) {
        needs(json.putObject("needs"), cue);
      }
      all.add(json);
    }
  }

  private static void needs(ObjectNode json, FittedCue cue) {
    Tightening tightening = cue.tightening();
    json.put("what", cue.verdict().word());
    json.put("size", number(tightening.size()));
    json.put("leading", number(tightening.leading()));
    json.put("trackingEm", number(tightening.trackingEm()));
    json.put("growBy", number(cue.refit().growBy()));
    json.put("fewerLetters", cue.refit().lettersTooMany());
  }

  /** Writes the cost of a balloon that holds other languages too. */
  static void shared(ObjectNode json, SharedBalloon balloon) {
    json.put("decidedBy", balloon.decidedBy());
    json.put("expected", balloon.expected());
    json.put("cost", number(balloon.cost()));
    FindingJson.box(json.putArray("ownBox"), balloon.ownSize());
  }
}
