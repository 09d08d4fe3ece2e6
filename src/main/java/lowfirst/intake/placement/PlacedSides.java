package lowfirst.intake.placement;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.board.Side;
import lowfirst.intake.cell.Cells;
import lowfirst.intake.cell.SideWords;
import lowfirst.intake.cell.TurnSigns;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.TableRow;
import lowfirst.intake.table.Table;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * On which side of the board each row of a placement list sits: its own cell, a sign of it in
 * another, the section or the whole list.
 */
final class PlacedSides {
  /** Of cells that say the same and no side, so many are told one by one. */
  private static final int TOLD = 20;

  private final Table table;
  private final List<Problem> problems;
  private final Optional<Side> ofAll;
  private final Map<String, Side> pair;
  private final Map<String, Optional<Side>> known = new HashMap<>();
  private final Map<String, Integer> unknown = new HashMap<>();
  private TableRow firstWithout;
  private int without;
  private boolean isNamed;

  /** What is wrong with single cells goes to {@code problems}. */
  PlacedSides(Table table, FirstLook look, List<Problem> problems) {
    this.table = table;
    this.problems = problems;
    this.pair = SideWords.ofPair(look.sides());
    this.ofAll = table.side().flatMap(SideWords::side).or(() -> SideWords.inFileName(table.file()));
    // A dash is the bottom where a plus is the top; elsewhere it says nothing.
    if (!look.sides().contains("+")) {
      known.put("-", Optional.empty());
    }
  }

  /** The side of a row; empty where it names none that anybody knows, which is then said. */
  Optional<Side> of(TableRow row) {
    String text = row.text(Column.SIDE);
    if (pair.containsKey(text)) {
      return Optional.of(pair.get(text));
    }
    Optional<Side> side =
        text.isEmpty() ? Optional.empty() : known.computeIfAbsent(text, SideWords::side);
    if (side.isEmpty() && (Cells.isNone(text) || SideWords.areBoth(text))) {
      return Optional.of(notNamed(row));
    }
    if (side.isEmpty() && unknown.merge(text, 1, Integer::sum) <= TOLD) {
      problems.add(none(row, text));
    }
    return side;
  }

  private static Problem none(TableRow row, String text) {
    if (SideWords.isNeither(text)) {
      return row.problem(
          Kind.ROW_IGNORED,
          Column.SIDE,
          "\"" + text + "\" says that the part is not on the board, so its row was left out",
          "if it is on the board, write top or bottom");
    }
    return row.problem(
        Kind.CELL_UNREADABLE,
        Column.SIDE,
        "\"" + text + "\" names no side of the board",
        "write top or bottom, where its body sits");
  }

  private Side notNamed(TableRow row) {
    Optional<Side> said =
        SideWords.mirrored(row.text(Column.MIRROR))
            .or(() -> TurnSigns.side(row.text(Column.ROTATION)))
            .or(() -> table.sideAt(row.line()))
            .or(() -> ofAll);
    isNamed |= said.isPresent();
    if (said.isEmpty()) {
      firstWithout = without++ == 0 ? row : firstWithout;
    }
    return said.orElse(Side.TOP);
  }

  /** What was taken for granted of the whole list. */
  List<Problem> said() {
    var said = new ArrayList<Problem>();
    if (!pair.isEmpty()) {
      said.add(pairGuessed());
    }
    // Where some rows are marked, the others are on the top.
    if (without > 0 && (firstWithout.has(Column.SIDE) || !isNamed)) {
      said.add(notSaid());
    }
    return said;
  }

  private Problem notSaid() {
    if (!firstWithout.has(Column.SIDE)) {
      return new Problem(
          Kind.COLUMN_GUESSED,
          Place.ofFile(table.file()),
          "no column says on which side each part sits; all were taken for the top",
          "if some sit on the bottom, say so in a column side");
    }
    return firstWithout.problem(
        Kind.COLUMN_GUESSED,
        Column.SIDE,
        without == 1
            ? "the row names no side, or both, so the part was taken for one on the top"
            : "from here on "
                + without
                + " rows name no side, or both; they were taken for the top",
        "if that is wrong, write bottom into the cell");
  }

  private Problem pairGuessed() {
    String top =
        pair.entrySet().stream()
            .filter(e -> e.getValue() == Side.TOP)
            .findFirst()
            .orElseThrow()
            .getKey();
    String bottom =
        pair.keySet().stream().filter(key -> !key.equals(top)).findFirst().orElseThrow();
    return new Problem(
        Kind.COLUMN_GUESSED,
        Place.ofFile(table.file()),
        "of the sides \"" + top + "\" and \"" + bottom + "\" the first was taken for the top",
        "if that is wrong, write top and bottom into that column");
  }
}
