package lowfirst.intake.check;

import java.util.EnumMap;
import java.util.Map;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.TableKind;
import lowfirst.intake.table.Table;
import lowfirst.problem.Place;

/** Where cells of the kit's own tables stand, when only the line is kept with what was read. */
public final class NamedCells {
  private final Map<TableKind, Header> headers = new EnumMap<>(TableKind.class);

  /** Remembers the columns of a table. */
  public void add(Table table) {
    headers.put(table.kind(), table.header());
  }

  /** The cell of {@code column} in a line that holds {@code text}; the line, without the column. */
  Place of(TableKind kind, Column column, Place line, String text) {
    Header header = headers.get(kind);
    int cell = header == null ? -1 : header.cellOf(column);
    return cell < 0
        ? line
        : Place.ofCell(line.file(), line.line(), cell + 1, header.name(cell), text);
  }
}
