package lowfirst.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import lowfirst.board.Board;
import lowfirst.intake.cell.Cells;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.HeaderUnit;
import lowfirst.intake.column.Lengths;
import lowfirst.intake.column.TableRow;
import lowfirst.intake.table.Table;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;
import lowfirst.problem.Reading;
import lowfirst.quantity.Quantity;

/** Tells which boards a kit has and which files hold their tables. */
final class KitLayout {
  private final KitFiles files;
  private final FileRoles roles;
  private final List<Problem> problems = new ArrayList<>();
  private final List<BoardFiles> boards = new ArrayList<>();

  private KitLayout(KitFiles files, TablesTried tables) {
    this.files = files;
    this.roles = new FileRoles(files, tables);
  }

  /** The boards, and what is wrong with how they are laid out. */
  record Boards(List<BoardFiles> boards, List<Problem> problems) {}

  /** The boards that {@code boards.csv} lists, or those that the folders show. */
  static Boards of(KitFiles files, Optional<Table> boardsTable, TablesTried tables) {
    var layout = new KitLayout(files, tables);
    if (files.given().isPresent()) {
      layout.given(files.given().get());
    } else if (boardsTable.isPresent() && boardsTable.get().isUnderstood()) {
      boardsTable.get().rows().forEach(layout::listed);
    } else {
      layout.found();
    }
    return new Boards(layout.boards, layout.problems);
  }

  private void given(KitFiles.Given given) {
    List<String> boms = given.bom().filter(path -> files.file(path).isPresent()).stream().toList();
    List<String> placements =
        given.placements().stream().filter(path -> files.file(path).isPresent()).toList();
    boards.add(
        new BoardFiles(
            files.name(),
            1,
            Optional.empty(),
            tables(boms),
            tables(placements),
            Stream.concat(boms.stream(), placements.stream()).filter(roles::isDesign).findFirst()));
  }

  /** Those of these files that are no boards in one file. */
  private List<String> tables(List<String> paths) {
    return paths.stream().filter(path -> !roles.isDesign(path)).toList();
  }

  private void found() {
    FileRoles.Found here = roles.in("");
    if (!here.isEmpty()) {
      add(files.name(), here);
      return;
    }
    for (String folder : folders()) {
      FileRoles.Found inside = roles.in(folder);
      if (!inside.isEmpty()) {
        add(folder.substring(0, folder.length() - 1), inside);
      }
    }
    List<String> unread = boards.isEmpty() ? roles.unreadForms() : List.of();
    if (!unread.isEmpty() && FileRoles.isNotes(unread.get(0))) {
      problems.add(
          new Problem(
              Kind.FILE_MISSING,
              Place.ofFile(unread.get(0)),
              "these notes have no table of parts, and no list whose lines begin with designators",
              "begin each line with the designators of its part, such as - R1, R2: 10k, or write a"
                  + " table with a header, such as: Reference, Quantity, Value"));
    } else if (!unread.isEmpty()) {
      problems.add(
          new Problem(
              Kind.FILE_MISSING,
              Place.ofFile(unread.get(0)),
              "this is named like a table of parts, but holds none in a form that is read",
              "open it with the program it is for, and save the table as .csv or .xlsx"));
    } else if (boards.isEmpty() && !roles.unknownTables().isEmpty()) {
      List<String> tables = roles.unknownTables();
      problems.add(
          new Problem(
              Kind.FILE_MISSING,
              Place.ofFile(tables.get(0)),
              tables.size() == 1
                  ? "neither the name nor a header tells whether this is a BOM or a placement list"
                  : "neither names nor headers tell which of "
                      + String.join(", ", tables.subList(0, Math.min(5, tables.size())))
                      + " is the BOM or the placement list",
              "name the BOM bom.csv and the placement list placements.csv"));
    } else if (boards.isEmpty()) {
      problems.add(
          new Problem(
              Kind.FILE_MISSING,
              Place.ofFile("bom.csv"),
              "the kit has neither a BOM nor a placement list",
              "put bom.csv and placements.csv into the folder, or the board as IPC-2581 (.xml)"));
    }
  }

  private void add(String name, FileRoles.Found found) {
    one(
        found.boms(),
        Kind.COLUMN_AMBIGUOUS,
        "look like the BOM",
        "name the right one bom.csv, or say which it is in boards.csv");
    one(
        found.designs(),
        Kind.TABLE_NOT_USED,
        "describe a board",
        "put each board into a folder of its own");
    boards.add(
        new BoardFiles(
            name,
            1,
            Optional.empty(),
            found.boms().stream().limit(1).toList(),
            found.placements(),
            found.designs().stream().findFirst()));
  }

  /** Says that of several files the first is used. */
  private void one(List<String> files, Kind kind, String what, String remedy) {
    if (files.size() > 1) {
      problems.add(
          new Problem(
              kind,
              Place.ofFile(files.get(0)),
              "several files " + what + ": " + String.join(", ", files) + "; the first was used",
              remedy));
    }
  }

  private Set<String> folders() {
    var folders = new TreeSet<String>();
    for (String path : files.contents().keySet()) {
      int slash = path.indexOf('/');
      if (slash > 0) {
        folders.add(path.substring(0, slash + 1));
      }
    }
    folders.remove("reports/");
    return folders;
  }

  private void listed(TableRow row) {
    var cells = new Cells(row, problems);
    Optional<String> name = cells.needed(Column.BOARD);
    if (name.isEmpty()) {
      return;
    }
    if (boards.stream().anyMatch(board -> board.name().equals(name.get()))) {
      problems.add(
          row.problem(
              Kind.NAME_TWICE,
              Column.BOARD,
              "there are two of the board \"" + name.get() + "\"; the first one counts",
              "give each a name of its own"));
    }
    List<String> boms = file(row, name.get(), Column.BOM);
    List<String> placements = file(row, name.get(), Column.PLACEMENTS);
    Optional<String> design =
        Stream.of(boms, placements, roles.in(name.get() + "/").designs())
            .flatMap(List::stream)
            .filter(roles::isDesign)
            .findFirst();
    boards.add(
        new BoardFiles(
            name.get(),
            cells.count(Column.COUNT).orElse(1),
            size(row),
            tables(boms),
            tables(placements),
            design));
  }

  /** The file that a cell names, or the usual ones in the folder of the board's name. */
  private List<String> file(TableRow row, String board, Column column) {
    String path = row.text(column).replace('\\', '/');
    if (path.isEmpty()) {
      FileRoles.Found found = roles.in(board + "/");
      return column == Column.BOM ? found.boms().stream().limit(1).toList() : found.placements();
    }
    if (leaves(path)) {
      problems.add(
          row.problem(
              Kind.OUTSIDE_THE_KIT,
              column,
              "the path leads out of the kit's folder",
              "copy the file into the kit and name it from there"));
      return List.of();
    }
    if (files.file(path).isEmpty()) {
      boolean said = files.problems().stream().anyMatch(p -> p.place().file().equals(path));
      if (!said) {
        problems.add(
            row.problem(
                Kind.FILE_MISSING,
                column,
                "there is no such file in the kit",
                "correct the name, or put the file there"));
      }
      return List.of();
    }
    return List.of(path);
  }

  private static boolean leaves(String path) {
    return path.startsWith("/")
        || path.matches("(?i)[a-z]:.*")
        || List.of(path.split("/")).contains("..");
  }

  private Optional<Board.Size> size(TableRow row) {
    Optional<Double> width = length(row, Column.WIDTH);
    Optional<Double> height = length(row, Column.HEIGHT);
    if (width.isEmpty() || height.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Board.Size(
            length(row, Column.LEFT).orElse(0.0),
            length(row, Column.BOTTOM).orElse(0.0),
            width.get(),
            height.get()));
  }

  private Optional<Double> length(TableRow row, Column column) {
    String text = row.text(column);
    if (Cells.isNone(text)) {
      return Optional.empty();
    }
    String unit = HeaderUnit.of(row.headerOf(column)).orElse("mm");
    Reading<Quantity> length = Lengths.read(text, unit);
    if (!length.isRead()) {
      problems.add(Cells.problem(row, column, length));
    }
    return length.value().map(Quantity::asDouble);
  }
}
