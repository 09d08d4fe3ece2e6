package lowfirst.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import lowfirst.cli.process.ExitStatus;
import lowfirst.cli.process.Surroundings;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The verb steps, in-process: whole outputs. Each folder of golden/steps is a case: a kit, what the
 * terminal shows and what machines get, checked by hand against the tables of the kit.
 */
class StepsCommandTest {
  private static final Path CASES = Path.of("src/test/resources/golden/steps");

  @TempDir private Path folder;

  @TestFactory
  Stream<DynamicTest> whole_outputs_are_as_expected_however_the_tables_are_written()
      throws IOException {
    Map<String, UnaryOperator<String>> writings =
        Map.of(
            "as it stands", text -> text,
            "with CRLF", text -> text.replace("\n", "\r\n"),
            "with a byte order mark", text -> "\uFEFF" + text,
            "with its rows the other way round", StepsCommandTest::reversed);
    List<DynamicTest> tests = new ArrayList<>();
    for (Path each : cases()) {
      writings.forEach(
          (how, writing) ->
              tests.add(
                  DynamicTest.dynamicTest(
                      each.getFileName() + " " + how, () -> check(each, writing))));
    }
    return tests.stream();
  }

  private void check(Path each, UnaryOperator<String> writing) throws IOException {
    Path kit = Files.createTempDirectory(folder, "kit");
    KitCopy.of(each.resolve("kit"), kit, writing);
    Outcome text = Outcome.of("steps", kit.toString());
    assertEquals("", text.err());
    assertEquals(read(each.resolve("expected.txt")), text.out());
    assertEquals(ExitStatus.OK, text.status());
    assertEquals(text, Outcome.of("steps", kit.toString()));
    Outcome csv = Outcome.of("steps", "--csv", kit.toString());
    assertEquals(read(each.resolve("expected.csv")), csv.out().replace("\r\n", "\n"));
  }

  @Test
  void every_line_fits_the_width_that_is_asked_for() throws IOException {
    for (Path each : cases()) {
      String narrow = Outcome.of("steps", "--width", "60", each.resolve("kit").toString()).out();
      for (String line : narrow.split("\n")) {
        assertTrue(line.codePointCount(0, line.length()) <= 60, line);
      }
    }
  }

  @Test
  void fewer_parts_a_batch_make_more_batches() throws IOException {
    String kit = cases().get(0).resolve("kit").toString();
    String usual = Outcome.of("steps", kit).out();
    String single = Outcome.of("steps", "--parts-per-batch", "1", kit).out();
    assertFalse(usual.contains("Batch 9"));
    assertTrue(single.contains("Batch 9"), single);
  }

  @Test
  void options_out_of_range_are_refused_with_what_to_write() throws IOException {
    String kit = cases().get(0).resolve("kit").toString();
    for (String[] arguments :
        new String[][] {
          {"steps", "--parts-per-batch", "0", kit},
          {"steps", "--height-spread", "-1", kit},
          {"steps", "--height-spread", "NaN", kit},
          {"steps", "--width", "10", kit},
        }) {
      Outcome outcome = Outcome.of(arguments);
      assertEquals(ExitStatus.USAGE, outcome.status(), arguments[1]);
      assertEquals("", outcome.out());
      assertTrue(outcome.err().contains(arguments[1]), outcome.err());
    }
  }

  @Test
  void what_is_no_number_is_refused_in_plain_words() throws IOException {
    String kit = cases().get(0).resolve("kit").toString();
    assertEquals(
        "Invalid value for option '--height-spread': 'abc' is no number",
        Outcome.of("steps", "--height-spread", "abc", kit).err().lines().findFirst().orElse(""));
    assertEquals(
        "Invalid value for option '--width': '1.5' is no whole number",
        Outcome.of("steps", "--width", "1.5", kit).err().lines().findFirst().orElse(""));
  }

  @Test
  void a_kit_with_nothing_to_fit_says_so_and_is_a_finding() throws IOException {
    Files.writeString(folder.resolve("bom.csv"), "designators,quantity,value\n");
    Outcome outcome = Outcome.of("steps", folder.toString());
    assertEquals(ExitStatus.FINDINGS, outcome.status());
    assertTrue(outcome.out().contains("Nothing in this kit is to be fitted."), outcome.out());
  }

  private static List<Path> cases() throws IOException {
    try (Stream<Path> folders = Files.list(CASES)) {
      List<Path> found = folders.sorted().toList();
      assertFalse(found.isEmpty());
      return found;
    }
  }

  private static String reversed(String text) {
    List<String> lines = new ArrayList<>(List.of(text.split("\n")));
    if (!lines.get(0).contains(",")) {
      return text;
    }
    List<String> rows = lines.subList(1, lines.size());
    Collections.reverse(rows);
    return String.join("\n", lines) + "\n";
  }

  private static String read(Path file) throws IOException {
    return Files.readString(file, StandardCharsets.UTF_8);
  }

  /** Every verb asks the same: a file gets what the text likes, a terminal what it shows. */
  @Test
  void in_a_terminal_the_text_is_no_wider_than_it_shows() {
    assertEquals(100, columns(Surroundings.Terminal.FILE, "60"));
    assertEquals(80, columns(Surroundings.Terminal.PERSON, ""));
    assertEquals(60, columns(Surroundings.Terminal.PERSON, "60"));
    assertEquals(40, columns(Surroundings.Terminal.PERSON, "20"));
    assertEquals(100, columns(Surroundings.Terminal.PERSON, "200"));
  }

  private static int columns(Surroundings.Terminal terminal, String stated) {
    var nowhere = new PrintStream(OutputStream.nullOutputStream());
    var surroundings =
        new Surroundings(
            nowhere, nowhere, Path.of(""), Clock.systemUTC(), Map.of("COLUMNS", stated), terminal);
    return surroundings.columns(100);
  }
}
