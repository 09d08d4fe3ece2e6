package lowfirst.sheet.progress;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lowfirst.board.Board;
import lowfirst.board.Kit;
import lowfirst.board.Unit;
import lowfirst.channel.LoadFindings;
import lowfirst.progress.Event;
import lowfirst.progress.Mark;
import lowfirst.progress.Progress;
import lowfirst.progress.State;
import lowfirst.progress.StepRecord;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Cell;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.document.Tables;
import lowfirst.sheet.power.FirstPowerChecks;
import lowfirst.sheet.power.PowerCheck;
import lowfirst.sheet.wording.Counted;
import lowfirst.sheet.wording.DesignatorWords;
import lowfirst.sheet.wording.StepWording;

/**
 * The record of one unit: every step, what differs from the plan, inspection, first power, names.
 */
public record SignOffDocument(
    Kit kit,
    Board board,
    Unit unit,
    LoadFindings findings,
    Progress progress,
    ZoneId zone,
    StepAddress address) {
  private static final double CODE_MILLIMETRES = 11;

  /**
   * The record of one unit; what was ticked already comes out filled in.
   *
   * @param findings what was worked out of each channel
   * @param zone the time zone of the bench
   * @param address what the code beside each step leads to
   */
  public static Document of(
      Kit kit,
      Board board,
      Unit unit,
      LoadFindings findings,
      Progress progress,
      ZoneId zone,
      StepAddress address) {
    var document = new SignOffDocument(kit, board, unit, findings, progress, zone, address);
    var blocks = new ArrayList<Block>();
    blocks.add(document.facts());
    blocks.add(new Block.Heading(2, "Steps"));
    blocks.add(document.steps());
    blocks.add(new Block.Heading(2, "Different from the plan"));
    blocks.addAll(PlanDifferences.of(kit, board, progress.record(unit), zone));
    blocks.add(new Block.Heading(2, "Inspection"));
    blocks.addAll(document.inspection());
    blocks.add(new Block.Heading(2, "First power"));
    blocks.add(document.firstPower());
    blocks.add(new Block.Heading(2, "Signatures"));
    blocks.addAll(document.signatures());
    return new Document("Sign-off record: " + unit.serial(), kit.settings().title(), blocks);
  }

  private Block facts() {
    int parts = progress.record(unit).stream().mapToInt(row -> row.spots().size()).sum();
    return new Block.Facts(
        List.of(
            new Block.Facts.Fact("Kit", kit.settings().title()),
            new Block.Facts.Fact("Board", board.name()),
            new Block.Facts.Fact(
                "Unit", unit.serial() + " (" + unit.number() + " of " + board.count() + ")"),
            new Block.Facts.Fact(
                "Work",
                Counted.of(progress.record(unit).size(), "step")
                    + ", "
                    + Counted.of(parts, "part")),
            new Block.Facts.Fact(
                "Input fingerprint", "SHA-256 of the kit's tables: " + kit.fingerprint())));
  }

  private Block steps() {
    List<StepRecord> records = progress.record(unit);
    return new Table(
        "",
        List.of(
            Tables.number("Step"),
            Tables.words("Part", 3),
            Tables.words("Where", 3),
            Tables.boxes("Seated"),
            Tables.boxes("Soldered"),
            Tables.boxes("Inspected"),
            Tables.words("Who", 1.5),
            Tables.words("When", 2),
            Tables.words("Reading", 1.5),
            Tables.words("Scan", 0.1)),
        records.stream().map(this::stepRow).toList());
  }

  private Table.Row stepRow(StepRecord record) {
    Optional<Mark> last =
        Stream.of(State.INSPECTED, State.SOLDERED, State.SEATED)
            .flatMap(state -> record.completed(state).stream())
            .findFirst();
    String who = last.map(mark -> String.join(", ", record.people(mark.state()))).orElse("");
    return Tables.row(
        Cell.of("" + record.step().number()),
        Cell.of(StepWording.shortName(record.step().partType())),
        Cell.of(DesignatorWords.sorted(record.step().designators()) + exceptions(record)),
        box(record, State.SEATED),
        box(record, State.SOLDERED),
        box(record, State.INSPECTED),
        Cell.field(who),
        Cell.field(last.map(mark -> ProgressWords.time(mark.when(), zone)).orElse("")),
        Cell.field(String.join("; ", record.measured())),
        Cell.of("", StepCode.of(address.of(record.step().number(), unit), CODE_MILLIMETRES)));
  }

  /** A box of a state; a plugged-in part is never soldered, so it has none for that. */
  private static Cell box(StepRecord record, State state) {
    boolean skipped =
        state == State.SOLDERED && record.step().stage() == lowfirst.assembly.Step.Stage.PLUG_IN;
    return skipped ? Cell.of("–") : Cell.box(record.completed(state).isPresent());
  }

  private static String exceptions(StepRecord record) {
    String aside =
        record.setAside().stream()
            .map(spot -> spot.spot().designator().text())
            .collect(Collectors.joining(", "));
    return aside.isEmpty() ? "" : "; set aside: " + aside;
  }

  private List<Block> inspection() {
    return List.of(
        new Block.Paragraph(
            "Choose a class of IPC-A-610 and tick it: 1 for general use, 2 where it must keep"
                + " working, 3 where failure is not allowed. The wording is ours; in doubt the"
                + " standard itself decides."),
        new Table(
            "Judged by",
            List.of(
                Tables.boxes("Class 1"),
                Tables.boxes("Class 2"),
                Tables.boxes("Class 3"),
                Tables.words("", 10)),
            List.of(Tables.row(Cell.box(false), Cell.box(false), Cell.box(false), Cell.of("")))),
        new Table(
            "",
            List.of(
                Tables.words("Look at", 2),
                Tables.words("Class 1", 3),
                Tables.words("Class 2", 3),
                Tables.words("Class 3", 3),
                Tables.boxes("Good"),
                Tables.words("Remark", 2)),
            Workmanship.CRITERIA.stream()
                .map(
                    criterion ->
                        Tables.row(
                            Cell.of(criterion.heading()),
                            Cell.of(criterion.firstClass()),
                            Cell.of(criterion.secondClass()),
                            Cell.of(criterion.thirdClass()),
                            Cell.box(false),
                            Cell.field("")))
                .toList()));
  }

  private Block firstPower() {
    Map<String, Event.PowerReading> readings = progress.powerReadings(unit);
    return new Table(
        "",
        List.of(
            Tables.words("Check", 2.5),
            Tables.words("Expect", 4),
            Tables.words("Reading", 2),
            Tables.boxes("Good"),
            Tables.words("Who", 1.5),
            Tables.words("When", 2)),
        FirstPowerChecks.of(kit, progress.plan(), unit, findings).stream()
            .map(check -> powerRow(check, Optional.ofNullable(readings.get(check.name()))))
            .toList());
  }

  private Table.Row powerRow(PowerCheck check, Optional<Event.PowerReading> reading) {
    boolean passed =
        reading.filter(made -> made.outcome() == Event.PowerReading.Outcome.PASSED).isPresent();
    String failed =
        reading
            .filter(made -> made.outcome() == Event.PowerReading.Outcome.FAILED)
            .map(made -> "FAILED ")
            .orElse("");
    return Tables.row(
        Cell.of(check.name()),
        Cell.of(check.expect()),
        Cell.field(failed + reading.flatMap(Event.PowerReading::measured).orElse("")),
        Cell.box(passed),
        Cell.field(reading.map(Event.PowerReading::who).orElse("")),
        Cell.field(reading.map(made -> ProgressWords.time(made.when(), zone)).orElse("")));
  }

  private List<Block> signatures() {
    return List.of(
        new Block.Paragraph(
            "A signature says: I did or looked at what is ticked above, and what is not ticked is"
                + " not claimed. This record doesn't replace inspection or measurement."),
        new Table(
            "",
            List.of(
                Tables.words("", 2),
                Tables.words("Name", 4),
                Tables.words("Date", 2),
                Tables.words("Signature", 5)),
            Stream.of("Built by", "Inspected by", "First power by", "Released by")
                .map(
                    role ->
                        Tables.row(
                            Cell.of(role),
                            Cell.field(role.equals("Released by") ? kit.settings().signer() : ""),
                            Cell.field(""),
                            Cell.field("")))
                .toList()));
  }
}
