package lowfirst.progress;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lowfirst.assembly.AssemblyPlan;
import lowfirst.assembly.Batch;
import lowfirst.assembly.Rule;
import lowfirst.assembly.Step;
import lowfirst.board.Designator;
import lowfirst.board.Side;
import lowfirst.board.Unit;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;

/** A plan for two driver boards: resistors and a diode in one batch, an IC plugged in at last. */
public final class SmallPlan {
  public static final Unit ONE = new Unit("driver", 1);
  public static final Unit TWO = new Unit("driver", 2);

  public static final Step RESISTORS = step(1, PartKind.RESISTOR, Step.Stage.SOLDER, "R1", "R2");
  public static final Step DIODE = step(2, PartKind.DIODE, Step.Stage.SOLDER, "D1");
  public static final Step CHIP = step(3, PartKind.INTEGRATED_CIRCUIT, Step.Stage.PLUG_IN, "U1");

  public static final Batch LOW = new Batch(1, "driver", List.of(RESISTORS, DIODE));
  public static final Batch LAST = new Batch(2, "driver", List.of(CHIP));

  public static final AssemblyPlan PLAN = new AssemblyPlan(List.of(LOW, LAST), List.of());

  private static final Instant START = Instant.parse("2026-03-01T18:00:00Z");

  private SmallPlan() {}

  /** How the plan stands after these events. */
  public static Progress after(Event... events) {
    return Progress.of(PLAN, List.of(events));
  }

  /** A time of that evening. */
  public static Instant minute(int minutes) {
    return START.plusSeconds(60L * minutes);
  }

  /** A tick at a minute, whose id is {@code t} and the minute. */
  public static Event.Tick tick(int minute, Unit unit, State state, String... designators) {
    return new Event.Tick(
        "t" + minute,
        unit,
        designators(designators),
        state,
        "Ada",
        minute(minute),
        Optional.empty(),
        Optional.empty());
  }

  /** An undo at a minute, whose id is {@code u} and the minute. */
  public static Event.Undo undo(int minute, String undone) {
    return new Event.Undo("u" + minute, undone, "Ada", minute(minute));
  }

  /** Designators by name. */
  public static List<Designator> designators(String... names) {
    return Arrays.stream(names).map(Designator::of).toList();
  }

  /** One spot. */
  public static Spot spot(Unit unit, String designator) {
    return new Spot(unit, Designator.of(designator));
  }

  private static Step step(int number, PartKind kind, Step.Stage stage, String... designators) {
    var partType = PartType.named(kind, "part " + number, "", "");
    return new Step(
        number,
        "driver",
        2,
        partType,
        designators(designators),
        List.of(),
        Side.TOP,
        OptionalDouble.of(number),
        Rule.LOWEST_FIRST,
        number + " mm, lowest first",
        stage);
  }
}
