package lowfirst.sheet.sort;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.sheet.body.PartPicture;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Cell;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Block.Table.Align;
import lowfirst.sheet.document.Block.Table.Column;
import lowfirst.sheet.document.Block.Table.Row;
import lowfirst.sheet.document.Tables;
import lowfirst.sheet.wording.Counted;
import lowfirst.sheet.wording.DesignatorWords;
import lowfirst.sheet.wording.ReadingWords;
import lowfirst.sheet.wording.StepWording;
import lowfirst.sorting.Compartment;
import lowfirst.sorting.Compartment.Use;
import lowfirst.sorting.MeterLimits;
import lowfirst.sorting.PartMarking;
import lowfirst.sorting.SortLine;
import lowfirst.sorting.SortPlan;

/** The two tables of the sorting list: what each part looks like, and what it reads. */
final class SortTables {
  private SortTables() {}

  static Block parts(SortPlan plan) {
    List<Row> rows = plan.lines().stream().map(SortTables::partRow).toList();
    List<Column> columns =
        List.of(
            Tables.number("no."),
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

  static Block readings(SortPlan plan) {
    List<Row> rows = plan.lines().stream().map(line -> readingRow(line, plan)).toList();
    List<Column> columns =
        List.of(
            Tables.number("no."),
            new Column("part", Align.START, 5),
            new Column("reads", Align.START, 5),
            new Column("surely in tolerance", Align.START, 4),
            new Column("where", Align.START, 5));
    return new Table("readings and places", columns, rows);
  }

  private static Row readingRow(SortLine line, SortPlan plan) {
    Optional<MeterLimits> limits = line.limits();
    return Tables.row(
        String.valueOf(line.compartment().number()),
        name(line.compartment()),
        limits
            .map(SortTables::outer)
            .orElseGet(() -> ReadingWords.of(line.compartment().type(), plan.meter())),
        limits.map(SortTables::inner).orElse(""),
        where(line.compartment()));
  }

  private static String outer(MeterLimits limits) {
    String assumed =
        limits.toleranceSource().origin() == Source.Origin.ASSUMED
            ? " (" + limits.tolerance() + " assumed)"
            : "";
    return ReadingWords.outer(limits) + assumed;
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

  static Cell marking(SortLine line) {
    List<String> forms = forms(line.marking());
    String assumed = line.marking().toleranceAssumed() ? " (tolerance assumed)" : "";
    PartKind kind = line.compartment().type().kind();
    String without = PartMarking.isBare(kind) || kind == PartKind.LED ? "none" : "not known";
    return Cell.of(
        forms.isEmpty() ? without : forms.get(0) + assumed,
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

  static String where(Compartment compartment) {
    return compartment.uses().stream().map(SortTables::use).collect(Collectors.joining("; "));
  }

  private static String use(Use use) {
    String each = use.units() > 1 ? use.units() + " × " : "";
    String places =
        use.designators().isEmpty()
            ? Counted.of(use.perUnit(), "piece")
            : DesignatorWords.list(use.designators());
    return each + use.board() + ": " + places;
  }
}
