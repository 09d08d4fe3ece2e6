package lowfirst.intake.table;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lowfirst.intake.cell.LostNames;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.CoordinatePair;
import lowfirst.intake.column.HeaderWords;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.TableKind;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/** Says why no header was found, and what would help. */
final class NoHeader {

  /** How data for programs begins, unlike a heading in brackets. */
  private static final Pattern BRACES = Pattern.compile("\\{.*|\\[(\\s*[\\[{\"].*)?");

  private NoHeader() {}

  /** Why no header was found. */
  static Problem in(TableKind kind, String file, Cut cut) {
    return unlikeBullets(kind, file, cut)
        .or(() -> OtherForm.bulleted(kind, file, cut.rows()))
        .orElseGet(() -> namesNone(kind, file, cut));
  }

  /** The same where a list of what to buy is read all the same, with bullets or not. */
  static Problem overParts(String file, Cut cut) {
    return unlikeBullets(TableKind.BOM, file, cut)
        .orElseGet(() -> namesNone(TableKind.BOM, file, cut));
  }

  private static Problem namesNone(TableKind kind, String file, Cut cut) {
    Optional<Problem> nowhere =
        kind == TableKind.BOM ? namesNowhere(file, cut.rows()) : Optional.empty();
    return nowhere.orElseGet(() -> nothingFound(kind, file, cut.rows()));
  }

  /** What a table is instead, or lacks; empty where it is none. */
  private static Optional<Problem> unlikeBullets(TableKind kind, String file, Cut cut) {
    Optional<Problem> pairs = noPairs(kind, file, cut);
    return pairs
        .or(() -> forPrograms(file, cut.rows()))
        .or(() -> kind.isExported() ? OtherForm.of(kind, file, cut.rows()) : Optional.empty())
        .or(() -> halfFound(kind, file, cut));
  }

  /** What a browser or another program reads. */
  private static Optional<Problem> forPrograms(String file, List<Row> rows) {
    for (Row row : rows.subList(0, Math.min(rows.size(), Cut.SEARCHED))) {
      boolean first = row == rows.get(0);
      if (first && row.cell(0).startsWith("<")) {
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
        if (LostNames.areIn(row.cell(cell))) {
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
}
