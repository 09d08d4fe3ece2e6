package lowfirst.progress;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import lowfirst.assembly.AssemblyPlan;
import lowfirst.assembly.Batch;
import lowfirst.assembly.Step;
import lowfirst.board.Designator;
import lowfirst.board.Unit;

/**
 * Where a kit stands: the plan, and what the events add up to.
 *
 * @param plan what there is to do
 * @param log every event, and which count
 * @param records what is recorded of each spot: first those of the plan in its order, then those
 *     that only events name
 */
public record Progress(AssemblyPlan plan, EventLog log, Map<Spot, SpotRecord> records) {

  public Progress {
    records = Collections.unmodifiableMap(new LinkedHashMap<>(records));
  }

  /** What the events, in the order acknowledged, come to under this plan. */
  public static Progress of(AssemblyPlan plan, List<Event> events) {
    var log = EventLog.of(events);
    var records = new LinkedHashMap<Spot, SpotRecord>();
    for (Step step : plan.steps()) {
      for (Unit unit : unitsOf(step)) {
        for (Designator designator : step.designators()) {
          var spot = new Spot(unit, designator);
          records.put(spot, SpotRecord.untouched(spot));
        }
      }
    }
    log.counting().forEach(event -> apply(event, records));
    return new Progress(plan, log, records);
  }

  private static void apply(Event event, Map<Spot, SpotRecord> records) {
    for (Spot spot : Touched.by(event)) {
      SpotRecord before = records.getOrDefault(spot, SpotRecord.untouched(spot));
      if (event instanceof Event.Tick tick) {
        records.put(spot, before.with(tick));
      } else if (event instanceof Event.Note note) {
        records.put(spot, before.with(note));
      } else if (event instanceof Event.Substitution substitution) {
        records.put(spot, before.with(substitution));
      }
    }
  }

  /** The units on which a step is done, side by side. */
  public static List<Unit> unitsOf(Step step) {
    return java.util.stream.IntStream.rangeClosed(1, step.units())
        .mapToObj(number -> new Unit(step.board(), number))
        .toList();
  }

  /** Every unit that the plan builds, in the order of the plan. */
  public List<Unit> units() {
    var units = new LinkedHashSet<Unit>();
    plan.steps().forEach(step -> units.addAll(unitsOf(step)));
    return List.copyOf(units);
  }

  /** What is recorded of one part; untouched when nothing is. */
  public SpotRecord record(Spot spot) {
    return records.getOrDefault(spot, SpotRecord.untouched(spot));
  }

  /** What is recorded of one step on one unit. */
  public StepRecord record(Step step, Unit unit) {
    return new StepRecord(
        step,
        step.designators().stream().map(designator -> record(new Spot(unit, designator))).toList());
  }

  /** One unit, a row a step in the order to work: what the sign-off sheet shows. */
  public List<StepRecord> record(Unit unit) {
    return plan.steps().stream()
        .filter(step -> unitsOf(step).contains(unit))
        .map(step -> record(step, unit))
        .toList();
  }

  /** How many parts of a unit are in which state. */
  public Tally tally(Unit unit) {
    return Tally.of(record(unit).stream().flatMap(row -> row.spots().stream()).toList());
  }

  /** How many parts of a batch, on all its units, are in which state. */
  public Tally tally(Batch batch) {
    return Tally.of(
        batch.steps().stream().flatMap(step -> spotsOf(step).stream()).map(this::record).toList());
  }

  /** How many parts of a step, on all its units, are in which state. */
  public Tally tally(Step step) {
    return Tally.of(spotsOf(step).stream().map(this::record).toList());
  }

  /** What was set aside, in the order of the plan. */
  public List<SpotRecord> setAside() {
    return records.values().stream().filter(spot -> spot.state() == State.SET_ASIDE).toList();
  }

  /** What was recorded of spots that the plan no longer has: kept and shown, never dropped. */
  public List<SpotRecord> noLongerPlanned() {
    Set<Spot> planned = new HashSet<>();
    plan.steps().forEach(step -> planned.addAll(spotsOf(step)));
    return records.values().stream()
        .filter(recorded -> !planned.contains(recorded.spot()))
        .toList();
  }

  /** The checks made at first power of a unit, by name; the newest of each. */
  public Map<String, Event.PowerReading> powerReadings(Unit unit) {
    var newest = new LinkedHashMap<String, Event.PowerReading>();
    for (Event event : log.counting()) {
      if (event instanceof Event.PowerReading reading && reading.unit().equals(unit)) {
        newest.put(reading.check(), reading);
      }
    }
    return Collections.unmodifiableMap(newest);
  }

  /** Where to go on, on whichever units; empty when nothing is left but what was set aside. */
  public Optional<NextWork> next() {
    return next(unit -> true);
  }

  /** Where to go on with some of the units. */
  public Optional<NextWork> next(Predicate<Unit> units) {
    return plan.batches().stream().flatMap(batch -> nextIn(batch, units).stream()).findFirst();
  }

  /**
   * A batch is seated step by step, then flipped once and soldered step by step, then inspected: so
   * the earliest of these rounds that is unfinished comes first.
   */
  private Optional<NextWork> nextIn(Batch batch, Predicate<Unit> units) {
    for (State round : List.of(State.SEATED, State.SOLDERED, State.INSPECTED)) {
      for (Step step : batch.steps()) {
        List<Spot> left =
            spotsOf(step).stream()
                .filter(spot -> units.test(spot.unit()))
                .filter(spot -> following(step, record(spot).state()).equals(Optional.of(round)))
                .toList();
        if (!left.isEmpty()) {
          return Optional.of(new NextWork(batch, step, round, left));
        }
      }
    }
    return Optional.empty();
  }

  /**
   * The state that comes after {@code state} in a step: nothing after inspected or set aside, and
   * what is plugged in is not soldered.
   */
  public static Optional<State> following(Step step, State state) {
    return switch (state) {
      case TO_DO -> Optional.of(State.SEATED);
      case SEATED ->
          Optional.of(step.stage() == Step.Stage.PLUG_IN ? State.INSPECTED : State.SOLDERED);
      case SOLDERED -> Optional.of(State.INSPECTED);
      case INSPECTED, SET_ASIDE -> Optional.empty();
    };
  }

  /** Every spot of a step, unit by unit in the order to fill. */
  public static List<Spot> spotsOf(Step step) {
    var spots = new ArrayList<Spot>();
    for (Unit unit : unitsOf(step)) {
      step.designators().forEach(designator -> spots.add(new Spot(unit, designator)));
    }
    return List.copyOf(spots);
  }
}
