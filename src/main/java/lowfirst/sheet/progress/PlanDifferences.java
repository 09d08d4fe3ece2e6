package lowfirst.sheet.progress;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.board.Kit;
import lowfirst.board.Swap;
import lowfirst.progress.Event;
import lowfirst.progress.Mark;
import lowfirst.progress.SpotRecord;
import lowfirst.progress.State;
import lowfirst.progress.StepRecord;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Cell;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Tables;
import lowfirst.sheet.wording.DesignatorWords;
import lowfirst.sheet.wording.StepWording;

/** What of one unit differs from the plan: parts set aside, and parts swapped. */
record PlanDifferences(Kit kit, Board board, List<StepRecord> records, ZoneId zone) {
  private static final int BLANK_ROWS = 3;

  /** Two tables, each with blank rows for what people write in by hand. */
  static List<Block> of(Kit kit, Board board, List<StepRecord> records, ZoneId zone) {
    return new PlanDifferences(kit, board, records, zone).tables();
  }

  private List<Block> tables() {
    var blocks = new ArrayList<Block>();
    List<Table.Row> aside =
        records.stream()
            .flatMap(record -> record.setAside().stream())
            .map(this::asideRow)
            .collect(Collectors.toCollection(ArrayList::new));
    IntStream.range(0, BLANK_ROWS).forEach(row -> aside.add(blankRow(5)));
    blocks.add(
        new Table(
            "Set aside or reworked",
            List.of(
                Tables.words("Where", 2),
                Tables.words("What and why", 5),
                Tables.words("Who", 1.5),
                Tables.words("When", 1.5),
                Tables.words("Put right, how", 3)),
            aside));
    List<Table.Row> swaps = new ArrayList<>(swapRows());
    swaps.add(blankRow(5));
    blocks.add(
        new Table(
            "Swapped parts",
            List.of(
                Tables.words("Where", 2),
                Tables.words("Asked for", 3),
                Tables.words("Fitted", 3),
                Tables.words("Why", 4),
                Tables.words("Who, when", 2)),
            swaps));
    return blocks;
  }

  private Table.Row asideRow(SpotRecord spot) {
    Optional<Mark> mark = spot.mark(State.SET_ASIDE);
    return Tables.row(
        Cell.field(spot.spot().designator().text()),
        Cell.field("set aside: " + spot.reasonSetAside().orElse("no reason given")),
        Cell.field(mark.map(Mark::who).orElse("")),
        Cell.field(mark.map(m -> ProgressWords.time(m.when(), zone)).orElse("")),
        Cell.field(""));
  }

  private static Table.Row blankRow(int cells) {
    return new Table.Row(IntStream.range(0, cells).mapToObj(i -> Cell.field("")).toList());
  }

  private List<Table.Row> swapRows() {
    Stream<Table.Row> planned =
        kit.swaps().stream().filter(swap -> swap.isOn(board.name())).map(this::swapRow);
    Stream<Table.Row> done =
        records.stream()
            .flatMap(record -> record.spots().stream())
            .filter(spot -> spot.substitution().isPresent())
            .map(this::substitutionRow);
    return Stream.concat(planned, done).toList();
  }

  private Table.Row swapRow(Swap swap) {
    return Tables.row(
        Cell.field(DesignatorWords.sorted(swap.designators())),
        Cell.field(
            swap.asked().isEmpty()
                ? swap.designators().stream().findFirst().map(this::askedFor).orElse("")
                : swap.asked()),
        Cell.field(swap.fitted()),
        Cell.field(swap.reason()),
        Cell.field((swap.who() + " " + swap.date()).strip()));
  }

  private Table.Row substitutionRow(SpotRecord spot) {
    Event.Substitution fitted = spot.substitution().orElseThrow();
    return Tables.row(
        Cell.field(spot.spot().designator().text()),
        Cell.field(askedFor(spot.spot().designator())),
        Cell.field(fitted.fitted()),
        Cell.field(fitted.reason()),
        Cell.field((fitted.who() + " " + ProgressWords.time(fitted.when(), zone)).strip()));
  }

  private String askedFor(Designator designator) {
    return board.itemOf(designator).map(Item::partType).map(StepWording::shortName).orElse("");
  }
}
