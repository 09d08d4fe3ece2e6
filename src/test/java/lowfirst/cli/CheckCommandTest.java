package lowfirst.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import lowfirst.cli.process.ExitStatus;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The verb check, run in-process: what it prints, and how it exits. */
class CheckCommandTest {
  private static final String BOM =
      "designators,quantity,value,package\n\"R1, R2\",2,1k,DIN0207\nQ1,1,BC547,TO-92\n";
  private static final String PLACEMENTS =
      "designator,x mm,y mm,rotation,side\nR1,10,10,0,top\nR2,10,20,0,top\nQ1,30,10,90,top\n";

  @TempDir private Path directory;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @BeforeEach
  void a_kit_with_two_tables() throws IOException {
    write("kit/bom.csv", BOM);
    write("kit/placements.csv", PLACEMENTS);
  }

  @Test
  void a_clean_kit_is_said_to_agree() {
    assertEquals(ExitStatus.OK, run("check", "kit"));
    assertEquals(
        """
        Check of kit
        ============

        Summary
        -------

        kit    2 BOM lines, 3 designators, 3 parts to buy, 3 placements
        found  0 faults, 0 cautions, 0 notes

        The tables agree. This does not replace looking at the boards and the parts.
        """,
        out());
    assertEquals("", err());
  }

  @Test
  void a_bom_alone_is_never_said_to_agree() throws IOException {
    Files.delete(directory.resolve("kit/placements.csv"));
    run("check", "kit");
    assertClosing(
        "There was nothing to compare: kit has no placements to hold its BOM against. Look at the"
            + " faults and cautions before you solder.");
  }

  @Test
  void a_placement_list_alone_is_never_said_to_agree() {
    run("check", "--placements", "kit/placements.csv");
    String flat = out().replaceAll("\\s+", " ");
    assertTrue(flat.contains("There was nothing to compare: "), flat);
    assertTrue(flat.contains(" has no BOM lines to hold its placement list against."), flat);
    assertFalse(flat.contains("The tables agree"), flat);
  }

  @Test
  void one_board_of_two_without_placements_is_named() throws IOException {
    write("kit/lamps.csv", BOM);
    write(
        "kit/boards.csv", "board,bom,placements\nmain,bom.csv,placements.csv\nlamps,lamps.csv,\n");
    run("check", "kit");
    String flat = out().replaceAll("\\s+", " ");
    assertTrue(
        flat.contains(
            "Not every board could be compared: lamps has no placements to hold its BOM against."),
        flat);
  }

  @Test
  void an_accepted_swap_does_not_change_the_bom_that_is_checked() throws IOException {
    Path sample = Path.of("sample-boms/bell-player").toAbsolutePath();
    long lines;
    try (var rows = Files.lines(sample.resolve("driver/bom.csv"))) {
      lines = rows.filter(line -> !line.isBlank() && !line.startsWith("#")).count() - 1;
    }
    run("check", sample.toString());
    assertTrue(out().contains("2 built, each with " + lines + " BOM lines"), out());
  }

  @Test
  void a_flawed_kit_shows_each_fault_with_its_place_and_remedy() throws IOException {
    write("kit/bom.csv", BOM + "R3,12 cm,1k,DIN0207\n");
    assertEquals(ExitStatus.FINDINGS, run("check", "kit"));
    assertEquals(
        """
        Check of kit
        ============

        bom.csv
        -------

                 line  cell           what is wrong                what to do
        -------  ----  -------------  ---------------------------  ---------------------------------------
        caution     4  designators:   R3: no position in the       add it there, or mark the line as not
                       R3             placement list               fitted

        fault       4  quantity:      "12 cm" is no whole number   write a whole number, here the
                       12 cm          of parts                     designators were counted

        Summary
        -------

        kit    3 BOM lines, 4 designators, 4 parts to buy, 3 placements
        found  1 fault, 1 caution, 0 notes

        Look at the faults and cautions before you solder.
        """,
        out());
  }

  @Test
  void machines_get_one_table() throws IOException {
    write("kit/bom.csv", BOM + "R3,12 cm,1k,DIN0207\n");
    assertEquals(ExitStatus.FINDINGS, run("check", "kit", "--csv"));
    assertTrue(
        out()
            .contains(
                "bom.csv,,fault,4,quantity: 12 cm,\"\"\"12 cm\"\" is no whole number of parts\","
                    + "\"write a whole number, here the designators were counted\"\r\n"),
        out());
  }

  @Test
  void a_bom_alone_can_be_checked_under_any_name() throws IOException {
    write("parts of board.tsv", "Ref\tValue\tQty\nR1,R2\t1k\t2\n");
    assertEquals(ExitStatus.FINDINGS, run("check", "--bom", "parts of board.tsv"));
    assertTrue(out().contains("1 BOM line, 2 designators, 2 parts to buy, 0 placements"), out());
    run("check", "--csv", "--bom", "parts of board.tsv");
    assertTrue(out().contains("there is no placement list beside this BOM"), out());
  }

  @Test
  void explain_shows_how_each_column_was_understood() {
    assertEquals(ExitStatus.OK, run("check", "--explain", "kit"));
    assertTrue(out().contains("How placements.csv was understood"), out());
    assertTrue(out().contains("coordinates in mm, as the header says"), out());
    assertTrue(out().contains("R1 | R2 | Q1"), out());
  }

  @Test
  void a_column_told_is_used_and_remembered_in_the_kit() throws IOException {
    write("kit/bom.csv", "designators,value,ours\nR1,?,1k\nR2,?,1k\nQ1,?,BC547\n");
    run("check", "kit", "--column", "bom.value=ours");
    assertFalse(out().contains("was not understood"), out());
    assertEquals(
        "# Which header holds which column; written by --column, yours to edit.\n"
            + "bom.value = ours\n",
        Files.readString(directory.resolve("kit/columns.properties")));
    out.reset();
    run("check", "kit", "--explain");
    assertTrue(out().contains("you said so"), out());
  }

  @Test
  void a_column_that_no_table_has_is_a_usage_error_and_is_not_remembered() {
    assertEquals(ExitStatus.USAGE, run("check", "kit", "--column", "bom.colour=red"));
    assertTrue(err().contains("\"bom.colour\" names no column of a table"), err());
    assertFalse(Files.exists(directory.resolve("kit/columns.properties")));
  }

  @Test
  void a_kit_that_is_not_there_cannot_be_read() {
    assertEquals(ExitStatus.CANNOT_READ_OR_WRITE, run("check", "nowhere"));
    assertTrue(err().startsWith("lowfirst: there is no folder "), err());
    assertEquals("", out());
  }

  @Test
  void a_file_for_a_folder_is_said_with_what_to_type() {
    assertEquals(ExitStatus.CANNOT_READ_OR_WRITE, run("check", "kit/bom.csv"));
    assertTrue(err().contains("is a file; name its folder, or say --bom"), err());
  }

  @Test
  void a_folder_for_a_file_is_a_problem_of_the_kit() throws IOException {
    Files.delete(directory.resolve("kit/bom.csv"));
    Files.createDirectory(directory.resolve("kit/bom.csv"));
    assertEquals(ExitStatus.FINDINGS, run("check", "kit"));
    assertTrue(out().contains("this is a folder, not a file"), out());
    assertEquals(ExitStatus.CANNOT_READ_OR_WRITE, run("check", "--bom", "kit/bom.csv"));
    assertEquals("lowfirst: kit/bom.csv is a folder, not a file\n", err());
  }

  @Test
  void no_kit_at_all_is_a_usage_error() {
    assertEquals(ExitStatus.USAGE, run("check"));
    assertTrue(err().contains("name the kit's folder, or a BOM alone with --bom"), err());
  }

  @Test
  void a_binary_file_is_a_problem_and_never_a_trace() throws IOException {
    Files.write(
        directory.resolve("kit/bom.csv"), new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 1, 2, 0, 0});
    assertEquals(ExitStatus.FINDINGS, run("check", "kit"));
    assertTrue(out().contains("this is not a text file"), out());
    assertEquals("", err());
  }

  @Test
  void a_file_of_a_gigabyte_is_refused_unread() throws IOException {
    try (var file = new RandomAccessFile(directory.resolve("kit/bom.csv").toFile(), "rw")) {
      file.setLength(1L << 30);
    }
    assertEquals(ExitStatus.FINDINGS, run("check", "kit"));
    run("check", "kit", "--csv");
    assertTrue(out().contains("the file is larger than 64 MB, so it was not read"), out());
  }

  @Test
  void a_link_that_leads_out_of_the_kit_is_not_followed() throws IOException {
    write("secret.csv", "designators,value\nR1,1k\n");
    Path link = directory.resolve("kit/more.csv");
    try {
      Files.createSymbolicLink(link, directory.resolve("secret.csv"));
    } catch (UnsupportedOperationException | IOException noLinksHere) {
      assumeTrue(false, "no symbolic links on this platform");
    }
    assertEquals(ExitStatus.FINDINGS, run("check", "kit"));
    run("check", "kit", "--csv");
    assertTrue(out().contains("this is a link that leads out of the kit's folder"), out());
  }

  @Test
  void a_path_in_a_table_that_leaves_the_kit_is_refused() throws IOException {
    write("secret.csv", "designators,value\nR1,1k\n");
    write("kit/boards.csv", "board,bom,placements\nmain,../secret.csv,placements.csv\n");
    assertEquals(ExitStatus.FINDINGS, run("check", "kit"));
    assertTrue(out().contains("0 BOM lines"), out());
    run("check", "kit", "--csv");
    assertTrue(out().contains("the path leads out of the kit's folder"), out());
  }

  @Test
  void an_unreadable_file_is_said_and_the_rest_is_read() throws IOException {
    Path file = directory.resolve("kit/bom.csv");
    boolean denied = file.toFile().setReadable(false) && !Files.isReadable(file);
    assumeTrue(denied, "this user can read everything");
    assertEquals(ExitStatus.FINDINGS, run("check", "kit"));
    assertTrue(out().contains("3 placements"), out());
    run("check", "kit", "--csv");
    assertTrue(out().contains("the file can't be read: permission denied"), out());
  }

  private void assertClosing(String words) {
    String flat = out().strip().replaceAll("\\s+", " ");
    assertTrue(flat.endsWith(words), flat);
  }

  private void write(String path, String text) throws IOException {
    Path file = directory.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private int run(String... arguments) {
    err.reset();
    return Lowfirst.run(arguments, Outcome.surroundings(out, err, directory, Clock.systemUTC()));
  }

  private String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private String err() {
    return err.toString(StandardCharsets.UTF_8);
  }
}
