package lowfirst.intake;

import java.util.List;
import java.util.Optional;
import lowfirst.board.Designator;
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

  private ValueHeading() {}

  /** Where the value stands, if {@code row} is such a heading of a BOM. */
  static Optional<Place> in(String file, Header header, Row row, Row below) {
    if (row.filled() != 1 || !lacksValue(header, below)) {
      return Optional.empty();
    }
    int cell = 0;
    while (row.cell(cell).isEmpty()) {
      cell++;
    }
    String text = row.cell(cell);
    return isValue(text, below.cell(header.cellOf(Column.DESIGNATORS)))
        ? Optional.of(Place.ofCell(file, row.line(), cell + 1, header.name(cell), text))
        : Optional.empty();
  }

  /** Whether a lone R2 above R3 is rather a part than 0.2 Ω: as long as no value heads rows. */
  static boolean namesPart(Header header, Row row, Row below) {
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

  static Problem said(Place heading) {
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
    Optional<Dimension> measured = kind.flatMap(PartOfLine::dimension);
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
