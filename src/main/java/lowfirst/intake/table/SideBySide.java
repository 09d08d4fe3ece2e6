package lowfirst.intake.table;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import lowfirst.intake.cell.LostNames;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.HeaderWords;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.TableKind;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * Several parts in one row of a BOM: {@code R1 10k} in one cell and {@code C1 100n} in the next, or
 * two tables beside each other, as where somebody typed them at tab stops.
 */
final class SideBySide {
  /** A designator and its value. */
  private static final Pattern PART = Pattern.compile("[A-Z]{1,3}\\d{1,3}\\s+\\S.*");

  /** In fewer rows there may be parts beside each other by chance. */
  private static final int FEWEST = 3;

  private static final double NEARLY_ALL = 0.9;

  private SideBySide() {}

  /** Whether most rows hold several parts, each in a cell. */
  static boolean areIn(TableKind kind, List<Row> rows) {
    List<Row> first = rows.subList(0, Math.min(rows.size(), Cut.SEARCHED));
    long several = first.stream().filter(row -> parts(row) > 1).count();
    return kind == TableKind.BOM && several * 2 > first.size();
  }

  /** Where such rows begin; empty where most rows are none. */
  static Optional<Problem> of(TableKind kind, String file, List<Row> rows) {
    return rows.stream()
        .filter(row -> parts(row) > 1 && areIn(kind, rows))
        .findFirst()
        .map(
            row ->
                OtherForm.problem(
                    file,
                    row,
                    "several parts stand side by side in one row (\"" + OtherForm.line(row) + "\")",
                    "give each part a row of its own" + OtherForm.example(kind)));
  }

  private static long parts(Row row) {
    return row.cells().stream().filter(cell -> PART.matcher(cell).matches()).count();
  }

  /** Of a BOM that was read, a column that names other parts, with their words right of it. */
  static Optional<Problem> unread(String file, Cut cut) {
    Header header = cut.header();
    int read = header.cellOf(Column.DESIGNATORS);
    List<Row> below = cut.rows().subList(header.index() + 1, cut.rows().size());
    int width = below.stream().limit(Cut.SEARCHED).mapToInt(Row::size).max().orElse(0);
    return IntStream.range(read + 1, read < 0 ? 0 : width)
        .filter(cell -> mayName(header, cell) && namesOthers(below, read, cell))
        .mapToObj(
            cell ->
                new Problem(
                    Kind.COLUMN_AMBIGUOUS,
                    Place.ofCell(file, below.get(0).line(), cell + 1, "", below.get(0).cell(cell)),
                    "columns "
                        + (read + 1)
                        + " and "
                        + (cell + 1)
                        + " both name parts, as \""
                        + below.get(0).cell(read)
                        + "\" and \""
                        + below.get(0).cell(cell)
                        + "\"; those of column "
                        + (cell + 1)
                        + " were not read",
                    "give each part a row of its own" + OtherForm.example(TableKind.BOM)))
        .findFirst();
  }

  /** Only where no header says that the column holds something else. */
  private static boolean mayName(Header header, int cell) {
    boolean carriedOn =
        header.uses().stream()
            .anyMatch(use -> use.cell() == cell && use.column() == Column.DESIGNATORS);
    String name = header.name(cell);
    return !carriedOn
        && (name.isEmpty()
            || HeaderWords.matches(TableKind.BOM, name).stream()
                .anyMatch(match -> match.column() == Column.DESIGNATORS));
  }

  private static boolean namesOthers(List<Row> rows, int read, int cell) {
    Set<String> names = new HashSet<>();
    rows.forEach(row -> names.add(row.cell(read)));
    int filled = 0;
    int others = 0;
    for (Row row : rows) {
      String text = row.cell(cell);
      if (!text.isEmpty()) {
        filled++;
        boolean part = LostNames.isOne(text) && !row.cell(cell + 1).isEmpty();
        others += part && names.add(text) ? 1 : 0;
      }
    }
    return others >= FEWEST && others >= NEARLY_ALL * filled;
  }
}
