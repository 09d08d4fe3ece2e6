package lowfirst.intake;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/** Says which columns were guessed, and asks where two guesses are equally good. */
final class HeaderDoubts {
  private static final Pattern TABLE_TAG = Pattern.compile("(?i)<t(able|head|body|r|h|d)\\b");

  /** How data for programs begins, unlike a heading in brackets. */
  private static final Pattern BRACES = Pattern.compile("\\{.*|\\[(\\s*[\\[{\"].*)?");

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
      VariantColumn.unread(file, cut).ifPresent(problems::add);
      YesAndNo.unread(file, cut, map).ifPresent(problems::add);
      ExcludedColumn.unread(file, cut, map).ifPresent(problems::add);
      OptionalColumn.unread(file, cut).ifPresent(problems::add);
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
    if (cut.header().uses().stream().anyMatch(use -> use.cell() == cell)) {
      return Optional.empty();
    }
    var seen = new HashSet<String>();
    return cut.rows().stream()
        .skip(cut.header().index() + 1L)
        .filter(row -> seen.add(row.cell(cell)) && FittedSigns.mayLeaveOut(row.cell(cell)))
        .findFirst()
        .map(
            row ->
                Place.ofCell(file, row.line(), cell + 1, cut.header().name(cell), row.cell(cell)));
  }

  /** Why no header was found. */
  static Problem notFound(TableKind kind, String file, Cut cut) {
    Optional<Problem> pairs = noPairs(kind, file, cut);
    if (pairs.isPresent()) {
      return pairs.get();
    }
    Optional<Problem> programs = forPrograms(file, cut.rows());
    if (programs.isPresent()) {
      return programs.get();
    }
    Optional<Problem> other =
        kind.isExported() ? OtherForm.of(kind, file, cut.rows()) : Optional.empty();
    if (other.isPresent()) {
      return other.get();
    }
    return halfFound(kind, file, cut)
        .or(() -> OtherForm.bulleted(kind, file, cut.rows()))
        .or(() -> kind == TableKind.BOM ? namesNowhere(file, cut.rows()) : Optional.empty())
        .orElseGet(() -> nothingFound(kind, file, cut.rows()));
  }

  /** What a browser or another program reads. */
  private static Optional<Problem> forPrograms(String file, List<Row> rows) {
    for (Row row : rows.subList(0, Math.min(rows.size(), Cut.SEARCHED))) {
      boolean first = row == rows.get(0);
      if (row.cell(0).startsWith("<") && (first || TABLE_TAG.matcher(row.cell(0)).lookingAt())) {
        return Optional.of(
            new Problem(
                Kind.HEADER_NOT_FOUND,
                Place.ofLine(file, row.line()),
                "this is a page for the web or another text with tags, no table",
                "open it in a spreadsheet program and save it as .xlsx or .csv"));
      }
      if (first && BRACES.matcher(row.cell(0)).matches()) {
        return Optional.of(
            new Problem(
                Kind.HEADER_NOT_FOUND,
                Place.ofLine(file, row.line()),
                "this is data for programs, in braces or brackets, no table",
                "export the list as .csv or .xlsx"));
      }
    }
    return Optional.empty();
  }

  /** Where designators stand among other words, or that they stand nowhere. */
  private static Optional<Problem> namesNowhere(String file, List<Row> rows) {
    for (Row row : rows) {
      for (int cell = 0; cell < row.size(); cell++) {
        if (BomReader.LOST.matcher(row.cell(cell)).find()) {
          return Optional.of(
              new Problem(
                  Kind.HEADER_NOT_FOUND,
                  Place.ofCell(file, row.line(), cell + 1, "", row.cell(cell)),
                  "designators stand among other words here, and no column has them alone",
                  "give designators a column of their own" + OtherForm.example(TableKind.BOM)));
        }
      }
    }
    return rows.stream()
        .findFirst()
        .map(
            row ->
                new Problem(
                    Kind.HEADER_NOT_FOUND,
                    Place.ofLine(file, row.line()),
                    "from here on no line names parts on the board, such as R1, so nobody knows"
                        + " where they go",
                    "export the BOM with its designators, or name their column, for example with"
                        + " --column bom.designators=1 for the first column"));
  }

  /** The line that heads some of the columns that a table can't do without, but not all. */
  private static Optional<Problem> halfFound(TableKind kind, String file, Cut cut) {
    for (Row row : cut.rows().subList(0, Math.min(cut.rows().size(), Cut.SEARCHED))) {
      List<Column> found =
          Stream.of(Column.values()).filter(one -> HeaderWords.cell(kind, row, one) >= 0).toList();
      List<Column> missing = kind.required().stream().filter(one -> !found.contains(one)).toList();
      if (found.size() > 2 && !missing.isEmpty() && missing.size() < kind.required().size()) {
        return Optional.of(
            new Problem(
                Kind.HEADER_NOT_FOUND,
                Place.ofLine(file, row.line()),
                "this looks like a header, but nothing in it names "
                    + String.join(" or ", missing.stream().map(Column::words).toList()),
                "name the column, for example with --column "
                    + kind.key()
                    + "."
                    + missing.get(0).key()
                    + "=HEADER"));
      }
    }
    return Optional.empty();
  }

  private static Problem nothingFound(TableKind kind, String file, List<Row> rows) {
    String wanted = String.join(", ", kind.required().stream().map(Column::words).toList());
    String name =
        "name the columns, for example with --column "
            + kind.key()
            + "."
            + kind.required().get(0).key()
            + "=1 for the first column";
    return new Problem(
        Kind.HEADER_NOT_FOUND,
        rows.isEmpty() ? Place.ofFile(file) : Place.ofLine(file, rows.get(0).line()),
        "from here on no line could be read as a header with: " + wanted,
        kind == TableKind.PLACEMENTS
            ? "write a header, such as: Designator, X, Y, Rotation, Side, or " + name
            : name);
  }

  /** Of a placement list without coordinates, why a column that is headed so gives none. */
  private static Optional<Problem> noPairs(TableKind kind, String file, Cut cut) {
    for (int index = 0; index < Math.min(cut.rows().size(), Cut.SEARCHED); index++) {
      Row header = cut.rows().get(index);
      Optional<Problem> unsure =
          kind == TableKind.PLACEMENTS && HeaderWords.cell(kind, header, Column.DESIGNATOR) >= 0
              ? unsurePair(file, header, cut.rows().subList(index + 1, cut.rows().size()))
              : Optional.empty();
      if (unsure.isPresent()) {
        return unsure;
      }
      int position = HeaderWords.cell(kind, header, Column.POSITION);
      List<String> odd =
          cut.rows().stream()
              .skip(index + 1L)
              .map(row -> row.cell(position))
              .filter(cell -> !cell.isEmpty() && !CoordinatePair.isPair(cell))
              .limit(3)
              .toList();
      if (!odd.isEmpty() && HeaderWords.cell(kind, header, Column.DESIGNATOR) >= 0) {
        return Optional.of(
            new Problem(
                Kind.HEADER_NOT_FOUND,
                Place.ofCell(file, header.line(), position + 1, "", header.cell(position)),
                "there are no columns for x and y, and this one does not hold both: \""
                    + String.join("\", \"", odd)
                    + "\"",
                "write both into each cell, parted by a semicolon, such as 12.5; 30, or give x and y"
                    + " a column each"));
      }
    }
    return Optional.empty();
  }

  /** A column whose cells can be parted into x and y, though nothing says that they hold both. */
  private static Optional<Problem> unsurePair(String file, Row header, List<Row> below) {
    int position = HeaderWords.cell(TableKind.PLACEMENTS, header, Column.POSITION);
    for (int at = 0; at < header.size(); at++) {
      int cell = at;
      Optional<String> first =
          below.stream()
              .map(row -> row.cell(cell))
              .filter(text -> !CoordinatePair.halvesOf(text).isEmpty())
              .findFirst();
      boolean named = cell == position;
      boolean may =
          first.isPresent()
              && (named || CoordinatePair.isPair(first.get()))
              && CoordinatePair.in(below, cell).isPresent();
      if (may) {
        List<CoordinatePair.Halves> halves = CoordinatePair.halvesOf(first.get());
        return Optional.of(
            new Problem(
                Kind.HEADER_NOT_FOUND,
                Place.ofCell(file, header.line(), cell + 1, "", header.cell(cell)),
                "there are no columns for x and y; this one may hold both, where \""
                    + first.get()
                    + "\" is x = "
                    + halves.get(0)
                    + (halves.size() > 1 ? " or x = " + halves.get(1) : "")
                    + (CoordinatePair.isPair(first.get()) ? "" : ", or one number"),
                "if it holds both, say --column placements.position="
                    + (cell + 1)
                    + ", else give x and y a column each"));
      }
    }
    return Optional.empty();
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
