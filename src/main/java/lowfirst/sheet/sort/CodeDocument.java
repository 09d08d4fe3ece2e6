package lowfirst.sheet.sort;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import lowfirst.marking.BandDecoding;
import lowfirst.marking.MarkingLookup;
import lowfirst.marking.PrintedReading;
import lowfirst.marking.PrintedReading.Likelihood;
import lowfirst.marking.ValueCodes;
import lowfirst.marking.WrittenValue;
import lowfirst.part.PartKind;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Facts.Fact;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Block.Table.Align;
import lowfirst.sheet.document.Block.Table.Column;
import lowfirst.sheet.document.Block.Table.Row;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.document.Tables;
import lowfirst.sheet.wording.MarkingWords;

/** One marking: what it is, how it was read, what else it could be. */
public final class CodeDocument {
  private static final List<Column> MEANINGS =
      List.of(
          new Column("on a", Align.START, 2),
          new Column("it means", Align.START, 4),
          new Column("read as", Align.START, 5));

  private CodeDocument() {}

  /**
   * What is known of one marking.
   *
   * @param typed the kind of part whose type numbers begin so, if any do
   */
  public static Document of(MarkingLookup lookup, Optional<PartKind> typed) {
    var blocks = new ArrayList<Block>();
    Optional<BandDecoding> bands = lookup.bands();
    if (typed.isPresent()) {
      addTyped(lookup, typed.get(), blocks);
    } else if (lookup.isUnknown()) {
      blocks.add(new Block.Heading(2, "What it is"));
      blocks.add(new Block.Paragraph(unknown(lookup)));
    } else if (bands.isPresent()) {
      BandBlocks.add(lookup, blocks);
    } else {
      addPrints(lookup, blocks);
      if (!isOnSeveralKinds(lookup) && !hasSeveralValues(lookup) && lookup.codes().isPresent()) {
        addCodes(lookup.codes().get(), blocks);
      }
    }
    String subtitle = bands.isPresent() ? bands.get().bands().toString() : "";
    return new Document(lookup.text(), subtitle, blocks);
  }

  /** Whether the kind of part decides what the print means. */
  private static boolean isOnSeveralKinds(MarkingLookup lookup) {
    for (PrintedReading print : lookup.prints()) {
      if (print.on() != lookup.prints().get(0).on()) {
        return true;
      }
    }
    return false;
  }

  private static boolean hasSeveralValues(MarkingLookup lookup) {
    return lookup.prints().stream().map(PrintedReading::value).distinct().count() > 1;
  }

  private static String unknown(MarkingLookup lookup) {
    if (lookup.bands().isPresent()) {
      return "These bands are no code, from neither end. A code's first band is never black, gold,"
          + " silver or pink. Look again in daylight, or measure the part.";
    }
    return "No code of a value: "
        + lookup.written().fault()
        + ". It may be a type number: look it up in its datasheet. Colours are written as words or"
        + " two-letter codes, such as \"yellow violet red gold\" or \"YE VT RD GD\".";
  }

  private static void addPrints(MarkingLookup lookup, List<Block> blocks) {
    blocks.add(new Block.Heading(2, "What it is"));
    if (lookup.prints().isEmpty()) {
      WrittenValue written = lookup.written().orThrow();
      blocks.add(
          new Block.Facts(
              List.of(
                  new Fact("value", said(written)), new Fact("read as", lookup.written().rule()))));
      return;
    }
    var rows = new ArrayList<Row>();
    for (PrintedReading print : lookup.prints()) {
      rows.add(printRow(print));
    }
    blocks.add(new Table("meanings", MEANINGS, rows));
    if (isOnSeveralKinds(lookup)) {
      blocks.add(
          new Block.Paragraph(
              "The print alone can't tell: the kind of part decides. A resistor reads its value on"
                  + " a meter, a capacitor goes to open, an inductor reads a few ohms."));
    } else if (hasSeveralValues(lookup)) {
      blocks.add(new Block.Paragraph("The print alone can't tell: measure the part."));
    }
  }

  /** No value, or hardly: a type number. */
  private static void addTyped(MarkingLookup lookup, PartKind kind, List<Block> blocks) {
    var rows = new ArrayList<Row>();
    rows.add(
        Tables.row(
            kind.words(),
            "a type number; see its datasheet",
            "how such numbers begin (common practice)"));
    lookup.prints().forEach(print -> rows.add(printRow(print)));
    blocks.add(new Block.Heading(2, "What it is"));
    blocks.add(new Table("meanings", MEANINGS, rows));
  }

  private static String said(WrittenValue written) {
    var words = new ArrayList<String>(List.of(MarkingWords.value(written.value())));
    written.tolerance().map(tolerance -> shown(tolerance, written.value())).ifPresent(words::add);
    written.voltage().map(Quantity::toString).ifPresent(words::add);
    written.power().map(Quantity::toString).ifPresent(words::add);
    String leftover = written.leftover().isEmpty() ? "" : "; not read: " + written.leftover();
    return String.join(", ", words) + leftover;
  }

  private static Row printRow(PrintedReading reading) {
    var words = new ArrayList<String>();
    Optional<Quantity> value = reading.value();
    if (value.isPresent()) {
      words.add(MarkingWords.value(value.get()));
    }
    if (reading.tolerance().isPresent()) {
      Tolerance tolerance = reading.tolerance().get();
      words.add(value.isPresent() ? shown(tolerance, value.get()) : tolerance.toString());
    }
    if (reading.voltage().isPresent()) {
      words.add("rated " + reading.voltage().get());
    }
    if (!reading.words().isEmpty()) {
      words.add(reading.words());
    }
    return Tables.row(
        reading.on().words(), String.join(", ", words), reading.rule() + rarity(reading));
  }

  private static String rarity(PrintedReading reading) {
    if (reading.likelihood() == Likelihood.USUAL) {
      return "";
    }
    return reading.likelihood() == Likelihood.RARE
        ? "; rare"
        : "; surface-mount parts only, not on a through-hole part";
  }

  /** A tolerance with its unit, also where it is an absolute amount. */
  static String shown(Tolerance tolerance, Quantity value) {
    return tolerance.basis() == Tolerance.Basis.PERCENT
        ? tolerance.toString()
        : "±" + new Quantity(tolerance.plus(), value.dimension());
  }

  private static void addCodes(ValueCodes codes, List<Block> blocks) {
    blocks.add(
        new Block.Heading(2, "How " + MarkingWords.value(codes.value()) + " is written on parts"));
    var rows = new ArrayList<Row>();
    var told = new HashSet<String>();
    for (ValueCodes.Banded banded : codes.bands()) {
      String form = "bands" + (codes.value().isZero() ? "" : " at " + banded.tolerance());
      String marking = banded.bands() + " " + banded.bands().words();
      // A jumper has the same band at every tolerance.
      if (told.add(form + marking)) {
        rows.add(Tables.row(form, marking, banded.layout().words()));
      }
    }
    for (String refusal : codes.refusals()) {
      rows.add(Tables.row("bands", "none", refusal));
    }
    for (String print : codes.prints()) {
      boolean digits = print.matches("\\d{3,4}[A-Z]?");
      rows.add(
          Tables.row(
              "print", print, digits ? "figures and the number of zeros" : "RKM code (IEC 60062)"));
    }
    List<Column> columns =
        List.of(
            new Column("form", Align.START, 2),
            new Column("marking", Align.START, 4),
            new Column("read as", Align.START, 5));
    blocks.add(new Table("codes", columns, rows));
  }
}
