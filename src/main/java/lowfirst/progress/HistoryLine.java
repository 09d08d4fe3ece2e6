package lowfirst.progress;

/**
 * One event in the life of a part, whether it still counts or was undone.
 *
 * @param sequence its place among all events, from 1
 */
public record HistoryLine(int sequence, Event event, Standing standing) {

  /** Whether an event counts. */
  public enum Standing {
    COUNTS,
    UNDONE
  }
}
