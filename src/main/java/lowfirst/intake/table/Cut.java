package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lowfirst.intake.cell.CellShapes;
import lowfirst.intake.cell.MirrorMarks;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.ColumnMap;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.Separator;
import lowfirst.intake.column.TableKind;
import lowfirst.intake.text.Rows;
import lowfirst.problem.Problem;

/**
 * A text cut into rows in one way, with the header found.
 *
 * @param above lines that state something about a table without a header, which are none of its
 *     rows
 * @param problems quotes that never close
 */
record Cut(
    Separator separator, List<Row> above, List<Row> rows, Header header, List<Problem> problems) {

  /** Rows looked at to find the header. */
  static final int SEARCHED = 80;

  /** A cut in which nothing but a header stands above the rows. */
  Cut(Separator separator, List<Row> rows, Header header, List<Problem> problems) {
    this(separator, List.of(), rows, header, problems);
  }

  /** The lines before the header, or before the rows where there is none. */
  List<Row> before() {
    var before = new ArrayList<>(above);
    before.addAll(rows.subList(0, Math.max(0, header.index())));
    return before;
  }

  /** The text cut at this separator. */
  static Cut by(Separator separator, TableKind kind, String file, String text, ColumnMap map) {
    if (separator == Separator.LINES) {
      PartLines lines = PartLines.in(text).orElse(PartLines.NONE);
      return new Cut(separator, lines.rows(), lines.header(), lines.problems(file));
    }
    if (separator == Separator.RECORDS) {
      List<Row> records = RecordLines.in(kind, text).orElse(List.of());
      return new Cut(separator, records, header(kind, file, records, map), List.of());
    }
    Rows rows =
        separator.isOneCharacter()
            ? Rows.separated(file, text, separator)
            : new Rows(
                separator == Separator.SIGNS
                    ? SignRows.of(text)
                    : BlankRows.of(kind, text, separator),
                List.of());
    if (kind != TableKind.PLACEMENTS) {
      return new Cut(separator, rows.rows(), header(kind, file, rows.rows(), map), rows.problems());
    }
    List<Row> even =
        separator == Separator.BLANKS
            ? MirrorMarks.evened(SpacedNames.joined(rows.rows()))
            : rows.rows();
    List<Row> whole = UnquotedPairs.joined(even, separator);
    Header header = header(kind, file, whole, map);
    List<Row> above = Preamble.before(whole);
    if (header.index() >= above.size() || header.isHeaded(kind)) {
      return new Cut(separator, whole, header, rows.problems());
    }
    List<Row> below = whole.subList(above.size(), whole.size());
    return new Cut(separator, above, below, header(kind, file, below, map), rows.problems());
  }

  static Header header(TableKind kind, String file, List<Row> rows, ColumnMap map) {
    Optional<String> line = map.headerLine(kind, file);
    Map<Column, String> told = map.columns(kind, file);
    var best = new Header(-1, List.of(), List.of());
    var scores = new HashMap<String, Integer>();
    int most = 0;
    for (int index = 0; index < Math.min(rows.size(), SEARCHED); index++) {
      if (line.isPresent() && !line.get().equals(rows.get(index).line() + "")) {
        continue;
      }
      if (line.isEmpty() && HeaderMatch.highestScore(kind, told, rows, index, scores) <= most) {
        continue;
      }
      if (best.isHeaded(kind) && holdsPart(kind, best, rows.subList(best.index() + 1, index))) {
        break;
      }
      Header header = HeaderMatch.at(kind, told, rows, index);
      int score = header.score(kind);
      if (score > most || (line.isPresent() && score >= most)) {
        best = header;
        most = score;
      }
    }
    if (best.index() >= 0 || !kind.isExported()) {
      return best;
    }
    boolean untold = line.isEmpty() && !told.containsKey(kind.required().get(0));
    return untold && OtherForm.of(kind, file, rows).isPresent()
        ? best
        : HeaderlessMatch.of(kind, told, rows);
  }

  /** Whether a header has parts below it already, so that one further down is another table's. */
  private static boolean holdsPart(TableKind kind, Header header, List<Row> below) {
    return below.stream()
        .anyMatch(row -> RowAbove.isPart(kind, header, row) || isListed(kind, header, row));
  }

  /** A part in a list that counts none: its designators and its value. */
  private static boolean isListed(TableKind kind, Header header, Row row) {
    return kind == TableKind.BOM
        && header.cellOf(Column.QUANTITY) < 0
        && CellShapes.isDesignators(row.cell(header.cellOf(Column.DESIGNATORS)))
        && !row.cell(header.cellOf(Column.VALUE)).isEmpty();
  }

  /** Whether a character stands between the words of the header, and hardly anywhere below. */
  boolean partsHeaderAlone() {
    List<Row> below = rows.subList(header.index() + 1, rows.size());
    return below.stream().filter(row -> row.fillsMoreThan(1)).count() * 5 < below.size();
  }

  /** The usual number of cells of a row. */
  int width() {
    return rows.stream().map(Row::size).sorted().skip(rows.size() / 2).findFirst().orElse(0);
  }

  /** The first row of data, its cells in brackets. */
  String shown() {
    int first = Math.min(Math.max(0, header.index() + 1), rows.size() - 1);
    return rows.get(first).cells().stream()
        .map(cell -> "[" + cell + "]")
        .collect(Collectors.joining(" "));
  }

  /** How much the header explains, times how many rows are as long as it. */
  double worth(TableKind kind) {
    int score = header.score(kind);
    if (score == 0 || header.index() < 0) {
      return header.index() < 0 && header.isComplete(kind) ? 0.1 * evenness() : 0;
    }
    return score * (0.5 + 0.5 * fit());
  }

  /** The share of rows from the header on that are as long as it. */
  double fit() {
    int length = rows.get(header.index()).cells().size();
    List<Row> below =
        rows.stream().skip(header.index()).filter(row -> !row.cell(0).startsWith("#")).toList();
    long fitting = below.stream().filter(row -> row.size() == length).count();
    return (double) fitting / Math.max(1, below.size());
  }

  /** The share of rows that have the usual number of cells; 0 when that is one. */
  double evenness() {
    int usual = width();
    long alike = rows.stream().filter(row -> row.size() == usual).count();
    return usual < 2 ? 0 : (double) alike / rows.size();
  }
}
