package lowfirst.intake.table;

import java.util.List;
import java.util.Optional;
import lowfirst.intake.cell.CellShapes;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.HeaderWords;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.TableKind;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/** Tables in a form that is not read: blocks of lines, columns for parts. */
final class OtherForm {
  private static final String EXAMPLE = ", such as: Reference, Quantity, Value";

  private OtherForm() {}

  /** Which of these forms a table has that no header was found in; empty when none shows. */
  static Optional<Problem> of(TableKind kind, String file, List<Row> rows) {
    List<Row> first = rows.subList(0, Math.min(rows.size(), Cut.SEARCHED));
    return inBlocks(kind, file, first)
        .or(() -> SideBySide.of(kind, file, first))
        .or(() -> turned(kind, file, first));
  }

  /** Reference: R1, and below it Value: 10k. */
  private static Optional<Problem> inBlocks(TableKind kind, String file, List<Row> rows) {
    Optional<Row> first =
        rows.stream().filter(row -> names(kind, label(row), kind.required().get(0))).findFirst();
    long labels = rows.stream().filter(row -> isName(kind, label(row))).count();
    return first
        .filter(row -> labels > 2)
        .map(
            row ->
                problem(
                    file,
                    row,
                    "each part stands in lines of its own (\"" + line(row) + "\"), not in one row",
                    "write the names of the columns into one line"
                        + example(kind)
                        + ", and below it one line for each part"));
  }

  /** A list with bullets, whose lines name no parts on the board, or too few. */
  static Optional<Problem> bulleted(TableKind kind, String file, List<Row> rows) {
    List<Row> bulleted = rows.stream().filter(row -> PartLines.isBulleted(line(row))).toList();
    return bulleted.size() < 2
        ? Optional.empty()
        : Optional.of(
            problem(
                file,
                bulleted.get(0),
                "a list with bullets begins here (\"" + line(bulleted.get(0)) + "\"), no table",
                kind == TableKind.BOM
                    ? "begin each line with the designators of its part, such as - R1, R2: 10k, or"
                        + " write a table with a header"
                        + example(kind)
                    : "write a table with a header, such as: Designator, X, Y, Rotation, Side"));
  }

  /** The names of the columns one below the other, with a column for each part. */
  private static Optional<Problem> turned(TableKind kind, String file, List<Row> rows) {
    long names = rows.stream().filter(row -> isName(kind, row.cell(0))).count();
    return rows.stream()
        .filter(row -> names > 1 && names(kind, row.cell(0), kind.required().get(0)))
        .filter(row -> row.size() > 1 && CellShapes.isDesignators(row.cell(1)))
        .findFirst()
        .map(
            row ->
                problem(
                    file,
                    row,
                    "the table is turned: each part has a column of its own, and the names of the"
                        + " columns stand one below the other",
                    "transpose it in a spreadsheet program, so that each part has a row and the"
                        + " names stand in the first one"));
  }

  static String example(TableKind kind) {
    return kind == TableKind.BOM ? EXAMPLE : "";
  }

  /** What a row holds, for a person to find it by. */
  static String line(Row row) {
    return String.join(" ", row.cells()).strip();
  }

  /** What stands before a colon or an equals sign; empty without either. */
  private static String label(Row row) {
    String[] sides = line(row).split("[:=]", 2);
    return sides.length < 2 ? "" : sides[0].strip();
  }

  private static boolean isName(TableKind kind, String cell) {
    return !cell.isEmpty() && !HeaderWords.matches(kind, cell).isEmpty();
  }

  private static boolean names(TableKind kind, String cell, Column column) {
    return isName(kind, cell)
        && HeaderWords.matches(kind, cell).stream().anyMatch(match -> match.column() == column);
  }

  static Problem problem(String file, Row row, String message, String remedy) {
    return new Problem(Kind.HEADER_NOT_FOUND, Place.ofLine(file, row.line()), message, remedy);
  }
}
