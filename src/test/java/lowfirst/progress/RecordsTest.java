package lowfirst.progress;

import static lowfirst.progress.SmallPlan.CHIP;
import static lowfirst.progress.SmallPlan.DIODE;
import static lowfirst.progress.SmallPlan.LAST;
import static lowfirst.progress.SmallPlan.ONE;
import static lowfirst.progress.SmallPlan.PLAN;
import static lowfirst.progress.SmallPlan.RESISTORS;
import static lowfirst.progress.SmallPlan.TWO;
import static lowfirst.progress.SmallPlan.after;
import static lowfirst.progress.SmallPlan.designators;
import static lowfirst.progress.SmallPlan.minute;
import static lowfirst.progress.SmallPlan.spot;
import static lowfirst.progress.SmallPlan.tick;
import static lowfirst.progress.SmallPlan.undo;
import static lowfirst.progress.State.INSPECTED;
import static lowfirst.progress.State.SEATED;
import static lowfirst.progress.State.SET_ASIDE;
import static lowfirst.progress.State.SOLDERED;
import static lowfirst.progress.State.TO_DO;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lowfirst.board.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Actions and their undoing; what is recorded of steps, spots and units. */
class RecordsTest {

  // --- actions

  @Test
  void events_of_one_press_are_one_action_and_are_taken_back_together() {
    EventLog log =
        EventLog.of(
            List.of(tick(1, ONE, SEATED, "R1"), named("a/1", ONE, "D1"), named("a/2", TWO, "D1")));
    assertEquals("a", EventLog.actionOf("a/2"));
    assertEquals("", EventLog.actionOf("/2"));
    assertEquals("t1", EventLog.actionOf("t1"));
    assertEquals(List.of("a/1", "a/2"), ids(log.newestAction()));
    assertEquals(List.of("t1"), ids(log.action("t1")));
  }

  @Test
  void the_newest_action_is_the_newest_that_counts() {
    EventLog log =
        EventLog.of(List.of(tick(1, ONE, SEATED, "R1"), tick(2, ONE, SEATED, "D1"), undo(3, "t2")));
    assertEquals(List.of("t1"), ids(log.newestAction()));
    assertEquals(List.of("t1"), ids(log.counting()));
    assertEquals(List.of(), EventLog.of(List.of()).newestAction());
  }

  @Test
  void the_newest_action_on_a_part_passes_over_those_on_others() {
    EventLog log =
        EventLog.of(
            List.of(
                tick(1, ONE, SEATED, "R1"),
                tick(2, ONE, SOLDERED, "R1"),
                tick(3, TWO, SEATED, "R1")));
    assertEquals(List.of("t2"), ids(log.newestAction(List.of(spot(ONE, "R1")))));
    assertEquals(List.of("t3"), ids(log.newestAction(List.of(spot(TWO, "R1")))));
    assertEquals(List.of(), log.newestAction(List.of(spot(ONE, "U1"))));
  }

  @Test
  void an_undo_of_the_first_event_counts_too_and_can_itself_be_undone() {
    EventLog undone = EventLog.of(List.of(tick(1, ONE, SEATED, "R1"), undo(2, "t1")));
    assertEquals(List.of(), undone.counting());
    EventLog again = EventLog.of(List.of(tick(1, ONE, SEATED, "R1"), undo(2, "t1"), undo(3, "u2")));
    assertEquals(List.of("t1"), ids(again.counting()));
  }

  @Test
  void the_history_of_a_part_keeps_what_was_undone() {
    EventLog log =
        EventLog.of(
            List.of(
                tick(1, ONE, SEATED, "D1"),
                tick(2, ONE, SEATED, "R1"),
                undo(3, "t2"),
                undo(4, "t1")));
    List<HistoryLine> lines = log.history(spot(ONE, "R1"));
    assertEquals(List.of("t2", "u3"), lines.stream().map(line -> line.event().id()).toList());
    assertEquals(HistoryLine.Standing.UNDONE, lines.get(0).standing());
    assertEquals(HistoryLine.Standing.COUNTS, lines.get(1).standing());
  }

  // --- what is recorded of a step

  @Test
  void a_row_of_the_sign_off_sheet_is_filled_in_by_its_last_mark() {
    Progress progress =
        after(tick(1, ONE, SEATED, "R1"), tick(5, ONE, SEATED, "R2"), tick(9, TWO, SEATED, "R1"));
    assertEquals(minute(5), progress.record(RESISTORS, ONE).completed(SEATED).orElseThrow().when());
    assertEquals(Optional.empty(), progress.record(RESISTORS, TWO).completed(SEATED));
    assertEquals(2, progress.record(RESISTORS, ONE).tally().in(SEATED));
    assertEquals(1, progress.record(RESISTORS, TWO).tally().in(SEATED));
    assertEquals(1, progress.record(RESISTORS, TWO).tally().in(TO_DO));
  }

  @Test
  void what_was_set_aside_is_left_out_of_the_row_and_listed() {
    Progress progress = after(tick(1, ONE, SEATED, "R1"), tick(2, ONE, SET_ASIDE, "R2"));
    StepRecord row = progress.record(RESISTORS, ONE);
    assertEquals(minute(1), row.completed(SEATED).orElseThrow().when());
    assertEquals(List.of(spot(ONE, "R2")), row.setAside().stream().map(SpotRecord::spot).toList());
    assertEquals(
        List.of(spot(ONE, "R2")), progress.setAside().stream().map(SpotRecord::spot).toList());
    assertEquals(List.of(), progress.record(RESISTORS, TWO).setAside());
  }

  /** A damaged part is gone, one that is only missing or doubted isn't; the one fitted is. */
  @ParameterizedTest
  @CsvSource({
    "part damaged, 1",
    "meter rejects it, 1",
    "not in the bag, 0",
    "hole or pad damaged, 0",
    "not sure it is the right part, 0",
    "dropped behind the bench, 0",
    "'', 0"
  })
  void a_part_set_aside_as_unfit_is_gone_from_its_bag(String reason, int gone) {
    var aside = setAside(1, reason);
    assertEquals(gone, after(aside).record(spot(ONE, "R1")).takenFromBag());
    assertEquals(
        gone + 1, after(aside, tick(2, ONE, SEATED, "R1")).record(spot(ONE, "R1")).takenFromBag());
    assertEquals(
        2 * gone, after(aside, setAside(2, reason)).record(spot(ONE, "R1")).takenFromBag());
    assertEquals(0, after(aside).record(spot(ONE, "R2")).takenFromBag());
  }

  @Test
  void a_damaged_substitute_is_not_missed_in_the_bag_of_the_part_asked_for() {
    var fitted =
        new Event.Substitution("s1", ONE, designators("R1"), "470R", "none", "Ada", minute(1));
    SpotRecord spoiled = after(fitted, setAside(2, "part damaged")).record(spot(ONE, "R1"));
    assertEquals(0, spoiled.takenFromBag());
    SpotRecord seated = after(fitted, tick(2, ONE, SEATED, "R1")).record(spot(ONE, "R1"));
    assertEquals(0, seated.takenFromBag());
  }

  private static Event.Tick setAside(int minute, String reason) {
    return new Event.Tick(
        "t" + minute,
        ONE,
        designators("R1"),
        SET_ASIDE,
        "Ada",
        minute(minute),
        Optional.empty(),
        Optional.of(reason).filter(written -> !written.isEmpty()));
  }

  @Test
  void the_reading_that_counts_is_the_latest() {
    Progress progress =
        after(
            measured(1, SEATED, "329"),
            measured(2, SOLDERED, "331"),
            tick(3, ONE, INSPECTED, "R1"));
    assertEquals(Optional.of("331"), progress.record(spot(ONE, "R1")).measured());
    assertEquals(Optional.empty(), progress.record(spot(ONE, "R2")).measured());
    assertEquals(List.of("331"), progress.record(RESISTORS, ONE).measured());
  }

  @Test
  void going_back_takes_the_later_marks_away_and_keeps_the_earlier() {
    Progress progress =
        after(
            tick(1, ONE, SEATED, "R1"),
            tick(2, ONE, SOLDERED, "R1"),
            tick(3, ONE, INSPECTED, "R1"),
            tick(4, ONE, SOLDERED, "R1"));
    SpotRecord record = progress.record(spot(ONE, "R1"));
    assertEquals(minute(1), record.mark(SEATED).orElseThrow().when());
    assertEquals(minute(4), record.mark(SOLDERED).orElseThrow().when());
    assertEquals(Optional.empty(), record.mark(INSPECTED));
    assertFalse(record.wantsPart());
    assertEquals("R1 on driver-1", record.spot().toString());
  }

  // --- tallies

  @Test
  void a_unit_is_finished_when_nothing_is_left_but_what_was_set_aside() {
    List<Event> most =
        List.of(tick(1, ONE, INSPECTED, "R1", "R2", "D1"), tick(2, ONE, SET_ASIDE, "U1"));
    assertTrue(Progress.of(PLAN, most).tally(ONE).isFinished());
    assertFalse(Progress.of(PLAN, most).tally(TWO).isFinished());
    assertFalse(Progress.of(PLAN, most.subList(0, 1)).tally(ONE).isFinished());
  }

  @Test
  void reaching_a_state_counts_it_and_the_later_ones_but_never_what_was_set_aside() {
    Tally tally =
        after(
                tick(1, ONE, SEATED, "R1"),
                tick(2, ONE, SOLDERED, "R2"),
                tick(3, ONE, INSPECTED, "D1"),
                tick(4, ONE, SET_ASIDE, "U1"))
            .tally(ONE);
    assertEquals(3, tally.reached(SEATED));
    assertEquals(2, tally.reached(SOLDERED));
    assertEquals(1, tally.reached(INSPECTED));
    assertEquals(4, tally.total());
  }

  @Test
  void batches_and_steps_are_counted_over_all_their_units() {
    Progress progress = after(tick(1, TWO, SEATED, "U1"));
    assertEquals(1, progress.tally(LAST).in(SEATED));
    assertEquals(2, progress.tally(LAST).total());
    assertEquals(1, progress.tally(CHIP).in(SEATED));
    assertEquals(2, progress.tally(DIODE).in(TO_DO));
    assertEquals(List.of(ONE, TWO), progress.units());
  }

  @Test
  void what_the_plan_no_longer_has_is_kept() {
    Progress progress = after(tick(1, ONE, SEATED, "R99"));
    assertEquals(
        List.of(spot(ONE, "R99")),
        progress.noLongerPlanned().stream().map(SpotRecord::spot).toList());
  }

  // --- time at the bench

  @Test
  void a_gap_of_fifteen_minutes_still_counts_as_work_and_a_longer_one_is_a_pause() {
    assertEquals(15, minutes(tick(0, ONE, SEATED, "R1"), tick(15, ONE, SEATED, "R2")));
    assertEquals(0, minutes(tick(0, ONE, SEATED, "R1"), tick(16, ONE, SEATED, "R2")));
    assertEquals(0, minutes(tick(5, ONE, SEATED, "R1"), tick(0, ONE, SEATED, "R2")));
  }

  @Test
  void states_are_named_in_the_order_of_the_work() {
    assertEquals(
        "to do, seated, soldered, inspected, set aside",
        Arrays.stream(State.values()).map(State::words).collect(Collectors.joining(", ")));
  }

  private static long minutes(Event... events) {
    return WorkingTime.of(List.of(events)).time().toMinutes();
  }

  private static Event.Tick named(String id, Unit unit, String designator) {
    return new Event.Tick(
        id,
        unit,
        designators(designator),
        SEATED,
        "Ada",
        minute(2),
        Optional.empty(),
        Optional.empty());
  }

  private static Event.Tick measured(int minute, State state, String reading) {
    return new Event.Tick(
        "m" + minute,
        ONE,
        designators("R1"),
        state,
        "Ada",
        minute(minute),
        Optional.of(reading),
        Optional.empty());
  }

  private static List<String> ids(List<Event> events) {
    return events.stream().map(Event::id).toList();
  }
}
