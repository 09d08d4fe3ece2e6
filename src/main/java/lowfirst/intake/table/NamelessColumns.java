package lowfirst.intake.table;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.regex.Pattern;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.HeaderWords;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.TableKind;

/**
 * The look for the columns of a table that names no parts on the board.
 *
 * @param names what may be its header
 * @param below the rows below it
 * @param uses the columns found so far
 */
record NamelessColumns(List<String> names, List<Row> below, List<Header.Use> uses) {
  private static final Pattern COUNT =
      Pattern.compile("(?i)x?\\s?\\d{1,5}\\s?(x|pcs\\.?|st\\.?|off)?");

  private static final Set<Column> OTHERS =
      EnumSet.of(Column.TOLERANCE, Column.VOLTAGE, Column.POWER, Column.HEIGHT, Column.MAKER);

  /** Finds the columns; whether they are those of a list to buy. */
  boolean isFound() {
    boolean counted = use(Column.QUANTITY, cell -> share(cell, COUNT) > NamelessList.MOSTLY);
    for (Column text : NamelessList.TEXTS) {
      use(text, cell -> true);
    }
    OTHERS.forEach(column -> use(column, cell -> true));
    List<Header.Use> texts =
        uses.stream().filter(use -> NamelessList.TEXTS.contains(use.column())).toList();
    // Without a count only words for parts tell a list of them.
    return texts.stream()
        .anyMatch(use -> known(use.cell()) > (counted ? 0.3 : NamelessList.MOSTLY));
  }

  private boolean use(Column column, IntPredicate fits) {
    int best = -1;
    int rank = Integer.MAX_VALUE;
    for (int cell = 0; cell < names.size(); cell++) {
      int at = cell;
      boolean free = uses.stream().noneMatch(use -> use.cell() == at);
      for (HeaderWords.Match match : HeaderWords.matches(TableKind.BOM, names.get(cell))) {
        if (free && match.column() == column && match.rank() < rank && fits.test(cell)) {
          best = cell;
          rank = match.rank();
        }
      }
    }
    if (best >= 0) {
      Header.Basis basis =
          rank < HeaderWords.WEAK ? Header.Basis.HEADER : Header.Basis.LIKELY_HEADER;
      uses.add(new Header.Use(column, best, basis));
    }
    return best >= 0;
  }

  private double share(int cell, Pattern pattern) {
    List<String> filled = filled(cell);
    long fitting = filled.stream().filter(text -> pattern.matcher(text).matches()).count();
    return filled.isEmpty() ? 0 : (double) fitting / filled.size();
  }

  /** Share of cells whose words or numbers are those of parts. */
  private double known(int cell) {
    List<String> filled = filled(cell);
    long known = filled.stream().filter(NamelessList::isKnown).count();
    return filled.isEmpty() ? 0 : (double) known / filled.size();
  }

  private List<String> filled(int cell) {
    return below.stream().map(row -> row.cell(cell)).filter(text -> !text.isEmpty()).toList();
  }
}
