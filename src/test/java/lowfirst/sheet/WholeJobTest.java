package lowfirst.sheet;

import static lowfirst.progress.SmallPlan.ONE;
import static lowfirst.progress.SmallPlan.TWO;
import static lowfirst.progress.SmallPlan.after;
import static lowfirst.progress.SmallPlan.tick;
import static lowfirst.sheet.document.Said.assertSays;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.ZoneOffset;
import java.util.List;
import lowfirst.assembly.AssemblyOptions;
import lowfirst.assembly.AssemblyOrder;
import lowfirst.assembly.AssemblyPlan;
import lowfirst.board.Kit;
import lowfirst.channel.ChannelKit;
import lowfirst.channel.ChannelStudy;
import lowfirst.channel.KitInputs;
import lowfirst.intake.KitReading;
import lowfirst.progress.Progress;
import lowfirst.progress.SmallPlan;
import lowfirst.progress.State;
import lowfirst.sheet.DemoDocument.Chapter;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.document.Said;
import lowfirst.sheet.progress.StepAddress;
import lowfirst.sheet.sort.TrayLabelsDocument;
import lowfirst.sorting.SortPlan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The guided walk, and which sheets a kit gets. */
class WholeJobTest {

  @Test
  void the_walk_has_a_chapter_for_each_question() {
    Document walk =
        DemoDocument.of(
            "bells",
            List.of("bom.csv", "rails.csv"),
            List.of(
                new Chapter(
                    "Do the tables agree?",
                    "They do.",
                    List.of(new Block.Facts.Fact("lamp", "dark")),
                    List.of("lowfirst check bells"),
                    List.of("reports/check.pdf")),
                new Chapter("And then?", "Sort.", List.of(), List.of(), List.of())));
    assertSays(
        walk,
        "The whole job, on the bell player",
        "Changed by you, and used as they are: bom.csv, rails.csv.",
        "# 1. Do the tables agree?",
        "They do.",
        "lamp: dark",
        "again: lowfirst check bells",
        "written: reports/check.pdf",
        "# 2. And then?",
        "Sort.");
    assertTrue(Said.lines(walk).get(2).contains(" Its tables are in bells; change one"));
    String last = Said.lines(walk).get(Said.lines(walk).size() - 1);
    assertTrue(last.startsWith("! this was a walk through paper. "), last);
    assertFalse(
        Said.lines(DemoDocument.of("bells", List.of(), List.of())).stream()
            .anyMatch(line -> line.startsWith("Changed by you")));
  }

  @Test
  void each_chapter_counts_what_was_found() {
    KitReading reading = Said.reading("bom.csv", "designators,value\nR1,1k\n");
    long faults = reading.faults();
    String check = DemoDocument.check(new KitReading(reading.kit(), List.of(), List.of()));
    assertEquals(
        "The tables were read and held against each other: 0 faults, 0 cautions, 0 notes. Each comes"
            + " with its file, line, cell and what to do.",
        check);
    assertTrue(faults >= 0);
    assertTrue(
        DemoDocument.check(reading).matches(".*: \\d+ faults?, \\d+ cautions?, \\d+ notes?\\. .*"));
  }

  private static SortPlan bag(String bag) {
    return SortPlan.of(
        Said.kit(
            "bom.csv",
            "designators,value\nR1 R2,1k 1%\nR3,2k 1%\n",
            "bag.csv",
            "part type or marking,quantity\n" + bag));
  }

  @Test
  void what_is_short_is_named() {
    assertEquals(
        "2 part types to sort. Short: 1 x 1 kΩ resistor, 1 x 2 kΩ resistor. 0 part types came with"
            + " some too many. Bag lines that fit nothing: 1. Pairs that can be mistaken for one"
            + " another: 1; the list says how to tell them apart.",
        DemoDocument.sort(bag("1k,1\nfunny,2\n")));
    assertTrue(
        DemoDocument.sort(bag("1k,2\n2k,2\n"))
            .startsWith(
                "2 part types to sort. Nothing is short. 1 part type came with some too many."));
  }

  /** Three resistors and diodes on each of two boards, and a chip plugged in: 8 parts. */
  @Test
  void the_steps_are_counted() {
    assertEquals(
        "8 parts in 3 steps, the lowest first, beginning with part 1 resistor. 1 step of plugging"
            + " circuits into their sockets waits for the rail check. Each step says what to pick and"
            + " how it is marked, where it goes, which way round, and which rule put it there.",
        DemoDocument.steps(SmallPlan.PLAN));
    assertEquals(
        "There is nothing to fit.", DemoDocument.steps(new AssemblyPlan(List.of(), List.of())));
    assertFalse(
        DemoDocument.steps(new AssemblyPlan(List.of(SmallPlan.LOW), List.of()))
            .contains("rail check"));
    assertTrue(
        DemoDocument.steps(new AssemblyPlan(List.of(SmallPlan.LAST, SmallPlan.LAST), List.of()))
            .contains("2 steps of plugging circuits into their sockets wait for the rail check."));
  }

  @Test
  void channels_that_do_not_carry_are_named_with_why() {
    List<ChannelStudy> good = ChannelStudy.of(KitInputs.of(ChannelKit.typical().kit()));
    assertTrue(DemoDocument.loads(good).startsWith("1 of 1 channel carries its load in the worst"));
    assertTrue(DemoDocument.notCarried(good).isEmpty());
    List<ChannelStudy> bad =
        ChannelStudy.of(KitInputs.of(ChannelKit.typical().with("loads", "resistance=2 Ohm").kit()));
    assertTrue(DemoDocument.loads(bad).startsWith("0 of 1 channel carry"));
    assertEquals("striker", DemoDocument.notCarried(bad).get(0).name());
    assertTrue(DemoDocument.notCarried(bad).get(0).text().startsWith("overloaded at 13.3 A: "));
  }

  @Test
  void progress_says_where_to_go_on() {
    String start = DemoDocument.progress(after(tick(1, ONE, State.SEATED, "R1", "R2")));
    assertTrue(
        start.endsWith(
            "undo is one more entry. Now go on with step 1 (batch 1, board driver): seat part 1"
                + " resistor, R1, R2 on driver-2."),
        start);
    String aside =
        DemoDocument.progress(
            after(
                tick(1, ONE, State.INSPECTED, "R1", "R2", "U1", "D1"),
                tick(2, TWO, State.INSPECTED, "R1", "R2", "U1"),
                tick(3, TWO, State.SET_ASIDE, "D1")));
    assertTrue(aside.endsWith("1 part set aside with the reason. All done."), aside);
  }

  // --- the set of sheets

  private static List<SheetSet.Sheet> sheets(Kit kit) {
    AssemblyPlan plan = AssemblyOrder.of(kit, AssemblyOptions.USUAL);
    return SheetSet.of(
        kit,
        Progress.of(plan, List.of()),
        new SheetSet.Options(
            180,
            267,
            TrayLabelsDocument.Compartment.USUAL,
            AssemblyOptions.USUAL,
            ZoneOffset.UTC,
            StepAddress.IN_WORDS));
  }

  private static List<String> names(Kit kit) {
    return sheets(kit).stream()
        .map(
            sheet ->
                sheet.name() + (sheet.orientation() == Orientation.LANDSCAPE ? " on its side" : ""))
        .toList();
  }

  @Test
  void a_kit_gets_every_sheet_that_has_something_to_say() {
    Kit kit =
        Said.kit(
            "boards.csv",
            "board,count,bom,placements,width mm,height mm\n"
                + "a b/c,2,a.csv,,176,50\nwide,1,w.csv,,177,50\nbare,1,bare.csv,,,\n",
            "a.csv",
            "designators,value,description\nR1,1k,resistor\n",
            "w.csv",
            "designators,value,description\nR1,1k,resistor\n",
            "bare.csv",
            "designators,value\n",
            "rails.csv",
            "rail,voltage\nlogic,5 V\n");
    assertEquals(
        List.of(
            "sort-sheet",
            "tray-labels",
            "assembly-steps",
            "assembly-book-a-b-c",
            "assembly-book-wide on its side",
            "wiring-list on its side",
            "first-power-a-b-c-1 on its side",
            "first-power-a-b-c-2 on its side",
            "first-power-wide-1 on its side",
            "sign-off-a-b-c-1 on its side",
            "sign-off-a-b-c-2 on its side",
            "sign-off-wide-1 on its side"),
        names(kit));
    for (SheetSet.Sheet sheet : sheets(kit)) {
      assertFalse(sheet.document().get().blocks().isEmpty(), sheet.name());
      assertFalse(sheet.document().get().title().isBlank(), sheet.name());
    }
  }

  @Test
  void a_kit_with_channels_gets_a_report_and_one_without_parts_nothing() {
    List<String> names = names(ChannelKit.typical().kit());
    assertTrue(names.contains("channel-report"), names.toString());
    SheetSet.Sheet report =
        sheets(ChannelKit.typical().kit()).stream()
            .filter(sheet -> sheet.name().equals("channel-report"))
            .findFirst()
            .orElseThrow();
    assertTrue(Said.lines(report.document().get()).contains("# Channel out 1"));
    Document power =
        sheets(ChannelKit.typical().kit()).stream()
            .filter(sheet -> sheet.name().startsWith("first-power"))
            .findFirst()
            .orElseThrow()
            .document()
            .get();
    // What was worked out of the channel stands there.
    assertTrue(
        Said.lines(power).stream().anyMatch(line -> line.contains(" | at least 4.5")),
        Said.lines(power).toString());
    assertEquals(List.of(), names(Said.kit("kit.properties", "title = Nothing\n")));
  }

  @Test
  void boards_that_would_share_a_file_name_get_numbers() {
    Kit kit =
        Said.kit(
            "boards.csv",
            "board,count,bom\na b,1,a.csv\na/b,1,b.csv\nA?b,1,c.csv\n",
            "a.csv",
            "designators,value\nR1,1k\n",
            "b.csv",
            "designators,value\nR1,1k\n",
            "c.csv",
            "designators,value\nR1,1k\n");
    List<String> books =
        names(kit).stream().filter(name -> name.startsWith("assembly-book")).toList();
    assertEquals(List.of("assembly-book-a-b", "assembly-book-a-b-2", "assembly-book-A-b-3"), books);
  }

  @ParameterizedTest
  @CsvSource({"a b/c, a-b-c", ".hidden., hidden", "Größe_1.2-x, Größe_1.2-x", "--a--, a"})
  void a_name_is_one_that_every_file_system_takes(String name, String safe) {
    assertEquals(safe, SheetSet.fileName(name));
  }

  @Test
  void a_long_name_is_cut() {
    assertEquals(80, SheetSet.fileName("x".repeat(81)).length());
    assertEquals("x".repeat(80), SheetSet.fileName("x".repeat(80)));
  }
}
