package lowfirst.intake.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.board.Item;
import lowfirst.board.Placement;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.TableKind;
import lowfirst.intake.column.TableRow;
import lowfirst.intake.table.Table;
import lowfirst.intake.table.Understanding;
import lowfirst.intake.xml.XmlCursor.Spot;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * Elements laid out as the rows of a table, so that the readers of tables read them, too. A row's
 * line is its number; {@link #placed} turns it into the place in the file that it came from.
 */
final class DesignTable {
  /** What the standard calls facts whose names are left to whoever writes the file. */
  static final String CHARACTERISTIC = "characteristic";

  private final TableKind kind;
  private final String file;
  private final Map<Column, String> columns;
  private final List<TableRow> rows = new ArrayList<>();
  private final List<List<Spot>> spots = new ArrayList<>();
  private final Header header;

  /** A text of the file with its place. */
  record Text(String text, Spot spot) {}

  /** An empty table whose columns are these elements and attributes. */
  DesignTable(TableKind kind, String file, Map<Column, String> columns) {
    this.kind = kind;
    this.file = file;
    this.columns = new LinkedHashMap<>(columns);
    var uses = new ArrayList<Header.Use>();
    columns
        .keySet()
        .forEach(column -> uses.add(new Header.Use(column, uses.size(), Header.Basis.STANDARD)));
    this.header = new Header(-1, List.copyOf(columns.values()), uses);
  }

  /** Adds a row; columns that {@code cells} lacks stay empty, at the place of the row. */
  void add(Spot spot, Map<Column, Text> cells) {
    var texts = new ArrayList<String>();
    var places = new ArrayList<Spot>();
    for (Column column : columns.keySet()) {
      Text cell = cells.getOrDefault(column, new Text("", spot));
      texts.add(cell.text());
      places.add(cell.spot());
    }
    rows.add(new TableRow(file, header, new Row(rows.size() + 1, texts)));
    spots.add(places);
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  /** The table, and how it was understood. */
  Table table(String revision) {
    var understood = new ArrayList<Understanding.UnderstoodColumn>();
    columns.forEach(
        (column, element) -> {
          boolean named = element.contains(CHARACTERISTIC);
          understood.add(
              new Understanding.UnderstoodColumn(
                  understood.size() + 1,
                  element,
                  column.words(),
                  named ? kind.key() + "." + column.key() : "",
                  named ? "its name" : Header.Basis.STANDARD.words()));
        });
    return new Table(
        file,
        kind,
        rows,
        header,
        Optional.empty(),
        Optional.empty(),
        java.util.Collections.emptyNavigableMap(),
        java.util.Set.of(),
        new Understanding(
            file,
            kind.key(),
            "XML (IPC-2581" + (revision.isEmpty() ? "" : " revision " + revision) + ")",
            "elements and attributes",
            -1,
            understood,
            List.of(),
            rows.size(),
            rows.stream().limit(3).map(row -> row.row().cells()).toList()),
        List.of());
  }

  /** The place in the file of a place in the table. */
  Place placed(Place place) {
    if (!place.file().equals(file) || place.line() < 1 || place.line() > spots.size()) {
      return place;
    }
    Spot spot = spots.get(place.line() - 1).get(Math.max(0, place.column() - 1));
    return place.column() == 0
        ? Place.ofLine(file, spot.line())
        : Place.ofCell(file, spot.line(), spot.column(), place.header(), place.cell());
  }

  Problem placed(Problem problem) {
    return new Problem(
        problem.kind(), placed(problem.place()), problem.message(), problem.remedy());
  }

  Item placed(Item item) {
    return new Item(
        item.designators(),
        item.quantity(),
        item.partType(),
        item.description(),
        item.heightMillimetres(),
        item.fitting(),
        placed(item.place()));
  }

  /** The placement at its place, moved by so much. */
  Placement placed(Placement placement, double dx, double dy) {
    return new Placement(
        placement.designator(),
        placement.xMillimetres() + dx,
        placement.yMillimetres() + dy,
        placement.rotationDegrees(),
        placement.isTurnKnown(),
        placement.side(),
        placement.valueText(),
        placement.packageText(),
        placement.descriptionText(),
        placed(placement.place()));
  }
}
