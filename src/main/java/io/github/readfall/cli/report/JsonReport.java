package io.github.readfall.cli.report;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.viewing.Audit;
import io.github.readfall.base.viewing.Phone;
import io.github.readfall.job.FitProof;
import io.github.readfall.job.FixedProof;
import io.github.readfall.job.LanguagesProof;
import io.github.readfall.job.LetteringAudit;
import io.github.readfall.job.PanelsProof;
import io.github.readfall.job.PlanProof;
import io.github.readfall.job.StripProof;
import io.github.readfall.job.Timings;
import io.github.readfall.job.polyglot.SharedBalloons;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.plan.order.ReadingOrder;
import io.github.readfall.rules.RulePage;
import io.github.readfall.rules.RulePages;
import io.github.readfall.script.Script;
import io.github.readfall.series.Episode;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * The report as JSON, the contract with other programs; {@code docs/report.schema.json} describes
 * it. Fields may be added, never renamed. Lengths are strip pixels to a thousandth.
 */
public final class JsonReport {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final int DECIMALS = 3;

  private final String version;

  /** Reports of one version of the program. */
  public JsonReport(String version) {
    this.version = version;
  }

  /** The report of fitting one episode. */
  public String fit(FitProof proof) {
    return print(episode("fit", proof));
  }

  /** The report of fitting a whole series. */
  public String fitSeries(List<FitProof> proofs) {
    ObjectNode report = head("fit");
    ArrayNode episodes = report.putArray("episodes");
    proofs.forEach(proof -> episodes.add(episode("fit", proof)));
    report.putArray("findings");
    return print(report);
  }

  /** The report of planning one episode. */
  public String plan(PlanProof proof, List<String> files) {
    ObjectNode report = planned(proof);
    if (!files.isEmpty()) {
      files.forEach(report.putArray("files")::add);
    }
    return print(report);
  }

  /** The report of planning a whole series. */
  public String planSeries(List<PlanProof> proofs) {
    ObjectNode report = head("plan");
    ArrayNode episodes = report.putArray("episodes");
    proofs.forEach(proof -> episodes.add(planned(proof)));
    report.putArray("findings");
    return print(report);
  }

  private ObjectNode planned(PlanProof proof) {
    ObjectNode report = episode("plan", proof.fit());
    report.set("strip", PlanJson.strip(proof.plan().layout()));
    report.set("plan", PlanJson.of(proof));
    return report;
  }

  /** The report of a command that wrote files. */
  public String files(String command, List<String> files) {
    return files(command, files, List.of());
  }

  /** The report of a command that wrote files and found something. */
  public String files(String command, List<String> files, List<Finding> findings) {
    ObjectNode report = head(command);
    files.forEach(report.putArray("files")::add);
    findings(report, findings);
    return print(report);
  }

  /** The report of an audit of lettering that exists. */
  public String audit(List<Audit> audits, List<Finding> findings) {
    ObjectNode report = head("check");
    ArrayNode all = report.putArray("audit");
    audits.forEach(audit -> all.add(AuditJson.of(audit)));
    findings(report, findings);
    return print(report);
  }

  /** The report of explaining a rule. */
  public String rule(RulePage page, HouseStyle style) {
    ObjectNode report = head("explain");
    report.set("rule", RuleJson.of(page, style));
    report.putArray("findings");
    return print(report);
  }

  /** The report of everything that can be found. */
  public String rules(HouseStyle style) {
    ObjectNode report = head("explain");
    ArrayNode all = report.putArray("rules");
    RulePages.rules().forEach(page -> all.add(RuleJson.brief(page, style)));
    RulePages.others().forEach(page -> all.add(RuleJson.brief(page, style)));
    report.putArray("findings");
    return print(report);
  }

  private static String print(ObjectNode report) {
    return JsonMapper.builder().build().writerWithDefaultPrettyPrinter().writeValueAsString(report);
  }

  private ObjectNode head(String command) {
    ObjectNode report = NODES.objectNode();
    report.put("readfall", version);
    report.put("command", command);
    return report;
  }

  /** The report of a strip. */
  public String strip(String command, StripProof proof, List<String> files) {
    return print(written(placed(command, proof), files));
  }

  /** The report of a strip after fixing. */
  public String fixed(FixedProof fixed, List<String> files) {
    ObjectNode report = placed("check", fixed.proof());
    ArrayNode made = report.putArray("mended");
    fixed.made().forEach(fix -> FindingJson.fix(made.addObject(), fix));
    return print(written(report, files));
  }

  private static ObjectNode written(ObjectNode report, List<String> files) {
    if (!files.isEmpty()) {
      files.forEach(report.putArray("files")::add);
    }
    return report;
  }

  /**
   * The report of all strips of a series.
   *
   * @param findings of the series as a whole
   */
  public String stripSeries(String command, List<StripProof> proofs, List<Finding> findings) {
    ObjectNode report = head(command);
    ArrayNode episodes = report.putArray("episodes");
    proofs.forEach(proof -> episodes.add(placed(command, proof)));
    findings(report, findings);
    return print(report);
  }

  private ObjectNode placed(String command, StripProof proof) {
    Galley galley = proof.galley();
    ObjectNode report =
        episode(
            command, proof.episode(), galley, proof.shared(), proof.findings(), proof.timings());
    report.set("strip", PlanJson.strip(proof.layout()));
    List<Audit> audits = LetteringAudit.of(galley.set());
    if (!audits.isEmpty()) {
      ArrayNode all = report.putArray("audit");
      audits.forEach(audit -> all.add(AuditJson.of(audit)));
    }
    report.set("flow", flow(ReadingOrder.of(galley)));
    return report;
  }

  /** The report of panels found in art. */
  public String panels(PanelsProof proof, List<String> files) {
    FitProof fit = proof.fit();
    ObjectNode report =
        episode(
            "panels",
            fit.episode(),
            Galley.unplaced(fit.set()),
            fit.shared(),
            proof.findings(),
            fit.timings());
    report.set("strip", PanelsJson.strip(proof));
    return print(written(report, files));
  }

  /** The report of translations set into the balloons of a strip. */
  public String languages(LanguagesProof proof, List<String> files) {
    ObjectNode report = head("languages fit");
    StripProof original = proof.original();
    Galley galley = original.galley();
    episode(report.putObject("episode"), original.episode());
    target(report.putObject("target"), galley.set().phone());
    report.set("strip", PlanJson.strip(original.layout()));
    BalloonJson balloons = new BalloonJson(galley.set().phone(), galley.widthPx());
    new LanguagesJson(balloons).write(report, proof);
    return print(written(report, files));
  }

  /** The distance of the reading order from the script's. */
  private static ObjectNode flow(ReadingOrder order) {
    ObjectNode flow = NODES.objectNode();
    order.metIds().forEach(flow.putArray("met")::add);
    flow.put("inversions", order.kendall().inversions());
    flow.put("kendallTau", number(order.kendall().tau()));
    ArrayNode move = flow.putArray("move");
    order.displaced().forEach(d -> move.add(order.stops().get(d.index()).id()));
    return flow;
  }

  private ObjectNode episode(String command, FitProof proof) {
    Galley galley = Galley.unplaced(proof.set());
    return episode(
        command, proof.episode(), galley, proof.shared(), proof.findings(), proof.timings());
  }

  private ObjectNode episode(
      String command,
      Episode read,
      Galley galley,
      SharedBalloons shared,
      List<Finding> findings,
      Timings timings) {
    ObjectNode report = head(command);
    episode(report.putObject("episode"), read);
    SetEpisode set = galley.set();
    target(report.putObject("target"), set.phone());
    balloons(report.putArray("balloons"), galley, shared);
    ArrayNode notSet = report.putArray("notSet");
    set.notSet().forEach(cue -> notSet.add(cue.id()));
    findings(report, findings);
    timings(report.putObject("timings"), timings);
    return report;
  }

  private static void episode(ObjectNode json, Episode read) {
    Script script = read.script();
    json.put("title", script.title());
    json.put("language", script.language());
    json.put("path", read.path().toString().replace('\\', '/'));
  }

  private static void balloons(ArrayNode all, Galley galley, SharedBalloons shared) {
    BalloonJson balloons = new BalloonJson(galley.set().phone(), galley.widthPx());
    Map<String, PlacedBalloon> placed =
        galley.balloons().stream().collect(Collectors.toMap(PlacedBalloon::id, b -> b));
    for (SetBalloon balloon : galley.set().balloons()) {
      ObjectNode json =
          Optional.ofNullable(placed.get(balloon.cue().id()))
              .map(balloons::of)
              .orElseGet(() -> balloons.of(balloon));
      shared
          .of(balloon.cue().id())
          .ifPresent(one -> LanguagesJson.shared(json.putObject("shared"), one));
      all.add(json);
    }
  }

  private static void findings(ObjectNode report, List<Finding> findings) {
    ArrayNode array = report.putArray("findings");
    findings.forEach(finding -> array.add(FindingJson.of(finding)));
  }

  private static void target(ObjectNode target, Phone phone) {
    target.put("name", phone.name());
    target.put("widthDp", number(phone.widthDp()));
    target.put("heightDp", number(phone.heightDp()));
    target.put("distanceMm", number(phone.distanceMm()));
  }

  private static void timings(ObjectNode json, Timings timings) {
    json.put("readMs", number(timings.readMs()));
    json.put("shapeMs", number(timings.shapeMs()));
    json.put("fitMs", number(timings.fitMs()));
    json.put("placeMs", number(timings.placeMs()));
    json.put("checkMs", number(timings.checkMs()));
  }

  /** A number to a thousandth, without an exponent or idle zeros. */
  static BigDecimal number(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
    BigDecimal plain = rounded.stripTrailingZeros();
    return plain.scale() < 0 ? plain.setScale(0) : plain;
  }
}
