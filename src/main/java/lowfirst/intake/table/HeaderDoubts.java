package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import lowfirst.intake.cell.FittedSigns;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.ColumnMap;
import lowfirst.intake.column.CoordinatePair;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.HeaderWords;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.TableKind;
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
      } else if (use.basis() == Header.Basis.LIKELY_HEADER && !isPlain(kind, use)) {
        problems.add(likely(kind, file, cut, use));
        if (use.column() == Column.QUANTITY) {
          Rivals.of(kind, cut, use).ifPresent(rival -> problems.add(rival.problem(file)));
        }
      } else if (use.basis() == Header.Basis.CELLS) {
        problems.add(
            header.index() < 0 ? fromCells(kind, file, cut, use) : byCells(kind, file, cut, use));
      } else if (use.basis() == Header.Basis.HEADER) {
        Rivals.of(kind, cut, use).ifPresent(rival -> problems.add(rival.problem(file)));
      }
    }
    if (kind == TableKind.BOM) {
      SideBySide.unread(file, cut).ifPresent(problems::add);
    }
    if (kind == TableKind.BOM && header.index() >= 0) {
      leavingOut(file, cut).ifPresent(problems::add);
      YesAndNo.unread(file, cut, map).ifPresent(problems::add);
      ExcludedColumn.unread(file, cut, map).ifPresent(problems::add);
      problems.addAll(UndecidedColumn.unread(file, cut));
    }
    if (kind.isExported() && header.index() >= 0) {
      VariantColumn.unread(file, cut).ifPresent(problems::add);
    }
    for (Column column : Column.values()) {
      map.column(kind, file, column)
          .filter(told -> header.cellOf(column) < 0 && !told.equals("none"))
          .ifPresent(told -> problems.add(unknown(kind, file, column, told)));
    }
    return problems;
  }

  /** What else a placement list says of a part can be mistaken for nothing. */
  private static boolean isPlain(TableKind kind, Header.Use use) {
    return kind == TableKind.PLACEMENTS && use.column() == Column.DESCRIPTION;
  }

  /** X and y in one cell, and whether they could be parted otherwise. */
  private static List<Problem> paired(String file, Cut cut, Header.Use use, CoordinatePair pair) {
    List<String> cells =
        cut.rows().stream()
            .skip(cut.header().index() + 1L)
            .map(row -> row.cell(use.cell()))
            .toList();
    Optional<String> first =
        cells.stream()
            .filter(cell -> pair.halves(cell).size() == 1 && !pair.isOdd(cell))
            .filter(cell -> pair.isOneWay(cell) == pair.rival().isEmpty())
            .findFirst();
    Optional<String> odd = cells.stream().filter(pair::isOdd).findFirst();
    boolean sure = pair.rival().isEmpty() && odd.isEmpty() && use.basis() == Header.Basis.TOLD;
    if (first.isEmpty() || sure) {
      return List.of();
    }
    String text = first.get();
    String read = read(text, pair);
    return List.of(
        pair.rival().isEmpty()
            ? new Problem(
                Kind.COLUMN_GUESSED,
                place(file, cut, use.cell()),
                "x and y stand in one cell, "
                    + read
                    + odd.map(cell -> ", and " + read(cell, pair)).orElse(""),
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

  /** Columns that nobody reads, though they say of a part that it is not fitted: variants. */
  private static Optional<Problem> leavingOut(String file, Cut cut) {
    var names = new ArrayList<String>();
    Optional<Place> first = Optional.empty();
    for (int cell = 0; cell < cut.header().names().size(); cell++) {
      Optional<Place> said = leavesOut(file, cut, cell);
      first = first.or(() -> said);
      if (said.isPresent()) {
        names.add("\"" + cut.header().name(cell) + "\"");
      }
    }
    return first.map(
        place ->
            new Problem(
                Kind.COLUMN_AMBIGUOUS,
                place,
                "this may say that the part is not fitted, but nothing is read from "
                    + (names.size() == 1 ? "the column " : "the columns ")
                    + String.join(", ", names),
                "name the column that counts with --column bom.fitted=HEADER, or write no into a"
                    + " column \"fitted\""));
  }

  /** The first cell of an unused column that says so. */
  private static Optional<Place> leavesOut(String file, Cut cut, int cell) {
    // nF is a unit there, and elsewhere it may be: not fitted.
    if (cut.header().uses().stream().anyMatch(use -> use.cell() == cell)
        || UnitColumn.is(cut.header(), cell)) {
      return Optional.empty();
    }
    var seen = new HashSet<String>();
    return cut.rows().stream()
        .skip(cut.header().index() + 1L)
        .filter(row -> seen.add(row.cell(cell)) && FittedSigns.mayLeaveOut(row.cell(cell)))
        .filter(row -> !Comments.are(row))
        .findFirst()
        .map(
            row ->
                Place.ofCell(file, row.line(), cell + 1, cut.header().name(cell), row.cell(cell)));
  }

  private static String read(String cell, CoordinatePair pair) {
    return "\"" + cell + "\" was read as x = " + pair.halves(cell).get(0);
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
    Header header = cut.header();
    String name = header.name(use.cell());
    String column = use.column().words();
    String message;
    if (!names(kind, name, use.column())) {
      message =
          (name.isEmpty()
                  ? "the column has no header"
                  : "\"" + name + "\" is no usual header for " + column)
              + "; by its cells it was taken for "
              + column;
    } else if (header.names().stream().filter(one -> names(kind, one, use.column())).count() > 1) {
      message =
          "of several headers that may mean "
              + column
              + ", \""
              + name
              + "\" was taken: its cells look most like it";
    } else {
      message = "\"" + name + "\" was taken for " + column + ", as its cells look";
    }
    return new Problem(
        Kind.COLUMN_GUESSED, place(file, cut, use.cell()), message, mend(kind, use.column()));
  }

  private static boolean names(TableKind kind, String header, Column column) {
    return HeaderWords.matches(kind, header).stream().anyMatch(match -> match.column() == column);
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
