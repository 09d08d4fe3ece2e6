package lowfirst.intake.table;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import lowfirst.intake.cell.CellShapes;
import lowfirst.intake.cell.FittedSigns;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.Separator;

/** Rows that are written for people alone, or only drawn. */
final class Comments {
  /** Of a heading in notes, before it and at times behind it (CommonMark, ATX headings). */
  private static final Pattern MARKS = Pattern.compile("^#+\\s*|\\s*#+$");

  private Comments() {}

  /** A comment, or a rule drawn with dashes; a lone # may also be a number column's header. */
  static boolean are(Row row) {
    String first = row.cell(0);
    boolean comment =
        first.startsWith("##")
            || first.startsWith("# ")
            || (first.equals("#") && row.filled() == 1);
    return comment || isRule(row);
  }

  /** Whether a comment may be the row of a part that somebody put out. */
  static boolean mayBePart(Row row) {
    String first = row.cell(0);
    int at = 0;
    while (at < first.length() && (first.charAt(at) == '#' || first.charAt(at) == ' ')) {
      at++;
    }
    return row.filled() > 1 && CellShapes.isDesignators(first.substring(at));
  }

  /** The heading that a comment is, in notes, or in any table where it leaves parts out. */
  static Optional<Row> heading(Separator separator, Row row) {
    String words = MARKS.matcher(row.cell(0)).replaceAll("");
    boolean notes = separator == Separator.LINES || separator == Separator.BAR;
    return row.filled() == 1 && !isRule(row) && (notes || FittedSigns.leaveOutOnly(words))
        ? Optional.of(new Row(row.line(), List.of(words)))
        : Optional.empty();
  }

  /** A line drawn of dashes and the like. */
  static boolean isRule(Row row) {
    int dashes = 0;
    for (int i = 0; i < row.size(); i++) {
      String cell = row.cell(i);
      for (int at = 0; at < cell.length(); at++) {
        if ("-=_*+ :|.~#–—─═".indexOf(cell.charAt(at)) < 0) {
          return false;
        }
        dashes++;
      }
    }
    return dashes >= 3 || (dashes > 1 && row.fillsMoreThan(1));
  }
}
