package org.hibernacle;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitCallTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.text.DecimalFormat;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.Phrase;
import org.hibernacle.model.SheetTable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The chapters of the program and what each may lean on: the table is the test. */
class ArchitectureTest {
  private static final String ROOT = "org.hibernacle";
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages(ROOT);

  private static final String POI = "org.apache.poi..";
  private static final String XML_BEANS = "org.openxmlformats..";

  /**
   * The keeper's own sheets, which the report hands on as they were found, and what is wrong with a
   * template.
   */
  private static final DescribedPredicate<JavaClass> CARRIED =
      JavaClass.Predicates.belongToAnyOf(SheetTable.class, Diagnostic.class, Phrase.class);

  /** Chapter, own packages it may import, third-party packages it may import. */
  private static final Map<String, List<List<String>>> TABLE = new LinkedHashMap<>();

  static {
    row("model", List.of(), List.of());
    row("input", List.of("model"), List.of(POI, XML_BEANS, "org.apache.commons.."));
    row("climate", List.of("model"), List.of("org.shredzone.commons.suncalc.."));
    row("thermal", List.of("model", "climate"), List.of());
    row("physiology", List.of("model", "climate"), List.of());
    row("planning", List.of("model", "climate", "thermal", "physiology"), List.of());
    row(
        "review",
        List.of("model", "climate", "thermal", "physiology", "planning"),
        List.of("org.hipparchus.."));
    row(
        "report",
        List.of("model", "climate", "thermal", "physiology", "planning", "review"),
        List.of());
    row("report.xlsx", List.of("report"), List.of(POI, XML_BEANS));
    row("report.pdf", List.of("report"), List.of("com.lowagie.."));
    row("report.ics", List.of("report"), List.of("net.fortuna.ical4j.."));
    row(
        "cli",
        List.of(
            "model",
            "input",
            "climate",
            "thermal",
            "physiology",
            "planning",
            "review",
            "report",
            "report.xlsx",
            "report.pdf",
            "report.ics"),
        List.of("picocli.."));
  }

  private static void row(String chapter, List<String> own, List<String> thirdParty) {
    TABLE.put(chapter, List.of(own, thirdParty));
  }

  private static final ArchRule NO_MACHINE =
      noClasses()
          .that()
          .resideOutsideOfPackage(ROOT + ".cli")
          .should()
          .accessTargetWhere(calls("clock, locale, zone or environment", t -> asksTheMachine(t)))
          .because("equal inputs must give equal bytes on every day and on every machine");

  private static final ArchRule NAMED_LOCALE =
      noClasses()
          .should()
          .accessTargetWhere(calls("the default locale", t -> takesTheDefaultLocale(t)))
          .because("a comma is not a point, and an i is not everywhere an i");

  /** A subclass with its draws fixed has to call its parent's constructor. */
  private static final DescribedPredicate<JavaAccess<?>> FROM_A_GENERATOR_OF_OUR_OWN =
      DescribedPredicate.describe(
          "from a generator of our own",
          access -> access.getOriginOwner().isAssignableTo("java.security.SecureRandom"));

  private static final ArchRule NO_CHANCE =
      noClasses()
          .should()
          .accessTargetWhere(
              calls("chance without a seed", t -> isUnseeded(t))
                  .and(DescribedPredicate.not(FROM_A_GENERATOR_OF_OUR_OWN)))
          .because("two runs on equal inputs give equal bytes");

  private static final ArchRule NO_PRINTING =
      noClasses()
          .that()
          .resideOutsideOfPackage(ROOT + ".cli")
          .should()
          .accessTargetWhere(
              DescribedPredicate.describe("standard streams or the exit", a -> isOutput(a)))
          .because("standard output is for the summary and the paths written, nothing else");

  private static DescribedPredicate<JavaAccess<?>> calls(
      String what, Predicate<CodeUnitCallTarget> test) {
    return DescribedPredicate.describe(
        what, access -> access.getTarget() instanceof CodeUnitCallTarget t && test.test(t));
  }

  private static boolean asksTheMachine(CodeUnitCallTarget target) {
    String owner = target.getOwner().getName();
    String name = target.getName();
    boolean bare = target.getRawParameterTypes().isEmpty();
    if (owner.startsWith("java.time.")) {
      boolean now = name.equals("now") && (bare || takesA(target, "ZoneId"));
      return now || name.startsWith("system");
    }
    return switch (owner) {
      case "java.lang.System" ->
          Set.of("currentTimeMillis", "nanoTime", "getenv", "getProperty").contains(name);
      case "java.util.Locale", "java.util.TimeZone" ->
          Set.of("getDefault", "setDefault").contains(name);
      case "java.util.Date", "java.util.GregorianCalendar" -> name.equals("<init>") && bare;
      case "java.util.Calendar" -> name.equals("getInstance");
      default -> false;
    };
  }

  private static boolean takesTheDefaultLocale(CodeUnitCallTarget target) {
    boolean given = takesA(target, "Locale");
    return switch (target.getOwner().getName() + "." + target.getName()) {
      case "java.lang.String.toLowerCase",
          "java.lang.String.toUpperCase",
          "java.lang.String.format",
          "java.lang.String.formatted",
          "java.util.Formatter.<init>",
          "java.util.Scanner.<init>",
          "java.util.ResourceBundle.getBundle",
          "java.io.PrintWriter.printf",
          "java.io.PrintWriter.format",
          "java.io.PrintStream.printf",
          "java.io.PrintStream.format",
          "java.text.NumberFormat.getInstance",
          "java.text.NumberFormat.getNumberInstance",
          "java.text.NumberFormat.getIntegerInstance",
          "java.text.Collator.getInstance",
          "java.text.MessageFormat.<init>",
          "java.text.SimpleDateFormat.<init>",
          "java.text.DecimalFormatSymbols.<init>",
          "java.text.DecimalFormatSymbols.getInstance",
          "java.time.format.DateTimeFormatter.ofPattern" ->
          !given;
      case "java.text.MessageFormat.format" -> target.getRawParameterTypes().size() == 2;
      case "java.text.DecimalFormat.<init>" -> !takesA(target, "DecimalFormatSymbols");
      default -> false;
    };
  }

  private static boolean isUnseeded(CodeUnitCallTarget target) {
    String name = target.getName();
    return switch (target.getOwner().getName()) {
      case "java.util.Random", "java.util.SplittableRandom", "java.security.SecureRandom" ->
          name.equals("<init>") && target.getRawParameterTypes().isEmpty();
      case "java.lang.Math", "java.lang.StrictMath" -> name.equals("random");
      case "java.util.concurrent.ThreadLocalRandom" -> true;
      case "java.util.UUID" -> name.equals("randomUUID");
      case "java.util.Collections" -> name.equals("shuffle") && !takesA(target, "Random");
      default -> false;
    };
  }

  private static boolean isOutput(JavaAccess<?> access) {
    String owner = access.getTarget().getOwner().getName();
    String name = access.getTarget().getName();
    return name.equals("printStackTrace")
        || (owner.equals("java.lang.System") && Set.of("out", "err", "in", "exit").contains(name))
        || (owner.equals("java.lang.Runtime") && Set.of("exit", "halt").contains(name));
  }

  private static boolean takesA(CodeUnitCallTarget target, String simpleName) {
    return target.getRawParameterTypes().stream()
        .anyMatch(type -> type.getSimpleName().equals(simpleName));
  }

  @Test
  void everyPackageIsInTheTable() {
    Set<String> found = new TreeSet<>();
    CLASSES.forEach(c -> found.add(c.getPackageName().substring(ROOT.length() + 1)));
    assertEquals(new TreeSet<>(TABLE.keySet()), found);
  }

  @TestFactory
  Stream<DynamicTest> everyChapterImportsOnlyWhatTheTableAllows() {
    return TABLE.entrySet().stream()
        .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> rule(e.getKey()).check(CLASSES)));
  }

  private static ArchRule rule(String chapter) {
    List<String> own = TABLE.get(chapter).get(0);
    List<String> thirdParty = TABLE.get(chapter).get(1);
    Stream<String> allowed =
        Stream.of(
                Stream.of("java..", "org.jspecify..", ROOT + "." + chapter),
                own.stream().map(name -> ROOT + "." + name),
                thirdParty.stream())
            .flatMap(s -> s);
    DescribedPredicate<JavaClass> known =
        JavaClass.Predicates.resideInAnyPackage(allowed.toArray(String[]::new));
    return classes()
        .that()
        .resideInAPackage(ROOT + "." + chapter)
        .should()
        .onlyDependOnClassesThat(chapter.equals("report.xlsx") ? known.or(CARRIED) : known)
        .because("chapter " + chapter + " is read after " + own + " and must make sense with them");
  }

  @Test
  void chaptersFormNoCycle() {
    slices()
        .matching(ROOT + ".(**)")
        .should()
        .beFreeOfCycles()
        .because("a book is read from front to back")
        .check(CLASSES);
  }

  @Test
  void onlyTheCommandLineAsksTheMachine() {
    NO_MACHINE.check(CLASSES);
  }

  @Test
  void everyNumberAndWordIsWrittenInANamedLocale() {
    NAMED_LOCALE.check(CLASSES);
  }

  @Test
  void nothingIsLeftToChance() {
    NO_CHANCE.check(CLASSES);
  }

  @Test
  void onlyTheCommandLinePrintsOrStops() {
    NO_PRINTING.check(CLASSES);
  }

  @Test
  void workbookTypesStayBehindTheReadersAndWriters() {
    noClasses()
        .that()
        .resideOutsideOfPackages(ROOT + ".input", ROOT + ".report.xlsx")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(POI, XML_BEANS)
        .because("another workbook library should touch two packages only")
        .check(CLASSES);
  }

  /** A rule that finds nothing anywhere would be no rule. */
  @Test
  void theRulesSeeWhatTheyForbid() {
    JavaClasses offender = new ClassFileImporter().importClasses(Offender.class);
    assertEquals(5, NO_MACHINE.evaluate(offender).getFailureReport().getDetails().size());
    assertEquals(4, NAMED_LOCALE.evaluate(offender).getFailureReport().getDetails().size());
    assertEquals(3, NO_CHANCE.evaluate(offender).getFailureReport().getDetails().size());
    assertEquals(3, NO_PRINTING.evaluate(offender).getFailureReport().getDetails().size());
  }

  /** Does what no class may. */
  @SuppressWarnings("unused")
  private static final class Offender {
    List<Object> machine() {
      return List.of(
          LocalDate.now(),
          LocalDate.now(ZoneId.systemDefault()),
          Clock.systemUTC(),
          Locale.getDefault());
    }

    List<Object> locale() {
      return List.of(
          "a".toUpperCase(), String.format("%f", 1.0), "%f".formatted(1.0), new DecimalFormat("0"));
    }

    List<Object> chance() {
      return List.of(new Random(), Math.random(), UUID.randomUUID());
    }

    void prints(Exception e) {
      System.out.println(e);
      e.printStackTrace();
      System.exit(1);
    }

    /** These are as they should be. */
    List<Object> good(Clock clock) {
      return List.of(
          new Random(5),
          String.format(Locale.ROOT, "%f", 1.0),
          "a".toUpperCase(Locale.ROOT),
          LocalDate.of(2026, 1, 1));
    }
  }
}
