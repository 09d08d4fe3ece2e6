package lowfirst.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lowfirst.board.BagLine;
import lowfirst.marking.Colour;
import lowfirst.part.PartType;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.sheet.Block.Cell;
import lowfirst.sheet.Block.Facts.Fact;
import lowfirst.sheet.Block.Table;
import lowfirst.sheet.Block.Table.Align;
import lowfirst.sheet.Block.Table.Column;
import lowfirst.sheet.Block.Table.Row;
import lowfirst.sorting.Compartment;
import lowfirst.sorting.Compartment.Use;
import lowfirst.sorting.LookAlike;
import lowfirst.sorting.MeterLimits;
import lowfirst.sorting.PartMarking;
import lowfirst.sorting.SortLine;
import lowfirst.sorting.SortPlan;

/**
 * How to sort the bag: what to buy, each part type in turn, and what could be mistaken for what.
 */
public final class SortDocument {
  private SortDocument() {}

  /** The whole sorting list. */
  public static Document of(SortPlan plan, String title) {
    var blocks = new ArrayList<Block>();
    blocks.add(facts(plan));
    blocks.add(
        new Block.Caution(
            "Empty a capacitor before you measure it; a charged one harms you and the meter."
                + " Touch bare metal that is earthed before you touch a MOSFET or an IC."));
    addPurchases(plan, blocks);
    blocks.add(new Block.Heading(2, "Part by part"));
    blocks.add(parts(plan));
    blocks.add(new Block.Heading(2, "Readings and places"));
    blocks.add(readings(plan));
    addLookAlikes(plan, blocks);
    addUnknown(plan, blocks);
    blocks.add(new Block.Heading(2, "Colours"));
    blocks.add(colours());
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
                            Cell.of(StepWording.name(line.compartment().type())),
                            marking(line),
                            Cell.of(String.valueOf(line.compartment().quantity())),
                            Cell.of(where(line.compartment())))))
            .toList();
    List<Column> columns =
        List.of(
            new Column("no.", Align.END, 1),
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
    return plan.lines().size() + " part types, " + pieces + " pieces; " + missing;
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

  private static void addPurchases(SortPlan plan, List<Block> blocks) {
    List<Row> rows =
        plan.lines().stream()
            .filter(line -> line.toBuy() > 0)
            .map(
                line ->
                    Texts.row(
                        String.valueOf(line.compartment().number()),
                        StepWording.name(line.compartment().type()),
                        String.valueOf(line.shortage()),
                        String.valueOf(line.toBuy() - line.shortage())))
            .toList();
    blocks.add(new Block.Heading(2, "To buy"));
    if (rows.isEmpty()) {
      blocks.add(new Block.Paragraph("Nothing is missing, and there are spares of everything."));
      return;
    }
    blocks.add(
        new Block.Paragraph(
            "Spares: one in ten and at least one or two of what is easily lost or burnt (common"
                + " practice)."));
    List<Column> columns =
        List.of(
            new Column("no.", Align.END, 1),
            new Column("part", Align.START, 6),
            new Column("missing", Align.END, 1.4),
            new Column("spares", Align.END, 1.4));
    blocks.add(new Table("to buy", columns, rows));
  }

  private static Block parts(SortPlan plan) {
    List<Row> rows = plan.lines().stream().map(SortDocument::partRow).toList();
    List<Column> columns =
        List.of(
            new Column("no.", Align.END, 1),
            new Column("part", Align.START, 5),
            new Column("marking", Align.START, 5),
            new Column("or", Align.START, 3),
            new Column("need", Align.END, 1.2),
            new Column("have", Align.END, 2),
            new Column("bag", Align.START, 1.4));
    return new Table("parts", columns, rows);
  }

  private static Row partRow(SortLine line) {
    Compartment compartment = line.compartment();
    List<String> forms = forms(line.marking());
    return new Row(
        List.of(
            Cell.of(String.valueOf(compartment.number())),
            Cell.of(name(compartment)),
            marking(line),
            Cell.of(String.join(" or ", forms.subList(Math.min(1, forms.size()), forms.size()))),
            Cell.of(String.valueOf(compartment.quantity())),
            Cell.of(have(line)),
            Cell.of(String.join(", ", line.bags()))));
  }

  private static Block readings(SortPlan plan) {
    List<Row> rows = plan.lines().stream().map(line -> readingRow(line, plan)).toList();
    List<Column> columns =
        List.of(
            new Column("no.", Align.END, 1),
            new Column("part", Align.START, 5),
            new Column("reads", Align.START, 5),
            new Column("surely in tolerance", Align.START, 4),
            new Column("where", Align.START, 5));
    return new Table("readings and places", columns, rows);
  }

  private static Row readingRow(SortLine line, SortPlan plan) {
    Optional<MeterLimits> limits = line.limits();
    return Texts.row(
        String.valueOf(line.compartment().number()),
        name(line.compartment()),
        limits
            .map(SortDocument::outer)
            .orElseGet(() -> ReadingWords.of(line.compartment().type(), plan.meter())),
        limits.map(SortDocument::inner).orElse(""),
        where(line.compartment()));
  }

  private static String outer(MeterLimits limits) {
    String assumed =
        limits.toleranceSource().origin() == Source.Origin.ASSUMED
            ? " (" + limits.tolerance() + " assumed)"
            : "";
    String from =
        limits.rejectBelow().isZero()
            ? "up to "
            : ReadingWords.shown(limits.rejectBelow()) + " to ";
    return from + ReadingWords.shown(limits.rejectAbove()) + assumed;
  }

  private static String inner(MeterLimits limits) {
    return limits
        .accept()
        .map(range -> ReadingWords.shown(range.low()) + " to " + ReadingWords.shown(range.high()))
        .orElse("this meter can't tell");
  }

  /** A part with what tells it from its neighbours; a package only where there is no value. */
  private static String name(Compartment compartment) {
    PartType type = compartment.type();
    if (type.value().isEmpty()) {
      return StepWording.name(type);
    }
    var words = new ArrayList<String>(List.of(StepWording.shortName(type)));
    type.tolerance()
        .map(tolerance -> CodeDocument.shown(tolerance, type.value().orElseThrow()))
        .ifPresent(words::add);
    type.ratedVoltage().map(Quantity::toString).ifPresent(words::add);
    type.ratedPower().map(Quantity::toString).ifPresent(words::add);
    return String.join(", ", words);
  }

  private static Cell marking(SortLine line) {
    List<String> forms = forms(line.marking());
    String assumed = line.marking().toleranceAssumed() ? " (tolerance assumed)" : "";
    return Cell.of(
        forms.isEmpty() ? "none" : forms.get(0) + assumed,
        PartPicture.of(line.compartment().type(), line.compartment().outline(), line.marking()));
  }

  /** The markings it may carry as a terminal can draw them, the likeliest first. */
  private static List<String> forms(PartMarking marking) {
    return marking.isBanded()
        ? marking.bands().stream().map(LikenessWords::unbroken).toList()
        : marking.texts();
  }

  private static String have(SortLine line) {
    if (line.arrived().isEmpty()) {
      return "?";
    }
    String count = String.valueOf(line.arrived().getAsInt());
    String shared = line.shared() ? " (shared bag)" : "";
    if (line.shortage() > 0) {
      return count + ", " + line.shortage() + " short" + shared;
    }
    return line.surplus() > 0 ? count + ", " + line.surplus() + " over" + shared : count + shared;
  }

  private static String where(Compartment compartment) {
    return compartment.uses().stream().map(SortDocument::use).collect(Collectors.joining("; "));
  }

  private static String use(Use use) {
    String each = use.units() > 1 ? use.units() + " × " : "";
    String places =
        use.designators().isEmpty()
            ? use.perUnit() + " pieces"
            : DesignatorWords.list(use.designators());
    return each + use.board() + ": " + places;
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
    return Texts.row(
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
                    Texts.row(
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
        Arrays.stream(Colour.values())
            .map(
                colour ->
                    colour.code()
                        + " "
                        + colour.word()
                        + (colour.isDigit() ? " " + (colour.exponent()) : ""))
            .collect(Collectors.joining(", ")));
  }
}
