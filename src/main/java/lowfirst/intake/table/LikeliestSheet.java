package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.List;
import lowfirst.intake.column.ColumnMap;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.Separator;
import lowfirst.intake.column.TableKind;
import lowfirst.intake.workbook.HiddenRows;
import lowfirst.intake.workbook.StruckRows;
import lowfirst.intake.workbook.Workbook;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/** Finds the sheet of a workbook that holds a table. */
final class LikeliestSheet {
  private LikeliestSheet() {}

  /** The sheet of a workbook that explains most as a table of this kind. */
  static Cut of(TableKind kind, String file, Workbook workbook, ColumnMap map) {
    Workbook.Grid best = new Workbook.Grid("", List.of(), List.of(), List.of());
    Cut cut = new Cut(Separator.SHEET, List.of(), new Header(-1, List.of(), List.of()), List.of());
    for (Workbook.Grid sheet : workbook.sheets()) {
      Cut other = of(kind, file, sheet, map);
      if (cut.rows().isEmpty() || other.worth(kind) > cut.worth(kind)) {
        best = sheet;
        cut = other;
      }
    }
    var problems = new ArrayList<>(workbook.problems());
    for (Workbook.Grid sheet : workbook.sheets()) {
      if (!sheet.name().equals(best.name())
          && kind.isExported()
          && isAnother(kind, file, sheet, map)) {
        problems.add(notRead(kind, file, best, sheet));
      }
    }
    if (kind.isExported()) {
      HiddenRows.said(file, best, cut.header()).ifPresent(problems::add);
      problems.addAll(StruckRows.said(file, best, cut.header()));
    }
    return new Cut(Separator.SHEET, cut.rows(), cut.header(), problems);
  }

  private static Cut of(TableKind kind, String file, Workbook.Grid sheet, ColumnMap map) {
    return new Cut(
        Separator.SHEET, sheet.rows(), Cut.header(kind, file, sheet.rows(), map), List.of());
  }

  /** A sheet with coordinates may have values, too, and is no BOM for that. */
  private static boolean isAnother(
      TableKind kind, String file, Workbook.Grid sheet, ColumnMap map) {
    return of(kind, file, sheet, map).header().isHeaded(kind)
        && (kind == TableKind.PLACEMENTS
            || !of(TableKind.PLACEMENTS, file, sheet, map).header().isHeaded(TableKind.PLACEMENTS));
  }

  private static Problem notRead(
      TableKind kind, String file, Workbook.Grid read, Workbook.Grid other) {
    return new Problem(
        Kind.COLUMN_AMBIGUOUS,
        Place.ofFile(file),
        "the sheet \""
            + other.name()
            + "\" holds "
            + kind.key()
            + " rows as well as the sheet \""
            + read.name()
            + "\", which alone was read",
        "put all rows into one sheet, or save each sheet that counts as a file of its own");
  }
}
