package lowfirst.intake.bom;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.board.Designator;
import lowfirst.board.Placement;
import lowfirst.intake.cell.CellShapes;
import lowfirst.intake.cell.Cells;
import lowfirst.intake.cell.DesignatorList;
import lowfirst.intake.cell.FittedSigns;
import lowfirst.intake.cell.FittingWords;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.TableRow;
import lowfirst.intake.kind.PartOfLine;
import lowfirst.intake.kind.RatingCells;
import lowfirst.part.PartType;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;

/**
 * Tells from BOM rows what to buy: gathers the cells that tell of a part, each kind of row once,
 * and borrows from the placement list what the BOM lacks; {@link PartOfLine} reads them.
 */
public final class PartTypeReader {
  private static final Pattern DECIMAL_COMMA = Pattern.compile("\\d,\\d{1,2}(?!\\d)");

  /** 4.700 where decimals have a comma. */
  private static final Pattern GROUPED =
      Pattern.compile("(?<![\\d.,])[1-9]\\d{0,2}\\.\\d{3}(?![\\d.])");

  /** 22 [kΩ]. */
  private static final Pattern BRACKETED_UNIT =
      Pattern.compile("(?<=\\d)\\s*\\[\\s*(\\p{L}{1,4}|[kM]?[Ωµμ]\\p{L}?)\\s*]");

  /** What some drawings call parts that nobody gave a name, whatever they are: U$1. */
  private static final String UNNAMED = "U$";

  /** The number of a sheet of the drawing before a designator: 2.R1. */
  private static final Pattern IN_SHEET = Pattern.compile("\\d{1,3}[._:-]?([A-Z]{1,4})\\d{1,5}");

  private static final List<Column> TELLING =
      List.of(
          Column.VALUE,
          Column.DESCRIPTION,
          Column.PART_TYPE,
          Column.PACKAGE,
          Column.TOLERANCE,
          Column.VOLTAGE,
          Column.POWER,
          Column.KIND);

  /** Rows that say the same are read once: a BOM may have a row for each of many like parts. */
  private final Map<List<String>, PartOfLine> known = new HashMap<>();

  private final List<Placement> placements;
  private final Map<Designator, Placement> byDesignator = new HashMap<>();
  private final boolean hasDecimalCommas;
  private boolean borrows;

  /** Values and packages that the BOM lacks are taken from {@code placements}. */
  PartTypeReader(List<TableRow> rows, List<Placement> placements) {
    this.placements = placements;
    this.hasDecimalCommas =
        rows.stream()
            .map(row -> row.text(Column.VALUE))
            .anyMatch(text -> text.indexOf(',') > 0 && DECIMAL_COMMA.matcher(text).find());
  }

  /** Whether a value or package had to be taken from the placement list. */
  boolean borrows() {
    return borrows;
  }

  /** The part type of a BOM row; adds what was not understood to {@code problems}. */
  PartType read(TableRow row, DesignatorList list, List<Problem> problems) {
    var key = new ArrayList<String>();
    TELLING.forEach(column -> key.add(cell(row, column)));
    borrow(key, list);
    key.add(letters(row, list));
    key.add(list.otherText());
    key.add(row.isGuessed(Column.PART_TYPE) ? "guessed" : "");
    if (hasDecimalCommas
        && key.get(PartOfLine.VALUE).indexOf('.') > 0
        && GROUPED.matcher(key.get(PartOfLine.VALUE)).find()) {
      problems.add(
          row.problem(
              Kind.VALUE_NOT_UNDERSTOOD,
              Column.VALUE,
              "\""
                  + key.get(PartOfLine.VALUE)
                  + "\" may be a number in thousands, since others have decimal commas",
              "write the value here, such as 4k7, 100n or 10 µH"));
      return PartOfLine.withoutValue(PartOfLine.read(key).type());
    }
    PartOfLine read = known.computeIfAbsent(key, PartOfLine::read);
    boolean fittingAlone =
        FittedSigns.leaveOut(read.type().text()) || FittingWords.areAll(read.type().text());
    if (!read.notUnderstood().isEmpty() && !fittingAlone) {
      problems.add(
          row.problem(
              Kind.VALUE_NOT_UNDERSTOOD,
              row.has(Column.VALUE) ? Column.VALUE : Column.DESCRIPTION,
              read.notUnderstood(),
              PartOfLine.dimension(read.type().kind()).isPresent()
                  ? "write the value here, such as 4k7, 100n or 10 µH"
                  : "write the type number here"));
    }
    return read.type();
  }

  /** The letters of the first designator, of one that could not be read, too. */
  private static String letters(TableRow row, DesignatorList list) {
    if (!list.designators().isEmpty()) {
      return letters(list.designators().get(0));
    }
    String text = row.text(Column.DESIGNATORS);
    return CellShapes.isDesignators(text) ? Designator.of(text).prefix() : "";
  }

  /** The letters of a designator that may tell of its part. */
  public static String letters(Designator designator) {
    if (designator.text().startsWith(UNNAMED)) {
      return UNNAMED;
    }
    Matcher inSheet = IN_SHEET.matcher(designator.prefix().isEmpty() ? designator.text() : "");
    return inSheet.matches() ? inSheet.group(1) : designator.prefix();
  }

  private void borrow(List<String> cells, DesignatorList list) {
    boolean valueTold =
        !cells.get(PartOfLine.VALUE).isEmpty()
            && !PartOfLine.isSymbolName(cells.get(PartOfLine.VALUE));
    boolean told = valueTold || !cells.get(PartOfLine.DESCRIPTION).isEmpty();
    boolean lacks = !told || cells.get(PartOfLine.PACKAGE).isEmpty();
    Placement placed =
        lacks && !list.designators().isEmpty() ? placement(list.designators().get(0)) : null;
    if (placed == null) {
      return;
    }
    if (!told && !placed.valueText().isEmpty() && !PartOfLine.isSymbolName(placed.valueText())) {
      cells.set(PartOfLine.VALUE, placed.valueText());
      borrows = true;
    }
    if (cells.get(PartOfLine.PACKAGE).isEmpty() && !placed.packageText().isEmpty()) {
      cells.set(PartOfLine.PACKAGE, placed.packageText());
      borrows = true;
    }
  }

  /** The first placement of a designator; an index of them is made when the first is asked for. */
  private Placement placement(Designator designator) {
    if (byDesignator.isEmpty()) {
      placements.forEach(placed -> byDesignator.putIfAbsent(placed.designator(), placed));
    }
    return byDesignator.get(designator);
  }

  /** The cell, or nothing where it only says that there is nothing. */
  private static String cell(TableRow row, Column column) {
    String text = row.text(column);
    if (Cells.isNone(text)) {
      return "";
    }
    if (column == Column.VALUE && text.indexOf('[') > 0) {
      return BRACKETED_UNIT.matcher(text).replaceAll("$1");
    }
    return column == Column.POWER || column == Column.TOLERANCE
        ? RatingCells.withUnit(text, row.headerOf(column))
        : text;
  }
}
