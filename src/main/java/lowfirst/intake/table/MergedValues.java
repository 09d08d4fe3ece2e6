package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import lowfirst.board.Designator;
import lowfirst.intake.cell.CellShapes;
import lowfirst.intake.cell.DesignatorList;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.TableKind;
import lowfirst.intake.column.WholeNumber;

/**
 * Rows of a BOM that have no value since a spreadsheet merged its cell with those below, which
 * export empty. A value that was forgotten looks alike; so they are taken for merged only where the
 * whole table says so: the value stands before the designators, two rows at least lack it, each
 * below parts of the same letters and with nothing that differs, and no value is given twice.
 */
final class MergedValues {
  private static final Set<Column> OWN = Set.of(Column.DESIGNATORS, Column.QUANTITY);

  private final Header header;
  private final Set<Integer> lines = new HashSet<>();
  private final Set<List<String>> given = new HashSet<>();

  private MergedValues(Header header) {
    this.header = header;
  }

  /** The lines of the rows that belong to the value above them; none where that is not sure. */
  static Set<Integer> lines(TableKind kind, Header header, List<Row> rows) {
    boolean leads =
        ValueHeading.TELLING.stream()
            .mapToInt(header::cellOf)
            .anyMatch(cell -> cell >= 0 && cell < header.cellOf(Column.DESIGNATORS));
    var merged = new MergedValues(header);
    return kind == TableKind.BOM && leads && merged.explains(rows) && merged.lines.size() > 1
        ? merged.lines
        : Set.of();
  }

  /** Whether every row without a value fits to the one above, and every value is given once. */
  private boolean explains(List<Row> rows) {
    Row above = null;
    for (Row row : rows) {
      if (!CellShapes.isDesignators(designators(row))) {
        above = null;
      } else if (!ValueHeading.lacksValue(header, row)) {
        above = row;
        if (!given.add(said(row))) {
          return false;
        }
      } else if (above == null || !fits(above, row)) {
        return false;
      } else {
        lines.add(row.line());
      }
    }
    return true;
  }

  private String designators(Row row) {
    return row.cell(header.cellOf(Column.DESIGNATORS));
  }

  /** What a row says of its parts. */
  private List<String> said(Row row) {
    var said = new ArrayList<>(letters(row));
    header.uses().stream()
        .filter(use -> !OWN.contains(use.column()))
        .forEach(use -> said.add(row.cell(use.cell())));
    return said;
  }

  private boolean fits(Row above, Row row) {
    boolean nothingElse =
        header.uses().stream()
            .filter(use -> !OWN.contains(use.column()))
            .map(Header.Use::cell)
            .allMatch(cell -> row.cell(cell).isEmpty() || row.cell(cell).equals(above.cell(cell)));
    return nothingElse && letters(above).equals(letters(row)) && counts(above) == counts(row);
  }

  private Set<String> letters(Row row) {
    return DesignatorList.parse(designators(row)).designators().stream()
        .map(Designator::prefix)
        .collect(Collectors.toSet());
  }

  /** Whether a row counts its own designators; without a quantity none does. */
  private boolean counts(Row row) {
    int named = DesignatorList.parse(designators(row)).designators().size();
    return WholeNumber.in(row.cell(header.cellOf(Column.QUANTITY))).orElse(0) == named;
  }
}
