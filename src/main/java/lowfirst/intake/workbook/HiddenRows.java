package lowfirst.intake.workbook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.Row;
import lowfirst.problem.Excerpt;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/** Rows of a sheet that nobody sees: filtered out perhaps, since their parts are not fitted. */
public final class HiddenRows {
  /** So many are named by their numbers. */
  private static final int NAMED = 12;

  private HiddenRows() {}

  /**
   * That those below the header were read as if they were shown; empty without any. One that says
   * by itself that it is not fitted needs no word.
   */
  public static Optional<Problem> said(String file, Workbook.Grid sheet, Header header) {
    Map<Integer, Row> fitted = sheet.hidden().isEmpty() ? Map.of() : sheet.fitted(header);
    List<Integer> lines = sheet.hidden().stream().filter(fitted::containsKey).toList();
    if (lines.isEmpty()) {
      return Optional.empty();
    }
    boolean one = lines.size() == 1;
    return Optional.of(
        new Problem(
            Kind.OPTIONAL_PART,
            Place.ofLine(file, lines.get(0)),
            "the sheet \""
                + sheet.name()
                + "\" hides "
                + (one ? "row " : "rows ")
                + numbers(lines)
                + (one ? ", which was" : ", which were")
                + " read like the others, though a hidden row may be a part that is not fitted",
            one
                ? "show the row, and delete it or write no into a column \"fitted\" if the part is not"
                    + " fitted"
                : "show the rows, and delete those of parts that are not fitted or write no into a"
                    + " column \"fitted\""));
  }

  /** The first of some rows, and how many more. */
  public static String numbers(List<Integer> lines) {
    return Excerpt.of(lines, NAMED);
  }
}
