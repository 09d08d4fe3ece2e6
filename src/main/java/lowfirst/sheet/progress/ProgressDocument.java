package lowfirst.sheet.progress;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lowfirst.assembly.Batch;
import lowfirst.board.Unit;
import lowfirst.progress.Event;
import lowfirst.progress.HistoryLine;
import lowfirst.progress.Mark;
import lowfirst.progress.MeasuredReading;
import lowfirst.progress.Progress;
import lowfirst.progress.Spot;
import lowfirst.progress.SpotRecord;
import lowfirst.progress.State;
import lowfirst.progress.StepRecord;
import lowfirst.progress.Tally;
import lowfirst.progress.WorkingTime;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Cell;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Block.Table.Align;
import lowfirst.sheet.document.Block.Table.Column;
import lowfirst.sheet.document.Block.Table.Row;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.document.Tables;
import lowfirst.sheet.wording.Counted;
import lowfirst.sheet.wording.Sentence;
import lowfirst.sheet.wording.StepWording;

/** Where the work stands, where to go on, what was set aside. */
public final class ProgressDocument {
  private static final List<State> COUNTED =
      List.of(State.TO_DO, State.SEATED, State.SOLDERED, State.INSPECTED, State.SET_ASIDE);

  private final Progress progress;
  private final ZoneId zone;

  private ProgressDocument(Progress progress, ZoneId zone) {
    this.progress = progress;
    this.zone = zone;
  }

  /**
   * For people: where to go on, then the counts, then what was set aside.
   *
   * @param zone the time zone of the bench
   */
  public static Document of(String title, Progress progress, ZoneId zone) {
    var document = new ProgressDocument(progress, zone);
    var blocks = new ArrayList<Block>();
    blocks.add(new Block.Paragraph(document.whereNext()));
    blocks.add(document.facts());
    blocks.add(document.units());
    blocks.add(document.batches());
    document.kept("Set aside", progress.setAside()).ifPresent(blocks::add);
    document
        .kept("Recorded, but no longer in the plan", progress.noLongerPlanned())
        .ifPresent(blocks::add);
    return new Document("Progress of " + title, "", blocks);
  }

  /** For machines: a row for each part of each unit. */
  public static Document everyPart(String title, Progress progress, ZoneId zone) {
    var document = new ProgressDocument(progress, zone);
    Stream<Row> planned =
        progress.units().stream()
            .flatMap(unit -> progress.record(unit).stream())
            .flatMap(
                row -> row.spots().stream().map(spot -> document.partRow(Optional.of(row), spot)));
    Stream<Row> others =
        progress.noLongerPlanned().stream().map(spot -> document.partRow(Optional.empty(), spot));
    List<Column> columns =
        Stream.of(
                "unit",
                "step",
                "designator",
                "part type",
                "state",
                "who",
                "when",
                "measured",
                "reason",
                "fitted instead",
                "notes")
            .map(header -> new Column(header, Align.START, 1))
            .toList();
    return new Document(
        "Progress of " + title,
        "",
        List.of(new Table("every part", columns, Stream.concat(planned, others).toList())));
  }

  /**
   * What was just recorded or undone, and where that leads.
   *
   * @param reading what a meter reading that came with it says about the part
   */
  public static Document answer(
      String done,
      List<? extends Event> events,
      Optional<MeasuredReading> reading,
      Progress progress) {
    var blocks = new ArrayList<Block>();
    events.forEach(event -> blocks.add(new Block.Paragraph(ProgressWords.event(event))));
    reading
        .map(ProgressWords::verdict)
        .ifPresent(verdict -> blocks.add(new Block.Paragraph(verdict)));
    blocks.add(
        new Block.Paragraph(new ProgressDocument(progress, java.time.ZoneOffset.UTC).whereNext()));
    return new Document(done, "", blocks);
  }

  /** The life of some parts, oldest first; nothing that was undone is left out. */
  public static Document history(List<Spot> spots, Progress progress, ZoneId zone) {
    var document = new ProgressDocument(progress, zone);
    List<Block> tables =
        spots.stream()
            .<Block>map(
                spot ->
                    new Table(
                        "History of " + spot,
                        Stream.of("When", "Who", "What", "Counts")
                            .map(header -> new Column(header, Align.START, 1))
                            .toList(),
                        progress.log().history(spot).stream().map(document::historyRow).toList()))
            .toList();
    return new Document("History", "", tables);
  }

  private Row historyRow(HistoryLine line) {
    return Tables.row(
        ProgressWords.time(line.event().when(), zone),
        line.event().who(),
        ProgressWords.event(line.event()),
        line.standing() == HistoryLine.Standing.COUNTS ? "yes" : "undone");
  }

  private String whereNext() {
    return progress
        .next()
        .map(next -> Sentence.of(ProgressWords.next(next)))
        .orElse(
            progress.setAside().isEmpty()
                ? "Every part is inspected. Next come the first-power checks, on their sheet or on the bench page."
                : "Nothing is left but what was set aside.");
  }

  private Block facts() {
    Tally all = Tally.of(progress.units().stream().flatMap(this::spots).toList());
    return new Block.Facts(
        List.of(
            new Block.Facts.Fact(
                "Done",
                all.in(State.INSPECTED) + " of " + Counted.of(all.total(), "part") + " inspected"),
            new Block.Facts.Fact(
                "Working time",
                ProgressWords.duration(WorkingTime.of(progress.log().events()).time())
                    + " (gaps of up to "
                    + WorkingTime.PAUSE.toMinutes()
                    + " min between one person's entries)")));
  }

  private Stream<SpotRecord> spots(Unit unit) {
    return progress.record(unit).stream().flatMap(row -> row.spots().stream());
  }

  private Block units() {
    var columns = new ArrayList<Column>(List.of(new Column("Unit", Align.START, 2)));
    columns.addAll(countColumns());
    columns.add(new Column("Next", Align.START, 4));
    return new Table("Units", columns, progress.units().stream().map(this::unitRow).toList());
  }

  private Row unitRow(Unit unit) {
    var cells = new ArrayList<Cell>(List.of(Cell.of(unit.serial())));
    cells.addAll(counts(progress.tally(unit)));
    cells.add(
        Cell.of(
            progress
                .next(unit::equals)
                .map(
                    next ->
                        ProgressWords.verb(next.state())
                            + " step "
                            + next.step().number()
                            + ", "
                            + StepWording.shortName(next.step().partType()))
                .orElse("nothing left")));
    return new Row(cells);
  }

  private Block batches() {
    var columns =
        new ArrayList<Column>(
            List.of(
                new Column("Batch", Align.END, 1),
                new Column("Board", Align.START, 2),
                new Column("Steps", Align.START, 1)));
    columns.addAll(countColumns());
    return new Table(
        "Batches", columns, progress.plan().batches().stream().map(this::batchRow).toList());
  }

  private Row batchRow(Batch batch) {
    int first = batch.steps().get(0).number();
    int last = batch.steps().get(batch.steps().size() - 1).number();
    var cells =
        new ArrayList<Cell>(
            List.of(
                Cell.of(Integer.toString(batch.number())),
                Cell.of(batch.board()),
                Cell.of(first == last ? Integer.toString(first) : first + "–" + last)));
    cells.addAll(counts(progress.tally(batch)));
    return new Row(cells);
  }

  private static List<Column> countColumns() {
    return COUNTED.stream()
        .map(state -> new Column(Sentence.begun(state.words()), Align.END, 1))
        .toList();
  }

  private static List<Cell> counts(Tally tally) {
    return COUNTED.stream().map(state -> Cell.of(Integer.toString(tally.in(state)))).toList();
  }

  /** A table of single parts; none when there are none. */
  private Optional<Block> kept(String caption, List<SpotRecord> spots) {
    List<Column> columns =
        Stream.of("Part", "Unit", "State", "Why", "Who", "When")
            .map(header -> new Column(header, Align.START, header.equals("Why") ? 3 : 1))
            .toList();
    return spots.isEmpty()
        ? Optional.empty()
        : Optional.of(new Table(caption, columns, spots.stream().map(this::keptRow).toList()));
  }

  private Row keptRow(SpotRecord record) {
    Optional<Mark> mark = record.mark(record.state());
    return new Row(
        List.of(
            Cell.of(record.spot().designator().text()),
            Cell.of(record.spot().unit().serial()),
            Cell.of(record.state().words()),
            Cell.of(mark.flatMap(Mark::reason).orElse("no reason given")),
            Cell.of(mark.map(Mark::who).orElse("")),
            Cell.of(mark.map(done -> ProgressWords.time(done.when(), zone)).orElse(""))));
  }

  private Row partRow(Optional<StepRecord> step, SpotRecord record) {
    Optional<Mark> mark = record.mark(record.state());
    return Tables.row(
        record.spot().unit().serial(),
        step.map(row -> Integer.toString(row.step().number())).orElse(""),
        record.spot().designator().text(),
        step.map(row -> StepWording.shortName(row.step().partType())).orElse(""),
        record.state().words(),
        mark.map(Mark::who).orElse(""),
        mark.map(done -> done.when().toString()).orElse(""),
        record.measured().orElse(""),
        mark.flatMap(Mark::reason).orElse(""),
        record.substitution().map(Event.Substitution::fitted).orElse(""),
        String.join("; ", record.notes().stream().map(Event.Note::text).toList()));
  }
}
