package lowfirst.progress;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How long people worked, as far as ticks can tell: the gaps between one person's events that
 * follow each other. A gap longer than {@link #PAUSE} is a pause and counts nothing; so does the
 * time before the first tick of a sitting. It is a lower bound, and two people count twice.
 *
 * @param time the sum over all people
 */
public record WorkingTime(Duration time) {

  /** A longer gap is a pause. */
  public static final Duration PAUSE = Duration.ofMinutes(15);

  /** The working time in these events, in the order acknowledged. */
  public static WorkingTime of(List<Event> events) {
    Map<String, Instant> lastOf = new HashMap<>();
    Duration sum = Duration.ZERO;
    for (Event event : events) {
      Instant before = lastOf.put(event.who(), event.when());
      if (before != null && event.when().isAfter(before)) {
        Duration gap = Duration.between(before, event.when());
        sum = gap.compareTo(PAUSE) <= 0 ? sum.plus(gap) : sum;
      }
    }
    return new WorkingTime(sum);
  }
}
