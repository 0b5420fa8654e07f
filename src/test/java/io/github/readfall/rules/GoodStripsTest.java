package io.github.readfall.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import io.github.readfall.strip.galley.Galley;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Strips as a letterer would lay them out, on which no rule finds anything. */
class GoodStripsTest {

  private final Path scratch;

  GoodStripsTest(@TempDir Path scratch) {
    this.scratch = scratch;
  }

  @TestFactory
  Stream<DynamicTest> nothingIsFoundOnAGoodStrip() {
    return Fixture.folders(Path.of("src/test/resources/strips/good")).stream()
        .map(
            folder ->
                DynamicTest.dynamicTest(
                    folder.getFileName().toString(), folder.toUri(), () -> check(folder)));
  }

  private void check(Path folder) throws Exception {
    Galley galley = Fixture.read(folder, scratch).galley();
    assertFalse(galley.balloons().isEmpty(), "nothing is placed");
    assertEquals(galley.set().balloons().size(), galley.balloons().size(), "all have a place");
    assertEquals(List.of(), RuleBook.check(galley));
  }
}
