package lowfirst.intake.table;

import java.util.List;
import java.util.Optional;
import lowfirst.board.Designator;
import lowfirst.intake.cell.CellShapes;
import lowfirst.intake.cell.DesignatorList;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.Row;
import lowfirst.intake.kind.PartKindWords;
import lowfirst.marking.WrittenValue;
import lowfirst.part.PartKind;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;
import lowfirst.quantity.Dimension;

/** A row of one cell that is the value of the rows below it, which have none of their own. */
final class ValueHeading {
  /** A longer text is a remark. */
  private static final int LONGEST = 40;

  /** Any of these says what a part is. */
  static final List<Column> TELLING = List.of(Column.VALUE, Column.PART_TYPE, Column.DESCRIPTION);

  private final String file;

  /** Where the value stands that the next rows have. */
  private Optional<Place> value = Optional.empty();

  /** None yet in the BOM of this name. */
  ValueHeading(String file) {
    this.file = file;
  }

  /** What to say of a row that is the value of those below it, or ends the rows of a value. */
  Optional<Problem> take(Header header, Row row, List<Row> below) {
    Optional<Place> heading =
        below.isEmpty() ? Optional.empty() : heading(header, row, below.get(0));
    if (heading.isPresent()) {
      value = heading;
      return heading.map(ValueHeading::said);
    }
    // Where values head rows, another word alone ends the rows of a value.
    if (value.isPresent()
        && row.filled() == 1
        && row.cells().stream().noneMatch(CellShapes::isDesignators)) {
      end();
      return Optional.of(
          new Problem(
              Kind.ROW_IGNORED,
              Place.ofLine(file, row.line()),
              "this row is one word between the rows of values, it was not read as a row",
              "nothing, unless it is a row"));
    }
    return Optional.empty();
  }

  /** From here on rows have no such value. */
  void end() {
    value = Optional.empty();
  }

  /** The value of a row that has none of its own. */
  Optional<Place> over(Header header, Row row) {
    return value.isPresent() && lacksValue(header, row) ? value : Optional.empty();
  }

  private Optional<Place> heading(Header header, Row row, Row below) {
    if (row.filled() != 1
        || !lacksValue(header, below)
        || (value.isEmpty() && namesPart(header, row, below))) {
      return Optional.empty();
    }
    int cell = row.firstFilled();
    String text = row.cell(cell);
    return isValue(text, below.cell(header.cellOf(Column.DESIGNATORS)))
        ? Optional.of(Place.ofCell(file, row.line(), cell + 1, header.name(cell), text))
        : Optional.empty();
  }

  /** Whether a lone R2 above R3 is rather a part than 0.2 Ω: as long as no value heads rows. */
  private static boolean namesPart(Header header, Row row, Row below) {
    int cell = header.cellOf(Column.DESIGNATORS);
    return CellShapes.isDesignators(row.cell(cell))
        && letters(row.cell(cell)).equals(letters(below.cell(cell)));
  }

  private static Optional<String> letters(String designators) {
    return DesignatorList.parse(designators).designators().stream()
        .findFirst()
        .map(Designator::prefix);
  }

  /** Whether a row names designators and nothing that tells what they are. */
  static boolean lacksValue(Header header, Row row) {
    return CellShapes.isDesignators(row.cell(header.cellOf(Column.DESIGNATORS)))
        && TELLING.stream().allMatch(column -> row.cell(header.cellOf(column)).isEmpty());
  }

  private static Problem said(Place heading) {
    return new Problem(
        Kind.COLUMN_GUESSED,
        heading,
        "\"" + heading.cell() + "\" was taken for the value of the rows below it, which have none",
        "if that is wrong, write the value into each row");
  }

  /** Of a kind with values, what reads as one; else a type number, which is no designator. */
  private static boolean isValue(String text, String designators) {
    if (text.length() > LONGEST) {
      return false;
    }
    Optional<PartKind> kind = letters(designators).flatMap(PartKindWords::byLetters);
    Optional<Dimension> measured = kind.flatMap(PartKind::measures);
    if (measured.isPresent()) {
      // 0805 and 0207 are sizes.
      boolean size = text.matches("0\\d{3,4}");
      return !size && WrittenValue.parse(text, measured).isRead();
    }
    boolean mixed = text.indexOf(' ') < 0 && text.matches(".*\\d.*") && text.matches(".*\\p{L}.*");
    return mixed
        && (!CellShapes.isDesignators(text) || PartKindWords.byTypeNumber(text).isPresent());
  }
}
