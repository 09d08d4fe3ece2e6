package lowfirst.sheet.progress;

import static lowfirst.progress.SmallPlan.ONE;
import static lowfirst.progress.SmallPlan.TWO;
import static lowfirst.progress.SmallPlan.after;
import static lowfirst.progress.SmallPlan.designators;
import static lowfirst.progress.SmallPlan.minute;
import static lowfirst.progress.SmallPlan.spot;
import static lowfirst.progress.SmallPlan.tick;
import static lowfirst.progress.SmallPlan.undo;
import static lowfirst.sheet.document.Said.assertSays;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import lowfirst.board.Board;
import lowfirst.board.Kit;
import lowfirst.board.Unit;
import lowfirst.channel.LoadFindings;
import lowfirst.progress.Event;
import lowfirst.progress.MeasuredReading;
import lowfirst.progress.Progress;
import lowfirst.progress.SmallPlan;
import lowfirst.progress.State;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.document.Said;
import lowfirst.sheet.steps.HandAdvice;
import lowfirst.sorting.MeterLimits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sign-off and progress: R1, R2, D1 and a plugged-in U1 on two driver boards. */
class RecordSheetsTest {
  private static final ZoneId KOLKATA = ZoneId.of("Asia/Kolkata");
  private static final Kit KIT =
      Said.kit(
          "kit.properties",
          "title = Bells\nsigner = A. Builder\n",
          "boards.csv",
          "board,count,bom\ndriver,2,bom.csv\nlamp,1,lamp.csv\n",
          "bom.csv",
          "designators,value,description\nR1 R2,4k7 5%,resistor\nD1,1N4148,diode\nU1,NE555,IC\n",
          "lamp.csv",
          "designators,value\nR1,1k\n",
          "rails.csv",
          "rail,voltage,tolerance,current limit\nlogic,5 V,5 %,1 A\n",
          "swaps.csv",
          """
          board,designators,part type fitted,reason,who,date
          driver,D1,1N914,the shop had none,B. Buyer,2026-02-01
          ,R1,5k1,,,
          lamp,R1,1k2,,,
          """);

  private static Event.Tick aside(int minute, Unit unit, String reason, String... names) {
    return new Event.Tick(
        "a" + minute,
        unit,
        designators(names),
        State.SET_ASIDE,
        "Ben",
        minute(minute),
        Optional.empty(),
        Optional.ofNullable(reason));
  }

  private static Event.Tick measured(int minute, Unit unit, String reading, String... names) {
    return new Event.Tick(
        "m" + minute,
        unit,
        designators(names),
        State.SEATED,
        "Cleo",
        minute(minute),
        Optional.of(reading),
        Optional.empty());
  }

  private static Event.Substitution fitted(int minute, String reason) {
    return new Event.Substitution(
        "s" + minute, ONE, designators("R2"), "4k99", reason, "Dora", minute(minute));
  }

  private static Event.PowerReading power(
      int minute, String check, Event.PowerReading.Outcome outcome, String reading) {
    return new Event.PowerReading(
        "p" + minute, ONE, check, outcome, Optional.ofNullable(reading), "Emil", minute(minute));
  }

  private static Event.Note note(int minute, String text, String... names) {
    return new Event.Note("n" + minute, ONE, designators(names), "Fay", minute(minute), text);
  }

  private static Document signOff(Unit unit, Event... events) {
    Board board = KIT.board("driver").orElseThrow();
    return SignOffDocument.of(
        KIT, board, unit, LoadFindings.none(), after(events), KOLKATA, StepAddress.IN_WORDS);
  }

  @Test
  void an_empty_record_has_boxes_and_lines_for_all_that_will_be_done() {
    Document record = signOff(TWO);
    assertSays(
        record,
        "Sign-off record: driver-2",
        "Bells",
        "Kit: Bells",
        "Board: driver",
        "Unit: driver-2 (2 of 2)",
        "Work: 3 steps, 4 parts",
        "Input fingerprint: SHA-256 of the kit's tables: " + KIT.fingerprint(),
        "# Steps",
        ": Step | Part | Where | Seated | Soldered | Inspected | Who | When | Reading | Scan",
        "1 | part 1 resistor | R1, R2 | [ ] | [ ] | [ ] | __ | __ | __ | ",
        "2 | part 2 diode | D1 | [ ] | [ ] | [ ] | __ | __ | __ | ",
        "3 | part 3 integrated circuit | U1 | [ ] | – | [ ] | __ | __ | __ | ",
        "# Different from the plan",
        "Set aside or reworked: Where | What and why | Who | When | Put right, how",
        "__ | __ | __ | __ | __",
        "Swapped parts: Where | Asked for | Fitted | Why | Who, when",
        "_D1_ | _1N4148 diode_ | _1N914_ | _the shop had none_ | _B. Buyer 2026-02-01_",
        "_R1_ | _4.7 kΩ resistor_ | _5k1_ | __ | __",
        "__ | __ | __ | __ | __",
        "# Inspection",
        "[ ] | [ ] | [ ] | ",
        "# First power",
        ": Check | Expect | Reading | Good | Who | When",
        "logic voltage | 4.75 V to 5.25 V | __ | [ ] | __ | __",
        "# Signatures",
        "Built by | __ | __ | __",
        "Inspected by | __ | __ | __",
        "First power by | __ | __ | __",
        "Released by | _A. Builder_ | __ | __");
    assertEquals(3, Said.rows(record, "Set aside or reworked").size());
    assertEquals(3, Said.rows(record, "Swapped parts").size(), "the lamp's swap is not its own");
    List<String> criteria =
        Said.rows(record, "").stream().filter(row -> row.endsWith("| [ ] | __")).toList();
    assertEquals(Workmanship.CRITERIA.size(), criteria.size());
    for (String row : criteria) {
      assertTrue(
          row.matches("[^|]+\\S \\| [^|]+\\S \\| [^|]+\\S \\| [^|]+\\S \\| \\[ ] \\| __"), row);
    }
  }

  @Test
  void one_step_of_one_part_is_told_in_the_singular() {
    Board lamp = KIT.board("lamp").orElseThrow();
    var plan = lowfirst.assembly.AssemblyOrder.of(KIT, lowfirst.assembly.AssemblyOptions.USUAL);
    assertSays(
        SignOffDocument.of(
            KIT,
            lamp,
            lamp.units().get(0),
            LoadFindings.none(),
            Progress.of(plan, List.of()),
            ZoneOffset.UTC,
            StepAddress.IN_WORDS),
        "Work: 1 step, 1 part");
  }

  /** Minute 9 of 18:00 in Greenwich is 23:39 in Kolkata. */
  @Test
  void what_was_recorded_comes_out_filled_in() {
    Document record =
        signOff(
            ONE,
            measured(1, ONE, "4.68k", "R1"),
            tick(2, ONE, State.SEATED, "R2"),
            tick(3, ONE, State.SOLDERED, "R1", "R2"),
            tick(4, ONE, State.SEATED, "U1"),
            aside(9, ONE, "band rubbed off", "D1"),
            fitted(11, "none left"),
            power(12, "logic to return", Event.PowerReading.Outcome.PASSED, "12k"),
            power(13, "logic voltage", Event.PowerReading.Outcome.FAILED, "3.1 V"));
    assertSays(
        record,
        "1 | part 1 resistor | R1, R2 | [x] | [x] | [ ] | _Ada_ | _2026-03-01 23:33_ | _4.68k_ | ",
        "2 | part 2 diode | D1; set aside: D1 | [ ] | [ ] | [ ] | __ | __ | __ | ",
        "3 | part 3 integrated circuit | U1 | [x] | – | [ ] | _Ada_ | _2026-03-01 23:34_ | __ | ",
        "_D1_ | _set aside: band rubbed off_ | _Ben_ | _2026-03-01 23:39_ | __",
        "_R2_ | _4.7 kΩ resistor_ | _4k99_ | _none left_ | _Dora 2026-03-01 23:41_");
    assertTrue(
        Said.rows(record, "").stream()
            .anyMatch(
                row ->
                    row.startsWith("logic to return | ")
                        && row.endsWith(" | _12k_ | [x] | _Emil_ | _2026-03-01 23:42_")));
    assertSays(
        record,
        "logic voltage | 4.75 V to 5.25 V | _FAILED 3.1 V_ | [ ] | _Emil_ | _2026-03-01 23:43_");
    assertEquals(4, Said.rows(record, "Set aside or reworked").size());
    assertSays(
        signOff(ONE, aside(9, ONE, null, "D1")),
        "_D1_ | _set aside: no reason given_ | _Ben_ | _2026-03-01 23:39_ | __");
  }

  // --- progress

  private static Document progress(Event... events) {
    return ProgressDocument.of("bells", after(events), ZoneOffset.UTC);
  }

  @Test
  void progress_counts_units_and_batches() {
    Document document =
        progress(
            tick(1, ONE, State.SEATED, "R1", "R2"),
            tick(3, ONE, State.SOLDERED, "R1"),
            tick(4, TWO, State.INSPECTED, "R1", "R2", "D1"),
            aside(5, ONE, "band rubbed off", "D1"));
    assertSays(
        document,
        "Progress of bells",
        "Done: 3 of 8 parts inspected",
        // Ada's entries at minutes 1, 3 and 4; Ben's one stands alone.
        "Working time: 3 min (gaps of up to "
            + lowfirst.progress.WorkingTime.PAUSE.toMinutes()
            + " min between one person's entries)",
        "Units: Unit | To do | Seated | Soldered | Inspected | Set aside | Next",
        "driver-1 | 1 | 1 | 1 | 0 | 1 | solder step 1, part 1 resistor",
        "driver-2 | 1 | 0 | 0 | 3 | 0 | seat step 3, part 3 integrated circuit",
        "Batches: Batch | Board | Steps | To do | Seated | Soldered | Inspected | Set aside",
        "1 | driver | 1–2 | 0 | 1 | 1 | 3 | 1",
        "2 | driver | 3 | 2 | 0 | 0 | 0 | 0",
        "Set aside: Part | Unit | State | Why | Who | When",
        "D1 | driver-1 | set aside | band rubbed off | Ben | 2026-03-01 18:05");
    assertFalse(
        Said.lines(progress()).stream().anyMatch(line -> line.startsWith("Set aside: Part")));
  }

  @Test
  void when_only_what_was_set_aside_is_left_it_says_so() {
    Event[] all = {
      tick(1, ONE, State.INSPECTED, "R1", "R2", "U1"),
      tick(2, TWO, State.INSPECTED, "R1", "R2", "D1", "U1"),
      aside(3, ONE, null, "D1")
    };
    assertSays(
        progress(all),
        "Nothing is left but what was set aside.",
        "driver-1 | 0 | 0 | 0 | 3 | 1 | nothing left",
        "D1 | driver-1 | set aside | no reason given | Ben | 2026-03-01 18:03");
  }

  @Test
  void what_the_plan_no_longer_has_is_kept_and_shown() {
    assertSays(
        progress(tick(1, ONE, State.SEATED, "R9")),
        "Recorded, but no longer in the plan: Part | Unit | State | Why | Who | When",
        "R9 | driver-1 | seated | no reason given | Ada | 2026-03-01 18:01");
    List<String> rows =
        Said.rows(
            ProgressDocument.everyPart(
                "bells", after(tick(1, ONE, State.SEATED, "R9")), ZoneOffset.UTC),
            "every part");
    assertEquals(9, rows.size());
    assertEquals(
        "driver-1 |  | R9 |  | seated | Ada | 2026-03-01T18:01:00Z |  |  |  | ", rows.get(8));
  }

  @Test
  void machines_get_all_that_is_recorded_of_a_part() {
    List<String> rows =
        Said.rows(
            ProgressDocument.everyPart(
                "bells",
                after(
                    measured(1, ONE, "4.99k", "R2"),
                    fitted(2, "none left"),
                    note(3, "a bit brown", "R2"),
                    note(4, "but good", "R2")),
                ZoneOffset.UTC),
            "every part");
    assertTrue(
        rows.contains(
            "driver-1 | 1 | R2 | part 1 resistor | seated | Cleo | 2026-03-01T18:01:00Z | 4.99k |  |"
                + " 4k99 | a bit brown; but good"),
        rows.toString());
    assertTrue(
        rows.contains("driver-1 | 1 | R1 | part 1 resistor | to do |  |  |  |  |  | "),
        rows.toString());
  }

  @Test
  void an_answer_says_what_was_recorded_and_where_to_go_on() {
    Event.Tick seated = tick(1, ONE, State.SEATED, "R1", "R2");
    var reading =
        new MeasuredReading(
            Quantity.of("4680", Dimension.RESISTANCE), MeterLimits.Judgement.ACCEPT);
    assertSays(
        ProgressDocument.answer("Recorded", List.of(seated), Optional.of(reading), after(seated)),
        "Recorded",
        "seated: R1, R2 on driver-1",
        "✓ accept 4.68 kΩ",
        "Go on with step 1 (batch 1, board driver): seat part 1 resistor, R1, R2 on driver-2.");
    assertEquals(
        4,
        Said.lines(ProgressDocument.answer("R", List.of(seated), Optional.empty(), after(seated)))
            .size());
  }

  @Test
  void a_history_leaves_nothing_out() {
    Progress progress =
        after(tick(1, ONE, State.SEATED, "R1"), undo(2, "t1"), tick(3, ONE, State.SEATED, "R1"));
    List<String> lines =
        Said.lines(ProgressDocument.history(List.of(spot(ONE, "R1")), progress, KOLKATA));
    assertTrue(lines.get(2).endsWith(": When | Who | What | Counts"), lines.get(2));
    assertTrue(lines.get(2).startsWith("History of "), lines.get(2));
    assertTrue(
        lines.contains("2026-03-01 23:31 | Ada | seated: R1 on driver-1 | undone"),
        lines.toString());
    assertTrue(
        lines.contains("2026-03-01 23:33 | Ada | seated: R1 on driver-1 | yes"), lines.toString());
  }

  @ParameterizedTest
  @CsvSource({"0, 0 min", "59, 59 min", "60, 1 h 0 min", "130, 2 h 10 min"})
  void a_duration_has_hours_only_where_there_are_some(int minutes, String words) {
    assertEquals(words, ProgressWords.duration(Duration.ofMinutes(minutes)));
  }

  @Test
  void units_with_the_same_parts_are_named_together() {
    assertEquals(
        "R1, R2 on driver-1 and driver-2",
        ProgressWords.spots(
            List.of(spot(ONE, "R1"), spot(ONE, "R2"), spot(TWO, "R1"), spot(TWO, "R2"))));
    assertEquals(
        "R1 on driver-1; R2 on driver-2",
        ProgressWords.spots(List.of(spot(ONE, "R1"), spot(TWO, "R2"))));
    assertEquals(
        "R1 on driver-1, driver-2 and driver-3",
        ProgressWords.spots(
            List.of(spot(ONE, "R1"), spot(TWO, "R1"), spot(new Unit("driver", 3), "R1"))));
  }

  @Test
  void every_event_is_told_in_words() {
    assertEquals(
        "set aside: D1 on driver-1, band rubbed off",
        ProgressWords.event(aside(1, ONE, "band rubbed off", "D1")));
    assertEquals(
        "seated: R1 on driver-1, measured 4.68k",
        ProgressWords.event(measured(1, ONE, "4.68k", "R1")));
    assertEquals("took an entry back", ProgressWords.event(undo(1, "t1")));
    assertEquals("note on driver-1: warm", ProgressWords.event(note(1, "warm")));
    assertEquals(
        "note on R1, R2 on driver-1: warm", ProgressWords.event(note(1, "warm", "R1", "R2")));
    assertEquals(
        "fitted 4k99 in place of the BOM's part: R2 on driver-1, none left",
        ProgressWords.event(fitted(1, "none left")));
    assertEquals(
        "fitted 4k99 in place of the BOM's part: R2 on driver-1",
        ProgressWords.event(fitted(1, " ")));
    assertEquals(
        "first power of driver-1, logic voltage: passed, measured 5.01 V",
        ProgressWords.event(
            power(1, "logic voltage", Event.PowerReading.Outcome.PASSED, "5.01 V")));
    assertTrue(
        ProgressWords.event(power(1, "logic voltage", Event.PowerReading.Outcome.FAILED, null))
            .startsWith("first power of driver-1, logic voltage: failed"));
  }

  @ParameterizedTest
  @CsvSource({
    "ACCEPT, ✓ accept 10 Ω",
    "REJECT, ✗ reject 10 Ω",
    "CANNOT_TELL, ? this meter can't tell at 10 Ω",
  })
  void a_verdict_has_a_sign_that_needs_no_colour(MeterLimits.Judgement judgement, String words) {
    assertEquals(
        words,
        ProgressWords.verdict(
            new MeasuredReading(Quantity.of("10", Dimension.RESISTANCE), judgement)));
  }

  @ParameterizedTest
  @CsvSource({
    "TO_DO, start again with",
    "SEATED, seat",
    "SOLDERED, solder",
    "INSPECTED, inspect",
    "SET_ASIDE, set aside",
  })
  void each_state_is_reached_by_a_verb(State state, String verb) {
    assertEquals(verb, ProgressWords.verb(state));
  }

  // --- what the hand is told

  private static List<String> advice(lowfirst.assembly.Step step, State round) {
    return HandAdvice.of(step, round).stream()
        .map(advice -> advice.kind().words() + ": " + advice.text())
        .toList();
  }

  @Test
  void the_hand_is_told_what_the_round_needs_and_no_more() {
    assertEquals(
        List.of(
            "Way round: The band is the cathode: over the bar printed on the board",
            "How: Lying flat and centred; bend the leads 0.8 mm or more from the body"),
        advice(SmallPlan.DIODE, State.SEATED));
    List<String> solder = advice(SmallPlan.DIODE, State.SOLDERED);
    assertEquals(2, solder.size());
    assertTrue(solder.get(0).startsWith("How: 2 to 3 s a joint; "), solder.get(0));
    assertTrue(
        solder.get(1).startsWith("Caution: Hot iron; keep out of the fumes. "), solder.get(1));
    List<String> look = advice(SmallPlan.DIODE, State.INSPECTED);
    assertEquals(2, look.size());
    assertTrue(look.get(0).startsWith("How: Mounting: parallel to the board"), look.get(0));
    assertTrue(look.get(1).startsWith("Way round: The band is the cathode"), look.get(1));
    assertEquals(List.of(), advice(SmallPlan.DIODE, State.TO_DO));
    assertEquals(List.of(), advice(SmallPlan.DIODE, State.SET_ASIDE));
  }

  @Test
  void what_is_plugged_in_waits_for_the_rail_check() {
    List<String> chip = advice(SmallPlan.CHIP, State.SEATED);
    assertEquals(4, chip.size());
    assertTrue(chip.get(2).startsWith("Caution: Static can destroy it unnoticed"), chip.get(2));
    assertEquals(
        "Caution: Power off, and only after the rail check: a wrong voltage destroys it at once.",
        chip.get(3));
    assertEquals("Look-alike", HandAdvice.Kind.LOOK_ALIKE.words());
  }
}
