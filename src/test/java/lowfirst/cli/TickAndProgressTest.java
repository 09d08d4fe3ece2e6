package lowfirst.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lowfirst.cli.option.StoreOption;
import lowfirst.cli.process.Surroundings;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TickAndProgressTest {
  @TempDir private Path folder;
  private String out = "";
  private String err = "";
  private Map<String, String> environment = Map.of();

  @BeforeEach
  void a_kit_of_two_boards_of_one_design() throws Exception {
    Path kit = Files.createDirectories(folder.resolve("lamps"));
    Files.writeString(kit.resolve("boards.csv"), "board,count\ndriver,2\n");
    Path board = Files.createDirectories(kit.resolve("driver"));
    Files.writeString(
        board.resolve("bom.csv"),
        "designators,quantity,value,package,height\n"
            + "\"R1,R2\",2,4k7,R_Axial_DIN0207,2.5 mm\n"
            + "D1,1,1N4148,D_DO-35,2.0 mm\n");
    Files.writeString(
        board.resolve("placements.csv"),
        "designator,x mm,y mm,rotation,side\n"
            + "R1,10,10,0,top\nR2,10,20,0,top\nD1,10,30,0,top\n");
  }

  @Test
  void a_tick_is_there_in_the_next_run_and_progress_says_where_to_go_on() {
    assertEquals(0, run("tick", "lamps", "1", "--state", "seated", "--by", "Ada"), err);
    assertEquals("", err);
    assertTrue(out.contains("seated: D1 on driver-1"), out);
    assertTrue(out.contains("seated: D1 on driver-2"), out);
    assertEquals(0, run("progress", "lamps"));
    assertTrue(out.contains("Go on with step 2 (batch 1, board driver): seat"), out);
    assertTrue(Files.exists(folder.resolve("reports/lamps/progress.db")));
  }

  @Test
  void a_reading_and_a_reason_are_recorded_with_who_and_when() {
    assertEquals(
        0,
        run(
            "tick",
            "lamps",
            "R1",
            "--unit",
            "driver-2",
            "--state",
            "inspected",
            "--measured",
            "4.68k",
            "--by",
            "Ada"),
        err);
    assertTrue(out.contains("✓ accept 4.68 kΩ"), out);
    assertEquals(
        0,
        run(
            "tick",
            "lamps",
            "R2",
            "--unit",
            "driver-2",
            "--state",
            "set-aside",
            "--reason",
            "lead broken",
            "--by",
            "Ben"),
        err);
    run("progress", "lamps", "--csv");
    List<String> lines = out.lines().toList();
    assertEquals(1 + 6, lines.size());
    assertTrue(
        lines.stream()
            .anyMatch(
                line ->
                    line.contains("driver-2,2,R1,")
                        && line.contains(",inspected,Ada,2026-03-01T18:00:00Z,4.68k,")),
        out);
    run("progress", "lamps");
    assertTrue(out.contains("lead broken"), out);
  }

  @Test
  void undo_takes_back_the_whole_of_the_last_action_and_erases_nothing() {
    run("tick", "lamps", "1", "--state", "seated");
    run("tick", "lamps", "2", "--state", "seated");
    assertEquals(0, run("tick", "lamps", "--undo"));
    assertTrue(out.contains("R1, R2 on driver-1"), out);
    assertTrue(out.contains("R1, R2 on driver-2"), out);
    run("progress", "lamps", "--history", "R1", "--unit", "driver-1");
    assertTrue(out.contains("seated: R1, R2 on driver-1  undone"), out);
    assertEquals(0, run("tick", "lamps", "D1", "--unit", "driver-2", "--undo"));
    assertEquals(1, run("tick", "lamps", "--undo"));
    assertEquals("nothing is recorded to undo\n", err);
  }

  @Test
  void a_unit_alone_narrows_nothing_and_is_refused() {
    assertEquals(2, run("progress", "lamps", "--unit", "driver-7"));
    assertEquals(
        "--unit narrows --history; for all of a unit say --history driver-7",
        err.lines().findFirst().orElse(""));
    assertEquals("", out);
  }

  @Test
  void what_the_kit_does_not_know_is_refused_and_nothing_is_recorded() {
    assertEquals(2, run("tick", "lamps", "R1", "R9", "--state", "seated"));
    assertEquals(
        "no part to fit has the designator \"R9\"; say one of R1, R2",
        err.lines().findFirst().orElse(""));
    assertFalse(Files.exists(folder.resolve("reports")));
  }

  @Test
  void a_command_that_says_too_little_or_too_much_is_refused_with_what_to_say() {
    Stream.of(
            List.of("what was done", "R1"),
            List.of("name a step", "--state", "seated"),
            List.of("one part", "R1", "--state", "inspected", "--measured", "4.68k"),
            List.of("why it is set aside", "R1", "--state", "set-aside"),
            List.of("don't go together", "R1", "--state", "seated", "--undo"),
            List.of("no state is called \"soldred\"", "R1", "--state", "soldred"),
            List.of("no unit has the serial", "R1", "--state", "seated", "--unit", "driver-3"))
        .forEach(
            words -> {
              var command = new java.util.ArrayList<>(List.of("tick", "lamps"));
              command.addAll(words.subList(1, words.size()));
              assertEquals(2, run(command.toArray(String[]::new)), words.toString());
              assertTrue(err.contains(words.get(0)), err);
            });
  }

  @Test
  void progress_without_a_tick_makes_no_store() {
    assertEquals(0, run("progress", "lamps"));
    assertTrue(out.contains("0 of 6 parts inspected"), out);
    assertFalse(Files.exists(folder.resolve("reports")));
  }

  @Test
  void a_damaged_store_ends_with_status_3_and_is_left_as_it_is() throws Exception {
    Path store = Files.createDirectories(folder.resolve("reports/lamps")).resolve("progress.db");
    Files.writeString(store, "not a database, but it is long enough to look like a file");
    assertEquals(3, run("tick", "lamps", "1", "--state", "seated"));
    assertTrue(err.startsWith("lowfirst: the progress store "), err);
    assertEquals(3, run("progress", "lamps"));
    assertEquals("", out);
    assertTrue(Files.readString(store).startsWith("not a database"));
  }

  @Test
  void another_store_can_be_named_by_option_or_environment() {
    run("tick", "lamps", "1", "--state", "seated", "--store", "elsewhere.db");
    assertTrue(Files.exists(folder.resolve("elsewhere.db")));
    environment = Map.of(StoreOption.VARIABLE, "elsewhere.db");
    run("progress", "lamps");
    assertTrue(out.contains("Go on with step 2"), out);
  }

  @Test
  void a_new_order_of_steps_keeps_every_tick() throws Exception {
    run("tick", "lamps", "D1", "--state", "soldered");
    Files.writeString(
        folder.resolve("lamps/driver/bom.csv"),
        "designators,quantity,value,package,height\n"
            + "\"R1,R2\",2,4k7,R_Axial_DIN0207,1.0 mm\n"
            + "D1,1,1N4148,D_DO-35,9.0 mm\n");
    run("progress", "lamps", "--csv");
    assertTrue(out.contains("driver-1,2,D1,"), out);
    assertEquals(2, out.lines().filter(line -> line.contains(",soldered,")).count());
  }

  private int run(String... arguments) {
    var outBytes = new ByteArrayOutputStream();
    var errBytes = new ByteArrayOutputStream();
    int status =
        Lowfirst.run(
            arguments,
            new Surroundings(
                new PrintStream(outBytes, true, StandardCharsets.UTF_8),
                new PrintStream(errBytes, true, StandardCharsets.UTF_8),
                folder,
                Clock.fixed(Instant.parse("2026-03-01T18:00:00Z"), ZoneOffset.UTC),
                environment,
                Surroundings.Terminal.FILE));
    out = outBytes.toString(StandardCharsets.UTF_8);
    err = errBytes.toString(StandardCharsets.UTF_8);
    return status;
  }
}
