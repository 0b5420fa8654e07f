package io.github.readfall;

import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.properties.CanBeAnnotated.Predicates.annotatedWith;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_USE_JAVA_UTIL_LOGGING;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.lang.ArchRule;
import io.github.readfall.base.OneCall;
import java.io.FileOutputStream;
import java.io.FileWriter;
import java.io.RandomAccessFile;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import org.jspecify.annotations.NullMarked;

/** The rules of the code that a compiler cannot check; {@link ArchitectureTest} runs them. */
final class CodingRules {

  static final ArchRule NO_STREAMS =
      noClasses()
          .that()
          .doNotBelongToAnyOf(Main.class)
          .should(ACCESS_STANDARD_STREAMS)
          .because("Main alone hands them on, so that everything else can be tested");

  static final ArchRule NO_LOGGING = NO_CLASSES_SHOULD_USE_JAVA_UTIL_LOGGING;
  static final ArchRule NO_GENERIC = NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS;

  static final ArchRule STATICS_ARE_FINAL =
      fields().that().areStatic().should().beFinal().because("shared state hides what a call does");

  static final ArchRule NO_STATIC_ARRAYS =
      fields()
          .that()
          .areStatic()
          .and()
          .doNotHaveModifier(JavaModifier.SYNTHETIC)
          .should()
          .notHaveRawType(new ArrayType())
          .because("anyone can write to an array");

  static final ArchRule CORE_IS_IMMUTABLE =
      fields()
          .that()
          .areDeclaredInClassesThat()
          .resideOutsideOfPackages("..cli..", "..window..", "..autosave..")
          .and()
          .areDeclaredInClassesThat(DescribedPredicate.not(annotatedWith(OneCall.class)))
          .should()
          .beFinal()
          .because("values may go anywhere; a search is made for one call and dropped after it");

  static final ArchRule SAME_MATHS_ON_EVERY_MACHINE =
      noClasses()
          .should()
          .callMethodWhere(
              target(
                      owner(
                          DescribedPredicate.describe(
                              "Math", c -> c.getName().equals("java.lang.Math"))))
                  .and(
                      target(
                          nameMatching(
                              "a?(sin|cos|tan)h?|atan2|exp|expm1|log|log10|log1p|pow|cbrt|hypot"))))
          .because("Math may differ in the last digit between machines; StrictMath may not");

  /** Chance is allowed where it is seeded. */
  static final ArchRule SAME_ANSWER_EVERY_TIME =
      noClasses()
          .that()
          .resideOutsideOfPackages("..cli..", "..window..", "..autosave..")
          .should()
          .callMethod(Locale.class, "getDefault")
          .orShould()
          .callMethod(String.class, "format", String.class, Object[].class)
          .orShould()
          .callMethod(String.class, "formatted", Object[].class)
          .orShould()
          .dependOnClassesThat()
          .areAssignableTo(Random.class)
          .orShould()
          .callConstructor(SplittableRandom.class)
          .orShould()
          .dependOnClassesThat()
          .areAssignableTo(Clock.class)
          .orShould()
          .callMethod(Instant.class, "now")
          .orShould()
          .callMethod(Math.class, "random")
          .orShould()
          .callMethod(System.class, "getenv", String.class);

  /** The art cache is a temporary file that needs no forcing; the file of locks has no content. */
  static final ArchRule ONE_GATE_FOR_WRITING =
      noClasses()
          .that()
          .resideOutsideOfPackage("io.github.readfall.base.files..")
          .and()
          .doNotHaveSimpleName("BandFile")
          .and()
          .doNotHaveSimpleName("SideFileLocks")
          .should()
          .callMethodWhere(new WritesFiles())
          .orShould()
          .dependOnClassesThat()
          .belongToAnyOf(
              FileChannel.class, RandomAccessFile.class, FileOutputStream.class, FileWriter.class)
          .because("base.files alone writes files whole and forces them to the disk");

  /** Every rule by its name. */
  static Map<String, ArchRule> all() {
    Map<String, ArchRule> rules = new LinkedHashMap<>();
    rules.put("NO_STREAMS", NO_STREAMS);
    rules.put("NO_LOGGING", NO_LOGGING);
    rules.put("NO_GENERIC", NO_GENERIC);
    rules.put("STATICS_ARE_FINAL", STATICS_ARE_FINAL);
    rules.put("NO_STATIC_ARRAYS", NO_STATIC_ARRAYS);
    rules.put("CORE_IS_IMMUTABLE", CORE_IS_IMMUTABLE);
    rules.put("SAME_MATHS_ON_EVERY_MACHINE", SAME_MATHS_ON_EVERY_MACHINE);
    rules.put("SAME_ANSWER_EVERY_TIME", SAME_ANSWER_EVERY_TIME);
    rules.put("ONE_GATE_FOR_WRITING", ONE_GATE_FOR_WRITING);
    return rules;
  }

  private CodingRules() {}

  static void packagesAreNullMarked(JavaClasses code) {
    for (JavaPackage p : code.getPackage("io.github.readfall").getSubpackagesInTree()) {
      if (!p.getClasses().isEmpty() && !p.isAnnotatedWith(NullMarked.class)) {
        throw new AssertionError(p.getName() + " lacks @NullMarked");
      }
    }
  }

  private static final class WritesFiles extends DescribedPredicate<JavaMethodCall> {
    private static final Set<String> NAMES =
        Set.of(
            "write",
            "writeString",
            "newOutputStream",
            "newBufferedWriter",
            "newByteChannel",
            "move",
            "createFile",
            "createDirectory",
            "createDirectories",
            "createTempFile",
            "createTempDirectory");

    WritesFiles() {
      super("a method of Files that writes");
    }

    @Override
    public boolean test(JavaMethodCall call) {
      List<JavaClass> parameters = call.getTarget().getRawParameterTypes();
      String name = call.getName();
      return call.getTargetOwner().isEquivalentTo(Files.class)
          && (NAMES.contains(name)
              || (name.equals("copy") && parameters.get(1).isEquivalentTo(Path.class)));
    }
  }

  private static final class ArrayType extends DescribedPredicate<JavaClass> {
    ArrayType() {
      super("an array");
    }

    @Override
    public boolean test(JavaClass type) {
      return type.isArray();
    }
  }
}
