package lowfirst.progress;

import static lowfirst.progress.SmallPlan.CHIP;
import static lowfirst.progress.SmallPlan.DIODE;
import static lowfirst.progress.SmallPlan.LOW;
import static lowfirst.progress.SmallPlan.ONE;
import static lowfirst.progress.SmallPlan.PLAN;
import static lowfirst.progress.SmallPlan.RESISTORS;
import static lowfirst.progress.SmallPlan.TWO;
import static lowfirst.progress.SmallPlan.after;
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
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import lowfirst.assembly.AssemblyPlan;
import lowfirst.assembly.Batch;
import org.junit.jupiter.api.Test;

class ProgressTest {

  @Test
  void without_events_everything_is_to_do_and_the_first_step_comes_first() {
    Progress progress = after();
    assertEquals(8, progress.records().size());
    assertEquals(4, progress.tally(ONE).in(TO_DO));
    NextWork next = progress.next().orElseThrow();
    assertEquals(RESISTORS, next.step());
    assertEquals(SEATED, next.state());
    assertEquals(
        List.of(spot(ONE, "R1"), spot(ONE, "R2"), spot(TWO, "R1"), spot(TWO, "R2")), next.spots());
  }

  @Test
  void a_tick_moves_only_the_placements_it_names_on_its_unit() {
    Progress progress = after(tick(1, ONE, SEATED, "R1"));
    assertEquals(SEATED, progress.record(spot(ONE, "R1")).state());
    assertEquals(TO_DO, progress.record(spot(ONE, "R2")).state());
    assertEquals(TO_DO, progress.record(spot(TWO, "R1")).state());
  }

  @Test
  void a_batch_is_seated_whole_before_it_is_flipped_and_soldered() {
    var events = new ArrayList<Event>();
    events.add(tick(1, ONE, SEATED, "R1", "R2"));
    events.add(tick(2, TWO, SEATED, "R1", "R2"));
    NextWork next = Progress.of(PLAN, events).next().orElseThrow();
    assertEquals(DIODE, next.step());
    assertEquals(SEATED, next.state());

    events.add(tick(3, ONE, SEATED, "D1"));
    events.add(tick(4, TWO, SEATED, "D1"));
    next = Progress.of(PLAN, events).next().orElseThrow();
    assertEquals(RESISTORS, next.step());
    assertEquals(SOLDERED, next.state());
  }

  @Test
  void one_unit_can_go_on_while_another_waits() {
    List<Event> events =
        List.of(tick(1, ONE, SEATED, "R1", "R2", "D1"), tick(2, TWO, SEATED, "R1"));
    Progress progress = Progress.of(PLAN, events);
    NextWork one = progress.next(ONE::equals).orElseThrow();
    assertEquals(SOLDERED, one.state());
    NextWork two = progress.next(TWO::equals).orElseThrow();
    assertEquals(SEATED, two.state());
    assertEquals(List.of(spot(TWO, "R2")), two.spots());
  }

  @Test
  void what_is_plugged_in_is_inspected_without_being_soldered() {
    List<Event> events =
        List.of(
            tick(1, ONE, INSPECTED, "R1", "R2", "D1"),
            tick(2, TWO, INSPECTED, "R1", "R2", "D1"),
            tick(3, ONE, SEATED, "U1"),
            tick(4, TWO, SEATED, "U1"));
    NextWork next = Progress.of(PLAN, events).next().orElseThrow();
    assertEquals(CHIP, next.step());
    assertEquals(INSPECTED, next.state());
  }

  @Test
  void what_was_set_aside_does_not_hold_the_work_up_and_is_listed_with_its_reason() {
    Event.Tick aside =
        new Event.Tick(
            "a",
            ONE,
            SmallPlan.designators("R1"),
            SET_ASIDE,
            "Ada",
            minute(1),
            Optional.empty(),
            Optional.of("lead broken"));
    Progress progress = after(aside);
    assertEquals(
        List.of(spot(ONE, "R2"), spot(TWO, "R1"), spot(TWO, "R2")),
        progress.next().orElseThrow().spots());
    assertEquals(Optional.of("lead broken"), progress.setAside().get(0).reasonSetAside());
  }

  @Test
  void the_work_is_finished_when_all_is_inspected_or_set_aside() {
    List<Event> events =
        List.of(
            tick(1, ONE, INSPECTED, "R1", "R2", "D1", "U1"),
            tick(2, TWO, INSPECTED, "R1", "R2", "D1"),
            tick(3, TWO, SET_ASIDE, "U1"));
    Progress progress = Progress.of(PLAN, events);
    assertEquals(Optional.empty(), progress.next());
    assertTrue(progress.tally(TWO).isFinished());
  }

  @Test
  void an_undone_tick_does_not_count_and_stays_in_the_history() {
    Progress progress =
        after(tick(1, ONE, SEATED, "R1"), tick(2, ONE, SOLDERED, "R1"), undo(3, "t2"));
    assertEquals(SEATED, progress.record(spot(ONE, "R1")).state());
    assertEquals(
        List.of("COUNTS t1", "UNDONE t2", "COUNTS u3"),
        progress.log().history(spot(ONE, "R1")).stream()
            .map(line -> line.standing() + " " + line.event().id())
            .toList());
  }

  @Test
  void undoing_an_undo_makes_the_tick_count_again() {
    Progress progress = after(tick(1, ONE, SEATED, "R1"), undo(2, "t1"), undo(3, "u2"));
    assertEquals(SEATED, progress.record(spot(ONE, "R1")).state());
  }

  @Test
  void an_undo_of_something_later_or_unknown_does_nothing() {
    Progress progress = after(undo(1, "t2"), tick(2, ONE, SEATED, "R1"), undo(3, "never"));
    assertEquals(SEATED, progress.record(spot(ONE, "R1")).state());
  }

  @Test
  void the_same_event_id_counts_once_however_often_it_is_sent() {
    Event.Tick first = tick(1, ONE, SEATED, "R1");
    Event.Tick later = tick(2, ONE, SOLDERED, "R1");
    Progress progress = after(first, later, first);
    assertEquals(SOLDERED, progress.record(spot(ONE, "R1")).state());
    assertEquals(2, progress.log().events().size());
  }

  @Test
  void going_back_takes_the_later_marks_away_so_that_rework_is_inspected_again() {
    Progress progress =
        after(
            tick(1, ONE, SEATED, "R1"),
            tick(2, ONE, SOLDERED, "R1"),
            tick(3, ONE, INSPECTED, "R1"),
            tick(4, ONE, SEATED, "R1"));
    SpotRecord record = progress.record(spot(ONE, "R1"));
    assertEquals(SEATED, record.state());
    assertEquals(Optional.empty(), record.mark(INSPECTED));
    assertEquals(minute(4), record.mark(SEATED).orElseThrow().when());
  }

  @Test
  void a_row_of_the_sign_off_sheet_is_filled_in_when_all_its_parts_are_done() {
    Event.Tick measured =
        new Event.Tick(
            "m",
            ONE,
            SmallPlan.designators("R2"),
            SOLDERED,
            "Ben",
            minute(7),
            Optional.of("4.68k"),
            Optional.empty());
    List<Event> events = List.of(tick(1, ONE, SOLDERED, "R1"), measured);
    StepRecord row = Progress.of(PLAN, events).record(ONE).get(0);
    assertEquals(RESISTORS, row.step());
    assertEquals(minute(7), row.completed(SOLDERED).orElseThrow().when());
    assertEquals(List.of("Ada", "Ben"), row.people(SOLDERED));
    assertEquals(List.of("4.68k"), row.measured());
    StepRecord half = after(events.get(0)).record(ONE).get(0);
    assertEquals(Optional.empty(), half.completed(SOLDERED));
  }

  @Test
  void a_new_plan_loses_no_tick() {
    List<Event> events = List.of(tick(1, ONE, SOLDERED, "R1"), tick(2, ONE, SEATED, "D1"));
    var changed = new AssemblyPlan(List.of(new Batch(1, "driver", List.of(RESISTORS))), List.of());
    Progress progress = Progress.of(changed, events);
    assertEquals(SOLDERED, progress.record(spot(ONE, "R1")).state());
    assertEquals(
        List.of(spot(ONE, "D1")),
        progress.noLongerPlanned().stream().map(SpotRecord::spot).toList());
    assertEquals(SEATED, Progress.of(PLAN, events).record(spot(ONE, "D1")).state());
  }

  @Test
  void counts_add_up() {
    Progress progress = after(tick(1, ONE, SOLDERED, "R1", "R2"), tick(2, TWO, SET_ASIDE, "D1"));
    Tally batch = progress.tally(LOW);
    assertEquals(6, batch.total());
    assertEquals(2, batch.reached(SEATED));
    assertEquals(1, batch.in(SET_ASIDE));
    assertEquals(3, batch.in(TO_DO));
  }

  @Test
  void a_substitute_a_note_and_a_reading_at_first_power_are_kept() {
    List<Event> events =
        List.of(
            new Event.Substitution(
                "s", ONE, SmallPlan.designators("D1"), "1N4004", "no 1N4002", "Ada", minute(1)),
            new Event.Note(
                "n", ONE, SmallPlan.designators("D1"), "Ada", minute(2), "band was faint"),
            new Event.PowerReading(
                "p",
                ONE,
                "5 V rail",
                Event.PowerReading.Outcome.FAILED,
                Optional.of("3.1 V"),
                "Ada",
                minute(3)),
            new Event.PowerReading(
                "q",
                ONE,
                "5 V rail",
                Event.PowerReading.Outcome.PASSED,
                Optional.of("5.02 V"),
                "Ada",
                minute(4)));
    Progress progress = Progress.of(PLAN, events);
    SpotRecord diode = progress.record(spot(ONE, "D1"));
    assertEquals(TO_DO, diode.state());
    assertEquals("1N4004", diode.substitution().orElseThrow().fitted());
    assertEquals("band was faint", diode.notes().get(0).text());
    assertEquals(Optional.of("5.02 V"), progress.powerReadings(ONE).get("5 V rail").measured());
    assertTrue(progress.powerReadings(TWO).isEmpty());
  }

  @Test
  void undoing_every_event_from_the_last_to_the_first_leads_back_to_the_start() {
    var random = new Random(20260301);
    for (int round = 0; round < 50; round++) {
      var events = new ArrayList<Event>();
      for (int minute = 0; minute < 30; minute++) {
        events.add(
            tick(
                minute,
                random.nextBoolean() ? ONE : TWO,
                State.values()[random.nextInt(State.values().length)],
                List.of("R1", "R2", "D1", "U1").get(random.nextInt(4))));
      }
      for (int minute = 29; minute >= 0; minute--) {
        events.add(undo(100 + minute, "t" + minute));
        Progress shorter = Progress.of(PLAN, events.subList(0, minute));
        assertEquals(shorter.records(), Progress.of(PLAN, events).records());
      }
    }
  }

  @Test
  void working_time_leaves_out_pauses() {
    List<Event> events =
        List.of(
            tick(0, ONE, SEATED, "R1"),
            tick(10, ONE, SEATED, "R2"),
            tick(60, ONE, SEATED, "D1"),
            tick(61, ONE, SOLDERED, "R1"));
    assertEquals(java.time.Duration.ofMinutes(11), WorkingTime.of(events).time());
  }
}
