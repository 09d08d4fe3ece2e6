package lowfirst.progress;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import lowfirst.progress.HistoryLine.Standing;

/**
 * Events in the order in which they were acknowledged, and which of them count.
 *
 * <p>An event counts unless an undo that itself counts names it. An undo can only name what was
 * acknowledged before it, so one walk from the newest to the oldest settles them all.
 *
 * @param events each id once, in the order acknowledged
 * @param undone the ids that don't count
 */
public record EventLog(List<Event> events, Set<String> undone) {

  public EventLog {
    events = List.copyOf(events);
    undone = Set.copyOf(undone);
  }

  /** The log of these events; an id seen again is the same event and counts once. */
  public static EventLog of(List<Event> acknowledged) {
    var once = new LinkedHashMap<String, Event>();
    acknowledged.forEach(event -> once.putIfAbsent(event.id(), event));
    var events = List.copyOf(once.values());
    var undone = new HashSet<String>();
    var earlier = new HashSet<>(once.keySet());
    for (int i = events.size() - 1; i >= 0; i--) {
      Event event = events.get(i);
      earlier.remove(event.id());
      if (event instanceof Event.Undo undo
          && !undone.contains(undo.id())
          && earlier.contains(undo.undone())) {
        undone.add(undo.undone());
      }
    }
    return new EventLog(events, undone);
  }

  /** The events that count, oldest first, without the undos. */
  public List<Event> counting() {
    return events.stream()
        .filter(event -> !(event instanceof Event.Undo))
        .filter(event -> !undone.contains(event.id()))
        .toList();
  }

  /**
   * The action that an event belongs to: one press at the bench may record an event for each unit,
   * and their ids then agree up to the first slash.
   */
  public static String actionOf(String id) {
    int slash = id.indexOf('/');
    return slash < 0 ? id : id.substring(0, slash);
  }

  /** The newest action that counts: what an undo takes back. Empty when nothing is recorded. */
  public List<Event> newestAction() {
    return newestAction(event -> true);
  }

  /** The newest action that counts and touches one of these spots. */
  public List<Event> newestAction(Collection<Spot> spots) {
    return newestAction(event -> Touched.by(event).stream().anyMatch(spots::contains));
  }

  private List<Event> newestAction(Predicate<Event> wanted) {
    List<Event> counting = counting();
    for (int i = counting.size() - 1; i >= 0; i--) {
      if (wanted.test(counting.get(i))) {
        return action(actionOf(counting.get(i).id()));
      }
    }
    return List.of();
  }

  /** The events of one action that count. */
  public List<Event> action(String action) {
    return counting().stream().filter(event -> actionOf(event.id()).equals(action)).toList();
  }

  /**
   * The life of one part, oldest first: every event that touches it, counting or undone, and every
   * undo of one of those.
   */
  public List<HistoryLine> history(Spot spot) {
    var lines = new ArrayList<HistoryLine>();
    var shown = new HashSet<String>();
    for (Event event : events) {
      boolean touches =
          event instanceof Event.Undo undo
              ? shown.contains(undo.undone())
              : Touched.by(event).contains(spot);
      if (touches) {
        shown.add(event.id());
        lines.add(
            new HistoryLine(
                event, undone.contains(event.id()) ? Standing.UNDONE : Standing.COUNTS));
      }
    }
    return lines;
  }
}
