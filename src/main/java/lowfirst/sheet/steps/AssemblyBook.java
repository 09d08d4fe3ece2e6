package lowfirst.sheet.steps;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lowfirst.assembly.Batch;
import lowfirst.assembly.Step;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Kit;
import lowfirst.board.Unit;
import lowfirst.part.BodyOutline;
import lowfirst.progress.Progress;
import lowfirst.progress.State;
import lowfirst.progress.StepRecord;
import lowfirst.sheet.body.PartPicture;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Cell;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.document.Tables;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.map.BoardMaps;
import lowfirst.sheet.wording.DesignatorWords;
import lowfirst.sheet.wording.OrientationWords;
import lowfirst.sheet.wording.ReadingWords;
import lowfirst.sheet.wording.Sentence;
import lowfirst.sheet.wording.StepWording;
import lowfirst.sorting.Meter;
import lowfirst.sorting.MeterLimits;

/**
 * One board from bare to full, batch by batch: the map with this batch's places, what to pick and
 * to read, boxes to tick, when to flip, and what the solder side looks like then.
 */
public final class AssemblyBook {
  /** With more units than this, the rows stand for all of them; each has its own record anyway. */
  private static final int MOST_UNITS_APART = 4;

  /** Width of the solder side's picture beside the map, at most. */
  private static final double BESIDE_MILLIMETRES = 75;

  /** Its width beside the words about the flip, where it may cost height. */
  private static final double BELOW_MILLIMETRES = 40;

  /** Narrower than this, the solder side's picture shows nothing. */
  private static final double LEAST_THUMBNAIL_MILLIMETRES = 36;

  private static final double GAP_MILLIMETRES = 5;

  private final Kit kit;
  private final Board board;
  private final Progress progress;
  private final double widthMillimetres;
  private final Meter meter;
  private final List<Block> blocks = new ArrayList<>();
  private final BoardMaps maps;
  private final List<BoardMaps.Layer> seatedBefore = new ArrayList<>();

  private AssemblyBook(Kit kit, Board board, Progress progress, double widthMillimetres) {
    this.kit = kit;
    this.board = board;
    this.progress = progress;
    this.widthMillimetres = widthMillimetres;
    this.meter = Meter.of(kit.settings());
    this.maps = BoardMaps.of(board);
  }

  /**
   * The book of one board; what was ticked already comes out filled in.
   *
   * @param widthMillimetres of the paper between its margins: maps stand side by side where they
   *     fit
   */
  public static Document of(Kit kit, Board board, Progress progress, double widthMillimetres) {
    var book = new AssemblyBook(kit, board, progress, widthMillimetres);
    List<Batch> batches =
        progress.plan().batches().stream()
            .filter(batch -> batch.board().equals(board.name()))
            .toList();
    book.opening(batches);
    BatchSection.of(batches).forEach(book::section);
    return new Document("Assembly book: " + board.name(), book.subtitle(), book.blocks);
  }

  private String subtitle() {
    return kit.settings().title()
        + (board.count() == 1 ? " · one unit" : " · " + board.count() + " units side by side");
  }

  private void opening(List<Batch> batches) {
    int parts = batches.stream().mapToInt(Batch::partsPerUnit).sum();
    long flips = batches.stream().filter(batch -> !batch.isPluggedIn()).count();
    blocks.add(
        new Block.Facts(
            List.of(
                new Block.Facts.Fact("Parts", parts + " on each board"),
                new Block.Facts.Fact("Batches", batches.size() + ", lowest first"),
                new Block.Facts.Fact("Flips", flips + ", one after each batch that is soldered"),
                new Block.Facts.Fact("Meter", "±(" + meter.ohms() + "), " + meter.ohmsSource()),
                new Block.Facts.Fact("Input fingerprint", kit.fingerprint().hexadecimal()))));
    blocks.add(new Block.Caution(StepsDocument.BENCH));
    blocks.add(new Block.Caution(StepsDocument.LEAD_ENDS));
    blocks.add(
        new Block.Paragraph(
            "On the maps, dark and numbered places belong to the batch at hand, each under the"
                + " number of its step; grey ones are filled already; ± marks a part with one right"
                + " way round. The black corner is the same corner of the board on every map."
                + " Printed at 100 %, the bar under a map is as long as it says: hold a ruler to it"
                + " once. The solder side, as seen after the flip, stands small beside or below it:"
                + " left and right exchanged, dots are leads. Bodies are drawn around the points of"
                + " the placement list, unturned ones lengthwise from left to right: where a list"
                + " means pin 1 or turns otherwise, the names printed on the board count."));
    for (var problem : progress.plan().problems()) {
      blocks.add(new Block.Caution(problem.message() + "; " + problem.remedy() + "."));
    }
    blocks.add(overview(batches));
  }

  private Table overview(List<Batch> batches) {
    return new Table(
        "Batches",
        List.of(
            Tables.words("Batch", 4),
            Tables.words("Steps", 1),
            Tables.words("What", 6),
            Tables.boxes("Done")),
        batches.stream().map(this::overviewRow).toList());
  }

  private Table.Row overviewRow(Batch batch) {
    int first = batch.steps().get(0).number();
    int last = batch.steps().get(batch.steps().size() - 1).number();
    Set<String> kinds = new LinkedHashSet<>();
    batch.steps().forEach(step -> kinds.add(step.partType().kind().words()));
    boolean done = progress.tally(batch).in(State.INSPECTED) == progress.tally(batch).total();
    return Tables.row(
        Cell.of(StepWording.batchTitle(batch)),
        Cell.of(first == last ? "" + first : first + " to " + last),
        Cell.of(String.join(", ", kinds)),
        Cell.box(done));
  }

  private void section(BatchSection section) {
    Batch batch = section.whole();
    blocks.add(new Block.Section());
    blocks.add(new Block.Heading(2, section.title()));
    if (batch.isPluggedIn()) {
      blocks.add(new Block.Paragraph(StepsDocument.RAIL_CHECK));
    }
    cautions(batch).forEach(text -> blocks.add(new Block.Caution(text)));
    if (!board.placements().isEmpty()) {
      blocks.add(maps(batch));
    }
    blocks.add(steps(batch));
    if (!batch.isPluggedIn()) {
      flip(section, batch);
    }
    seatedBefore.add(maps.layer(batch.steps().stream().flatMap(s -> s.spots().stream()).toList()));
  }

  private static Set<String> cautions(Batch batch) {
    Set<String> cautions = new LinkedHashSet<>();
    for (Step step : batch.steps()) {
      StepWording.caution(step)
          .ifPresent(
              text -> cautions.add(Sentence.begun(step.partType().kind().words()) + ": " + text));
    }
    return cautions;
  }

  /** The places of a batch, each under the number of its step. */
  static Map<Designator, String> lit(Batch batch) {
    Map<Designator, String> lit = new LinkedHashMap<>();
    for (Step step : batch.steps()) {
      step.spots().forEach(place -> lit.putIfAbsent(place, "" + step.number()));
    }
    return lit;
  }

  private Drawing map(Batch batch) {
    return maps.map(lit(batch), seatedBefore, batch.steps().get(0).side());
  }

  /** The batch's map, and the solder side beside it where the paper is wide enough. */
  private Block.Figure maps(Batch batch) {
    Drawing map = map(batch);
    double room = roomBeside(map);
    return !batch.isPluggedIn() && room >= LEAST_THUMBNAIL_MILLIMETRES
        ? new Block.Figure(
            map.beside(solderSide(batch, Math.min(BESIDE_MILLIMETRES, room)), GAP_MILLIMETRES), "")
        : new Block.Figure(map, "");
  }

  private double roomBeside(Drawing map) {
    return widthMillimetres - map.widthMillimetres() - GAP_MILLIMETRES;
  }

  private Drawing solderSide(Batch batch, double mostMillimetres) {
    Drawing map = maps.wordless(lit(batch), seatedBefore, batch.steps().get(0).side().opposite());
    return map.scaled(Math.min(1, mostMillimetres / map.widthMillimetres()));
  }

  private void flip(BatchSection section, Batch batch) {
    boolean shownHere =
        !board.placements().isEmpty() && roomBeside(map(batch)) < LEAST_THUMBNAIL_MILLIMETRES;
    blocks.add(
        new Block.Facts(
            List.of(new Block.Facts.Fact(section.flipTitle(), section.flip(board.count()))),
            shownHere ? Optional.of(solderSide(batch, BELOW_MILLIMETRES)) : Optional.empty()));
  }

  /** Which columns a batch has besides those of every batch. */
  private record Further(boolean units, boolean readings) {}

  private Table steps(Batch batch) {
    var further =
        new Further(
            board.count() > 1 && board.count() <= MOST_UNITS_APART,
            batch.steps().stream().anyMatch(this::isMeasured));
    var columns =
        new ArrayList<>(
            List.of(
                Tables.number("Step"),
                Tables.words("Pick", 3.5),
                Tables.words("Where, which way round", 3.5)));
    if (further.units()) {
      columns.add(Tables.words("Unit", 0.01));
    }
    columns.addAll(
        List.of(Tables.boxes("Seated"), Tables.boxes("Soldered"), Tables.boxes("Inspected")));
    if (further.readings()) {
      columns.addAll(List.of(Tables.words("Accept", 1.6), Tables.words("Reading", 1)));
    }
    columns.add(Tables.words("Initials", 0.8));
    var rows = new ArrayList<Table.Row>();
    for (Step step : batch.steps()) {
      List<Unit> units = further.units() ? board.units() : board.units().subList(0, 1);
      for (Unit unit : units) {
        rows.add(row(step, unit, unit.equals(units.get(0)), further));
      }
    }
    return new Table("", columns, rows);
  }

  /** Whether there is a reading to accept, or one was taken. */
  private boolean isMeasured(Step step) {
    return !accept(step).isEmpty()
        || board.units().stream()
            .anyMatch(unit -> !progress.record(step, unit).measured().isEmpty());
  }

  private Table.Row row(Step step, Unit unit, boolean first, Further further) {
    StepRecord record = progress.record(step, unit);
    var cells = new ArrayList<Cell>();
    cells.add(Cell.of(first ? "" + step.number() : ""));
    cells.add(first ? pick(step) : Cell.of(""));
    cells.add(Cell.of(first ? where(step) : ""));
    if (further.units()) {
      cells.add(Cell.of("" + unit.number()));
    }
    for (State state : List.of(State.SEATED, State.SOLDERED, State.INSPECTED)) {
      boolean skipped = state == State.SOLDERED && step.stage() == Step.Stage.PLUG_IN;
      cells.add(skipped ? Cell.of("–") : Cell.box(record.completed(state).isPresent()));
    }
    if (further.readings()) {
      cells.add(Cell.of(first ? accept(step) : ""));
      cells.add(Cell.field(String.join("; ", record.measured())));
    }
    cells.add(Cell.field(String.join(", ", record.people(State.INSPECTED))));
    return new Table.Row(cells);
  }

  private Cell pick(Step step) {
    Optional<BodyOutline> outline = board.outlineOf(step.designators().get(0));
    return Cell.of(StepWording.pick(step), PartPicture.of(step.partType(), outline));
  }

  private String where(Step step) {
    boolean isOnTheMap = board.placements().isEmpty() || !step.placements().isEmpty();
    String places =
        DesignatorWords.list(step.designators())
            + (isOnTheMap ? "" : "\nnot in the placement list: find it by the print on the board");
    return OrientationWords.matters(step.partType())
        ? places + "\n" + StepWording.wayRound(step)
        : places;
  }

  /** What the meter may say of one loose part; outside it is the wrong part or out of tolerance. */
  private String accept(Step step) {
    return MeterLimits.of(step.partType(), meter).map(ReadingWords::outer).orElse("");
  }
}
