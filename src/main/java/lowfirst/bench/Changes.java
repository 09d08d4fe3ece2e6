package lowfirst.bench;

import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import lowfirst.bench.screen.OtherPart;
import lowfirst.bench.screen.Rounds;
import lowfirst.bench.web.Request;
import lowfirst.board.Designator;
import lowfirst.board.Kit;
import lowfirst.board.Unit;
import lowfirst.progress.Event;
import lowfirst.progress.Event.PowerReading.Outcome;
import lowfirst.progress.Progress;
import lowfirst.progress.Spot;
import lowfirst.progress.State;

/**
 * Turns what a form says into events. The form brings the id of its action, so that sending it
 * again, after an answer that was lost, records nothing twice.
 */
final class Changes {
  private static final int LONGEST_TEXT = 500;

  private final Request request;
  private final Kit kit;
  private final Progress progress;
  private final Clock clock;
  private final String who;

  Changes(Request request, Kit kit, Progress progress, Clock clock) {
    this.request = request;
    this.kit = kit;
    this.progress = progress;
    this.clock = clock;
    this.who = People.of(request).name();
  }

  /** What a form said that can't be done; told to the person. */
  static final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Refused(String message) {
      super(message, null, false, false);
    }
  }

  /** The id of the action, and of nothing else. */
  String action() {
    String action = request.field("action");
    if (!action.matches("[0-9a-f-]{36}")) {
      throw new Refused("This page is not complete. Open it again.");
    }
    String state = request.field("state");
    return state.isEmpty() ? action : action + "-" + state;
  }

  /** Ticks, one event a unit. From a step's page a tick only moves forward. */
  List<Event> ticks() {
    State state = state();
    boolean forwardOnly = !request.field("from").equals("spot");
    List<Spot> moved = spots().stream().filter(spot -> moves(spot, state, forwardOnly)).toList();
    Optional<String> measured = optional("measured");
    Optional<String> reason =
        state == State.SET_ASIDE
            ? optional("reason")
                .or(() -> optional("other"))
                .or(() -> Optional.of("no reason given"))
            : Optional.empty();
    return eachUnit(
        moved,
        (unit, designators) ->
            new Event.Tick(
                id(unit), unit, designators, state, who, clock.instant(), measured, reason));
  }

  private State state() {
    try {
      return State.valueOf(request.field("state"));
    } catch (IllegalArgumentException unknown) {
      throw new Refused("This page is not complete. Open it again.");
    }
  }

  private boolean moves(Spot spot, State state, boolean forwardOnly) {
    State now = progress.record(spot).state();
    boolean forward = now != State.SET_ASIDE && now.compareTo(state) < 0;
    return forwardOnly ? forward : now != state;
  }

  /** A note, one event a unit. */
  List<Event> notes() {
    String text = required("text", "Write what to remember.");
    return eachUnit(
        spots(),
        (unit, designators) ->
            new Event.Note(id(unit), unit, designators, who, clock.instant(), text));
  }

  /** Another part fitted, one event a unit. */
  List<Event> substitutions() {
    String fitted = required("fitted", "Write what was fitted.");
    return eachUnit(
        spots(),
        (unit, designators) ->
            new Event.Substitution(
                id(unit),
                unit,
                designators,
                fitted,
                reasonWithVerdict(new Spot(unit, designators.get(0)), fitted),
                who,
                clock.instant()));
  }

  /** The record says what the tool said of the part when it was fitted, whatever was done then. */
  private String reasonWithVerdict(Spot spot, String fitted) {
    String judged =
        OtherPart.judged(kit, spot, fitted)
            .map(finding -> "judged: " + finding.verdict().words())
            .orElse("not judged");
    return optional("reason").map(reason -> reason + "; " + judged).orElse(judged);
  }

  /** Takes back the events that the page showed, whatever came after it. */
  List<Event> undos() {
    String action = action();
    List<String> known = progress.log().events().stream().map(Event::id).toList();
    return request.fields("event").stream()
        .filter(known::contains)
        .<Event>map(event -> new Event.Undo(action + "/" + event, event, who, clock.instant()))
        .toList();
  }

  /** A check at first power. */
  List<Event> powerReadings() {
    Unit unit =
        progress.units().stream()
            .filter(known -> known.serial().equals(request.field("unit")))
            .findFirst()
            .orElseThrow(() -> new Refused("This kit has no such unit."));
    Outcome outcome =
        switch (request.field("outcome")) {
          case "PASSED" -> Outcome.PASSED;
          case "FAILED" -> Outcome.FAILED;
          default -> throw new Refused("Say whether the check passed or failed.");
        };
    String check = required("check", "This page is not complete. Open it again.");
    return List.of(
        new Event.PowerReading(
            id(unit), unit, check, outcome, optional("measured"), who, clock.instant()));
  }

  private String id(Unit unit) {
    return action() + "/" + unit.serial();
  }

  private List<Spot> spots() {
    var spots = new ArrayList<Spot>();
    for (String text : request.fields("spot")) {
      spots.add(
          Rounds.spot(progress, text)
              .orElseThrow(() -> new Refused("This kit has no " + People.plain(text, 60) + ".")));
    }
    if (spots.isEmpty()) {
      throw new Refused("This page is not complete. Open it again.");
    }
    return spots;
  }

  private Optional<String> optional(String field) {
    String text = People.plain(request.field(field), LONGEST_TEXT);
    return text.isEmpty() ? Optional.empty() : Optional.of(text);
  }

  private String required(String field, String remedy) {
    return optional(field).orElseThrow(() -> new Refused(remedy));
  }

  private static List<Event> eachUnit(
      List<Spot> spots, BiFunction<Unit, List<Designator>, Event> event) {
    Map<Unit, List<Designator>> byUnit = new LinkedHashMap<>();
    spots.forEach(
        spot ->
            byUnit.computeIfAbsent(spot.unit(), unit -> new ArrayList<>()).add(spot.designator()));
    var events = new ArrayList<Event>();
    byUnit.forEach((unit, designators) -> events.add(event.apply(unit, designators)));
    return events;
  }
}
