package lowfirst.intake.column;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What stands over each column of a table. */
public final class HeaderNames {
  private HeaderNames() {}

  /** The header's words, some of which may stand in the row above, and units in the one below. */
  public static List<String> of(TableKind kind, List<Row> rows, int index) {
    List<String> words = words(kind, rows, index);
    return kind == TableKind.PLACEMENTS && index + 1 < rows.size()
        ? HeaderRow.withUnits(words, rows.get(index + 1))
        : words;
  }

  private static List<String> words(TableKind kind, List<Row> rows, int index) {
    Row header = rows.get(index);
    if (index == 0 || !kind.isExported()) {
      return header.cells();
    }
    Row above = rows.get(index - 1);
    boolean carriesOn =
        header.filled() < above.size() || (header.filled() > 2 && statesUnit(above));
    return carriesOn ? filled(kind, header, above) : header.cells();
  }

  /** Whether a row of few words, over some of the columns, names a unit of length. */
  private static boolean statesUnit(Row above) {
    return !above.fillsMoreThan(2)
        && above.size() > 2
        && above.cells().stream()
            .flatMap(cell -> HeaderUnit.of(cell).stream())
            .anyMatch(Lengths::isUnit);
  }

  /** In a header of two rows some words stand in the upper one alone. */
  private static List<String> filled(TableKind kind, Row header, Row above) {
    if (above.line() + 1 != header.line()) {
      return header.cells();
    }
    var names = new ArrayList<String>();
    int width = Math.max(header.size(), above.size());
    Optional<String> unit = Optional.empty();
    for (int cell = 0; cell < width; cell++) {
      String own = header.cell(cell);
      String upper = above.cell(cell);
      if (!upper.isEmpty()) {
        unit = HeaderUnit.of(upper).filter(Lengths::isUnit);
      }
      if (own.isEmpty()) {
        names.add(HeaderWords.matches(kind, upper).isEmpty() ? own : upper);
      } else {
        // "Centre (mil)" over x and y.
        names.add(own.matches("(?i)[xy]") ? own + unit.map(in -> " (" + in + ")").orElse("") : own);
      }
    }
    return names;
  }
}
