package lowfirst.problem;

import static lowfirst.problem.Severity.CAUTION;
import static lowfirst.problem.Severity.FAULT;
import static lowfirst.problem.Severity.NOTE;

/**
 * Every kind of problem that the tool knows. A sample kit holds one of each that {@code check}
 * finds.
 */
public enum Kind {
  // the file as a whole
  FILE_MISSING(FAULT),
  FILE_UNREADABLE(FAULT),
  FILE_EMPTY(FAULT),
  FILE_TOO_LARGE(FAULT),
  NOT_TEXT(FAULT),
  QUOTE_UNBALANCED(FAULT),
  HEADER_NOT_FOUND(FAULT),
  COLUMN_MISSING(FAULT),
  COLUMN_AMBIGUOUS(FAULT),
  OUTSIDE_THE_KIT(FAULT),
  /** A board in one file that breaks off, is out of bounds, or is none. */
  DESIGN_UNREADABLE(FAULT),
  DESIGN_INCOMPLETE(NOTE),
  /** Two files describe the same, and the other one counts. */
  TABLE_NOT_USED(NOTE),
  NO_ROWS(CAUTION),
  ROW_LENGTH(CAUTION),
  ROW_IGNORED(NOTE),
  COLUMN_GUESSED(NOTE),
  /** A column of a table about channels, or a line of {@code kit.properties}, of no known name. */
  COLUMN_NOT_USED(NOTE),
  UNIT_GUESSED(NOTE),
  TEXT_DAMAGED(CAUTION),
  // one cell
  CELL_EMPTY(FAULT),
  CELL_UNREADABLE(FAULT),
  UNIT_UNKNOWN(FAULT),
  OUT_OF_RANGE(FAULT),
  DESIGNATOR_UNREADABLE(FAULT),
  VALUE_NOT_UNDERSTOOD(NOTE),
  REFERENCE_UNKNOWN(FAULT),
  NAME_TWICE(FAULT),
  // tables against each other
  QUANTITY_DISAGREES(CAUTION),
  DESIGNATOR_TWICE(FAULT),
  PLACED_TWICE(FAULT),
  NOT_PLACED(CAUTION),
  NOT_IN_BOM(CAUTION),
  PLACED_BUT_NOT_FITTED(NOTE),
  VALUE_DISAGREES(CAUTION),
  PACKAGE_DISAGREES(CAUTION),
  OUTSIDE_THE_OUTLINE(CAUTION),
  BODIES_OVERLAP(CAUTION),
  POSITIONS_ALL_THE_SAME(CAUTION),
  HEIGHT_UNKNOWN(CAUTION),
  HEIGHT_ASSUMED(NOTE),
  SURFACE_MOUNT(CAUTION),
  /** The BOM leaves it to the builder whether, or which, part is fitted. */
  OPTIONAL_PART(CAUTION),
  TABLE_MISSING(CAUTION),
  // the order of assembly
  ORDER_CYCLE(FAULT);

  private final Severity severity;

  Kind(Severity severity) {
    this.severity = severity;
  }

  /** Whether it is a cell that was left out, for what stands in it or since it is empty. */
  public boolean isOfOneCell() {
    return switch (this) {
      case CELL_EMPTY, CELL_UNREADABLE, UNIT_UNKNOWN, OUT_OF_RANGE, DESIGNATOR_UNREADABLE -> true;
      default -> false;
    };
  }

  /** How much a problem of this kind matters. */
  public Severity severity() {
    return severity;
  }
}
