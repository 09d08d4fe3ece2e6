package lowfirst;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * The map of DEVELOPERS.md, enforced: imports go only downwards, and libraries stay in their rooms.
 */
class MapOfTheCodeTest {

  /** From the lowest floor to the highest; a package may import only what stands before it. */
  private static final List<String> FLOORS =
      List.of(
          "lowfirst.problem",
          "lowfirst.quantity",
          "lowfirst.marking",
          "lowfirst.part",
          "lowfirst.board",
          "lowfirst.intake.column",
          "lowfirst.intake.text",
          "lowfirst.intake.xml",
          "lowfirst.intake.kind",
          "lowfirst.intake.cell",
          "lowfirst.intake.workbook",
          "lowfirst.intake.table",
          "lowfirst.intake.bom",
          "lowfirst.intake.placement",
          "lowfirst.intake.design",
          "lowfirst.intake.shipped",
          "lowfirst.intake.check",
          "lowfirst.intake",
          "lowfirst.assembly",
          "lowfirst.channel.formula",
          "lowfirst.channel.check",
          "lowfirst.channel.data",
          "lowfirst.channel",
          "lowfirst.sorting",
          "lowfirst.swap.subject",
          "lowfirst.swap.rule",
          "lowfirst.swap",
          "lowfirst.progress",
          "lowfirst.sheet.drawing",
          "lowfirst.sheet.document",
          "lowfirst.sheet.body",
          "lowfirst.sheet.wording",
          "lowfirst.sheet.map",
          "lowfirst.sheet.check",
          "lowfirst.sheet.sort",
          "lowfirst.sheet.steps",
          "lowfirst.sheet.loads",
          "lowfirst.sheet.swap",
          "lowfirst.sheet.power",
          "lowfirst.sheet.progress",
          "lowfirst.sheet",
          "lowfirst.sheet.text",
          "lowfirst.sheet.html",
          "lowfirst.sheet.csv",
          "lowfirst.sheet.pdf",
          "lowfirst.store",
          "lowfirst.bench.page",
          "lowfirst.bench.web",
          "lowfirst.bench.screen",
          "lowfirst.bench",
          "lowfirst.cli.process",
          "lowfirst.cli.file",
          "lowfirst.cli.option",
          "lowfirst.cli.manual",
          "lowfirst.cli.verb",
          "lowfirst.cli");

  /** Packages on one floor that may not see each other although one is listed first. */
  private static final List<List<String>> APART =
      List.of(
          List.of("lowfirst.assembly", "lowfirst.intake.."),
          List.of("lowfirst.channel..", "lowfirst.intake.."),
          List.of("lowfirst.channel..", "lowfirst.assembly"),
          List.of("lowfirst.sorting", "lowfirst.intake.."),
          List.of("lowfirst.swap..", "lowfirst.intake.."),
          List.of("lowfirst.intake.bom", "lowfirst.intake.placement"),
          List.of("lowfirst.channel.check", "lowfirst.channel.formula"),
          List.of("lowfirst.intake.shipped", "lowfirst.intake.table"),
          List.of("lowfirst.sheet.html", "lowfirst.sheet.text"),
          List.of("lowfirst.sheet.csv", "lowfirst.sheet.html"),
          List.of("lowfirst.sheet.pdf", "lowfirst.sheet.html"),
          List.of("lowfirst.store", "lowfirst.sheet.pdf"));

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("lowfirst");

  @TestFactory
  Stream<DynamicTest> each_package_imports_only_lower_ones() {
    return FLOORS.stream()
        .map(
            floor ->
                DynamicTest.dynamicTest(
                    floor,
                    () -> {
                      String[] above =
                          FLOORS
                              .subList(FLOORS.indexOf(floor) + 1, FLOORS.size())
                              .toArray(String[]::new);
                      if (above.length > 0) {
                        noClasses()
                            .that()
                            .resideInAPackage(floor)
                            .should()
                            .dependOnClassesThat(resideInAnyPackage(above))
                            .check(CLASSES);
                      }
                    }));
  }

  @TestFactory
  Stream<DynamicTest> rooms_on_one_floor_stay_apart() {
    return APART.stream()
        .map(
            pair ->
                DynamicTest.dynamicTest(
                    pair.toString(),
                    () ->
                        noClasses()
                            .that()
                            .resideInAPackage(pair.get(0))
                            .should()
                            .dependOnClassesThat()
                            .resideInAPackage(pair.get(1))
                            .allowEmptyShould(true)
                            .check(CLASSES)));
  }

  /**
   * Whoever reads a kit knows its tables' columns and how they were understood, not how it is done.
   */
  @Test
  void how_a_kit_is_read_stays_inside() {
    noClasses()
        .that()
        .resideOutsideOfPackage("lowfirst.intake..")
        .should()
        .dependOnClassesThat(
            resideInAnyPackage("lowfirst.intake..")
                .and(
                    not(
                        resideInAnyPackage(
                            "lowfirst.intake",
                            "lowfirst.intake.column",
                            "lowfirst.intake.kind",
                            "lowfirst.intake.shipped",
                            "lowfirst.intake.table"))))
        .check(CLASSES);
  }

  /** One document, many ways to write it: neither knows of the other. */
  @Test
  void writers_know_no_single_sheet_and_no_sheet_a_writer() {
    String[] writers = {
      "lowfirst.sheet.text", "lowfirst.sheet.html", "lowfirst.sheet.csv", "lowfirst.sheet.pdf"
    };
    noClasses()
        .that()
        .resideInAnyPackage(writers)
        .should()
        .dependOnClassesThat(
            resideInAnyPackage("lowfirst.sheet..")
                .and(
                    not(
                        resideInAnyPackage(writers)
                            .or(
                                resideInAnyPackage(
                                    "lowfirst.sheet.drawing", "lowfirst.sheet.document")))))
        .check(CLASSES);
  }

  @Test
  void every_package_is_on_the_map() {
    noClasses().should().resideOutsideOfPackages(FLOORS.toArray(String[]::new)).check(CLASSES);
  }

  @TestFactory
  Stream<DynamicTest> libraries_stay_in_their_rooms() {
    return Stream.of(
            List.of(
                "org.apache.commons.csv..",
                "lowfirst.intake.text",
                "lowfirst.intake.shipped",
                "lowfirst.sheet.csv"),
            List.of("org.dhatim.fastexcel..", "lowfirst.intake.workbook"),
            List.of("org.jsoup..", "lowfirst.intake.workbook"),
            List.of("org.apache.pdfbox..", "lowfirst.sheet.pdf"),
            List.of("java.sql..", "lowfirst.store"),
            List.of("com.google.zxing..", "lowfirst.sheet.progress"),
            List.of("picocli..", "lowfirst.cli.."),
            List.of("com.sun.net.httpserver..", "lowfirst.bench", "lowfirst.bench.web"))
        .map(
            room ->
                DynamicTest.dynamicTest(
                    room.get(0),
                    () ->
                        noClasses()
                            .that()
                            .resideOutsideOfPackages(
                                room.subList(1, room.size()).toArray(String[]::new))
                            .should()
                            .dependOnClassesThat()
                            .resideInAPackage(room.get(0))
                            .check(CLASSES)));
  }

  @Test
  void the_core_touches_no_clock_file_socket_or_log() {
    noClasses()
        .that()
        .resideInAnyPackage(
            FLOORS.stream()
                .filter(
                    floor ->
                        !floor.startsWith("lowfirst.cli")
                            && !List.of(
                                    "lowfirst.sheet.pdf",
                                    "lowfirst.store",
                                    "lowfirst.bench.web",
                                    "lowfirst.bench.screen",
                                    "lowfirst.bench")
                                .contains(floor))
                .toArray(String[]::new))
        .should()
        .dependOnClassesThat(
            resideInAnyPackage(
                    "java.nio.file..", "java.net..", "java.util.logging..", "org.slf4j..")
                .or(
                    com.tngtech.archunit.base.DescribedPredicate.describe(
                        "clocks, files and randomness",
                        type ->
                            List.of(
                                    "java.io.File",
                                    "java.io.FileInputStream",
                                    "java.io.FileOutputStream",
                                    "java.time.Clock",
                                    "java.security.SecureRandom",
                                    "java.util.concurrent.ThreadLocalRandom")
                                .contains(type.getName()))))
        .check(CLASSES);
  }
}
