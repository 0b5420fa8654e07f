package io.github.readfall.art;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.Box;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ArtFindingsTest {

  @ParameterizedTest
  @CsvSource(
      nullValues = "-",
      value = {
        "01.png 1600|02.png 1600|03.png 1600, -",
        "01.png 800|02.png 800, art/scaled",
        "01.png 1600|02.png 1200, art/widths art/scaled",
        "01.png 1600|02.png 1600|04.png 1600, art/page-missing",
        "page1.png 1600|page3.jpg 1600|page6.png 1600, art/page-missing art/page-missing",
        "1 a.png 1600|2 b.png 1600, -",
        "ep03.png 1600, -",
        "ink7.png 1600|ink999.png 1600, -",
        "-, -"
      })
  void oddPagesAreNamed(String pages, String rules) {
    List<ArtPage> all = new ArrayList<>();
    for (String page : pages == null ? new String[0] : pages.split("\\|", -1)) {
      int space = page.lastIndexOf(' ');
      int width = Integer.parseInt(page.substring(space + 1));
      all.add(new ArtPage(Path.of(page.substring(0, space)), width, 9, new Box(0, 0, 1600, 9)));
    }
    List<Finding> findings = ArtFindings.of(new StripArt(1600, all, List.of()));
    List<String> wanted = rules == null ? List.of() : Arrays.asList(rules.split(" ", -1));
    assertEquals(wanted, findings.stream().map(Finding::rule).toList());
  }
}
