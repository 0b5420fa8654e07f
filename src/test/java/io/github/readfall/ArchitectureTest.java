package io.github.readfall;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import io.github.readfall.RoomsTable.Room;
import java.io.IOException;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Checks the code against the table in DEVELOPERS.md and {@link CodingRules}, in one import. */
class ArchitectureTest {

  private static final String BASE = "io.github.readfall.";
  private static final int AT_LEAST = 50;

  private static final JavaClasses CODE =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("io.github.readfall");

  private static String[] allowed(Room room) {
    return Stream.of(
            Stream.of(
                "java.lang..",
                "java.util..",
                "java.io..",
                "java.nio..",
                "java.math..",
                "org.jspecify.."),
            Stream.of(BASE + room.name() + ".."),
            room.imports().stream().map(name -> BASE + name + ".."),
            room.libraries().stream().map(library -> library + ".."))
        .flatMap(s -> s)
        .toArray(String[]::new);
  }

  @TestFactory
  Stream<DynamicTest> eachRoomImportsOnlyWhatItsRowAllows() throws IOException {
    return RoomsTable.rooms().stream()
        .map(
            room ->
                DynamicTest.dynamicTest(
                    room.name(),
                    () ->
                        classes()
                            .that()
                            .resideInAPackage(BASE + room.name() + "..")
                            .should()
                            .onlyDependOnClassesThat()
                            .resideInAnyPackage(allowed(room))
                            .because("DEVELOPERS.md says so")
                            .check(CODE)));
  }

  @Test
  void everyPackageIsInTheRowOfItsRoom() throws IOException {
    Set<String> inCode = new TreeSet<>();
    for (JavaClass type : CODE) {
      if (type.getPackageName().startsWith(BASE)) { // Main, in the root, may import anything
        String name = type.getPackageName().substring(BASE.length());
        inCode.add(name);
        inCode.add(name.split("\\.", 2)[0]); // a room may have nothing but sub-packages
      }
    }
    Set<String> inTable =
        RoomsTable.rooms().stream()
            .flatMap(Room::packages)
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(inTable, inCode);
  }

  @TestFactory
  Stream<DynamicTest> everyCodingRuleHolds() {
    return CodingRules.all().entrySet().stream()
        .map(rule -> DynamicTest.dynamicTest(rule.getKey(), () -> rule.getValue().check(CODE)));
  }

  @Test
  void packagesAreNullMarked() {
    CodingRules.packagesAreNullMarked(CODE);
  }

  @Test
  void theCodeWasReallyRead() {
    assertTrue(CODE.size() > AT_LEAST, "only " + CODE.size() + " classes were imported");
  }

  @Test
  void noCyclesAmongRooms() {
    slices().matching(BASE + "(*)..").should().beFreeOfCycles().check(CODE);
  }

  @Test
  void noCyclesAmongPackages() {
    slices().matching(BASE + "(**)").should().beFreeOfCycles().check(CODE);
  }
}
