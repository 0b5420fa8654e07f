package io.github.readfall.report;

import io.github.readfall.finding.Finding;
import io.github.readfall.finding.Measurement;
import io.github.readfall.finding.Where;
import io.github.readfall.proof.FitProof;
import io.github.readfall.proof.Timings;
import io.github.readfall.script.Script;
import io.github.readfall.viewing.Audit;
import io.github.readfall.viewing.Phone;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
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

  /** The report of a command that wrote files. */
  public String files(String command, List<String> files) {
    ObjectNode report = head(command);
    files.forEach(report.putArray("files")::add);
    report.putArray("findings");
    return print(report);
  }

  /** The report of an audit of lettering that exists. */
  public String audit(List<Audit> audits, List<Finding> findings) {
    ObjectNode report = head("check");
    ArrayNode all = report.putArray("audit");
    audits.forEach(audit -> all.add(AuditJson.of(audit)));
    ArrayNode found = report.putArray("findings");
    findings.forEach(finding -> found.add(finding(finding)));
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

  private ObjectNode episode(String command, FitProof proof) {
    ObjectNode report = head(command);
    Script script = proof.episode().script();
    ObjectNode episode = report.putObject("episode");
    episode.put("title", script.title());
    episode.put("language", script.language());
    episode.put("path", proof.episode().path().toString().replace('\\', '/'));
    Phone phone = proof.set().phone();
    target(report.putObject("target"), phone);
    BalloonJson balloons = new BalloonJson(phone, proof.set().style().strip().widthPx());
    ArrayNode all = report.putArray("balloons");
    proof.set().balloons().forEach(balloon -> all.add(balloons.of(balloon)));
    ArrayNode notSet = report.putArray("notSet");
    proof.set().notSet().forEach(cue -> notSet.add(cue.id()));
    ArrayNode findings = report.putArray("findings");
    proof.findings().forEach(finding -> findings.add(finding(finding)));
    timings(report.putObject("timings"), proof.timings());
    return report;
  }

  private static void target(ObjectNode target, Phone phone) {
    target.put("name", phone.name());
    target.put("widthDp", number(phone.widthDp()));
    target.put("heightDp", number(phone.heightDp()));
    target.put("distanceMm", number(phone.distanceMm()));
  }

  private static ObjectNode finding(Finding finding) {
    ObjectNode json = NODES.objectNode();
    json.put("rule", finding.rule());
    json.put("severity", finding.severity().word());
    Where where = finding.where();
    where.panel().ifPresent(panel -> json.put("panel", panel));
    if (!where.balloons().isEmpty()) {
      where.balloons().forEach(json.putArray("balloons")::add);
    }
    if (!where.file().isEmpty()) {
      json.put("file", where.file());
    }
    where.line().ifPresent(line -> json.put(where.file().isEmpty() ? "scriptLine" : "line", line));
    where.column().ifPresent(column -> json.put("column", column));
    json.put("message", finding.message());
    json.put("advice", finding.advice());
    finding.measurement().ifPresent(m -> measurement(json, m));
    return json;
  }

  private static void measurement(ObjectNode json, Measurement measurement) {
    json.put("measured", number(measurement.measured()));
    json.put("limit", number(measurement.limit()));
    json.put("unit", measurement.unit());
  }

  private static void timings(ObjectNode json, Timings timings) {
    json.put("readMs", number(timings.readMs()));
    json.put("shapeMs", number(timings.shapeMs()));
    json.put("fitMs", number(timings.fitMs()));
    json.put("placeMs", 0); // nothing is placed yet
    json.put("checkMs", number(timings.checkMs()));
  }

  /** A number to a thousandth, without an exponent or idle zeros. */
  static BigDecimal number(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
    BigDecimal plain = rounded.stripTrailingZeros();
    return plain.scale() < 0 ? plain.setScale(0) : plain;
  }
}
