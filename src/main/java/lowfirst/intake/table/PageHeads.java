package lowfirst.intake.table;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import lowfirst.intake.cell.CellShapes;
import lowfirst.intake.column.Row;

/** What stands above the header and again, with other numbers, on every page of a printed list. */
final class PageHeads {
  /** Fewer letters say too little. */
  private static final int FEWEST = 5;

  private final Set<String> words = new HashSet<>();
  private final StringBuilder starts = new StringBuilder();

  private PageHeads() {}

  /** The lines above a header, but for those that could name parts. */
  static PageHeads in(List<Row> above) {
    var heads = new PageHeads();
    for (Row row : above) {
      String words = words(row);
      if (words.length() >= FEWEST && row.cells().stream().noneMatch(CellShapes::isDesignators)) {
        heads.words.add(words);
        heads.starts.append(start(row));
      }
    }
    return heads;
  }

  /** Whether a row below the header is such a line again. */
  boolean have(Row row) {
    return starts.length() > 0
        && starts.indexOf(start(row)) >= 0
        && row.cells().stream().noneMatch(CellShapes::isDesignators)
        && words.contains(words(row));
  }

  private static String start(Row row) {
    int cell = row.firstFilled();
    return cell < 0 ? "" : row.cell(cell).substring(0, 1);
  }

  /** Its letters alone: pages and dates differ. */
  private static String words(Row row) {
    var letters = new StringBuilder();
    for (String cell : row.cells()) {
      cell.codePoints().filter(Character::isLetter).forEach(letters::appendCodePoint);
    }
    return letters.toString();
  }
}
