package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import lowfirst.board.Designator;
import lowfirst.intake.cell.CellShapes;
import lowfirst.intake.cell.DesignatorList;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.TableKind;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * Designators of a BOM that stand in several columns, one in each or some in each: {@code Ref 1},
 * {@code Ref 2} and so on, or one header above several cells.
 */
final class MoreDesignators {
  /** Share of filled cells that must be designators. */
  private static final double NEARLY_ALL = 0.9;

  private final Header header;
  private final List<Row> below;
  private final int first;

  private MoreDesignators(Cut cut) {
    this.header = cut.header();
    this.below = cut.rows().subList(header.index() + 1, cut.rows().size());
    this.first = header.cellOf(Column.DESIGNATORS);
  }

  /** The cut with all of a row's designators in one cell; the cut itself without such columns. */
  static Cut joined(TableKind kind, String file, Cut cut) {
    Header header = cut.header();
    if (kind != TableKind.BOM || header.index() < 0 || !header.isComplete(kind)) {
      return cut;
    }
    var more = new MoreDesignators(cut);
    List<Integer> cells =
        IntStream.range(0, header.names().size()).filter(more::mayBe).boxed().toList();
    if (cells.isEmpty() || !more.areOthers(cells)) {
      return cut;
    }
    var rows = new ArrayList<Row>(cut.rows().subList(0, header.index() + 1));
    more.below.forEach(row -> rows.add(more.joined(row, cells)));
    var uses = new ArrayList<>(header.uses());
    cells.forEach(
        cell -> uses.add(new Header.Use(Column.DESIGNATORS, cell, Header.Basis.CARRIED_ON)));
    var problems = new ArrayList<>(cut.problems());
    problems.add(more.said(file, rows.get(header.index()).line(), cells));
    return new Cut(
        cut.separator(),
        rows,
        new Header(header.index(), header.names(), uses, header.pair()),
        problems);
  }

  /** A free column that is headed alike but for a number, or right behind and not at all. */
  private boolean mayBe(int cell) {
    boolean free = header.uses().stream().noneMatch(use -> use.cell() == cell);
    return free
        && (isNumbered(cell) || isUnderTheSame(cell))
        && CellShapes.designatorShare(below, cell) > NEARLY_ALL;
  }

  private boolean isNumbered(int cell) {
    String name = header.name(cell);
    String stem = stem(name);
    return !name.isEmpty() && !stem.equals(name) && stem.equals(stem(header.name(first)));
  }

  private static String stem(String name) {
    return name.replaceFirst("[\\s_.#(-]*\\d{1,3}\\)?$", "");
  }

  private boolean isUnderTheSame(int cell) {
    return cell > first
        && IntStream.rangeClosed(first + 1, cell).allMatch(at -> header.name(at).isEmpty());
  }

  /** Whether hardly any designator stands twice: else the columns say the same. */
  private boolean areOthers(List<Integer> cells) {
    Set<Designator> different = new HashSet<>();
    int all = 0;
    for (Row row : below) {
      List<Designator> own = DesignatorList.parse(joined(row, cells).cell(first)).designators();
      different.addAll(own);
      all += own.size();
    }
    return different.size() > all * NEARLY_ALL;
  }

  private Row joined(Row row, List<Integer> more) {
    var names = new ArrayList<String>();
    names.add(row.cell(first));
    more.stream().map(row::cell).filter(text -> !text.isEmpty()).forEach(names::add);
    boolean headerAgain = row.cell(first).equals(header.name(first));
    if (names.size() == 1 || headerAgain) {
      return row;
    }
    names.remove("");
    var cells = new ArrayList<>(row.cells());
    cells.set(first, String.join(", ", names));
    return new Row(row.line(), cells);
  }

  private Problem said(String file, int line, List<Integer> more) {
    return new Problem(
        Kind.COLUMN_GUESSED,
        Place.ofCell(file, line, first + 1, "", header.name(first)),
        "the designators of a row were read from "
            + (more.size() + 1)
            + " columns, "
            + (first + 1)
            + " to "
            + (more.get(more.size() - 1) + 1),
        "if that is wrong, name the right one with --column bom.designators=HEADER");
  }
}
