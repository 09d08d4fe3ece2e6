package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.List;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.TableKind;
import lowfirst.intake.column.TableRow;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * How a table was understood, for {@code check --explain}.
 *
 * @param file the table's path in the kit
 * @param table what it is about: {@code bom}, {@code placements}, ...
 * @param encoding how its bytes became characters
 * @param separator what stands between its cells
 * @param headerLine the line of its header; 0 when it has none, -1 when a standard needs none
 * @param columns every column of the file in its order, used or not
 * @param notes units, mirrored sides, and whatever else was taken for granted
 * @param rows how many rows were read as data
 * @param firstRows the first of these as they stand
 */
public record Understanding(
    String file,
    String table,
    String encoding,
    String separator,
    int headerLine,
    List<UnderstoodColumn> columns,
    List<String> notes,
    int rows,
    List<List<String>> firstRows) {

  public Understanding {
    columns = List.copyOf(columns);
    notes = List.copyOf(notes);
    firstRows = List.copyOf(firstRows);
  }

  /**
   * A column of the file.
   *
   * @param number from 1
   * @param header its header; empty when it has none
   * @param meaning what it was taken for, for example {@code part type}; empty when it is not used
   * @param key how a column map names that meaning, for example {@code bom.part-type}
   * @param basis why: usual header, likely header, what its cells look like, you said so
   */
  public record UnderstoodColumn(
      int number, String header, String meaning, String key, String basis) {}

  /** How a text or sheet was cut, and which of its cells were taken for what. */
  static Understanding of(
      TableKind kind, Cut cut, int width, String encoding, String file, List<TableRow> rows) {
    Header header = cut.header();
    var columns = new ArrayList<UnderstoodColumn>();
    for (int cell = 0; cell < width; cell++) {
      columns.add(column(kind, header, cell));
    }
    return new Understanding(
        file,
        kind.key(),
        encoding,
        cut.separator().words(),
        header.index() < 0 ? 0 : cut.rows().get(header.index()).line(),
        columns,
        List.of(),
        rows.size(),
        rows.stream().limit(3).map(row -> row.row().cells()).toList());
  }

  /** The columns with a header that names none of the table's. */
  public List<Problem> notUsed() {
    return columns.stream()
        .filter(column -> column.meaning().isEmpty() && !column.header().isBlank())
        .map(
            column ->
                new Problem(
                    Kind.COLUMN_NOT_USED,
                    Place.ofCell(
                        file, headerLine, column.number(), column.header(), column.header()),
                    "the column \"" + column.header() + "\" is none that is known here: not used",
                    "rename it if it says something of a channel, or say with --column what it is;"
                        + " leave it if it is a note of your own"))
        .toList();
  }

  private static UnderstoodColumn column(TableKind kind, Header header, int cell) {
    for (Header.Use use : header.uses()) {
      if (use.cell() == cell) {
        return new UnderstoodColumn(
            cell + 1,
            header.name(cell),
            use.column().words(),
            kind.key() + "." + use.column().key(),
            use.basis().words());
      }
    }
    return new UnderstoodColumn(cell + 1, header.name(cell), "", "", "");
  }

  /** The same with one more note. */
  public Understanding noting(String note) {
    var more = new ArrayList<>(notes);
    more.add(note);
    return new Understanding(
        file, table, encoding, separator, headerLine, columns, more, rows, firstRows);
  }
}
