package lowfirst.progress;

/** One event in the life of a part, whether it still counts or was undone. */
public record HistoryLine(Event event, Standing standing) {

  /** Whether an event counts. */
  public enum Standing {
    COUNTS,
    UNDONE
  }
}
