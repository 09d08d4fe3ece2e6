package lowfirst.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LoadsCommandTest {
  private static final String KIT = Path.of("sample-boms", "bell-player").toString();

  @TempDir private Path folder;

  /** What one command line gave. */
  private record Result(int status, String out, String err) {}

  private Result run(String... arguments) {
    var out = new ByteArrayOutputStream();
    var err = new ByteArrayOutputStream();
    int status =
        Lowfirst.run(
            arguments,
            new Surroundings(
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                new ByteArrayInputStream(new byte[0]),
                Path.of("").toAbsolutePath(),
                Clock.systemUTC(),
                Map.of(),
                Surroundings.Terminal.FILE));
    return new Result(
        status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void each_channel_gets_one_line_that_a_beginner_understands() throws IOException {
    Path pdf = folder.resolve("loads.pdf");
    Result result = run("loads", KIT, "--pdf", pdf.toString());
    assertEquals(ExitStatus.FINDINGS, result.status());
    assertTrue(
        result.out().lines().anyMatch(line -> line.contains("carries") && line.contains("up to")),
        result.out());
    assertTrue(result.out().contains("CAUTION"), "cautions stand in it");
    try (var document = Loader.loadPDF(pdf.toFile())) {
      String read = new PDFTextStripper().getText(document);
      assertTrue(read.contains("junction temperature, °C"), "the plot is in it");
      assertTrue(read.contains("Where the numbers come from"));
    }
    assertFalse(Files.exists(folder.resolve("loads.pdf.part")));
  }

  @Test
  void the_table_for_machines_has_every_check_of_every_channel_and_nothing_else() {
    Result result = run("loads", KIT, "--csv");
    String header = result.out().lines().findFirst().orElseThrow();
    assertEquals(
        "section,table,of,name,check,verdict,actual,allowed,margin,formula,inputs,missing", header);
    assertTrue(result.out().lines().filter(line -> line.contains(",channel,")).count() > 32 * 15);
  }

  @Test
  void the_symbols_that_a_datasheet_may_use_are_listed() {
    Result result = run("loads", "--symbols", "--csv");
    assertEquals(ExitStatus.OK, result.status());
    assertTrue(
        result.out().lines().anyMatch(line -> line.contains("RDSon,") && line.contains("VGS=")));
  }

  @Test
  void a_file_that_cannot_be_written_is_said_so() {
    Result result = run("loads", KIT, "--pdf", folder.resolve("no/such/folder/x.pdf").toString());
    assertEquals(ExitStatus.CANNOT_READ_OR_WRITE, result.status());
    assertTrue(result.err().contains("can't write"), result.err());
  }

  @Test
  void a_channel_that_a_fault_left_out_is_not_passed_over_in_silence() throws IOException {
    Files.writeString(folder.resolve("bom.csv"), "designators,quantity,value\nR1,1,4k7\n");
    Files.writeString(folder.resolve("rails.csv"), "rail,voltage\nbells,24 litres\n");

    Result result = run("loads", folder.toString());

    assertEquals(ExitStatus.FINDINGS, result.status());
    assertTrue(result.err().startsWith("lowfirst: the tables have faults ("), result.err());
  }
}
