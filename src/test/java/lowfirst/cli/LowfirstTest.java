package lowfirst.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lowfirst.cli.process.Surroundings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LowfirstTest {

  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @Test
  void without_a_verb_the_usage_is_shown_on_the_error_stream_only() {
    var out = new ByteArrayOutputStream();

    int status = run(new PrintStream(out, true, StandardCharsets.UTF_8));

    assertEquals(2, status);
    assertEquals("", out.toString(StandardCharsets.UTF_8));
    assertTrue(told().contains("Usage: lowfirst"), told());
    assertTrue(told().strip().endsWith("a verb is missing, for example: demo"), told());
  }

  @Test
  void an_unknown_verb_is_a_usage_error() {
    assertEquals(2, run(new PrintStream(OutputStream.nullOutputStream()), "solder"));
    assertTrue(told().contains("solder"), told());
  }

  @Test
  void a_wrong_option_is_told_in_few_lines_with_what_was_meant() {
    assertEquals(2, run(new PrintStream(OutputStream.nullOutputStream()), "tick", "--stat", "x"));
    assertTrue(told().contains("--state"), told());
    assertTrue(told().lines().count() <= 3, told());
  }

  @ParameterizedTest
  @ValueSource(ints = {60, 72})
  void help_is_as_narrow_as_the_terminal(int columns) {
    for (Verb verb : Verb.all()) {
      var out = new ByteArrayOutputStream();
      Lowfirst.run(
          new String[] {verb.word(), "--help"},
          new Surroundings(
              new PrintStream(out, true, StandardCharsets.UTF_8),
              new PrintStream(err, true, StandardCharsets.UTF_8),
              Path.of("").toAbsolutePath(),
              Clock.systemUTC(),
              Map.of("COLUMNS", "" + columns),
              Surroundings.Terminal.PERSON));
      for (String line : out.toString(StandardCharsets.UTF_8).split("\n")) {
        assertTrue(line.length() <= columns, line);
      }
    }
  }

  @Test
  void an_error_of_the_virtual_machine_is_reported_as_our_bug_with_its_own_status() {
    var broken =
        new PrintStream(OutputStream.nullOutputStream()) {
          @Override
          public void write(byte[] bytes, int offset, int length) {
            throw new StackOverflowError("injected");
          }
        };

    assertEquals(70, run(broken, "code", "4k7"));
    assertTrue(told().startsWith("lowfirst: this is a bug of ours, please report it:"), told());
  }

  @Test
  void output_that_a_full_disk_loses_is_said_and_is_no_success() {
    var full =
        new PrintStream(
            new OutputStream() {
              @Override
              public void write(int one) throws IOException {
                throw new IOException("No space left on device");
              }
            });

    assertEquals(3, run(full, "code", "104K"));
    assertEquals(
        "lowfirst: not all of the output could be written: the disk is full, or its reader"
            + " stopped early",
        told().strip());
  }

  @Test
  void without_its_font_the_program_says_so_and_the_old_sheets_stay(@TempDir Path folder)
      throws Exception {
    Path old = Files.writeString(folder.resolve("sort-sheet.pdf"), "the old one");
    String fontless =
        Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
            .filter(entry -> !entry.contains("openpdf-fonts"))
            .collect(Collectors.joining(File.pathSeparator));
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                fontless,
                Main.class.getName(),
                "sheets",
                Path.of("sample-boms", "bell-player").toString(),
                "--into",
                folder.toString())
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

    assertEquals(3, process.waitFor(), said);
    assertTrue(said.contains("font LiberationSans-Regular.ttf is missing"), said);
    assertTrue(said.contains("install the program again"), said);
    assertEquals("the old one", Files.readString(old));
  }

  private String told() {
    return err.toString(StandardCharsets.UTF_8);
  }

  private int run(PrintStream out, String... arguments) {
    return Lowfirst.run(
        arguments,
        new Surroundings(
            out,
            new PrintStream(err, true, StandardCharsets.UTF_8),
            Path.of("").toAbsolutePath(),
            Clock.systemUTC(),
            Map.of(),
            Surroundings.Terminal.FILE));
  }
}
