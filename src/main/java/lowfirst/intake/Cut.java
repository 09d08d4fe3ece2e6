package lowfirst.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lowfirst.problem.Problem;

/**
 * A text cut into rows, with the header found: the cut, among all separators, that explains most.
 *
 * @param problems quotes that never close
 */
record Cut(Separator separator, List<Row> rows, Header header, List<Problem> problems) {

  /** Rows looked at to find the header. */
  private static final int SEARCHED = 80;

  /** Characters looked at to find the separator. */
  private static final int SAMPLE = 1 << 14;

  /** The best cut of {@code text} as a table of this kind. */
  static Cut of(TableKind kind, String file, String text, ColumnMap map) {
    Optional<Separator> told = map.separator(kind, file);
    Separator separator = told.orElseGet(() -> likeliest(kind, file, sample(text), map));
    return by(separator, kind, file, text, map);
  }

  /** The sheet of a workbook that explains most as a table of this kind. */
  static Cut of(TableKind kind, String file, Workbook workbook, ColumnMap map) {
    Cut best = null;
    for (List<Row> rows : workbook.sheets()) {
      var cut = new Cut(Separator.SHEET, rows, header(kind, file, rows, map), workbook.problems());
      if (best == null || cut.worth(kind) > best.worth(kind)) {
        best = cut;
      }
    }
    return best == null
        ? new Cut(
            Separator.SHEET, List.of(), new Header(-1, List.of(), List.of()), workbook.problems())
        : best;
  }

  private static String sample(String text) {
    if (text.length() <= SAMPLE) {
      return text;
    }
    int end = Math.max(text.lastIndexOf('\n', SAMPLE), text.lastIndexOf('\r', SAMPLE));
    return text.substring(0, end > 0 ? end : SAMPLE);
  }

  private static Separator likeliest(TableKind kind, String file, String text, ColumnMap map) {
    Separator best = Separator.COMMA;
    double most = 0;
    // Columns of blanks are tried only where no character parts the cells.
    boolean found = false;
    for (Separator separator : Separator.values()) {
      if (!separator.isOneCharacter()
          && (found || !kind.isExported() || separator == Separator.SHEET)) {
        break;
      }
      if (separator.isOneCharacter() && text.indexOf(separator.character()) < 0) {
        continue;
      }
      Cut cut = by(separator, kind, file, text, map);
      double worth = cut.worth(kind);
      found |= separator.isOneCharacter() && worth > 0 && cut.header().index() >= 0;
      if (worth > most) {
        best = separator;
        most = worth;
      }
    }
    return most > 0 ? best : blanksOrFirst(kind, file, text, map);
  }

  private static Separator blanksOrFirst(TableKind kind, String file, String text, ColumnMap map) {
    Separator best = Separator.COMMA;
    double most = 0;
    for (Separator separator : Separator.values()) {
      if (separator == Separator.SHEET) {
        break;
      }
      Cut cut = by(separator, kind, file, text, map);
      double worth = separator.isOneCharacter() ? cut.evenness() * 1.5 : cut.worth(kind);
      if (worth > most) {
        best = separator;
        most = worth;
      }
    }
    return best;
  }

  private static Cut by(
      Separator separator, TableKind kind, String file, String text, ColumnMap map) {
    Rows rows =
        separator.isOneCharacter()
            ? Rows.separated(file, text, separator)
            : new Rows(BlankRows.of(kind, text, separator), List.of());
    return new Cut(separator, rows.rows(), header(kind, file, rows.rows(), map), rows.problems());
  }

  private static Header header(TableKind kind, String file, List<Row> rows, ColumnMap map) {
    Optional<String> told = map.headerLine(kind, file);
    var best = new Header(-1, List.of(), List.of());
    int most = 0;
    for (int index = 0; index < Math.min(rows.size(), SEARCHED); index++) {
      if (told.isPresent() && !told.get().equals(rows.get(index).line() + "")) {
        continue;
      }
      if (!mayBeHeader(kind, rows.get(index), map) && told.isEmpty()) {
        continue;
      }
      Header header = HeaderMatch.at(kind, file, map, rows, index);
      int score = header.score(kind);
      if (score > most || (told.isPresent() && score >= most)) {
        best = header;
        most = score;
      }
    }
    return best.index() >= 0 || !kind.isExported()
        ? best
        : HeaderlessMatch.of(kind, file, map, rows);
  }

  /** Spares most rows the full search. */
  private static boolean mayBeHeader(TableKind kind, Row row, ColumnMap map) {
    if (!kind.isExported() || !map.entries().isEmpty()) {
      return true;
    }
    for (String cell : row.cells()) {
      if (!HeaderWords.matches(kind, cell).isEmpty()) {
        return true;
      }
    }
    return false;
  }

  /** How much the header explains, times how many rows are as long as it. */
  private double worth(TableKind kind) {
    int score = header.score(kind);
    if (score == 0 || header.index() < 0) {
      return header.index() < 0 && header.isComplete(kind) ? 0.1 * evenness() : 0;
    }
    int length = rows.get(header.index()).cells().size();
    List<Row> below =
        rows.stream().skip(header.index()).filter(row -> !row.cell(0).startsWith("#")).toList();
    long fitting = below.stream().filter(row -> row.cells().size() == length).count();
    return score * (0.5 + 0.5 * fitting / Math.max(1, below.size()));
  }

  /** The share of rows that have the usual number of cells; 0 when that is one. */
  private double evenness() {
    var counts = new ArrayList<Integer>();
    rows.forEach(row -> counts.add(row.cells().size()));
    counts.sort(null);
    if (counts.isEmpty() || counts.get(counts.size() / 2) < 2) {
      return 0;
    }
    int usual = counts.get(counts.size() / 2);
    return (double) counts.stream().filter(count -> count == usual).count() / counts.size();
  }
}
