package lowfirst.intake.workbook;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.Row;
import lowfirst.intake.workbook.StruckCells.Struck;
import lowfirst.problem.Excerpt;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/** Rows of a sheet that somebody struck through: their parts are perhaps not fitted any more. */
public final class StruckRows {
  private static final Set<Column> NAMES = EnumSet.of(Column.DESIGNATORS, Column.DESIGNATOR);
  private static final Set<Column> MORE = EnumSet.of(Column.VALUE, Column.QUANTITY);

  /** So many cells are named. */
  private static final int NAMED = 12;

  private StruckRows() {}

  /**
   * That they were read as if they were not; and cells, where a row was struck through only in
   * part. A row that says by itself that it is not fitted needs no word.
   */
  public static List<Problem> said(String file, Workbook.Grid sheet, Header header) {
    var lines = new TreeSet<Integer>();
    var cells = new ArrayList<Struck>();
    Map<Integer, Row> fitted = sheet.struck().isEmpty() ? Map.of() : sheet.fitted(header);
    for (Struck struck : sheet.struck()) {
      Row row = fitted.get(struck.line());
      boolean name = isIn(NAMES, header, struck.cell());
      boolean counts = row != null && !row.cell(struck.cell()).isEmpty();
      if (counts && name && struck.whole()) {
        lines.add(struck.line());
      } else if (counts && (name || isIn(MORE, header, struck.cell()))) {
        cells.add(struck);
      }
    }
    cells.removeIf(struck -> lines.contains(struck.line()));
    var problems = new ArrayList<Problem>(2);
    if (!lines.isEmpty()) {
      problems.add(rows(file, sheet, List.copyOf(lines)));
    }
    if (!cells.isEmpty()) {
      String first = fitted.get(cells.get(0).line()).cell(cells.get(0).cell());
      problems.add(cells(file, sheet.name(), header, cells, first));
    }
    return problems;
  }

  private static boolean isIn(Set<Column> columns, Header header, int cell) {
    return header.uses().stream()
        .anyMatch(use -> use.cell() == cell && columns.contains(use.column()));
  }

  private static Problem rows(String file, Workbook.Grid sheet, List<Integer> lines) {
    boolean one = lines.size() == 1;
    return new Problem(
        Kind.OPTIONAL_PART,
        Place.ofLine(file, lines.get(0)),
        "in the sheet \""
            + sheet.name()
            + "\" "
            + (one ? "row " : "rows ")
            + HiddenRows.numbers(lines)
            + (one ? " is" : " are")
            + " struck through, but"
            + (one ? " was" : " were")
            + " read like the others, though a part that is struck out may not be fitted",
        one
            ? "delete the row or write no into a column \"fitted\" if the part is not fitted, else"
                + " take the strike away"
            : "delete the rows of parts that are not fitted or write no into a column \"fitted\","
                + " and take the strike away from the others");
  }

  private static Problem cells(
      String file, String sheet, Header header, List<Struck> cells, String text) {
    Struck first = cells.get(0);
    List<String> names = cells.stream().map(StruckRows::name).toList();
    return new Problem(
        Kind.OPTIONAL_PART,
        Place.ofCell(file, first.line(), first.cell() + 1, header.name(first.cell()), text),
        "in the sheet \""
            + sheet
            + "\" letters are struck through in "
            + (cells.size() == 1 ? "cell " : "cells ")
            + Excerpt.of(names, NAMED)
            + ", but were read like the others, though what is struck out may not hold any more",
        "delete what does not hold, and take the strike away from what does");
  }

  /** As the spreadsheet names a cell: C4. */
  private static String name(Struck struck) {
    var letters = new StringBuilder();
    for (int left = struck.cell() + 1; left > 0; left = (left - 1) / 26) {
      letters.insert(0, (char) ('A' + (left - 1) % 26));
    }
    return letters + "" + struck.line();
  }
}
