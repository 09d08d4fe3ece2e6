package lowfirst.intake.table;

import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import lowfirst.board.Side;
import lowfirst.intake.cell.SideWords;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.TableKind;
import lowfirst.intake.column.TableRow;
import lowfirst.problem.Problem;

/**
 * A table read: its rows with known columns, and everything wrong with its form.
 *
 * @param unit the unit that a line before the header states for bare numbers
 * @param headings texts of one cell among the rows, by their lines, that head the rows below
 * @param afterBlank lines of the rows and headings that blank rows part from what is above
 * @param side the side that a line before the header states for every row
 */
public record Table(
    String file,
    TableKind kind,
    List<TableRow> rows,
    Header header,
    Optional<String> unit,
    Optional<String> side,
    NavigableMap<Integer, String> headings,
    Set<Integer> afterBlank,
    Understanding understanding,
    List<Problem> problems) {

  public Table {
    rows = List.copyOf(rows);
    problems = List.copyOf(problems);
  }

  /** The side of the section that a line stands in, if headings part the table by sides. */
  public Optional<Side> sideAt(int line) {
    for (var heading = headings.floorEntry(line);
        heading != null;
        heading = headings.lowerEntry(heading.getKey())) {
      Optional<Side> side = SideWords.inside(heading.getValue());
      if (side.isPresent()) {
        return side;
      }
    }
    return Optional.empty();
  }

  /** Whether a blank row parts a line from what is above it. */
  public boolean isAfterBlank(int line) {
    return afterBlank.contains(line);
  }

  /** Whether its columns were understood, even if it has no rows. */
  public boolean isUnderstood() {
    return header.isComplete(kind);
  }
}
