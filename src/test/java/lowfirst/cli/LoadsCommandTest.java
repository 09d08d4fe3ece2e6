package lowfirst.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import lowfirst.cli.process.ExitStatus;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LoadsCommandTest {
  private static final String KIT = Path.of("sample-boms", "bell-player").toString();

  @TempDir private Path folder;

  @Test
  void each_channel_gets_one_line_that_a_beginner_understands() throws IOException {
    Path pdf = folder.resolve("loads.pdf");
    Outcome result = Outcome.of("loads", KIT, "--pdf", pdf.toString());
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
    Outcome result = Outcome.of("loads", KIT, "--csv");
    String header = result.out().lines().findFirst().orElseThrow();
    assertEquals(
        "section,table,of,name,check,verdict,actual,allowed,margin,formula,inputs,missing", header);
    assertTrue(result.out().lines().filter(line -> line.contains(",channel,")).count() > 32 * 15);
  }

  @Test
  void the_symbols_that_a_datasheet_may_use_are_listed() {
    Outcome result = Outcome.of("loads", "--symbols", "--csv");
    assertEquals(ExitStatus.OK, result.status());
    assertTrue(
        result.out().lines().anyMatch(line -> line.contains("RDSon,") && line.contains("VGS=")));
  }

  @Test
  void a_folder_that_is_missing_is_made() {
    Path pdf = folder.resolve("no/such/folder/x.pdf");
    Outcome.of("loads", KIT, "--pdf", pdf.toString());
    assertTrue(Files.isRegularFile(pdf));
  }

  @Test
  void a_file_that_cannot_be_written_is_said_so_and_the_old_one_stays() throws IOException {
    Files.writeString(folder.resolve("x.pdf"), "the old one");
    Files.createDirectory(folder.resolve(".x.pdf.part"));

    Outcome result = Outcome.of("loads", KIT, "--pdf", folder.resolve("x.pdf").toString());

    assertEquals(ExitStatus.CANNOT_READ_OR_WRITE, result.status());
    assertTrue(result.err().contains("can't write"), result.err());
    assertEquals("the old one", Files.readString(folder.resolve("x.pdf")));
  }

  @Test
  void a_folder_is_no_file_to_write_to() throws IOException {
    Path empty = Files.createDirectory(folder.resolve("empty"));
    for (String name : new String[] {empty.toString(), "/"}) {
      Outcome result = Outcome.of("loads", KIT, "--pdf", name);
      assertEquals(ExitStatus.CANNOT_READ_OR_WRITE, result.status());
      assertTrue(result.err().contains("it is a folder; name a file in it"), result.err());
    }
    assertTrue(Files.isDirectory(empty));
  }

  @Test
  void a_channel_that_a_fault_left_out_is_not_passed_over_in_silence() throws IOException {
    Files.writeString(folder.resolve("bom.csv"), "designators,quantity,value\nR1,1,4k7\n");
    Files.writeString(folder.resolve("rails.csv"), "rail,voltage\nbells,24 litres\n");

    Outcome result = Outcome.of("loads", folder.toString());

    assertEquals(ExitStatus.FINDINGS, result.status());
    assertTrue(result.err().startsWith("lowfirst: the tables have faults ("), result.err());
  }
}
