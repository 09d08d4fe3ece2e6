package lowfirst.bench.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import lowfirst.assembly.Batch;
import lowfirst.assembly.Step;
import lowfirst.bench.page.StepScreen;
import lowfirst.bench.page.StepScreen.Advice;
import lowfirst.bench.page.StepScreen.BatchLine;
import lowfirst.bench.page.StepScreen.Hand;
import lowfirst.bench.page.StepScreen.Meter;
import lowfirst.bench.page.StepScreen.PlaceChip;
import lowfirst.bench.page.StepScreen.UnitChip;
import lowfirst.board.Designator;
import lowfirst.board.Kit;
import lowfirst.board.Unit;
import lowfirst.part.BodyOutline;
import lowfirst.part.PartType;
import lowfirst.progress.Progress;
import lowfirst.progress.Spot;
import lowfirst.progress.SpotRecord;
import lowfirst.progress.State;
import lowfirst.progress.Tally;
import lowfirst.progress.WorkingTime;
import lowfirst.sheet.body.PartPicture;
import lowfirst.sheet.html.SvgWriter;
import lowfirst.sheet.map.Skyline;
import lowfirst.sheet.progress.ProgressWords;
import lowfirst.sheet.wording.ReadingWords;
import lowfirst.sheet.wording.Sentence;
import lowfirst.sheet.wording.Spoken;
import lowfirst.sheet.wording.StepWording;
import lowfirst.sorting.SortPlan;

/** Puts one step on the screen. */
public final class StepScreens {
  private final Kit kit;
  private final StepAdvice advice;
  private final Progress progress;
  private final Step step;
  private final View view;
  private final List<Unit> units;
  private final List<Spot> spots;
  private final Optional<State> due;

  /** What the round of work is called when everything is done: looking at it. */
  private final State round;

  private StepScreens(Kit kit, SortPlan sorting, Progress progress, Step step, View view) {
    this.kit = kit;
    this.advice = new StepAdvice(sorting, step);
    this.progress = progress;
    this.step = step;
    this.view = view;
    this.units = view.units(step);
    this.spots =
        Progress.spotsOf(step).stream().filter(spot -> units.contains(spot.unit())).toList();
    this.due = Rounds.due(progress, step, spots);
    this.round = due.orElse(State.INSPECTED);
  }

  /** A step as it stands, seen in some way. */
  public static StepScreen of(Kit kit, SortPlan sorting, Progress progress, Step step, View view) {
    return new StepScreens(kit, sorting, progress, step, view).screen();
  }

  private StepScreen screen() {
    int last = progress.plan().steps().size();
    Hand hand = hand();
    List<Advice> advice = this.advice.in(round);
    return new StepScreen(
        step.number(),
        last,
        task(),
        step.why(),
        hand,
        StepMap.of(kit, progress, step, round, view, places()),
        advice,
        meter(),
        Rounds.of(progress, Optional.of(step), spots, List.of()),
        batch(),
        unitChips(),
        SvgWriter.write(
            Skyline.of(progress, OptionalInt.of(step.number())), "The job, step by step"),
        spoken(hand, advice),
        neighbour(step.number() - 1, last),
        neighbour(step.number() + 1, last),
        ProgressWords.duration(WorkingTime.of(progress.log().events()).time()));
  }

  private Optional<String> neighbour(int number, int last) {
    return number < 1 || number > last ? Optional.empty() : Optional.of(view.step(number));
  }

  private List<Spot> dueSpots() {
    return spots.stream()
        .filter(spot -> Progress.following(step, progress.record(spot).state()).equals(due))
        .toList();
  }

  private String task() {
    String part = StepWording.shortName(step.partType());
    if (due.isEmpty()) {
      return "Done: " + spots.size() + " × " + part;
    }
    String verb =
        step.stage() == Step.Stage.PLUG_IN && round == State.SEATED
            ? "plug in"
            : ProgressWords.verb(round);
    return Sentence.begun(verb) + " " + dueSpots().size() + " × " + part;
  }

  private Hand hand() {
    int each = step.designators().size();
    String perUnit =
        units.size() > 1 ? each + " on each of " + units.size() + " boards" : "on " + units.get(0);
    Optional<BodyOutline> outline =
        kit.board(step.board()).flatMap(board -> board.outlineOf(step.designators().get(0)));
    return new Hand(
        SvgWriter.write(PartPicture.of(step.partType(), outline), "What it looks like"),
        StepWording.marking(step),
        StepWording.swapped(kit, step).isEmpty()
            ? perUnit
            : perUnit + ", " + StepWording.swapped(kit, step),
        bag());
  }

  /** Where the part lies, and how many should be left there when this round is done. */
  private String bag() {
    PartType type = step.partType();
    long now = round == State.SEATED ? dueSpots().size() : 0;
    long later =
        progress.plan().steps().stream()
                .filter(other -> other.partType().equals(type))
                .flatMap(other -> Progress.spotsOf(other).stream())
                .filter(spot -> progress.record(spot).wantsPart())
                .count()
            - now;
    String needed =
        later == 0
            ? "none are needed later"
            : later + (later == 1 ? " is" : " are") + " needed later";
    return BagCount.of(advice.line(), progress, type)
        .map(
            bag -> {
              long left = bag.left() - now;
              return (bag.label().isBlank() ? "Bag" : "Bag " + bag.label())
                  + ": "
                  + (left < 0 ? -left + " too few; " : left + " should be left then; ")
                  + needed;
            })
        .orElse("Of this part " + needed);
  }

  private List<PlaceChip> places() {
    var chips = new ArrayList<PlaceChip>();
    for (Designator designator : step.designators()) {
      List<SpotRecord> records =
          units.stream().map(unit -> progress.record(new Spot(unit, designator))).toList();
      State least = Rounds.least(records);
      SpotRecord first =
          records.stream().filter(record -> record.state() == least).findFirst().orElseThrow();
      boolean alike = records.stream().allMatch(record -> record.state() == least);
      chips.add(
          new PlaceChip(
              chips.size() + 1,
              designator.text(),
              alike ? least.words() : least.words() + " on " + first.spot().unit(),
              least == State.TO_DO ? "" : Rounds.sign(least),
              View.spot(first.spot()),
              Progress.following(step, least).equals(due) && due.isPresent() ? "due" : ""));
    }
    return chips;
  }

  private Optional<Meter> meter() {
    String words = ReadingWords.of(step.partType(), lowfirst.sorting.Meter.of(kit.settings()));
    return round != State.SEATED || words.isBlank()
        ? Optional.empty()
        : Optional.of(new Meter(words, step.number(), "The part alone, not yet on the board."));
  }

  private BatchLine batch() {
    Batch batch =
        progress.plan().batches().stream()
            .filter(one -> one.steps().contains(step))
            .findFirst()
            .orElseThrow();
    Tally tally = progress.tally(batch);
    int there = tally.reached(round) + tally.in(State.SET_ASIDE);
    int lastStep = batch.steps().get(batch.steps().size() - 1).number();
    String flip =
        switch (round) {
          case SEATED ->
              step.stage() == Step.Stage.PLUG_IN
                  ? "nothing to turn over"
                  : lastStep == step.number()
                      ? "turn the board over after this step"
                      : "turn the board over after step " + lastStep;
          case SOLDERED -> "turned over: solder side up";
          default -> "look at both sides";
        };
    return new BatchLine(
        "Batch " + batch.number() + ": " + there + " of " + tally.total() + " " + round.words(),
        flip);
  }

  private List<UnitChip> unitChips() {
    return Progress.unitsOf(step).stream().map(this::unitChip).toList();
  }

  private UnitChip unitChip(Unit unit) {
    Tally all = progress.tally(unit);
    Tally here = progress.record(step, unit).tally();
    boolean only = view.unit().filter(unit.serial()::equals).isPresent();
    return new UnitChip(
        unit.serial(),
        all.in(State.INSPECTED) + " of " + all.total() + " parts inspected",
        here.reached(round) + " of " + here.total() + " " + round.words(),
        view.only(only ? Optional.empty() : Optional.of(unit.serial())).step(step.number()),
        only ? "true" : "false");
  }

  private String spoken(Hand hand, List<Advice> advice) {
    var words = new StringBuilder();
    words.append("Step ").append(step.number()).append(". ").append(task()).append(". ");
    words.append(hand.marking()).append(hand.marking().isEmpty() ? "" : ". ");
    words.append("Places: ");
    words.append(String.join(", ", step.designators().stream().map(Designator::text).toList()));
    words.append(". ").append(hand.perUnit()).append(". ");
    advice.forEach(one -> words.append(one.text()).append(' '));
    meter().ifPresent(meter -> words.append("Meter: ").append(meter.limits()).append('.'));
    return Spoken.of(words.toString());
  }
}
