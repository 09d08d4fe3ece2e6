package lowfirst.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/** Says which columns were guessed, and asks where two guesses are equally good. */
final class HeaderDoubts {
  private HeaderDoubts() {}

  /** What a person should confirm about the columns of a table. */
  static List<Problem> about(TableKind kind, String file, Cut cut, ColumnMap map) {
    var problems = new ArrayList<Problem>();
    Header header = cut.header();
    for (Header.Use use : header.uses()) {
      if (use.column() == Column.POSITION) {
        header.pair().ifPresent(pair -> problems.addAll(paired(file, cut, use, pair)));
      } else if (use.basis() == Header.Basis.LIKELY_HEADER) {
        problems.add(likely(kind, file, cut, use));
      } else if (use.basis() == Header.Basis.CELLS) {
        problems.add(
            header.index() < 0 ? fromCells(kind, file, cut, use) : byCells(kind, file, cut, use));
      } else if (use.basis() == Header.Basis.HEADER) {
        Rivals.of(kind, cut, use).ifPresent(rival -> problems.add(rival.problem(file)));
      }
    }
    for (Column column : Column.values()) {
      map.column(kind, file, column)
          .filter(told -> header.cellOf(column) < 0 && !told.equals("none"))
          .ifPresent(told -> problems.add(unknown(kind, file, column, told)));
    }
    return problems;
  }

  /** X and y in one cell, and whether they could be parted otherwise. */
  private static List<Problem> paired(String file, Cut cut, Header.Use use, CoordinatePair pair) {
    Optional<Row> first =
        cut.rows().stream()
            .skip(cut.header().index() + 1L)
            .filter(row -> pair.halves(row.cell(use.cell())).size() == 1)
            .filter(row -> pair.isOneWay(row.cell(use.cell())) == pair.rival().isEmpty())
            .findFirst();
    if (first.isEmpty() || (pair.rival().isEmpty() && use.basis() == Header.Basis.TOLD)) {
      return List.of();
    }
    String text = first.get().cell(use.cell());
    String read = "\"" + text + "\" was read as x = " + pair.halves(text).get(0);
    return List.of(
        pair.rival().isEmpty()
            ? new Problem(
                Kind.COLUMN_GUESSED,
                place(file, cut, use.cell()),
                "x and y stand in one cell, " + read,
                "if that is wrong, give x and y a column each")
            : new Problem(
                Kind.COLUMN_AMBIGUOUS,
                place(file, cut, use.cell()),
                "x and y stand in one cell, and "
                    + pair.rival().get().words()
                    + " part them as well as "
                    + pair.way().words()
                    + ": "
                    + read
                    + ", but it may be x = "
                    + CoordinatePair.halves(pair.rival().get(), text).get(0),
                "part x and y with a semicolon, or write decimals with a point"));
  }

  private static Problem likely(TableKind kind, String file, Cut cut, Header.Use use) {
    String name = cut.header().name(use.cell());
    return new Problem(
        Kind.COLUMN_GUESSED,
        place(file, cut, use.cell()),
        "\"" + name + "\" was taken for the column " + use.column().words(),
        mend(kind, use.column()));
  }

  private static Problem fromCells(TableKind kind, String file, Cut cut, Header.Use use) {
    String sample = cut.rows().get(0).cell(use.cell());
    return new Problem(
        Kind.COLUMN_GUESSED,
        Place.ofCell(file, cut.rows().get(0).line(), use.cell() + 1, "", sample),
        "there is no header; by its cells column "
            + (use.cell() + 1)
            + " was taken for "
            + use.column().words(),
        mend(kind, use.column()));
  }

  private static Problem byCells(TableKind kind, String file, Cut cut, Header.Use use) {
    String name = cut.header().name(use.cell());
    boolean known =
        HeaderWords.matches(kind, name).stream().anyMatch(m -> m.column() == use.column());
    return new Problem(
        Kind.COLUMN_GUESSED,
        place(file, cut, use.cell()),
        known
            ? "of several headers that may mean "
                + use.column().words()
                + ", \""
                + name
                + "\" was taken: its cells look most like it"
            : "\""
                + name
                + "\" is no known header; by its cells it was taken for "
                + use.column().words(),
        mend(kind, use.column()));
  }

  private static Problem unknown(TableKind kind, String file, Column column, String told) {
    return new Problem(
        Kind.COLUMN_MISSING,
        Place.ofFile(file),
        "no column is headed or numbered \"" + told + "\", which was named for " + column.words(),
        "correct --column " + kind.key() + "." + column.key() + " or " + ColumnMap.FILE);
  }

  private static Place place(String file, Cut cut, int cell) {
    Row row = cut.rows().get(Math.max(0, cut.header().index()));
    return Place.ofCell(file, row.line(), cell + 1, "", row.cell(cell));
  }

  private static String mend(TableKind kind, Column column) {
    return "if that is wrong, name the right one with --column "
        + kind.key()
        + "."
        + column.key()
        + "=HEADER";
  }
}
