package lowfirst.progress;

import java.util.List;
import lowfirst.board.Designator;
import lowfirst.board.Unit;

/** Which spots an event is about. */
final class Touched implements Event.Reader<List<Spot>> {
  private static final Touched READER = new Touched();

  private Touched() {}

  static List<Spot> by(Event event) {
    return event.fold(READER);
  }

  private static List<Spot> spots(Unit unit, List<Designator> designators) {
    return designators.stream().map(designator -> new Spot(unit, designator)).toList();
  }

  @Override
  public List<Spot> tick(Event.Tick tick) {
    return spots(tick.unit(), tick.designators());
  }

  @Override
  public List<Spot> undo(Event.Undo undo) {
    return List.of();
  }

  @Override
  public List<Spot> note(Event.Note note) {
    return spots(note.unit(), note.designators());
  }

  @Override
  public List<Spot> substitution(Event.Substitution substitution) {
    return spots(substitution.unit(), substitution.designators());
  }

  @Override
  public List<Spot> powerReading(Event.PowerReading reading) {
    return List.of();
  }
}
