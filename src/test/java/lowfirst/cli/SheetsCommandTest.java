package lowfirst.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lowfirst.cli.process.ExitStatus;
import lowfirst.cli.process.Surroundings;
import lowfirst.sheet.pdf.ArchiveProfile;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.verapdf.pdfa.flavours.PDFAFlavour;

class SheetsCommandTest {
  @TempDir Path home;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @BeforeEach
  void make_a_small_kit() throws Exception {
    Path kit = Files.createDirectories(home.resolve("blinker"));
    Files.writeString(
        kit.resolve("bom.csv"),
        """
        designators,quantity,value,package,part type,description
        R1 R2,2,330R,DIN0207 P10.16,,resistor 5 %
        D1,1,,DO-41 P10.16,1N4007,diode
        """);
    Files.writeString(
        kit.resolve("placements.csv"),
        """
        designator,x mm,y mm,rotation,side
        R1,10,10,0,top
        R2,10,20,0,top
        D1,30,15,90,top
        """);
  }

  private int run(Surroundings.Terminal terminal, String... arguments) {
    out.reset();
    err.reset();
    return Lowfirst.run(
        arguments,
        new Surroundings(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            home,
            Clock.fixed(Instant.parse("2026-03-01T18:00:00Z"), ZoneId.of("UTC")),
            Map.of(),
            terminal));
  }

  private int run(String... arguments) {
    return run(Surroundings.Terminal.FILE, arguments);
  }

  private Path report(String name) {
    return home.resolve("reports/blinker").resolve(name);
  }

  private static String text(Path pdf) throws Exception {
    try (var document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document);
    }
  }

  @Test
  void a_folder_of_two_tables_gives_every_sheet_that_has_something_to_say() throws Exception {
    int status = run("sheets", "blinker");
    assertEquals("", err.toString(StandardCharsets.UTF_8));
    assertEquals(ExitStatus.OK, status);
    assertEquals(
        """
        reports/blinker/sort-sheet.pdf
        reports/blinker/tray-labels.pdf
        reports/blinker/assembly-steps.pdf
        reports/blinker/assembly-book-blinker.pdf
        reports/blinker/first-power-blinker-1.pdf
        reports/blinker/sign-off-blinker-1.pdf
        """
            .replace('/', java.io.File.separatorChar),
        out.toString(StandardCharsets.UTF_8).replace("\r\n", "\n"));
    String record = text(report("sign-off-blinker-1.pdf"));
    assertTrue(record.contains("blinker-1 (1 of 1)"), record);
    assertTrue(record.contains("330 Ω"), record);
  }

  @Test
  void what_was_ticked_comes_out_filled_in() throws Exception {
    assertEquals(
        ExitStatus.OK,
        run("tick", "blinker", "--state", "inspected", "--by", "Ada", "R1", "R2"),
        () -> err.toString(StandardCharsets.UTF_8));
    run("sheets", "blinker", "--only", "sign-off");
    try (var document = Loader.loadPDF(report("sign-off-blinker-1.pdf").toFile())) {
      List<String> values =
          document.getDocumentCatalog().getAcroForm().getFields().stream()
              .map(field -> field.getValueAsString())
              .toList();
      assertTrue(values.contains("Ticked"), values.toString());
      assertTrue(values.contains("Ada"), values.toString());
      assertTrue(values.contains("2026-03-01 18:00"), values.toString());
    }
  }

  @Test
  void every_sheet_of_the_sample_kit_is_fit_for_archive_and_screen_reader() throws Exception {
    String kit = Path.of("sample-boms/bell-player").toAbsolutePath().toString();
    run("sheets", kit, "--into", "out");
    List<String> files = out.toString(StandardCharsets.UTF_8).lines().toList();
    assertTrue(files.size() >= 13, files.toString());
    for (String file : files) {
      byte[] pdf = Files.readAllBytes(home.resolve(file));
      for (var profile : List.of(PDFAFlavour.PDFA_2_A, PDFAFlavour.PDFUA_1)) {
        assertEquals(List.of(), ArchiveProfile.violations(pdf, profile), file);
      }
    }
  }

  @Test
  void two_runs_write_the_same_bytes() throws Exception {
    run("sheets", "blinker");
    byte[] first = Files.readAllBytes(report("assembly-book-blinker.pdf"));
    run("sheets", "blinker");
    assertArrayEquals(first, Files.readAllBytes(report("assembly-book-blinker.pdf")));
  }

  @Test
  void a_sheet_that_cannot_be_written_leaves_the_old_ones_and_no_parts() throws Exception {
    run("sheets", "blinker");
    Path old = report("sign-off-blinker-1.pdf");
    byte[] before = Files.readAllBytes(old);
    // A folder where the last sheet's part has to go: writing fails after the others are ready.
    Path block = Files.createDirectories(report(".sign-off-blinker-1.pdf.part"));
    Files.writeString(block.resolve("x"), "");
    int status = run("sheets", "blinker", "--paper", "letter");
    assertEquals(ExitStatus.CANNOT_READ_OR_WRITE, status);
    assertTrue(err.toString(StandardCharsets.UTF_8).startsWith("lowfirst: can't write "));
    assertArrayEquals(before, Files.readAllBytes(old));
    assertEquals("", out.toString(StandardCharsets.UTF_8));
    try (Stream<Path> files = Files.list(old.getParent())) {
      assertEquals(
          List.of(block), files.filter(file -> file.toString().endsWith(".part")).toList());
    }
  }

  @Test
  void a_file_where_the_folder_should_be_is_said_plainly() throws Exception {
    Files.writeString(home.resolve("taken"), "");
    int status = run("sheets", "blinker", "--into", "taken");
    assertEquals(ExitStatus.CANNOT_READ_OR_WRITE, status);
    assertTrue(
        err.toString(StandardCharsets.UTF_8).contains("a file stands where the folder should be"),
        err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void wrong_options_are_usage_errors_that_say_what_is_right() {
    assertEquals(ExitStatus.USAGE, run("sheets", "blinker", "--paper", "a3"));
    assertTrue(err.toString(StandardCharsets.UTF_8).contains("write a4 or letter"));
    assertEquals(ExitStatus.USAGE, run("sheets", "blinker", "--compartment", "5x5"));
    assertEquals(ExitStatus.USAGE, run("sheets", "blinker", "--only", "nothing"));
    assertTrue(err.toString(StandardCharsets.UTF_8).contains("there are: sort-sheet"));
  }

  @Test
  void a_person_sees_a_bar_and_a_file_sees_none() {
    run(Surroundings.Terminal.PERSON, "sheets", "blinker");
    assertTrue(err.toString(StandardCharsets.UTF_8).contains("] 2 of 6  assembly-steps"));
    assertTrue(err.toString(StandardCharsets.UTF_8).endsWith("\r"), "wiped at the end");
    run(Surroundings.Terminal.FILE, "sheets", "blinker");
    assertEquals("", err.toString(StandardCharsets.UTF_8));
  }
}
