package lowfirst.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lowfirst.board.Designator;
import lowfirst.board.Placement;
import lowfirst.board.Side;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;
import lowfirst.problem.Reading;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/** Reads the rows of a placement list. */
final class PlacementReader {
  private final double scaleX;
  private final double scaleY;
  private final Optional<Side> sideOfAll;
  private final List<Placement> placements = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private final Map<String, Optional<Side>> sides = new HashMap<>();
  private final Map<String, Integer> unknownSides = new HashMap<>();

  private PlacementReader(Table table, LengthUnit unit) {
    this.scaleX = Lengths.millimetres(unit.x());
    this.scaleY = Lengths.millimetres(unit.y());
    this.sideOfAll =
        table.side().flatMap(SideWords::side).or(() -> SideWords.inFileName(table.file()));
  }

  /** Placements, what is wrong with single cells, and the table's understanding with its units. */
  record Placements(
      List<Placement> placements, List<Problem> problems, Understanding understanding) {}

  /** The placements of a table whose columns are known. */
  static Placements in(Table table, ColumnMap map) {
    LengthUnit unit = LengthUnit.of(table, map);
    var reader = new PlacementReader(table, unit);
    table.rows().forEach(reader::readRow);
    reader.problems.addAll(unit.problems());
    BottomX bottom = BottomX.of(table, map, reader.placements);
    reader.problems.addAll(bottom.problems());
    return new Placements(
        bottom.placements(),
        reader.problems,
        table.understanding().noting(unit.words()).noting(bottom.words()));
  }

  private void readRow(TableRow row) {
    String name = row.text(Column.DESIGNATOR);
    if (isRemark(row)) {
      problems.add(
          new Problem(
              Kind.ROW_IGNORED,
              row.place(),
              "this has no position and looks like a remark, it was not read as a row",
              "nothing, unless it is a row"));
      return;
    }
    if (name.isEmpty()) {
      problems.add(
          row.problem(
              Kind.CELL_EMPTY,
              Column.DESIGNATOR,
              "the row names no part, so it was left out",
              "write the designator, or delete the row"));
      return;
    }
    OptionalDouble x = length(row, Column.X, scaleX);
    OptionalDouble y = length(row, Column.Y, scaleY);
    Optional<Side> side = side(row);
    OptionalDouble rotation = rotation(row);
    if (x.isEmpty() || y.isEmpty() || side.isEmpty() || rotation.isEmpty()) {
      return;
    }
    placements.add(
        new Placement(
            Designator.of(DesignatorList.spelt(name)),
            x.getAsDouble(),
            y.getAsDouble(),
            rotation.getAsDouble(),
            side.get(),
            row.text(Column.VALUE),
            row.text(Column.PACKAGE),
            row.place(Column.DESIGNATOR)));
  }

  /** A line of prose may hold separators: neither coordinate has a digit, and it names no part. */
  private static boolean isRemark(TableRow row) {
    String name = row.text(Column.DESIGNATOR);
    return name.indexOf(' ') > 0
        && row.text(Column.X).chars().noneMatch(Character::isDigit)
        && row.text(Column.Y).chars().noneMatch(Character::isDigit);
  }

  private OptionalDouble length(TableRow row, Column column, double scale) {
    String text = row.text(column);
    OptionalDouble plain = PlainNumber.in(text);
    if (plain.isPresent()) {
      return inRange(row, column, plain.getAsDouble() * scale);
    }
    Reading<Quantity> reading = Quantity.parse(text, Dimension.LENGTH);
    if (reading.value().isEmpty()) {
      problems.add(Cells.problem(row, column, reading));
      return OptionalDouble.empty();
    }
    boolean hasUnit = !Character.isDigit(text.charAt(text.length() - 1)) && !text.endsWith(".");
    return inRange(row, column, reading.value().get().asDouble() * (hasUnit ? 1 : scale));
  }

  private OptionalDouble inRange(TableRow row, Column column, double millimetres) {
    if (Math.abs(millimetres) <= 10_000) {
      return OptionalDouble.of(millimetres);
    }
    problems.add(
        row.problem(
            Kind.OUT_OF_RANGE,
            column,
            "this is more than 10 m from the origin",
            "check the number and its unit"));
    return OptionalDouble.empty();
  }

  private OptionalDouble rotation(TableRow row) {
    String text = row.text(Column.ROTATION);
    if (text.isEmpty()) {
      return OptionalDouble.of(0);
    }
    OptionalDouble plain = PlainNumber.in(text);
    if (plain.isEmpty()) {
      Reading<Quantity> reading =
          Quantity.parse(text.replaceAll("(?i)\\s*degrees?$", "°"), Dimension.ANGLE);
      if (reading.value().isEmpty()) {
        problems.add(Cells.problem(row, Column.ROTATION, reading));
        return OptionalDouble.empty();
      }
      plain = OptionalDouble.of(reading.value().get().asDouble());
    }
    double turned = plain.getAsDouble() % 360;
    return OptionalDouble.of(turned < 0 ? turned + 360 : turned + 0.0);
  }

  private Optional<Side> side(TableRow row) {
    String text = row.text(Column.SIDE);
    Optional<Side> mirrored = SideWords.mirrored(row.text(Column.MIRROR));
    if (text.isEmpty()) {
      return Optional.of(mirrored.or(() -> sideOfAll).orElse(Side.TOP));
    }
    Optional<Side> side = sides.computeIfAbsent(text, SideWords::side);
    if (side.isEmpty() && unknownSides.merge(text, 1, Integer::sum) <= 20) {
      problems.add(
          row.problem(
              Kind.CELL_UNREADABLE,
              Column.SIDE,
              "\"" + text + "\" names no side of the board",
              "write top or bottom"));
    }
    return side;
  }
}
