package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.Set;
import java.util.regex.Pattern;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.HeaderWords;
import lowfirst.intake.column.PlainNumber;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.TableKind;

/** The column of a BOM that holds the units of its values: 4.7 beside kOhm. */
final class UnitColumn {
  private static final Set<String> NAMES =
      Set.of(
          "unit",
          "units",
          "einheit",
          "unite",
          "unidad",
          "unidade",
          "unita",
          "eenheid",
          "jednotka",
          "jednostka",
          "enhet",
          "единица",
          "单位");

  /** Of a resistance, capacitance, inductance or frequency; pieces and metres are none. */
  private static final Pattern UNIT =
      Pattern.compile(
          "(?U)[pnuµμmkKM]|([pnuµμmkKMG]|[Mm]eg|[Kk]ilo)?\\s?([Oo]hms?|OHMS?|[ΩΩFH]|Hz|HZ)|[RE]");

  private UnitColumn() {}

  /** The row with its unit behind a value that is a bare number; otherwise as it is. */
  static Row joined(TableKind kind, Header header, Row row) {
    int value = header.cellOf(Column.VALUE);
    if (kind != TableKind.BOM || value < 0 || PlainNumber.in(row.cell(value)).isEmpty()) {
      return row;
    }
    int unit = cell(header);
    if (unit < 0 || !UNIT.matcher(row.cell(unit)).matches()) {
      return row;
    }
    var cells = new ArrayList<>(row.cells());
    cells.set(value, row.cell(value) + " " + row.cell(unit));
    return new Row(row.line(), cells);
  }

  /** Whether a column that nothing else is read from is headed so. */
  static boolean is(Header header, int cell) {
    return NAMES.contains(HeaderWords.key(header.name(cell)))
        && header.uses().stream().noneMatch(use -> use.cell() == cell);
  }

  private static int cell(Header header) {
    for (int cell = 0; cell < header.names().size(); cell++) {
      if (is(header, cell)) {
        return cell;
      }
    }
    return -1;
  }
}
