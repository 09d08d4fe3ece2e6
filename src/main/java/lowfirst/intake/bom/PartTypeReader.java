package lowfirst.intake.bom;

import java.util.Collections;
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
import lowfirst.intake.kind.LineCells;
import lowfirst.intake.kind.PartKindWords;
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

  /** Shorter names are designators, even those that type numbers have: J310, C106. */
  private static final int SHORTEST_TYPE = 4;

  /** What some drawings call parts that nobody gave a name, whatever they are: U$1. */
  private static final String UNNAMED = "U$";

  /** The number of a sheet of the drawing before a designator: 2.R1. */
  private static final Pattern IN_SHEET = Pattern.compile("\\d{1,3}[._:-]?([A-Z]{1,4})\\d{1,5}");

  /** Rows that say the same are read once: a BOM may have a row for each of many like parts. */
  private final Map<LineCells, PartOfLine> known = new HashMap<>();

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
    LineCells key = borrowed(cells(row, list), list);
    if (hasDecimalCommas && key.value().indexOf('.') > 0 && GROUPED.matcher(key.value()).find()) {
      problems.add(
          row.problem(
              Kind.VALUE_NOT_UNDERSTOOD,
              Column.VALUE,
              "\""
                  + key.value()
                  + "\" may be a number in thousands, since others have decimal commas",
              "write the value here, such as 4k7, 100n or 10 µH"));
      return PartOfLine.withoutValue(PartOfLine.read(key).type());
    }
    PartOfLine read = known.computeIfAbsent(key, PartOfLine::read);
    if (!read.notUnderstood().isEmpty() && !isOfFittingAlone(read.type().text())) {
      problems.add(
          row.problem(
              Kind.VALUE_NOT_UNDERSTOOD,
              row.has(Column.VALUE) ? Column.VALUE : Column.DESCRIPTION,
              read.notUnderstood(),
              read.type().kind().measures().isPresent()
                  ? "write the value here, such as 4k7, 100n or 10 µH"
                  : "write the type number here"));
    }
    return read.type();
  }

  /** Whether a text is no value, but says whether the part is fitted. */
  private static boolean isOfFittingAlone(String text) {
    return FittedSigns.leaveOut(text) || FittingWords.areAll(text) || FittingWords.leaveOut(text);
  }

  /** The letters of the first designator, of one that could not be read, too. */
  private static String letters(TableRow row, DesignatorList list) {
    if (!list.designators().isEmpty()) {
      return lettersOf(list.designators());
    }
    String text = row.text(Column.DESIGNATORS);
    return CellShapes.isDesignators(text) ? Designator.of(text).prefix() : "";
  }

  /** Of several letters in one line those that most have, such as RV1, RA1, RA2; the first else. */
  private static String lettersOf(List<Designator> names) {
    Designator first = names.get(0);
    boolean alike = names.stream().allMatch(first::hasPrefixOf);
    return letters(alike ? first : commonest(names));
  }

  private static Designator commonest(List<Designator> names) {
    var counts = new HashMap<String, Integer>();
    names.forEach(name -> counts.merge(name.prefix(), 1, Integer::sum));
    int most = Collections.max(counts.values());
    return names.stream()
        .filter(name -> counts.get(name.prefix()) == most)
        .findFirst()
        .orElseThrow();
  }

  /** The letters of a designator that may tell of its part. */
  public static String letters(Designator designator) {
    if (designator.text().startsWith(UNNAMED)) {
      return UNNAMED;
    }
    Matcher inSheet = IN_SHEET.matcher(designator.prefix().isEmpty() ? designator.text() : "");
    return inSheet.matches() ? inSheet.group(1) : designator.prefix();
  }

  /** Some name a part by what it is: L7805 beside the value L7805CV is no coil. */
  private static boolean isNamedByType(TableRow row, DesignatorList list) {
    if (list.designators().size() != 1) {
      return false;
    }
    String name = list.designators().get(0).text();
    return name.length() > SHORTEST_TYPE
        && PartKindWords.byTypeNumber(name).isPresent()
        && row.text(Column.VALUE).startsWith(name);
  }

  private static LineCells cells(TableRow row, DesignatorList list) {
    return new LineCells(
        cell(row, Column.VALUE),
        cell(row, Column.DESCRIPTION),
        cell(row, Column.PART_TYPE),
        cell(row, Column.PACKAGE),
        cell(row, Column.TOLERANCE),
        cell(row, Column.VOLTAGE),
        cell(row, Column.POWER),
        cell(row, Column.KIND),
        isNamedByType(row, list) ? "" : letters(row, list),
        list.otherText(),
        row.isGuessed(Column.PART_TYPE));
  }

  /** The same with what the placement list has of value and package, where the BOM lacks it. */
  private LineCells borrowed(LineCells cells, DesignatorList list) {
    boolean valueTold = !cells.value().isEmpty() && !PartOfLine.isSymbolName(cells.value());
    boolean told = valueTold || !cells.description().isEmpty();
    boolean lacks = !told || cells.packageName().isEmpty();
    Placement placed =
        lacks && !list.designators().isEmpty() ? placement(list.designators().get(0)) : null;
    if (placed == null) {
      return cells;
    }
    boolean valued =
        !told && !placed.valueText().isEmpty() && !PartOfLine.isSymbolName(placed.valueText());
    boolean packed = cells.packageName().isEmpty() && !placed.packageText().isEmpty();
    borrows |= valued || packed;
    return cells.with(
        valued ? placed.valueText() : cells.value(),
        packed ? placed.packageText() : cells.packageName());
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
