package lowfirst.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import lowfirst.board.BagLine;
import lowfirst.board.Designator;
import lowfirst.board.Swap;
import lowfirst.intake.cell.Cells;
import lowfirst.intake.cell.DesignatorList;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.PlainNumber;
import lowfirst.intake.column.TableRow;
import lowfirst.intake.column.WholeNumber;
import lowfirst.intake.table.Table;
import lowfirst.part.DatasheetLine;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;
import lowfirst.problem.Reading;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;

/** Reads the rows of the tables about parts: datasheet lines, the bag, accepted swaps. */
final class PartTables {
  private PartTables() {}

  /** The lines of {@code datasheets.csv}. */
  static List<DatasheetLine> datasheets(Table table, List<Problem> problems) {
    var lines = new ArrayList<DatasheetLine>();
    for (TableRow row : table.rows()) {
      var cells = new Cells(row, problems);
      Optional<String> type = cells.needed(Column.PART_TYPE);
      Optional<String> symbol = cells.needed(Column.SYMBOL);
      Optional<Dimension> dimension = dimension(row, problems);
      if (type.isPresent() && symbol.isPresent() && dimension.isPresent()) {
        lines.add(
            new DatasheetLine(
                type.get(),
                row.text(Column.MAKER),
                symbol.get(),
                row.text(Column.CONDITION),
                value(row, Column.MIN, dimension.get(), problems),
                value(row, Column.TYP, dimension.get(), problems),
                value(row, Column.MAX, dimension.get(), problems),
                source(row)));
      }
    }
    return lines;
  }

  private static Optional<Dimension> dimension(TableRow row, List<Problem> problems) {
    String unit = row.text(Column.UNIT);
    Optional<Dimension> dimension = Quantity.measuredIn(unit.equals("-") ? "" : unit);
    if (dimension.isEmpty()) {
      problems.add(
          row.problem(
              Kind.UNIT_UNKNOWN,
              Column.UNIT,
              "the unit \"" + unit + "\" is not known, so the row was left out",
              "write a unit such as V, mΩ, nC, pF, K/W or µs"));
    }
    return dimension;
  }

  private static Optional<Quantity> value(
      TableRow row, Column column, Dimension dimension, List<Problem> problems) {
    String text = row.text(column);
    if (Cells.isNone(text)) {
      return Optional.empty();
    }
    boolean bare = PlainNumber.isBare(text);
    String unit = row.text(Column.UNIT);
    Reading<Quantity> reading =
        Quantity.parse(bare && !unit.equals("-") ? text + " " + unit : text, dimension);
    if (!reading.isRead()) {
      problems.add(Cells.problem(row, column, reading));
    }
    return reading.value();
  }

  /** The document that a row cites; a row that cites none can't make anything pass. */
  private static Source source(TableRow row) {
    String cited = row.text(Column.SOURCE);
    if (cited.isEmpty()) {
      return new Source(
          Source.Origin.MEMORY, "no source is written in " + row.place(Column.SOURCE));
    }
    return cited.toLowerCase(Locale.ROOT).startsWith("from memory")
        ? new Source(Source.Origin.MEMORY, cited)
        : Source.datasheet(cited + " (" + row.place() + ")");
  }

  /** The lines of {@code bag.csv}. */
  static List<BagLine> bag(Table table, List<Problem> problems) {
    var lines = new ArrayList<BagLine>();
    for (TableRow row : table.rows()) {
      var cells = new Cells(row, problems);
      Optional<String> part = cells.needed(Column.PART);
      String text = row.text(Column.QUANTITY);
      OptionalInt quantity = WholeNumber.in(text);
      if (quantity.isEmpty()) {
        problems.add(
            row.problem(
                text.isEmpty() ? Kind.CELL_EMPTY : Kind.CELL_UNREADABLE,
                Column.QUANTITY,
                text.isEmpty()
                    ? "the quantity is missing"
                    : "\"" + text + "\" is no whole number of parts",
                "write how many arrived, 0 if none did"));
      }
      if (part.isPresent() && quantity.isPresent()) {
        lines.add(new BagLine(part.get(), quantity.getAsInt(), row.text(Column.BAG), row.place()));
      }
    }
    return lines;
  }

  /** The rows of {@code swaps.csv}. */
  static List<Swap> swaps(Table table, ListedNames boards, List<Problem> problems) {
    var swaps = new ArrayList<Swap>();
    for (TableRow row : table.rows()) {
      var cells = new Cells(row, problems);
      Optional<String> where = cells.needed(Column.DESIGNATORS);
      Optional<String> fitted = cells.needed(Column.FITTED);
      if (where.isEmpty() || fitted.isEmpty()) {
        continue;
      }
      List<Designator> designators = DesignatorList.parse(where.get()).designators();
      if (designators.isEmpty()) {
        problems.add(
            row.problem(
                Kind.DESIGNATOR_UNREADABLE,
                Column.DESIGNATORS,
                "\"" + where.get() + "\" names no designators",
                "write the designators where the swap is fitted, such as Q3, Q4"));
        continue;
      }
      swaps.add(
          new Swap(
              boards.meantBy(row.text(Column.BOARD)),
              designators,
              fitted.get(),
              row.text(Column.REASON),
              row.text(Column.WHO),
              row.text(Column.DATE),
              row.place()));
    }
    return swaps;
  }
}
