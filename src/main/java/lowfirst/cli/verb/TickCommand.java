package lowfirst.cli.verb;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.stream.Stream;
import lowfirst.assembly.AssemblyOrder;
import lowfirst.assembly.AssemblyPlan;
import lowfirst.board.Designator;
import lowfirst.board.Kit;
import lowfirst.board.Unit;
import lowfirst.cli.manual.Example;
import lowfirst.cli.option.BatchOptions;
import lowfirst.cli.option.KitArgument;
import lowfirst.cli.option.Offered;
import lowfirst.cli.option.StoreOption;
import lowfirst.cli.process.ExitStatus;
import lowfirst.cli.process.Surroundings;
import lowfirst.intake.KitReading;
import lowfirst.progress.Event;
import lowfirst.progress.EventLog;
import lowfirst.progress.MeasuredReading;
import lowfirst.progress.Progress;
import lowfirst.progress.Selection;
import lowfirst.progress.Spot;
import lowfirst.progress.State;
import lowfirst.sheet.progress.ProgressDocument;
import lowfirst.sorting.Meter;
import lowfirst.sorting.MeterLimits;
import lowfirst.store.EventStore;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** Records what was done at the bench. */
@Command(
    name = "tick",
    mixinStandardHelpOptions = true,
    header = "record what was done at the bench",
    description = "Records that parts were seated, soldered, inspected or set aside; or undoes it.",
    exitCodeListHeading = ExitStatus.HEADING,
    exitCodeList = {
      "0:recorded",
      "1:nothing to record",
      ExitStatus.NOT_UNDERSTOOD,
      ExitStatus.UNREADABLE_OR_UNWRITABLE,
      ExitStatus.OUR_BUG
    },
    footerHeading = Example.HEADING,
    footer = {
      "  lowfirst tick my-kit 7 --state seated --by Ada",
      "  lowfirst tick my-kit R12 --unit driver-2 --state inspected --measured 328.7",
      "  lowfirst tick my-kit D3 --unit driver-1 --state set-aside --reason \"no band\"",
      "  lowfirst tick my-kit --undo"
    })
public final class TickCommand implements Callable<Integer> {
  private static final int WIDTH = 100;

  private final Surroundings surroundings;

  @Spec private CommandSpec spec;
  @Mixin private KitArgument kit = new KitArgument();
  @Mixin private BatchOptions batches = new BatchOptions();
  @Mixin private StoreOption store = new StoreOption();

  @Parameters(
      index = "1..*",
      paramLabel = "<what>",
      description = "a step's number, a designator, a range such as R1-R4, or a unit's serial")
  private List<String> what = new ArrayList<>();

  @Option(
      names = "--state",
      paramLabel = "<state>",
      converter = StateName.class,
      completionCandidates = Offered.States.class,
      description = "to-do, seated, soldered, inspected or set-aside")
  private State state;

  @Option(
      names = "--unit",
      paramLabel = "<serial>",
      description = "only on this unit; otherwise on every unit of the board, side by side")
  private List<String> units = new ArrayList<>();

  @Option(names = "--by", paramLabel = "<name>", description = "who did it")
  private String by;

  @Option(names = "--measured", paramLabel = "<reading>", description = "what the meter said")
  private String measured;

  @Option(names = "--reason", paramLabel = "<text>", description = "why it was set aside")
  private String reason;

  @Option(
      names = "--undo",
      description =
          "takes back the newest entry, or the newest of what is named; it stays on record")
  private boolean undo;

  /** The verb in these surroundings. */
  public TickCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  /** States as one types them. */
  static final class StateName implements ITypeConverter<State> {
    @Override
    public State convert(String text) {
      return Stream.of(State.values())
          .filter(known -> known.words().replace(' ', '-').equalsIgnoreCase(text.replace(' ', '-')))
          .findFirst()
          .orElseThrow(
              () ->
                  new TypeConversionException(
                      "no state is called \""
                          + text
                          + "\"; say to-do, seated, soldered, inspected or set-aside"));
    }
  }

  @Override
  public Integer call() {
    KitReading reading = kit.read(surroundings);
    AssemblyPlan plan = AssemblyOrder.of(reading.kit(), batches.options());
    String who = by == null ? reading.kit().settings().signer() : by;
    List<Spot> spots = what.isEmpty() ? List.of() : spots(plan);
    checkUsage(spots);
    try (EventStore open = store.open(surroundings, kit.directory(surroundings))) {
      Progress before = Progress.of(plan, events(open));
      List<? extends Event> told = undo ? newest(before, spots) : List.of();
      List<? extends Event> recorded = undo ? undos(told, who) : ticks(before, spots, who);
      if (recorded.isEmpty()) {
        surroundings.err().println(undo ? "nothing is recorded to undo" : "already recorded so");
        return ExitStatus.FINDINGS;
      }
      recorded.forEach(open::append);
      Progress after = Progress.of(plan, events(open));
      surroundings
          .out()
          .print(
              surroundings.text(
                  ProgressDocument.answer(
                      undo ? "Undone" : "Recorded",
                      undo ? told : recorded,
                      reading(reading.kit(), plan, spots),
                      after),
                  WIDTH));
      return ExitStatus.OK;
    }
  }

  /** What the reading says about the part, where a multimeter can judge it. */
  private Optional<MeasuredReading> reading(Kit read, AssemblyPlan plan, List<Spot> spots) {
    return measured == null
        ? Optional.empty()
        : plan.stepOf(spots.get(0).unit().board(), spots.get(0).designator())
            .flatMap(step -> MeterLimits.of(step.partType(), Meter.of(read.settings())))
            .flatMap(limits -> MeasuredReading.parse(measured, limits).value());
  }

  private List<Spot> spots(AssemblyPlan plan) {
    var selection = Selection.parse(plan, what, units);
    return selection
        .value()
        .orElseThrow(() -> usage(selection.fault() + "; " + selection.remedy()))
        .spots();
  }

  private void checkUsage(List<Spot> spots) {
    if (undo && state != null) {
      throw usage("--undo and --state don't go together");
    }
    if (!undo && state == null) {
      throw usage("say what was done, for example --state seated");
    }
    if (!undo && spots.isEmpty()) {
      throw usage("name a step, a designator or a unit");
    }
    if (measured != null && spots.size() != 1) {
      throw usage("a reading belongs to one part: name one designator, and its unit with --unit");
    }
    if (state == State.SET_ASIDE && (reason == null || reason.isBlank())) {
      throw usage("say why it is set aside: --reason \"lead broken\"");
    }
  }

  private ParameterException usage(String message) {
    return new ParameterException(spec.commandLine(), message);
  }

  private static List<Event> events(EventStore store) {
    return store.events().stream().map(EventStore.Stored::event).toList();
  }

  private static List<Event> newest(Progress progress, List<Spot> spots) {
    EventLog log = progress.log();
    return spots.isEmpty() ? log.newestAction() : log.newestAction(spots);
  }

  private List<Event> undos(List<? extends Event> taken, String who) {
    String action = UUID.randomUUID().toString();
    return taken.stream()
        .<Event>map(
            event ->
                new Event.Undo(
                    action + "/" + event.id(), event.id(), who, surroundings.clock().instant()))
        .toList();
  }

  /**
   * One event a unit; what is in that state already is left out, unless a reading comes with it.
   */
  private List<Event> ticks(Progress before, List<Spot> spots, String who) {
    Map<Unit, List<Designator>> byUnit = new LinkedHashMap<>();
    spots.stream()
        .filter(spot -> measured != null || before.record(spot).state() != state)
        .forEach(
            spot ->
                byUnit
                    .computeIfAbsent(spot.unit(), unit -> new ArrayList<>())
                    .add(spot.designator()));
    String action = UUID.randomUUID().toString();
    Function<Map.Entry<Unit, List<Designator>>, Event> tick =
        entry ->
            new Event.Tick(
                action + "/" + entry.getKey().serial(),
                entry.getKey(),
                entry.getValue(),
                state,
                who,
                surroundings.clock().instant(),
                Optional.ofNullable(measured),
                Optional.ofNullable(reason));
    return byUnit.entrySet().stream().map(tick).toList();
  }
}
