package lowfirst.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import lowfirst.cli.process.ExitStatus;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The verb sort, in-process: the whole output for a small kit. Quantities were counted from its
 * tables by hand, and every meter limit worked out by hand from (limit ± 2·n·d/√3)/(1 ∓ 2·p/√3).
 */
class SortCommandTest {
  private static final Path CASE = Path.of("src/test/resources/golden/sort/few-parts");

  @TempDir private Path folder;

  @Test
  void a_small_kit_is_sorted_as_worked_out_by_hand() throws IOException {
    Outcome outcome = Outcome.of("sort", CASE.resolve("kit").toString());
    assertEquals("", outcome.err());
    assertEquals(Files.readString(CASE.resolve("expected.txt")), outcome.out());
    assertEquals(ExitStatus.FINDINGS, outcome.status());
    assertEquals(outcome, Outcome.of("sort", CASE.resolve("kit").toString()));
  }

  @Test
  void line_ends_and_marks_of_the_tables_change_nothing() throws IOException {
    try (Stream<Path> files = Files.list(CASE.resolve("kit"))) {
      for (Path file : files.toList()) {
        String text = Files.readString(file).replace("\n", "\r\n");
        String mark = file.toString().endsWith(".csv") ? "\uFEFF" : "";
        Files.writeString(folder.resolve(file.getFileName()), mark + text);
      }
    }
    assertEquals(
        Files.readString(CASE.resolve("expected.txt")),
        Outcome.of("sort", folder.toString()).out());
  }

  @Test
  void machines_get_every_table_in_one() {
    List<String> lines =
        Outcome.of("sort", "--csv", CASE.resolve("kit").toString()).out().lines().toList();
    assertTrue(lines.get(0).startsWith("section,table,"), lines.get(0));
    assertEquals(1, lines.stream().filter(line -> line.contains("[BN BK OG BN]")).count());
    assertTrue(lines.stream().anyMatch(line -> line.contains("9.82 kΩ to 10.19 kΩ")));
  }

  @Test
  void labels_have_a_line_for_each_compartment() {
    Outcome outcome = Outcome.of("sort", "--labels", "--csv", CASE.resolve("kit").toString());
    assertEquals(1 + 4, outcome.out().lines().count(), outcome.out());
  }

  @Test
  void a_width_too_narrow_is_refused() {
    Outcome outcome = Outcome.of("sort", "--width", "10", CASE.resolve("kit").toString());
    assertEquals(ExitStatus.USAGE, outcome.status());
    assertTrue(outcome.err().contains("--width: write 40 or more"), outcome.err());
  }
}
