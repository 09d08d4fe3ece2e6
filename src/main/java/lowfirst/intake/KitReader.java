package lowfirst.intake;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import lowfirst.board.Board;
import lowfirst.board.BodyFinder;
import lowfirst.board.Designator;
import lowfirst.board.Driver;
import lowfirst.board.Fingerprint;
import lowfirst.board.Item;
import lowfirst.board.Kit;
import lowfirst.board.Load;
import lowfirst.board.OutputChannel;
import lowfirst.board.Placement;
import lowfirst.board.Rail;
import lowfirst.intake.bom.BomReader;
import lowfirst.intake.check.KitChecks;
import lowfirst.intake.check.NamedCells;
import lowfirst.intake.column.ColumnMap;
import lowfirst.intake.column.TableKind;
import lowfirst.intake.design.Design;
import lowfirst.intake.kind.StatedKinds;
import lowfirst.intake.placement.BottomX;
import lowfirst.intake.placement.PlacementReader;
import lowfirst.intake.shipped.ShippedTables;
import lowfirst.intake.table.Table;
import lowfirst.intake.table.TableReader;
import lowfirst.intake.table.Understanding;
import lowfirst.part.Datasheets;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * Reads a kit: every table into the vocabularies, every fault with its place, the good part used.
 *
 * <p>Start reading here. {@link TableReader} makes rows with known columns of a file's bytes; the
 * readers of single tables make records of rows; {@link KitChecks} holds the tables against each
 * other.
 */
public final class KitReader {
  private final KitFiles files;
  private final ColumnMap map;
  private final TablesTried tables;
  private final List<Problem> problems = new ArrayList<>();
  private final Map<Designator, Place> notFitted = new HashMap<>();
  private final List<Understanding> understood = new ArrayList<>();
  private final NamedCells cells = new NamedCells();
  private StatedKinds kinds = new StatedKinds(Datasheets.none());

  private KitReader(KitFiles files, ColumnMap map) {
    this.files = files;
    this.map = map;
    this.tables = new TablesTried(files, map);
  }

  /** The kit that these files hold, its remembered column map included; never throws. */
  public static KitReading read(KitFiles files) {
    return read(files, ColumnMap.empty());
  }

  /** The same with a column map that wins over the remembered one. */
  public static KitReading read(KitFiles files, ColumnMap stronger) {
    var problems = new ArrayList<Problem>(files.problems());
    Entries entries = Entries.of(files, ColumnMap.FILE, problems);
    var remembered = new ColumnMap(entries.texts());
    problems.addAll(entries.placed(remembered.problems(ColumnMap.FILE)));
    problems.addAll(stronger.problems("--column"));
    var reader = new KitReader(files, remembered.with(stronger));
    reader.problems.addAll(problems);
    return reader.read();
  }

  /** Tables in which a number that nobody reads may be what decides. */
  private static final Set<TableKind> ELECTRICAL =
      EnumSet.of(
          TableKind.RAILS,
          TableKind.SUPPLIES,
          TableKind.DRIVERS,
          TableKind.CHANNELS,
          TableKind.LOADS);

  private KitReading read() {
    Entries settings = Entries.of(files, "kit.properties", problems);
    Datasheets own = Datasheets.of(rows(TableKind.DATASHEETS, PartTables::datasheets));
    kinds = new StatedKinds(own);
    List<Board> boards = boards();
    List<Rail> rails = rows(TableKind.RAILS, SupplyTables::rails);
    ListedNames railNames = ListedNames.of(rails, Rail::name);
    List<Driver> drivers = rows(TableKind.DRIVERS, railNames, SupplyTables::drivers);
    List<Load> loads = rows(TableKind.LOADS, railNames, SupplyTables::loads);
    ListedNames boardNames = ListedNames.of(boards, Board::name);
    var kit =
        new Kit(
            SettingsReader.settings(files.name(), settings, problems),
            boards,
            own.over(ShippedTables::catalogue),
            rails,
            rows(TableKind.SUPPLIES, railNames, SupplyTables::supplies),
            channels(boardNames, drivers, loads),
            drivers,
            loads,
            rows(TableKind.BAG, PartTables::bag),
            rows(TableKind.SWAPS, boardNames, PartTables::swaps),
            rejected(problems),
            // Last, when every table that counts has been read.
            fingerprint(files, tablesRead()));
    problems.addAll(KitChecks.of(kit, cells));
    return new KitReading(kit, problems, () -> KitChecks.doubts(kit), understood);
  }

  private List<OutputChannel> channels(ListedNames boards, List<Driver> drivers, List<Load> loads) {
    var names =
        new ChannelTable.Names(
            boards, ListedNames.of(drivers, Driver::name), ListedNames.of(loads, Load::name));
    return rows(TableKind.CHANNELS, (table, found) -> ChannelTable.channels(table, names, found));
  }

  /** The cells that were left out, as read so far. */
  private static List<Place> rejected(List<Problem> problems) {
    return problems.stream()
        .filter(problem -> problem.kind().isOfOneCell())
        .map(Problem::place)
        .filter(place -> place.line() > 0)
        .toList();
  }

  private static Fingerprint fingerprint(KitFiles files, Set<String> tables) {
    return Fingerprint.of(() -> TablesDigest.of(files, tables));
  }

  private Set<String> tablesRead() {
    var read = new HashSet<>(Set.of("kit.properties", ColumnMap.FILE));
    understood.forEach(table -> read.add(table.file()));
    return read;
  }

  /** The records of a table that the kit's author writes, which a kit may lack. */
  private <T> List<T> rows(TableKind kind, BiFunction<Table, List<Problem>, List<T>> reader) {
    return table(kind).map(table -> reader.apply(table, problems)).orElse(List.of());
  }

  private <T> List<T> rows(TableKind kind, ListedNames names, NamingReader<T> reader) {
    return rows(kind, (table, found) -> reader.read(table, names, found));
  }

  /** Reads a table of which a column holds names that another table lists. */
  private interface NamingReader<T> {
    List<T> read(Table table, ListedNames names, List<Problem> problems);
  }

  private Optional<Table> table(TableKind kind) {
    return List.of(".csv", ".tsv", ".txt", ".xlsx").stream()
        .map(ending -> kind.key() + ending)
        .filter(path -> files.file(path).isPresent())
        .findFirst()
        .map(path -> table(kind, path));
  }

  private Table table(TableKind kind, String path) {
    Table table = tables.take(kind, path);
    problems.addAll(table.problems());
    if (!kind.isExported()) {
      cells.add(table);
    }
    if (ELECTRICAL.contains(kind)) {
      problems.addAll(table.understanding().notUsed());
    }
    if (kind != TableKind.PLACEMENTS) {
      understood.add(table.understanding());
    }
    return table;
  }

  private List<Board> boards() {
    KitLayout.Boards layout = KitLayout.of(files, table(TableKind.BOARDS), tables);
    problems.addAll(layout.problems());
    return layout.boards().stream().map(this::board).toList();
  }

  private Board board(BoardFiles board) {
    Optional<Design> design = board.design().map(this::design);
    halfMissing(board, design);
    design.ifPresent(known -> notUsed(board, known));
    List<Placement> placements =
        board.placements().isEmpty() && design.isPresent()
            ? design.get().placements()
            : placements(board);
    List<Item> items =
        board.boms().isEmpty() && design.isPresent()
            ? new ArrayList<>(design.get().items())
            : items(board, placements);
    items.replaceAll(kinds::of);
    ListedNotFitted.said(notFitted, items).ifPresent(problems::add);
    BodyFinder outlines = new OutlinesFound();
    BodyFinder bodies = design.map(known -> known.over(outlines)).orElse(outlines);
    Optional<Board.Size> size =
        board.size().or(() -> design.flatMap(known -> size(known, board, placements)));
    List<Placement> lying =
        board.placements().isEmpty() ? placements : PinPoints.lying(placements, items);
    Board read = new Board(board.name(), board.count(), size, items, lying, bodies);
    boolean tells = design.isEmpty() || items.isEmpty();
    List<Item> told = tells ? UnlistedParts.told(read, notFitted.keySet()) : List.of();
    notFitted.clear();
    if (!board.placements().isEmpty()) {
      PinPoints.said(read).ifPresent(problems::add);
    }
    if (told.isEmpty()) {
      return read;
    }
    UnlistedParts.said(told).ifPresent(problems::add);
    UnlistedParts.saidOptional(told).ifPresent(problems::add);
    told.forEach(item -> items.add(kinds.of(item)));
    return new Board(board.name(), board.count(), size, items, lying, bodies);
  }

  private Design design(String path) {
    Design design = Design.read(path, files.file(path).orElseThrow(), map);
    problems.addAll(design.problems());
    understood.addAll(design.understood());
    return design;
  }

  /** A list with an origin of its own can't be held against the profile. */
  private static Optional<Board.Size> size(
      Design design, BoardFiles board, List<Placement> placements) {
    return board.placements().isEmpty() || design.hasOriginOf(placements)
        ? design.size()
        : Optional.empty();
  }

  /** The kit's own tables count, since their owner can mend them; the rest is filled in. */
  private void notUsed(BoardFiles board, Design design) {
    var instead = new ArrayList<String>();
    if (!board.boms().isEmpty() && !design.items().isEmpty()) {
      instead.add(board.boms().get(0) + " counts for what to fit");
    }
    if (!board.placements().isEmpty() && !design.placements().isEmpty()) {
      instead.add(String.join(", ", board.placements()) + " for the positions");
    }
    if (!instead.isEmpty()) {
      problems.add(
          new Problem(
              Kind.TABLE_NOT_USED,
              Place.ofFile(board.design().orElseThrow()),
              String.join(" and ", instead)
                  + ", not this file, which only fills in outlines and heights",
              "remove the tables if the file should count"));
    }
  }

  private List<Item> items(BoardFiles board, List<Placement> placements) {
    var items = new ArrayList<Item>();
    for (String path : board.boms()) {
      Table table = table(TableKind.BOM, path);
      // What there is to buy is told without designators, too.
      if (table.isUnderstood() || !table.rows().isEmpty()) {
        BomReader.Items read = BomReader.in(table, placements);
        items.addAll(read.items());
        problems.addAll(read.problems());
        noRows(table, items.isEmpty());
      }
    }
    return items;
  }

  private List<Placement> placements(BoardFiles board) {
    var placements = new ArrayList<Placement>();
    Table last = null;
    for (String path : board.placements()) {
      Table table = table(TableKind.PLACEMENTS, path);
      if (table.isUnderstood()) {
        PlacementReader.Placements read = PlacementReader.in(table, map);
        placements.addAll(read.placements());
        problems.addAll(read.problems());
        understood.add(read.understanding());
        notFitted.putAll(read.notFitted());
        last = table;
      } else {
        understood.add(table.understanding());
      }
    }
    if (last != null) {
      BottomX both = BottomX.across(map, last.file(), placements);
      problems.addAll(both.problems());
      placements = new ArrayList<>(both.placements());
    }
    Optional<Panel> panel = Panel.of(placements);
    panel.map(Panel::said).ifPresent(problems::add);
    placements = panel.map(one -> new ArrayList<>(one.one())).orElse(placements);
    if (last != null) {
      noRows(last, placements.isEmpty() && last.rows().isEmpty());
    }
    return placements;
  }

  /** A board of which only one of the two tables is there still works, as far as it goes. */
  private void halfMissing(BoardFiles board, Optional<Design> design) {
    boolean bom = !board.boms().isEmpty() || design.filter(d -> !d.items().isEmpty()).isPresent();
    boolean placed =
        !board.placements().isEmpty() || design.filter(d -> !d.placements().isEmpty()).isPresent();
    if (!bom && placed) {
      missing(
          board.design().orElseGet(() -> board.placements().get(0)),
          "there is no BOM beside this placement list, so nobody knows what to buy",
          "put the board's BOM beside it as bom.csv");
    } else if (bom && !placed) {
      missing(
          board.boms().stream().findFirst().or(board::design).orElseThrow(),
          "there is no placement list beside this BOM, so nobody knows where the parts go",
          "export one and put it beside it as placements.csv");
    } else if (!bom && design.isPresent() && design.get().bodies().isPresent()) {
      missing(
          board.design().orElseThrow(),
          "the file has neither a bill of materials nor components",
          "export the board with its parts, for assembly and not for the bare board");
    }
  }

  private void missing(String file, String message, String remedy) {
    problems.add(new Problem(Kind.TABLE_MISSING, Place.ofFile(file), message, remedy));
  }

  private void noRows(Table table, boolean empty) {
    if (empty) {
      problems.add(
          new Problem(
              Kind.NO_ROWS,
              Place.ofFile(table.file()),
              "the table has a header and no rows",
              "export it again, or delete it"));
    }
  }
}
