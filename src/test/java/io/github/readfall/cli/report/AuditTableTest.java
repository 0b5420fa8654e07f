package io.github.readfall.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.base.viewing.Audit;
import io.github.readfall.job.LetteringAudit;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.BalloonRequest;
import io.github.readfall.lettering.typeset.Sample;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.lettering.typeset.Typesetter;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Balloons whose lettering exists, audited one by one. */
class AuditTableTest {

  private static BalloonRequest capitalPx(double px) {
    return new BalloonRequest(
        Optional.empty(), Optional.empty(), OptionalDouble.empty(), OptionalDouble.of(px));
  }

  @Test
  void onlyLetteringThatExistsIsListed() {
    SetEpisode set =
        new Typesetter(Sample.shelf(), HouseStyle.DEFAULT)
            .set(
                Sample.script("en", "ILSE: Hush.", "ILSE: It counts.", "ILSE (whisper): Again."),
                Map.of("p1-1", capitalPx(44), "p1-3", capitalPx(52)));
    List<Audit> audits = LetteringAudit.of(set);
    assertEquals(List.of("p1-1", "p1-3"), audits.stream().map(Audit::balloon).toList());
    assertEquals(
        """
          id     height of     px    dp     mm   seen                 from
          p1-1   a capital   44.0   9.9   1.57   14.9′ too small   47.2 px
          p1-3   a capital   52.0   11.7   1.86   17.6′             47.2 px
        """
            .replaceAll("  +", " "),
        AuditTable.ofBalloons(audits).replaceAll("  +", " "));
  }
}
