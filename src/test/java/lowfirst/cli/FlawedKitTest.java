package lowfirst.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import lowfirst.cli.file.KitFolder;
import lowfirst.intake.KitReader;
import lowfirst.intake.KitReading;
import lowfirst.problem.Kind;
import lowfirst.problem.Severity;
import org.junit.jupiter.api.Test;

/** The kit with everything wrong: {@code FAULTS.csv} was written by hand, beside each flaw. */
class FlawedKitTest {
  private static final Path KIT = Path.of("sample-boms", "bell-player-flawed");

  /** What the kit folder can't hold, each with why. */
  private static final Set<Kind> NOT_IN_THE_FOLDER =
      EnumSet.of(
          // a table over 64 MB has no place in a repository; KitFolder's own test makes one
          Kind.FILE_TOO_LARGE,
          // found when the steps are put in order, not when the tables are checked
          Kind.ORDER_CYCLE);

  @Test
  void check_finds_every_flaw_where_it_stands_and_nothing_else() throws IOException {
    Set<String> found =
        KitReader.read(KitFolder.read(KIT)).problems().stream()
            .map(
                problem ->
                    problem.kind() + "," + problem.place().file() + "," + problem.place().line())
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> expected =
        rows().stream()
            .map(FlawedKitTest::kindFileAndLine)
            .collect(Collectors.toCollection(TreeSet::new));
    var missed = new TreeSet<>(expected);
    missed.removeAll(found);
    var unexpected = new TreeSet<>(found);
    unexpected.removeAll(expected);
    assertEquals("missed [], unexpected []", "missed " + missed + ", unexpected " + unexpected);
  }

  @Test
  void every_kind_of_problem_is_in_the_kit_or_is_said_to_be_impossible_there() throws IOException {
    Set<Kind> shown = EnumSet.noneOf(Kind.class);
    rows().forEach(row -> shown.add(Kind.valueOf(row.substring(0, row.indexOf(',')))));
    assertEquals(EnumSet.complementOf(EnumSet.copyOf(NOT_IN_THE_FOLDER)), shown);
  }

  /** The verbs that don't show cautions never work them out. */
  @Test
  void a_fault_is_known_before_cautions_are_looked_for() throws IOException {
    KitReading reading = KitReader.read(KitFolder.read(KIT));
    long before = reading.faults();
    assertEquals(
        reading.problems().stream().filter(one -> one.severity() == Severity.FAULT).count(),
        before);
  }

  private static List<String> rows() throws IOException {
    return Files.readAllLines(KIT.resolve("FAULTS.csv")).stream().skip(1).toList();
  }

  private static String kindFileAndLine(String row) {
    return String.join(",", List.of(row.split(",")).subList(0, 3));
  }
}
