package lowfirst.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SwapCommandTest {
  private static final String HEADER = "board,designators,part type fitted,reason,who,date";

  private static final Clock MARCH =
      Clock.fixed(Instant.parse("2026-03-14T09:00:00Z"), ZoneOffset.UTC);

  @TempDir private Path folder;

  private Outcome last;

  @BeforeEach
  void copies_the_sample_kit() throws IOException {
    KitCopy.of(Path.of("sample-boms", "bell-player"), folder.resolve("kit"), text -> text);
    Files.writeString(swaps(), HEADER + "\n");
  }

  private Path swaps() {
    return folder.resolve("kit").resolve("swaps.csv");
  }

  private int run(String... arguments) {
    last = Outcome.in(folder, MARCH, arguments);
    return last.status();
  }

  private String text() {
    return last.out();
  }

  @Test
  void a_fitting_part_is_told_with_its_reasons_and_exits_with_zero() {
    assertEquals(0, run("swap", "kit", "Q1", "IRL540N", "--board", "driver"));
    assertTrue(text().contains("Fits, least margin"), text());
    assertTrue(text().contains("junction temperature"), text());
    assertTrue(text().contains("IR PD-94997"), text());
  }

  @Test
  void a_misfit_exits_with_one_and_says_what_is_wrong_first() {
    assertEquals(1, run("swap", "kit", "Q1", "IRF540N", "--board", "driver"));
    assertTrue(text().contains("Does not fit: turned on by the drive there is"), text());
  }

  @Test
  void a_designator_on_two_boards_asks_which() {
    assertEquals(2, run("swap", "kit", "R1", "750R"));
    assertTrue(last.err().contains("say which with --board"));
  }

  @Test
  void an_unknown_part_is_a_usage_error() {
    assertEquals(2, run("swap", "kit", "Q999", "IRL540N"));
  }

  @Test
  void an_accepted_swap_is_added_at_the_end_with_who_why_and_when() throws IOException {
    Files.writeString(swaps(), HEADER + "\ndriver,D2,1N5404,\"short, of stock\",B,2026-01-01");
    int status =
        run(
            "swap",
            "kit",
            "Q1",
            "IRL540N",
            "--board",
            "driver",
            "--accept",
            "--why",
            "none left, sorry",
            "--who",
            "A. Builder");
    assertEquals(0, status);
    assertEquals(
        HEADER
            + "\ndriver,D2,1N5404,\"short, of stock\",B,2026-01-01"
            + "\ndriver,Q1,IRL540N,\"none left, sorry\",A. Builder,2026-03-14\n",
        Files.readString(swaps()));
  }

  @Test
  void a_reason_that_a_spreadsheet_would_compute_is_made_harmless() throws IOException {
    int status =
        run(
            "swap",
            "kit",
            "Q1",
            "IRL540N",
            "--board",
            "driver",
            "--accept",
            "--why",
            "=1+1",
            "--who",
            "@A");
    assertEquals(0, status);
    assertEquals(HEADER + "\ndriver,Q1,IRL540N,'=1+1,'@A,2026-03-14\n", Files.readString(swaps()));
  }

  @Test
  void a_table_that_cannot_be_written_stays_as_it_was() throws IOException {
    Files.createDirectory(swaps().resolveSibling(".swaps.csv.part"));
    int status =
        run("swap", "kit", "Q1", "IRL540N", "--board", "driver", "--accept", "--why", "none left");
    assertEquals(3, status);
    assertEquals(HEADER + "\n", Files.readString(swaps()));
    assertTrue(last.err().contains("can't write"), last.err());
  }

  @Test
  void an_accepted_swap_shows_on_the_steps() {
    run("swap", "kit", "Q1", "IRL540N", "--board", "driver", "--accept", "--why", "none left");
    run("steps", "kit");
    assertTrue(text().contains("IRL540N"), text());
    String line =
        text().lines().filter(found -> found.startsWith("swapped")).findFirst().orElse("");
    assertTrue(line.contains("in place of BP-N60L MOSFET: none left (A. Builder"), text());
  }

  @Test
  void a_misfit_is_never_recorded() throws IOException {
    run("swap", "kit", "Q1", "IRF540N", "--board", "driver", "--accept", "--why", "cheap");
    assertEquals(HEADER + "\n", Files.readString(swaps()));
  }

  @Test
  void a_table_with_columns_of_its_own_is_left_alone_and_its_row_is_given() throws IOException {
    String own = "Ort;Platz;Teil\n";
    Files.writeString(swaps(), own);
    int status =
        run("swap", "kit", "Q1", "IRL540N", "--board", "driver", "--accept", "--why", "none left");
    assertEquals(3, status);
    assertEquals(own, Files.readString(swaps()));
    assertTrue(last.err().contains("driver,Q1,IRL540N,none left"));
  }

  @Test
  void the_table_for_machines_has_a_row_for_every_reason_and_check() {
    run("swap", "kit", "Q1", "IRL540N", "--board", "driver", "--csv");
    assertTrue(text().contains("rule,ON_RESISTANCE"), text());
    assertTrue(text().contains("check,JUNCTION_TEMPERATURE"), text());
    assertFalse(text().contains("===="), text());
  }

  @Test
  void a_parts_list_is_looked_through_and_what_fits_is_ranked() throws IOException {
    Files.writeString(
        folder.resolve("drawer.csv"),
        "part type,symbol,condition,min,typ,max,unit,source\n"
            + "IRL540N,kind,MOSFET,,,,,my drawer\n"
            + "IRF540N,kind,MOSFET,,,,,my drawer\n"
            + "1N4007,kind,diode,,,,,my drawer\n");
    assertEquals(0, run("swap", "kit", "Q1", "--board", "driver", "--from", "drawer.csv"));
    assertTrue(text().contains("3 part types: 1 fit, 0 undecided, 2 do not fit."), text());
    assertTrue(text().contains("IRL540N"), text());
  }

  @Test
  void a_parts_list_that_is_not_there_exits_with_three() {
    assertEquals(3, run("swap", "kit", "Q1", "--board", "driver", "--from", "none.csv"));
  }

  private void regulators(String more) throws IOException {
    Path kit = Files.createDirectories(folder.resolve("regulators"));
    Files.writeString(
        kit.resolve("bom.csv"),
        "designators,quantity,part type,description\nU1,1,REG-A,voltage regulator\n");
    Files.writeString(
        kit.resolve("rails.csv"),
        "rail,voltage,tolerance,current limit\n12V,12 V,5 %,2 A\nlogic,5 V,5 %,1 A\n");
    var sheet = new StringBuilder("part type,symbol,condition,min,typ,max,unit,source\n");
    for (String part : List.of("REG-A", "REG-B")) {
      sheet
          .append(part)
          .append(",kind,voltage regulator,,,,,test sheet\n")
          .append(part)
          .append(",VO,,4.8,5,5.2,V,test sheet\n")
          .append(part)
          .append(",TJ,,,,125,C,test sheet\n");
    }
    Files.writeString(
        kit.resolve("datasheets.csv"), sheet + "REG-B,RthJA,,,,65,K/W,test sheet\n" + more);
  }

  /**
   * From 12.6 V to 4.8 V at the rail's 1 A and with 10 mA of its own it makes 7.8 + 0.126 W. Of 125
   * °C, 25 K are kept and 50 °C are the air's: 50 K by 7.926 W are 6.308 K/W.
   */
  @Test
  void what_is_assumed_of_a_regulators_heat_is_said() throws IOException {
    regulators("");
    assertEquals(1, run("swap", "regulators", "U1", "REG-B"));
    String words = text().replaceAll("\\s+", " ");
    for (String said : List.of("6.308 K/W", "IQ of 10 mA assumed", "air of 50 °C assumed")) {
      assertTrue(words.contains(said), said + " in " + text());
    }
  }

  @Test
  void what_is_known_of_a_regulators_heat_is_not_assumed() throws IOException {
    regulators("REG-B,IQ,,,,8,mA,test sheet\n");
    Files.writeString(folder.resolve("regulators").resolve("kit.properties"), "ambient = 40 C\n");
    assertEquals(1, run("swap", "regulators", "U1", "REG-B"));
    // 60 K by 7.8 W and 12.6 V times 8 mA, which are 7.9008 W
    assertTrue(text().contains("7.594 K/W"), text());
    assertFalse(text().contains("assumed"), text());
  }
}
