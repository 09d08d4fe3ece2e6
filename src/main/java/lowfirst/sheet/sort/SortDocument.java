package lowfirst.sheet.sort;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import lowfirst.board.BagLine;
import lowfirst.marking.Colour;
import lowfirst.quantity.Dimension;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Cell;
import lowfirst.sheet.document.Block.Facts.Fact;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Block.Table.Align;
import lowfirst.sheet.document.Block.Table.Column;
import lowfirst.sheet.document.Block.Table.Row;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.document.Tables;
import lowfirst.sheet.wording.Counted;
import lowfirst.sheet.wording.StepWording;
import lowfirst.sorting.Compartment;
import lowfirst.sorting.LookAlike;
import lowfirst.sorting.SortLine;
import lowfirst.sorting.SortPlan;

/**
 * How to sort the bag: what to buy, each part type in turn, and what could be mistaken for what.
 */
public final class SortDocument {
  private static final String NO_BREAK = "\u00a0";

  private SortDocument() {}

  /** The whole sorting list. */
  public static Document of(SortPlan plan, String title) {
    var blocks = new ArrayList<Block>();
    blocks.add(facts(plan));
    blocks.add(
        new Block.Caution(
            "Empty a capacitor before you measure it; a charged one harms you and the meter."
                + " Touch bare metal that is earthed before you touch a MOSFET or an IC."));
    addMissing(plan, blocks);
    blocks.add(new Block.Heading(2, "Parts, one by one"));
    blocks.add(colours());
    blocks.add(SortTables.parts(plan));
    blocks.add(new Block.Heading(2, "Readings and places"));
    blocks.add(SortTables.readings(plan));
    addLookAlikes(plan, blocks);
    addUnknown(plan, blocks);
    addSpares(plan, blocks);
    return new Document("Sorting the bag: " + title, summary(plan), blocks);
  }

  /** Labels for the compartments of the tray, or for bags. */
  public static Document labels(SortPlan plan, String title) {
    List<Row> rows =
        plan.lines().stream()
            .map(
                line ->
                    new Row(
                        List.of(
                            Cell.of(String.valueOf(line.compartment().number())),
                            Cell.of(TrayLabel.name(line.compartment())),
                            SortTables.marking(line),
                            Cell.of(String.valueOf(line.compartment().quantity())),
                            Cell.of(SortTables.where(line.compartment())))))
            .toList();
    List<Column> columns =
        List.of(
            Tables.number("no."),
            new Column("part", Align.START, 4),
            new Column("marking", Align.START, 4),
            new Column("pieces", Align.END, 1),
            new Column("where", Align.START, 4));
    return new Document(
        "Tray labels: " + title,
        "cut along the lines; one label a compartment",
        List.of(new Table("labels", columns, rows)));
  }

  private static String summary(SortPlan plan) {
    int pieces = plan.lines().stream().mapToInt(line -> line.compartment().quantity()).sum();
    long lacking = plan.lines().stream().filter(line -> line.shortage() > 0).count();
    String missing =
        plan.lines().stream().allMatch(line -> line.arrived().isEmpty())
            ? "no bag.csv, so nothing is known of what arrived"
            : lacking == 0
                ? "nothing is missing"
                : lacking == 1 ? "1 part type is short" : lacking + " part types are short";
    return Counted.of(plan.lines().size(), "part type")
        + ", "
        + Counted.of(pieces, "piece")
        + "; "
        + missing;
  }

  private static Block facts(SortPlan plan) {
    return new Block.Facts(
        List.of(
            new Fact(
                "meter on resistance",
                "±(" + plan.meter().ohms() + "); " + plan.meter().source(Dimension.RESISTANCE)),
            new Fact(
                "meter on capacitance",
                "±(" + plan.meter().farads() + "); " + plan.meter().source(Dimension.CAPACITANCE)),
            new Fact(
                "how to measure",
                "loose parts only: in circuit a part reads low, so lift one end. Keep fingers off"
                    + " the metal of both probes."),
            new Fact(
                "below 10 Ω",
                "join the probes, note what they read (0.2 to 0.5 Ω is usual), and take it off"),
            new Fact(
                "what a reading says",
                "outside what the part reads: a wrong part, or out of tolerance. Inside the second"
                    + " range: surely within tolerance (guarded by the meter's error: ILAC-G8, JCGM"
                    + " 106). Between them: the right part, but the meter can't prove its"
                    + " tolerance.")));
  }

  /** What is missing stands in front; the spares, which nobody must buy, at the end. */
  private static void addMissing(SortPlan plan, List<Block> blocks) {
    List<Row> missing = purchases(plan, SortLine::shortage);
    if (!missing.isEmpty()) {
      blocks.add(new Block.Heading(2, "Missing: to buy"));
      blocks.add(purchaseTable("missing", missing));
    }
  }

  private static void addSpares(SortPlan plan, List<Block> blocks) {
    List<Row> spares = purchases(plan, line -> line.toBuy() - line.shortage());
    if (!spares.isEmpty()) {
      blocks.add(new Block.Heading(2, "Spares, if you like"));
      blocks.add(
          new Block.Paragraph(
              "One in ten, and at least one or two of what is easily lost or burnt (common"
                  + " practice)."));
      blocks.add(purchaseTable("spares", spares));
    }
  }

  private static List<Row> purchases(SortPlan plan, ToIntFunction<SortLine> pieces) {
    return plan.lines().stream()
        .filter(line -> pieces.applyAsInt(line) > 0)
        .map(
            line ->
                Tables.row(
                    String.valueOf(line.compartment().number()),
                    StepWording.name(line.compartment().type()),
                    String.valueOf(pieces.applyAsInt(line))))
        .toList();
  }

  private static Table purchaseTable(String caption, List<Row> rows) {
    List<Column> columns =
        List.of(
            Tables.number("no."),
            new Column("part", Align.START, 6),
            new Column("pieces", Align.END, 1.4));
    return new Table(caption, columns, rows);
  }

  private static void addLookAlikes(SortPlan plan, List<Block> blocks) {
    blocks.add(new Block.Heading(2, "Look-alikes, the worst mix-up first"));
    if (plan.lookAlikes().isEmpty()) {
      blocks.add(new Block.Paragraph("No two part types of this kit are easily mistaken."));
      return;
    }
    blocks.add(
        new Block.Paragraph(
            "Colours as seen by red-, green- and blue-blind eyes are simulated (Machado, Oliveira"
                + " and Fernandes 2009; alike below 10 in CIEDE2000). Paint varies: when in doubt,"
                + " measure."));
    List<Row> rows = plan.lookAlikes().stream().map(SortDocument::lookAlikeRow).toList();
    List<Column> columns =
        List.of(
            new Column("these two", Align.START, 4),
            new Column("why", Align.START, 5),
            new Column("a mix-up", Align.START, 4),
            new Column("tell them apart", Align.START, 5));
    blocks.add(new Table("look-alikes", columns, rows));
  }

  private static Row lookAlikeRow(LookAlike alike) {
    String two = numbered(alike.one()) + " and " + numbered(alike.other());
    return Tables.row(
        two, LikenessWords.why(alike), LikenessWords.consequence(alike), LikenessWords.test(alike));
  }

  private static String numbered(Compartment compartment) {
    return "no. " + compartment.number() + ", " + StepWording.shortName(compartment.type());
  }

  private static void addUnknown(SortPlan plan, List<Block> blocks) {
    if (plan.unknown().isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading(2, "In the bag, but in no BOM"));
    List<Row> rows =
        plan.unknown().stream()
            .map(
                (BagLine line) ->
                    Tables.row(
                        line.text(),
                        String.valueOf(line.quantity()),
                        line.bag(),
                        line.place().file() + ":" + line.place().line()))
            .toList();
    List<Column> columns =
        List.of(
            new Column("label", Align.START, 4),
            new Column("pieces", Align.END, 1),
            new Column("bag", Align.START, 1),
            new Column("line", Align.START, 2));
    blocks.add(new Table("in no BOM", columns, rows));
  }

  private static Block colours() {
    return new Block.Paragraph(
        "Colours of bands: "
            + Arrays.stream(Colour.values())
                .map(
                    colour ->
                        colour.code()
                            + NO_BREAK
                            + colour.word()
                            + (colour.isDigit() ? NO_BREAK + colour.exponent() : ""))
                .collect(Collectors.joining(", "))
            + ".");
  }
}
