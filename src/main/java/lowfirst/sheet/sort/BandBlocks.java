package lowfirst.sheet.sort;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lowfirst.marking.BandDecoding;
import lowfirst.marking.BandReading;
import lowfirst.marking.BandReading.Direction;
import lowfirst.marking.BandSequence;
import lowfirst.marking.Colour;
import lowfirst.marking.ColourCode;
import lowfirst.marking.ColourCode.Body;
import lowfirst.marking.Edition;
import lowfirst.marking.MarkingLookup;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Facts.Fact;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Block.Table.Align;
import lowfirst.sheet.document.Block.Table.Column;
import lowfirst.sheet.document.Block.Table.Row;
import lowfirst.sheet.document.Tables;
import lowfirst.sorting.Misreading;

/** A row of colour bands in words: its readings from both ends, and what a slip of the eye does. */
final class BandBlocks {
  private BandBlocks() {}

  static void add(MarkingLookup lookup, List<Block> blocks) {
    Optional<BandDecoding> resistor =
        lookup.resistor().filter(found -> !found.readings().isEmpty());
    BandDecoding main = resistor.or(lookup::inductor).orElseThrow();
    Body body = resistor.isPresent() ? Body.RESISTOR : Body.INDUCTOR;
    addMain(main, body, blocks);
    addOthers(main, lookup, body, blocks);
    addMisreadings(main, body, blocks);
  }

  private static void addMain(BandDecoding decoding, Body body, List<Block> blocks) {
    blocks.add(new Block.Heading(2, "What it is"));
    if (decoding.readings().isEmpty()) {
      blocks.add(new Block.Paragraph("On this kind of part the bands are no code."));
      return;
    }
    BandReading reading = decoding.readings().get(0);
    var facts = new ArrayList<Fact>();
    facts.add(new Fact(body == Body.INDUCTOR ? "inductor" : "resistor", said(reading)));
    limits(reading).ifPresent(text -> facts.add(new Fact("that is", text)));
    facts.add(new Fact("read as", reading.layout().words() + direction(reading)));
    facts.add(new Fact("table", table(decoding, body)));
    facts.add(new Fact("how sure", certainty(decoding)));
    otherEdition(decoding, body).ifPresent(text -> facts.add(new Fact("by edition", text)));
    blocks.add(new Block.Facts(facts));
    blocks.add(places(decoding.bands(), reading));
  }

  private static String table(BandDecoding decoding, Body body) {
    return body == Body.INDUCTOR
        ? "EIA and MIL-C-15305 custom for moulded inductors"
        : decoding.edition().words();
  }

  private static String said(BandReading reading) {
    String text = reading.value().toString();
    String tolerance = reading.tolerance().map(t -> " " + t).orElse("");
    String ppm =
        reading.ppmPerKelvin().isPresent()
            ? ", " + reading.ppmPerKelvin().getAsInt() + " ppm/K"
            : "";
    String extra = reading.extra().isEmpty() ? "" : ", " + reading.extra();
    return text + tolerance + ppm + extra;
  }

  private static Optional<String> limits(BandReading reading) {
    Quantity value = reading.value();
    return reading
        .tolerance()
        .filter(tolerance -> !value.isZero())
        .map(tolerance -> tolerance.lowest(value) + " to " + tolerance.highest(value));
  }

  private static String direction(BandReading reading) {
    return reading.direction() == Direction.AS_GIVEN ? "" : ", from the other end";
  }

  private static String certainty(BandDecoding decoding) {
    return switch (decoding.certainty()) {
      case CERTAIN -> "certain: no other value can be read, from either end";
      case LIKELY ->
          "likely: the other readings are no values that shops sell; a measurement settles it";
      case AMBIGUOUS -> "ambiguous: measure it. The bands alone can't tell these values apart";
      case DOUBTFUL -> "doubtful: legal, but no value that shops sell; look again, or measure it";
      case NOT_A_CODE -> "no code";
    };
  }

  /** What another table of colours makes of the same bands, where that differs. */
  private static Optional<String> otherEdition(BandDecoding decoding, Body body) {
    if (body == Body.INDUCTOR) {
      return Optional.empty();
    }
    Edition other = decoding.edition() == Edition.OLDER ? Edition.IEC_60062_2016 : Edition.OLDER;
    BandDecoding otherwise = ColourCode.decode(decoding.bands(), body, other);
    BandReading reading = decoding.readings().get(0);
    Optional<BandReading> same =
        otherwise.readings().stream()
            .filter(r -> r.layout() == reading.layout() && r.direction() == reading.direction())
            .findFirst();
    if (same.isEmpty()) {
      return Optional.of("by " + other.words() + " it is no code");
    }
    return same.filter(found -> !found.meansTheSameAs(reading))
        .map(found -> "by " + other.words() + " it is " + said(found));
  }

  /** Each band with what it stands for. */
  private static Block places(BandSequence given, BandReading reading) {
    BandSequence bands = reading.direction() == Direction.AS_GIVEN ? given : given.reversed();
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < bands.count(); i++) {
      Colour colour = bands.bands().get(i);
      rows.add(
          Tables.row(
              String.valueOf(i + 1), colour.code(), colour.word(), meaning(i, bands, reading)));
    }
    List<Column> columns =
        List.of(
            new Column("band", Align.END, 1),
            new Column("code", Align.START, 1),
            new Column("colour", Align.START, 2),
            new Column("stands for", Align.START, 4));
    return new Table("bands", columns, rows);
  }

  private static String meaning(int place, BandSequence bands, BandReading reading) {
    Colour colour = bands.bands().get(place);
    int figures =
        switch (reading.layout()) {
          case FIVE, SIX -> 3;
          case LINK -> 0;
          case INDUCTOR_MILITARY -> -1;
          default -> 2;
        };
    if (figures == 0) {
      return "0 Ω link";
    }
    if (figures < 0) {
      return place == 0 ? "military code" : colour == Colour.GOLD ? "decimal mark" : "";
    }
    if (place < figures) {
      return "figure " + colour.exponent();
    }
    if (place == figures) {
      return "× 10^" + colour.exponent();
    }
    if (place == figures + 1) {
      return "tolerance " + reading.tolerance().map(Tolerance::toString).orElse("");
    }
    return reading.layout() == lowfirst.marking.Layout.SIX
        ? reading.ppmPerKelvin().orElse(0) + " ppm/K"
        : reading.extra();
  }

  private static void addOthers(
      BandDecoding main, MarkingLookup lookup, Body body, List<Block> blocks) {
    var rows = new ArrayList<Row>();
    main.others().forEach(other -> rows.add(row(other, "resistor")));
    if (body == Body.INDUCTOR) {
      rows.clear();
      main.others().forEach(other -> rows.add(row(other, "inductor")));
    } else {
      lookup
          .inductor()
          .ifPresent(
              inductor ->
                  inductor.readings().stream()
                      .filter(reading -> reading.isOrdinary() && reading.isPreferred())
                      .limit(2)
                      .forEach(reading -> rows.add(row(reading, "inductor"))));
    }
    if (rows.isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading(2, "What else it could be"));
    List<Column> columns =
        List.of(
            new Column("part", Align.START, 2),
            new Column("value", Align.START, 3),
            new Column("read as", Align.START, 5),
            new Column("plausible", Align.START, 4));
    blocks.add(new Table("other readings", columns, rows));
    boolean inductorToo =
        body == Body.RESISTOR
            && lookup.inductor().filter(found -> !found.readings().isEmpty()).isPresent();
    if (inductorToo) {
      blocks.add(
          new Block.Paragraph(
              "A moulded inductor (often green or pale blue, below 10 Ω on a meter) can carry the"
                  + " same bands as a resistor."));
    }
  }

  private static Row row(BandReading reading, String part) {
    return Tables.row(
        part, said(reading), reading.layout().words() + direction(reading), plausible(reading));
  }

  private static String plausible(BandReading reading) {
    var doubts = new ArrayList<String>();
    if (!reading.isPreferred()) {
      doubts.add("no preferred number");
    }
    if (!reading.isOrdinary()) {
      doubts.add("outside the range that shops sell");
    }
    if (!reading.hasEverydayTolerance()) {
      doubts.add("a rare tolerance");
    }
    return doubts.isEmpty() ? "yes" : String.join(", ", doubts);
  }

  private static void addMisreadings(BandDecoding main, Body body, List<Block> blocks) {
    if (main.readings().isEmpty()) {
      return;
    }
    BandSequence bands =
        main.readings().get(0).direction() == Direction.AS_GIVEN
            ? main.bands()
            : main.bands().reversed();
    List<Row> rows =
        Misreading.of(bands, body, main.edition()).stream().map(BandBlocks::misread).toList();
    if (rows.isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading(2, "If one colour was misread"));
    List<Column> columns =
        List.of(
            new Column("band", Align.END, 1),
            new Column("read", Align.START, 2),
            new Column("may be", Align.START, 2),
            new Column("then it is", Align.START, 3),
            new Column("mistaken by", Align.START, 5));
    blocks.add(new Table("misreadings", columns, rows));
  }

  private static Row misread(Misreading misreading) {
    return Tables.row(
        String.valueOf(misreading.place()),
        misreading.taken().word(),
        misreading.meant().word(),
        said(misreading.reading()),
        LikenessWords.circumstances(misreading.circumstances()));
  }
}
