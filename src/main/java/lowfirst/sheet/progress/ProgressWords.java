package lowfirst.sheet.progress;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lowfirst.board.Designator;
import lowfirst.board.Unit;
import lowfirst.progress.Event;
import lowfirst.progress.MeasuredReading;
import lowfirst.progress.NextWork;
import lowfirst.progress.Spot;
import lowfirst.progress.State;
import lowfirst.sheet.wording.StepWording;

/** How progress is put in words, the same on paper, on screen and in the terminal. */
public final class ProgressWords {
  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

  private ProgressWords() {}

  /** A time to the minute where the bench is: {@code 2026-03-01 18:04}. */
  public static String time(Instant instant, ZoneId zone) {
    return MINUTE.format(instant.atZone(zone));
  }

  /** For example {@code 2 h 10 min}. */
  public static String duration(Duration duration) {
    long hours = duration.toHours();
    return (hours > 0 ? hours + " h " : "") + duration.toMinutesPart() + " min";
  }

  /** What to do to bring a part to a state. */
  public static String verb(State state) {
    return switch (state) {
      case TO_DO -> "start again with";
      case SEATED -> "seat";
      case SOLDERED -> "solder";
      case INSPECTED -> "inspect";
      case SET_ASIDE -> "set aside";
    };
  }

  /** For example {@code R1, R2 on driver-1 and driver-2}, units with equal lists named together. */
  public static String spots(List<Spot> spots) {
    Map<Unit, List<Designator>> byUnit = new LinkedHashMap<>();
    spots.forEach(
        spot ->
            byUnit.computeIfAbsent(spot.unit(), unit -> new ArrayList<>()).add(spot.designator()));
    Map<List<Designator>, List<Unit>> alike = new LinkedHashMap<>();
    byUnit.forEach(
        (unit, designators) ->
            alike.computeIfAbsent(designators, any -> new ArrayList<>()).add(unit));
    return String.join(
        "; ",
        alike.entrySet().stream()
            .map(entry -> list(entry.getKey()) + " on " + and(entry.getValue()))
            .toList());
  }

  /** Where to go on, in a sentence without its full stop. */
  public static String next(NextWork next) {
    return "go on with step "
        + next.step().number()
        + " (batch "
        + next.batch().number()
        + ", board "
        + next.step().board()
        + "): "
        + verb(next.state())
        + " "
        + StepWording.shortName(next.step().partType())
        + ", "
        + spots(next.spots());
  }

  /** What a reading says about the part, with a sign that needs no colour. */
  public static String verdict(MeasuredReading reading) {
    return switch (reading.judgement()) {
      case ACCEPT -> "✓ accept " + reading.value();
      case REJECT -> "✗ reject " + reading.value();
      case CANNOT_TELL -> "? this meter can't tell at " + reading.value();
    };
  }

  /** What an event did, for a history or an answer: {@code seated R1, R2 on driver-1}. */
  public static String event(Event event) {
    return event.fold(new EventWords());
  }

  private static String list(List<?> things) {
    return String.join(", ", things.stream().map(Object::toString).toList());
  }

  private static String and(List<?> things) {
    int last = things.size() - 1;
    return last <= 0 ? list(things) : list(things.subList(0, last)) + " and " + things.get(last);
  }

  private static final class EventWords implements Event.Reader<String> {
    @Override
    public String tick(Event.Tick tick) {
      String where = list(tick.designators()) + " on " + tick.unit().serial();
      return tick.state().words()
          + ": "
          + where
          + tick.measured().map(text -> ", measured " + text).orElse("")
          + tick.reason().map(text -> ", " + text).orElse("");
    }

    @Override
    public String undo(Event.Undo undo) {
      return "took an entry back";
    }

    @Override
    public String note(Event.Note note) {
      String about =
          note.designators().isEmpty()
              ? note.unit().serial()
              : list(note.designators()) + " on " + note.unit().serial();
      return "note on " + about + ": " + note.text();
    }

    @Override
    public String substitution(Event.Substitution substitution) {
      return "fitted "
          + substitution.fitted()
          + " in place of the BOM's part: "
          + list(substitution.designators())
          + " on "
          + substitution.unit().serial()
          + (substitution.reason().isBlank() ? "" : ", " + substitution.reason());
    }

    @Override
    public String powerReading(Event.PowerReading reading) {
      return "first power of "
          + reading.unit().serial()
          + ", "
          + reading.check()
          + ": "
          + reading.outcome().words()
          + reading.measured().map(text -> ", measured " + text).orElse("");
    }
  }
}
