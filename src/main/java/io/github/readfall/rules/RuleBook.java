package io.github.readfall.rules;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.strip.galley.Galley;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Every rule there is. Adding one is a file, a line here, its page and its fixtures. */
public final class RuleBook {

  private static final List<Rule> ALL =
      List.of( // keep sorted by id
          new EitherFirst(),
          new InvertedBalloons(),
          new ClimbBack(),
          new PanelDisorder(),
          new AstrayTail(),
          new CrossingTail(),
          new LongTail(),
          new EarlyText(),
          new WrongPanel(),
          new AgainstReading(),
          new PoorContrast(),
          new RestrictedFace(),
          new ForeignLetters(),
          new MissingLetters(),
          new TightLeading(),
          new LocalLetters(),
          new SmallType(),
          new SmallVoice(),
          new CoveredArt(),
          new CrowdedBalloons(),
          new CutThrough(),
          new MarginIntrusion(),
          new OutsideStrip(),
          new OversetText(),
          new OverlappingBalloons(),
          new BaggyBalloon(),
          new TangentOutline(),
          new CrampedText(),
          new UnknownVoice(),
          new LongBalloon(),
          new WordyStretch(),
          new WordyScreen());

  private RuleBook() {}

  /** Every rule, sorted by id. */
  public static List<Rule> all() {
    return ALL;
  }

  /** The rule that goes by an id. */
  public static Optional<Rule> rule(String id) {
    return ALL.stream().filter(rule -> rule.id().equals(id)).findFirst();
  }

  /** What all rules find in a galley, as grave as its style says, in script order. */
  public static List<Finding> check(Galley galley) {
    return ALL.stream()
        .flatMap(rule -> rule.check(galley))
        .map(finding -> graded(finding, galley))
        .sorted(Comparator.comparingInt(finding -> finding.where().line().orElse(0)))
        .toList();
  }

  private static Finding graded(Finding finding, Galley galley) {
    return finding.withSeverity(galley.style().severity(finding.rule(), finding.severity()));
  }
}
