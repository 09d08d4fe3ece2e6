package lowfirst.intake.placement;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lowfirst.board.Designator;
import lowfirst.board.Placement;
import lowfirst.board.Side;
import lowfirst.intake.cell.Cells;
import lowfirst.intake.cell.DesignatorList;
import lowfirst.intake.cell.DesignatorSpelling;
import lowfirst.intake.cell.FittedSigns;
import lowfirst.intake.cell.GroupedNumber;
import lowfirst.intake.cell.TurnSigns;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.ColumnMap;
import lowfirst.intake.column.CoordinatePair;
import lowfirst.intake.column.HeaderWords;
import lowfirst.intake.column.Lengths;
import lowfirst.intake.column.PlainNumber;
import lowfirst.intake.column.TableKind;
import lowfirst.intake.column.TableRow;
import lowfirst.intake.kind.PartKindWords;
import lowfirst.intake.kind.SpreadsheetDate;
import lowfirst.intake.table.HashedNames;
import lowfirst.intake.table.Table;
import lowfirst.intake.table.Understanding;
import lowfirst.part.PartKind;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;
import lowfirst.problem.Reading;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/** Reads the rows of a placement list. */
public final class PlacementReader {
  private final double scaleX;
  private final double scaleY;
  private final PlacedSides sides;
  private final FirstLook look;
  private final boolean isGrouped;
  private final boolean isDescribed;
  private final List<Placement> placements;
  private final List<Problem> problems = new ArrayList<>();
  private final HashedNames hashed = new HashedNames();
  private final PlacedNames names;
  private final Map<String, String> texts = new HashMap<>();
  private final Map<String, String> values = new HashMap<>();
  private final Map<String, Boolean> leftOut = new HashMap<>();
  private final Map<Designator, Place> notFitted = new HashMap<>();
  private final AngleUnit angles;
  private final boolean isClockwise;
  private final AngleUnit.Seen turned = new AngleUnit.Seen();

  private PlacementReader(Table table, LengthUnit unit, FirstLook look, AngleUnit angles) {
    this.angles = angles;
    this.isClockwise =
        TurnSigns.areClockwise(table.header().name(table.header().cellOf(Column.ROTATION)));
    this.names = PlacedNames.in(table);
    this.look = look;
    this.placements = new ArrayList<>(table.rows().size());
    this.scaleX = Lengths.millimetres(unit.x());
    this.scaleY = Lengths.millimetres(unit.y());
    this.sides = new PlacedSides(table, look, problems);
    this.isDescribed = table.header().cellOf(Column.DESCRIPTION) >= 0;
    this.isGrouped = look.pointGroups() || look.commaGroups();
  }

  /**
   * Placements, what is wrong with single cells, and the table's understanding with its units.
   *
   * @param notFitted the parts that the list says are left out
   */
  public record Placements(
      List<Placement> placements,
      List<Problem> problems,
      Understanding understanding,
      Map<Designator, Place> notFitted) {}

  /** The placements of a table whose columns are known. */
  public static Placements in(Table table, ColumnMap map) {
    FirstLook first = FirstLook.at(table);
    LengthUnit unit = LengthUnit.of(table, map, first);
    Optional<Thousands> thousands = Thousands.in(table, unit, first);
    FirstLook look = thousands.isPresent() ? first.withCommaGroups() : first;
    PlacementReader degrees = read(table, unit, look, AngleUnit.DEGREE);
    AngleUnit angles = degrees.turned.unit();
    PlacementReader reader = angles == AngleUnit.DEGREE ? degrees : read(table, unit, look, angles);
    degrees.turned.said().ifPresent(reader.problems::add);
    thousands.map(Thousands::said).ifPresent(reader.problems::add);
    reader.problems.addAll(unit.problems());
    reader.hashed.said().ifPresent(reader.problems::add);
    reader.names.said().ifPresent(reader.problems::add);
    reader.problems.addAll(reader.sides.said());
    BottomX bottom = BottomX.of(table, map, reader.placements);
    reader.problems.addAll(bottom.problems());
    Understanding understood = table.understanding().noting(unit.words()).noting(bottom.words());
    return new Placements(
        bottom.placements(),
        reader.problems,
        reader.isClockwise
            ? understood.noting("angles clockwise, as their header says")
            : understood,
        reader.notFitted);
  }

  private static PlacementReader read(
      Table table, LengthUnit unit, FirstLook look, AngleUnit angles) {
    var reader = new PlacementReader(table, unit, look, angles);
    for (int i = 0; i < table.rows().size(); i++) {
      reader.readRow(i, table.rows().get(i));
    }
    return reader;
  }

  private void readRow(int index, TableRow row) {
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
    if (name.isEmpty() && isMark(row)) {
      problems.add(
          new Problem(
              Kind.ROW_IGNORED,
              row.place(),
              "this is a mark on the board, no part, so it was not read as a row",
              "nothing, unless it is a part: then write its designator"));
      return;
    }
    if (name.isEmpty()) {
      problems.add(
          row.problem(
              Kind.CELL_EMPTY,
              Column.DESIGNATOR,
              "the row names no part, so it was left out",
              "write the designator, or take it out"));
      return;
    }
    boolean plain = DesignatorSpelling.isPlain(name);
    if (!plain && SpreadsheetDate.wasDesignator(name)) {
      problems.add(
          row.problem(
              Kind.DESIGNATOR_UNREADABLE,
              Column.DESIGNATOR,
              "\"" + name + "\" is a date, as a spreadsheet makes of a designator such as DEC1",
              "write the designator"));
    }
    if (row.pair().isPresent() && row.text(Column.X).isEmpty()) {
      problems.add(noPair(row, row.pair().get()));
      return;
    }
    hashed.see(row, Column.DESIGNATOR, name);
    OptionalDouble x = length(row, Column.X, look.x()[index], scaleX);
    OptionalDouble y = length(row, Column.Y, look.y()[index], scaleY);
    Optional<Side> side = sides.of(row);
    OptionalDouble rotation = rotation(row);
    if (x.isEmpty() || y.isEmpty() || side.isEmpty()) {
      return;
    }
    if (!plain && PlacedNames.areSeveral(name)) {
      problems.add(severalParts(row, Column.DESIGNATOR, "one position"));
      return;
    }
    Designator designator = names.of(name);
    if (saysLeftOut(row)) {
      notFitted.putIfAbsent(designator, row.place(Column.DESIGNATOR));
    }
    placements.add(
        new Placement(
            designator,
            x.getAsDouble(),
            y.getAsDouble(),
            rotation.orElse(0),
            rotation.isPresent(),
            side.get(),
            values.computeIfAbsent(row.text(Column.VALUE), PlacementReader::value),
            kept(row.text(Column.PACKAGE)),
            isDescribed ? kept(row.text(Column.DESCRIPTION)) : "",
            row.place(Column.DESIGNATOR)));
  }

  private boolean saysLeftOut(TableRow row) {
    return FittedSigns.sayLeftOut(row.text(Column.FITTED), row.text(Column.NOT_FITTED))
        || leftOut.computeIfAbsent(row.text(Column.VALUE), FittedSigns::leaveOut);
  }

  /** The cell holds no x and y, or two numbers could be made of it in several ways. */
  private static Problem noPair(TableRow row, CoordinatePair pair) {
    String text = row.place(Column.X).cell();
    List<CoordinatePair.Halves> halves = pair.halves(text);
    String message =
        halves.isEmpty()
            ? "\"" + text + "\" is no x and y as the other cells of the column have them"
            : "\"" + text + "\" may be x = " + halves.get(0) + ", or x = " + halves.get(1);
    return row.problem(
        text.isEmpty() ? Kind.CELL_EMPTY : Kind.CELL_UNREADABLE,
        Column.X,
        text.isEmpty() ? "the cell that holds x and y is empty" : message,
        "write two numbers parted by a semicolon, such as 12.5; 30");
  }

  /** A line of prose may hold separators: neither coordinate has a digit, and it names no part. */
  private static boolean isRemark(TableRow row) {
    String name = row.text(Column.DESIGNATOR);
    return name.indexOf(' ') > 0
        && row.text(Column.X).chars().noneMatch(Character::isDigit)
        && row.text(Column.Y).chars().noneMatch(Character::isDigit);
  }

  /** A logo, hole or fiducial mark is placed as parts are, but has no designator. */
  private static boolean isMark(TableRow row) {
    return PartKindWords.byWords(row.text(Column.VALUE) + " " + row.text(Column.PACKAGE))
        .filter(kind -> kind == PartKind.BOARD_FEATURE)
        .isPresent();
  }

  private OptionalDouble length(TableRow row, Column column, double bare, double scale) {
    if (!isGrouped && !Double.isNaN(bare)) {
      return inRange(row, column, bare * scale);
    }
    String text = row.text(column);
    if (text.startsWith("–")) {
      text = text.replace('–', '-');
    }
    if (isGrouped || text.indexOf(' ') > 0 || text.indexOf('\'') > 0) {
      text = GroupedNumber.without(text, look.pointGroups(), look.commaGroups());
    }
    OptionalDouble plain = PlainNumber.in(text);
    if (plain.isPresent()) {
      return inRange(row, column, plain.getAsDouble() * scale);
    }
    Reading<Quantity> reading = Quantity.parse(text, Dimension.LENGTH);
    if (reading.value().isEmpty()) {
      problems.add(
          namesSeveral(row)
              ? severalParts(row, column, "this is no single number")
              : Cells.problem(row, column, reading));
      return OptionalDouble.empty();
    }
    double factor = PlainNumber.isBare(text) ? scale : 1;
    return inRange(row, column, reading.value().get().asDouble() * factor);
  }

  private static boolean namesSeveral(TableRow row) {
    return DesignatorList.parse(row.text(Column.DESIGNATOR)).designators().size() > 1;
  }

  private static Problem severalParts(TableRow row, Column column, String what) {
    return row.problem(
        Kind.CELL_UNREADABLE,
        column,
        "the row names several parts (\"" + row.text(Column.DESIGNATOR) + "\"), and " + what,
        "write a row for each part, with its own x and y");
  }

  private OptionalDouble inRange(TableRow row, Column column, double millimetres) {
    if (Math.abs(millimetres) <= 10_000) {
      // Without the sign of a zero.
      return OptionalDouble.of(millimetres + 0.0);
    }
    problems.add(
        row.problem(
            Kind.OUT_OF_RANGE,
            column,
            "this is more than 10 m from the origin",
            "check the number and its unit"));
    return OptionalDouble.empty();
  }

  /** A part whose angle nobody can read is still placed: it stays unturned, and that is said. */
  private OptionalDouble rotation(TableRow row) {
    String text = row.text(Column.ROTATION);
    if (Cells.isNone(text)) {
      return OptionalDouble.empty();
    }
    double bare = PlainNumber.orNan(text);
    if (Double.isNaN(bare)) {
      bare = TurnSigns.angle(text);
    }
    if (Double.isNaN(bare)) {
      Reading<Quantity> reading =
          Quantity.parse(text.replaceAll("(?i)\\s*degrees?$", "°"), Dimension.ANGLE);
      if (reading.value().isEmpty()) {
        problems.add(notTurned(row, text));
        return OptionalDouble.empty();
      }
      bare = reading.value().get().asDouble();
    }
    turned.see(row, bare);
    boolean negative = isClockwise && !TurnSigns.saysWay(text);
    double degrees = angles.degrees(negative ? -bare : bare) % 360;
    return OptionalDouble.of(degrees < 0 ? degrees + 360 : degrees + 0.0);
  }

  private static Problem notTurned(TableRow row, String text) {
    return row.problem(
        Kind.CELL_UNREADABLE,
        Column.ROTATION,
        "\"" + text + "\" is no angle; the part was kept, its body as if it were not turned",
        "write degrees, anticlockwise, such as 90");
  }

  /** A value that is the word for a value was never filled in: Comment, =Value. */
  private static String value(String text) {
    String word = text.startsWith("=") ? text.substring(1) : text;
    return HeaderWords.isWordFor(TableKind.PLACEMENTS, Column.VALUE, word) ? "" : text;
  }

  /** The same text once for all rows: packages have long names. */
  private String kept(String text) {
    String known = texts.putIfAbsent(text, text);
    return known == null ? text : known;
  }
}
