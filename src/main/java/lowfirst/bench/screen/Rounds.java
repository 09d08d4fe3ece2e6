package lowfirst.bench.screen;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import lowfirst.assembly.Step;
import lowfirst.bench.page.StepScreen.Control;
import lowfirst.bench.page.StepScreen.Reason;
import lowfirst.bench.page.StepScreen.Round;
import lowfirst.bench.page.StepScreen.Undo;
import lowfirst.progress.AsideReason;
import lowfirst.progress.Event;
import lowfirst.progress.EventLog;
import lowfirst.progress.Progress;
import lowfirst.progress.Spot;
import lowfirst.progress.SpotRecord;
import lowfirst.progress.State;
import lowfirst.sheet.progress.ProgressWords;
import lowfirst.sheet.wording.Sentence;

/** The four controls: what they act on, which one is due, what an undo would take back. */
public final class Rounds {
  private Rounds() {}

  /** The earliest state that a part of these has yet to reach; empty when all are done. */
  static Optional<State> due(Progress progress, Step step, List<Spot> spots) {
    return spots.stream()
        .map(spot -> progress.record(spot).state())
        .flatMap(state -> Progress.following(step, state).stream())
        .min(Comparator.naturalOrder());
  }

  /**
   * The controls for some spots of a step.
   *
   * @param undoable the spots whose newest action can be taken back here; none for the newest of
   *     all
   */
  static Round of(Progress progress, Optional<Step> step, List<Spot> spots, List<Spot> undoable) {
    Optional<State> due = step.flatMap(known -> due(progress, known, spots));
    boolean plugged = step.filter(known -> known.stage() == Step.Stage.PLUG_IN).isPresent();
    var controls = new ArrayList<Control>();
    controls.add(control(State.SEATED, plugged ? "Plugged in" : "Seated", "⤓", "1", due));
    if (!plugged) {
      controls.add(control(State.SOLDERED, "Soldered", "◆", "2", due));
    }
    controls.add(control(State.INSPECTED, "Inspected", "✓", "3", due));
    return new Round(
        UUID.randomUUID().toString(),
        spots.stream().map(Rounds::text).toList(),
        ProgressWords.spots(spots),
        controls,
        new Control(State.SET_ASIDE.name(), "Set aside", "⚑", "4", "behind"),
        Arrays.stream(AsideReason.values())
            .map(reason -> new Reason(reason.words(), Sentence.begun(reason.words())))
            .toList(),
        undo(progress.log(), undoable));
  }

  private static Control control(
      State state, String word, String sign, String key, Optional<State> due) {
    String rank =
        due.map(next -> next == state ? "next" : state.compareTo(next) > 0 ? "ahead" : "behind")
            .orElse("behind");
    return new Control(state.name(), word, sign, key, rank);
  }

  private static Optional<Undo> undo(EventLog log, List<Spot> spots) {
    List<Event> newest = spots.isEmpty() ? log.newestAction() : log.newestAction(spots);
    return newest.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Undo(
                UUID.randomUUID().toString(),
                newest.stream().map(Event::id).toList(),
                words(newest)));
  }

  /** What an action did; its events tell the same of several units, so the first leads. */
  public static String words(List<Event> action) {
    if (action.isEmpty()) {
      return "";
    }
    if (action.get(0) instanceof Event.Tick first) {
      List<Spot> spots =
          action.stream()
              .filter(Event.Tick.class::isInstance)
              .map(Event.Tick.class::cast)
              .flatMap(tick -> tick.designators().stream().map(d -> new Spot(tick.unit(), d)))
              .toList();
      return first.state().words() + ": " + ProgressWords.spots(spots);
    }
    return ProgressWords.event(action.get(0));
  }

  /** A spot as forms carry it: the designator, then the serial. */
  private static String text(Spot spot) {
    return spot.designator() + " on " + spot.unit().serial();
  }

  /** The spot of the kit that a form names. */
  public static Optional<Spot> spot(Progress progress, String text) {
    return progress.records().keySet().stream().filter(spot -> text(spot).equals(text)).findFirst();
  }

  /** A sign for a state, to stand beside its word. */
  static String sign(State state) {
    return switch (state) {
      case TO_DO -> "○";
      case SEATED -> "⤓";
      case SOLDERED -> "◆";
      case INSPECTED -> "✓";
      case SET_ASIDE -> "⚑";
    };
  }

  /** The state that stands for several parts: the least advanced, set aside only when all are. */
  static State least(List<SpotRecord> records) {
    return records.stream()
        .map(SpotRecord::state)
        .min(Comparator.naturalOrder())
        .orElse(State.TO_DO);
  }
}
