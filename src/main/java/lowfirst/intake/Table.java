package lowfirst.intake;

import java.util.List;
import java.util.Optional;
import lowfirst.problem.Problem;

/**
 * A table read: its rows with known columns, and everything wrong with its form.
 *
 * @param unit the unit that a line before the header states for bare numbers
 * @param side the side that a line before the header states for every row
 */
record Table(
    String file,
    TableKind kind,
    List<TableRow> rows,
    Header header,
    Optional<String> unit,
    Optional<String> side,
    Understanding understanding,
    List<Problem> problems) {

  Table {
    rows = List.copyOf(rows);
    problems = List.copyOf(problems);
  }

  /** Whether its columns were understood, even if it has no rows. */
  boolean isUnderstood() {
    return header.isComplete(kind);
  }
}
