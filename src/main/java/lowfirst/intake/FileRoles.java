package lowfirst.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import lowfirst.intake.cell.SideWords;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.PlainNumber;
import lowfirst.intake.column.TableKind;
import lowfirst.intake.column.TableRow;
import lowfirst.intake.design.Design;
import lowfirst.intake.placement.AngleUnit;
import lowfirst.intake.table.PartLines;
import lowfirst.intake.table.Table;
import lowfirst.intake.text.PipeTable;
import lowfirst.intake.text.TextOfFile;
import lowfirst.intake.text.TickBoxes;
import lowfirst.intake.workbook.WebPage;

/** Tells which files of a folder are BOMs and which placement lists, by name and by content. */
final class FileRoles {
  private static final Set<String> KNOWN =
      Set.of(
          "boards",
          "datasheets",
          "rails",
          "supplies",
          "channels",
          "drivers",
          "loads",
          "bag",
          "swaps");
  private static final Set<String> TABLES =
      Set.of(
          "csv", "tsv", "txt", "tab", "pos", "xy", "xyr", "xyrs", "mnt", "mnb", "pnp", "cpl",
          "xlsx", "xlsm", "asc", "bom", "lst", "dat");
  private static final Set<String> FORMS =
      Set.of(
          "xls",
          "xlsb",
          "ods",
          "numbers",
          "html",
          "htm",
          "pdf",
          "json",
          "zip",
          "gz",
          "xml",
          "md",
          "markdown",
          "org");
  private static final Set<String> NOTES = Set.of("md", "markdown", "org");

  /** Some programs give a page the ending of a spreadsheet. */
  private static final Set<String> PAGES = Set.of("html", "htm", "xls");

  private static final Pattern BOM_NAME =
      Pattern.compile(
          "bom|bill|material|part|stueckliste|stückliste|nomenclat|components|lista|teileliste|distinta"
              + "|elenco|componentes|kusovnik|wykaz|清单|部品|спецификац|перечень");
  private static final Pattern PLACEMENT_NAME =
      Pattern.compile(
          "place|pos(ition)?s?([^a-z]|$)|pick|centroid|([^a-z]|^)(xy|cpl|pnp|mnt)([^a-z]|$)|coord");

  /** Share of rows that are turned so, from which a column of numbers holds angles. */
  private static final double MOSTLY = 0.6;

  private final KitFiles files;
  private final TablesTried tables;

  FileRoles(KitFiles files, TablesTried tables) {
    this.files = files;
    this.tables = tables;
  }

  /** What a folder holds; {@code folder} ends in a slash, or is empty for the kit itself. */
  record Found(List<String> boms, List<String> placements, List<String> designs) {
    boolean isEmpty() {
      return boms.isEmpty() && placements.isEmpty() && designs.isEmpty();
    }
  }

  /** The tables of one folder. */
  Found in(String folder) {
    var boms = new ArrayList<String>();
    var placements = new ArrayList<String>();
    for (String path : files.contents().keySet()) {
      if (isTableIn(folder, path)) {
        kind(path).ifPresent(kind -> (kind == TableKind.BOM ? boms : placements).add(path));
      }
    }
    if (boms.isEmpty()) {
      placements.stream().filter(this::isBomToo).forEach(boms::add);
    } else if (placements.isEmpty()) {
      boms.stream().filter(this::isHeadedAsPlacements).forEach(placements::add);
    }
    List<String> designs =
        files.contents().keySet().stream()
            .filter(path -> isDirectlyIn(folder, path) && isDesign(path))
            .toList();
    return new Found(preferred(boms, "bom"), preferred(placements, "placements"), designs);
  }

  /** Whether a file is a board in IPC-2581, by its content. */
  boolean isDesign(String path) {
    String name = path.toLowerCase(Locale.ROOT);
    return (name.endsWith(".xml") || name.endsWith(".cvg"))
        && files.file(path).filter(Design::isOne).isPresent();
  }

  /** Files that are named like tables of parts, in forms that are not read. */
  List<String> unreadForms() {
    return files.contents().keySet().stream()
        .filter(path -> path.indexOf('/') == path.lastIndexOf('/'))
        .filter(
            path ->
                FORMS.contains(path.substring(path.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT)))
        .filter(path -> isNamed(path.substring(path.lastIndexOf('/') + 1).toLowerCase(Locale.ROOT)))
        .toList();
  }

  /** Tables that are none of the kit's own, and may be anything. */
  List<String> unknownTables() {
    return files.contents().keySet().stream()
        .filter(path -> path.indexOf('/') == path.lastIndexOf('/'))
        .filter(path -> isTableIn(path.substring(0, path.lastIndexOf('/') + 1), path))
        .toList();
  }

  /** Whether a file holds notes with marks for how words look. */
  static boolean isNotes(String path) {
    return NOTES.contains(path.substring(path.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT));
  }

  private static boolean isNamed(String name) {
    return BOM_NAME.matcher(name).find() || PLACEMENT_NAME.matcher(name).find();
  }

  private static boolean isDirectlyIn(String folder, String path) {
    return path.startsWith(folder) && path.indexOf('/', folder.length()) < 0;
  }

  private boolean isTableIn(String folder, String path) {
    if (!isDirectlyIn(folder, path)) {
      return false;
    }
    String name = path.substring(folder.length()).toLowerCase(Locale.ROOT);
    int dot = name.lastIndexOf('.');
    String ending = name.substring(dot + 1);
    boolean table =
        dot > 0
            && (TABLES.contains(ending)
                || (isNamed(name) && NOTES.contains(ending) && holdsList(path))
                || (isNamed(name) && PAGES.contains(ending) && isPage(path)));
    return table && !(folder.isEmpty() && KNOWN.contains(name.substring(0, dot)));
  }

  /** Notes are read only where their name says that they list parts, and a list stands there. */
  private boolean holdsList(String path) {
    String text = text(path);
    return WebPage.isOne(text)
        || PipeTable.isIn(text)
        || PartLines.in(TickBoxes.dropped(text)).isPresent();
  }

  private boolean isPage(String path) {
    return WebPage.isOne(text(path));
  }

  private String text(String path) {
    return TextOfFile.of(path, files.file(path).orElse(new byte[0])).text();
  }

  /** A table with coordinates is a placement list whatever it is called. */
  private Optional<TableKind> kind(String path) {
    String name = path.substring(path.lastIndexOf('/') + 1).toLowerCase(Locale.ROOT);
    if (name.startsWith("bom.")) {
      return Optional.of(TableKind.BOM);
    }
    if (name.startsWith("placements.")) {
      return Optional.of(TableKind.PLACEMENTS);
    }
    Table places = tables.look(TableKind.PLACEMENTS, path);
    Header placed = places.header();
    if (placed.isHeaded(TableKind.PLACEMENTS) && !placed.isByCells(Column.X)) {
      return Optional.of(TableKind.PLACEMENTS);
    }
    Header listed = header(TableKind.BOM, path);
    // Numbers of items and prices only look like x and y.
    if (placed.isHeaded(TableKind.PLACEMENTS) && !counts(listed)) {
      return Optional.of(TableKind.PLACEMENTS);
    }
    boolean placeless = listed.isHeaded(TableKind.BOM) && !placed.isComplete(TableKind.PLACEMENTS);
    if (PLACEMENT_NAME.matcher(name).find() && !placeless) {
      return Optional.of(TableKind.PLACEMENTS);
    }
    if (listed.isHeaded(TableKind.BOM) || BOM_NAME.matcher(name).find()) {
      return Optional.of(TableKind.BOM);
    }
    // Any two columns of numbers may look like x and y.
    return isFound(TableKind.PLACEMENTS, placed)
        ? Optional.of(TableKind.PLACEMENTS)
        : isFound(TableKind.BOM, listed)
            ? Optional.of(TableKind.BOM)
            : Optional.of(TableKind.PLACEMENTS)
                .filter(placements -> areTurned(places) || isOfOneSide(name, placed));
  }

  /** Whether rows without a header name parts with two numbers, and the file a side: bottom.txt. */
  private static boolean isOfOneSide(String name, Header placed) {
    return placed.isComplete(TableKind.PLACEMENTS)
        && placed.index() < 0
        && SideWords.inFileName(name).isPresent();
  }

  /** Whether rows without a header name parts, with two numbers and a turn by eighths of each. */
  private static boolean areTurned(Table table) {
    Header header = table.header();
    boolean told = header.isComplete(TableKind.PLACEMENTS) && header.index() < 0;
    return told
        && header.cellOf(Column.ROTATION) >= 0
        && table.rows().stream().anyMatch(row -> turn(row) != 0)
        && table.rows().stream().filter(row -> AngleUnit.isEighth(turn(row))).count()
            > table.rows().size() * MOSTLY;
  }

  /** The angle of a row in degrees, NaN where it has none. */
  private static double turn(TableRow row) {
    return PlainNumber.orNan(row.text(Column.ROTATION));
  }

  /** One table, or two sheets of a file, may tell both: then the quantity stands there, too. */
  private boolean isBomToo(String path) {
    return counts(header(TableKind.BOM, path));
  }

  /** Whether a header says how many there are of each part: a placement list has one a row. */
  private static boolean counts(Header listed) {
    return listed.isHeaded(TableKind.BOM)
        && listed.cellOf(Column.QUANTITY) >= 0
        && !listed.isByCells(Column.QUANTITY);
  }

  /** In a BOM, columns of numbers that only look like x and y count or number its rows. */
  private boolean isHeadedAsPlacements(String path) {
    Header placed = header(TableKind.PLACEMENTS, path);
    return placed.isHeaded(TableKind.PLACEMENTS) && !placed.isByCells(Column.X);
  }

  private Header header(TableKind kind, String path) {
    return tables.look(kind, path).header();
  }

  private static boolean isFound(TableKind kind, Header header) {
    return header.isComplete(kind) && header.index() >= 0;
  }

  /** A file with just the expected name stands for itself beside others that only resemble it. */
  private static List<String> preferred(List<String> paths, String name) {
    List<String> exact =
        paths.stream()
            .filter(path -> path.substring(path.lastIndexOf('/') + 1).startsWith(name + "."))
            .toList();
    return exact.isEmpty() || name.equals("placements") ? paths : exact;
  }
}
