package lowfirst.intake;

import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import lowfirst.board.Side;
import lowfirst.problem.Problem;

/**
 * A table read: its rows with known columns, and everything wrong with its form.
 *
 * @param unit the unit that a line before the header states for bare numbers
 * @param sideHeadings lines among the rows that head a section of one side
 * @param side the side that a line before the header states for every row
 */
record Table(
    String file,
    TableKind kind,
    List<TableRow> rows,
    Header header,
    Optional<String> unit,
    Optional<String> side,
    NavigableMap<Integer, Side> sideHeadings,
    Understanding understanding,
    List<Problem> problems) {

  Table {
    rows = List.copyOf(rows);
    problems = List.copyOf(problems);
  }

  /** The side of the section that a line stands in, if such headings part the table. */
  Optional<Side> sideAt(int line) {
    return Optional.ofNullable(sideHeadings.floorEntry(line)).map(Map.Entry::getValue);
  }

  /** Whether its columns were understood, even if it has no rows. */
  boolean isUnderstood() {
    return header.isComplete(kind);
  }
}
