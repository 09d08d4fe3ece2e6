package lowfirst.intake.cell;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import lowfirst.board.Bounds;
import lowfirst.board.Designator;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.HeaderUnit;
import lowfirst.intake.column.PlainNumber;
import lowfirst.intake.column.TableRow;
import lowfirst.intake.column.WholeNumber;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;
import lowfirst.problem.Reading;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.quantity.Sourced;

/** Reads single cells of one row, and gathers what is wrong with them. */
public final class Cells {
  private static final Pattern NONE =
      Pattern.compile("[-–—]+|[?]+|(?i:n/?a|none|nil|null|tb[ad]|unknown)");

  private static final Pattern PLUS_MINUS = Pattern.compile("^(?:±|\\+/-|\\+-)\\s*");

  private static final Pattern UNKNOWN = Pattern.compile("[?]+|(?i:tb[acd]|unknown|not known)");

  private final TableRow row;
  private final List<Problem> problems;

  /** The cells of a row; what is wrong with them is added to {@code problems}. */
  public Cells(TableRow row, List<Problem> problems) {
    this.row = row;
    this.problems = problems;
  }

  /** Whether a cell says that there is nothing to write into it. */
  public static boolean isNone(String cell) {
    return cell.isEmpty()
        || cell.length() <= 7
            && !Character.isDigit(cell.charAt(cell.length() - 1))
            && NONE.matcher(cell).matches();
  }

  private static boolean isUnknown(String cell) {
    return UNKNOWN.matcher(cell).matches();
  }

  /** A cell as text. */
  public String text(Column column) {
    return row.text(column);
  }

  /** A cell without which the row is of no use. */
  public Optional<String> needed(Column column) {
    String text = row.text(column);
    if (text.isEmpty()) {
      problems.add(
          row.problem(
              Kind.CELL_EMPTY,
              column,
              "the " + column.words() + " is missing, so the row was left out",
              "fill the cell in, or delete the row"));
      return Optional.empty();
    }
    return Optional.of(text);
  }

  /**
   * An amount with its cell as source; absent when empty, not known, not understood or out of
   * bounds.
   */
  public Optional<Sourced> amount(Column column, Bounds bounds) {
    return amount(column, row.text(column), bounds);
  }

  /** An amount that is only a part of its cell. */
  public Optional<Sourced> amount(Column column, String text, Bounds bounds) {
    if (isEmpty(column)) {
      return Optional.empty();
    }
    Reading<Quantity> reading = read(column, text, bounds.dimension());
    if (!reading.isRead()) {
      problems.add(problem(row, column, reading));
      return Optional.empty();
    }
    Reading<Quantity> within = bounds.within(column.words(), reading.value().orElseThrow());
    if (!within.isRead()) {
      problems.add(row.problem(Kind.OUT_OF_RANGE, column, within.fault(), within.remedy()));
    }
    return within.value().map(q -> Sourced.of(q, Source.kit(row.place(column).toString())));
  }

  /** Whether a number's cell says that there is none. Not to know it is no "none". */
  private boolean isEmpty(Column column) {
    String text = row.text(column);
    if (isUnknown(text)) {
      problems.add(
          row.problem(
              Kind.CELL_UNREADABLE,
              column,
              "\"" + text + "\" leaves open what the " + column.words() + " is",
              "write it, or leave the cell empty where there is none"));
      return true;
    }
    return isNone(text);
  }

  private Reading<Quantity> read(Column column, String text, Dimension dimension) {
    String unit =
        PlainNumber.isBare(text)
            ? HeaderUnit.ofAny(row.headerOf(column)).map(" "::concat).orElse("")
            : "";
    return Quantity.parse(text + unit, dimension);
  }

  /**
   * An amount that needs its unit, in its cell or in its header: a bare 2 may be 2 m of wire or 2
   * mm, a bare 250 as many milliseconds or seconds.
   */
  public Optional<Sourced> inUnits(Column column, Bounds bounds, String one, String other) {
    String text = row.text(column);
    if (isBare(column, text) && PlainNumber.orNan(text) != 0) {
      problems.add(
          row.problem(
              Kind.UNIT_UNKNOWN,
              column,
              "\"" + text + "\" has no unit, and may be in " + one + " or in " + other,
              "write the unit, such as 2 " + one));
      return Optional.empty();
    }
    return amount(column, bounds);
  }

  /** Whether neither the text nor the header of its column tells the unit. */
  private boolean isBare(Column column, String text) {
    return PlainNumber.isBare(text) && HeaderUnit.ofAny(row.headerOf(column)).isEmpty();
  }

  /** How far off it may be either way: 5 %, ±5 %; 0.05 without its sign may be 5 %, too. */
  public Optional<Sourced> tolerance(Column column) {
    String text = PLUS_MINUS.matcher(row.text(column)).replaceFirst("");
    double bare = PlainNumber.orNan(text);
    return bare > 0 && bare < 1 && isBare(column, text)
        ? mayBeShare(column, text)
        : amount(column, text, Bounds.TOLERANCE);
  }

  private Optional<Sourced> mayBeShare(Column column, String text) {
    problems.add(
        row.problem(
            Kind.UNIT_UNKNOWN,
            column,
            "\"" + text + "\" has no unit, and may be in per cent or a share of one",
            "write it in per cent with the sign, such as 50 %"));
    return Optional.empty();
  }

  /** A share of a whole: above zero, and no more than 100 %; 1 without its sign may be that. */
  public Optional<Sourced> share(Column column) {
    String text = row.text(column);
    double bare = PlainNumber.orNan(text);
    if (bare > 0 && bare <= 1 && isBare(column, text)) {
      return mayBeShare(column, text);
    }
    return amount(column, text, Bounds.SHARE);
  }

  /** A count of at least one; absent when empty or not understood. */
  public OptionalInt count(Column column) {
    String text = row.text(column);
    if (isEmpty(column)) {
      return OptionalInt.empty();
    }
    OptionalInt number = WholeNumber.in(text);
    if (number.isEmpty() || number.getAsInt() == 0) {
      problems.add(
          row.problem(
              Kind.CELL_UNREADABLE,
              column,
              "\"" + text + "\" is no count of 1 or more",
              "write a whole number such as 2"));
      return OptionalInt.empty();
    }
    return number;
  }

  /** One designator; absent when the cell is empty or says none. Not to know it is no "none". */
  public Optional<Designator> designator(Column column) {
    String text = row.text(column);
    if (isNone(text) && !isUnknown(text)) {
      return Optional.empty();
    }
    DesignatorList list = DesignatorList.parse(text);
    if (list.designators().size() != 1) {
      problems.add(
          row.problem(
              Kind.DESIGNATOR_UNREADABLE,
              column,
              "\"" + text + "\" is not one designator",
              "write one, such as Q3, or leave the cell empty when none is fitted"));
      return Optional.empty();
    }
    return Optional.of(list.designators().get(0));
  }

  /** A problem made of a reading that failed. */
  public static Problem problem(TableRow row, Column column, Reading<?> reading) {
    Kind kind = reading.fault().startsWith("the unit ") ? Kind.UNIT_UNKNOWN : Kind.CELL_UNREADABLE;
    return row.problem(kind, column, reading.fault(), reading.remedy());
  }

  /** A fault of a cell that means none of the words it may hold. */
  public void notOneOf(Column column, String allowed) {
    problems.add(
        row.problem(
            Kind.CELL_UNREADABLE,
            column,
            "\"" + row.text(column) + "\" is not known here",
            "write one of: " + allowed));
  }
}
