package lowfirst.sheet.loads;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lowfirst.channel.ChannelStudy;
import lowfirst.channel.RailFinding;
import lowfirst.channel.SumFinding;
import lowfirst.channel.SupplyFinding;
import lowfirst.channel.check.Verdict;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Caution;
import lowfirst.sheet.document.Block.Heading;
import lowfirst.sheet.document.Block.Paragraph;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.document.Tables;
import lowfirst.sheet.wording.Sentence;

/**
 * What {@code loads} found: one line a channel for everybody, then every check with its numbers,
 * equation and sources for whoever wants to work it out again. Channels whose numbers are all alike
 * are shown once.
 */
public final class LoadsDocument {
  private LoadsDocument() {}

  /** The findings of a kit. */
  public static Document of(
      String title,
      String fingerprint,
      List<ChannelStudy> channels,
      List<? extends SumFinding> sums) {
    List<ChannelStudy> studies = worstFirst(channels);
    var blocks = new ArrayList<Block>();
    blocks.add(new Paragraph(LoadsSummary.of(studies, sums)));
    if (!studies.isEmpty()) {
      blocks.add(channels(studies));
    }
    if (!sums.isEmpty()) {
      blocks.add(sums(sums));
    }
    MissingNumbers.of(studies, sums).ifPresent(blocks::add);
    sharedReturn(sums).ifPresent(blocks::add);
    if (!studies.isEmpty() || !sums.isEmpty()) {
      blocks.addAll(cautions());
    }
    var tables = new CheckTables();
    ChannelSection.of(studies).forEach(section -> blocks.addAll(section.blocks(tables)));
    sums.forEach(sum -> addSum(sum, tables, blocks));
    return new Document("Loads of " + title, "tables " + shortened(fingerprint), blocks);
  }

  /** What needs a hand stands where the eye begins; channels that fare alike stay in order. */
  private static List<ChannelStudy> worstFirst(List<ChannelStudy> studies) {
    Comparator<ChannelStudy> better = Comparator.comparing(study -> study.finding().verdict());
    return studies.stream().sorted(better.reversed()).toList();
  }

  private static String shortened(String fingerprint) {
    return fingerprint.length() <= 12 ? fingerprint : fingerprint.substring(0, 12);
  }

  private static Table channels(List<ChannelStudy> studies) {
    return new Table(
        "Channels",
        List.of(Tables.words("channel", 18), Tables.words("load", 16), Tables.words("finding", 56)),
        studies.stream()
            .map(
                study ->
                    Tables.row(
                        study.inputs().channel().name(),
                        study.inputs().channel().load(),
                        LoadsWords.line(study)))
            .toList());
  }

  private static Table sums(List<? extends SumFinding> sums) {
    return new Table(
        "Rails and returns",
        List.of(
            Tables.words("rail", 18),
            Tables.words("check", 34),
            Tables.numbers("actual", 14),
            Tables.numbers("allowed", 14),
            Tables.words("finding", 14)),
        sums.stream()
            .flatMap(
                sum ->
                    sum.checks().stream()
                        .map(
                            check ->
                                Tables.row(
                                    sum instanceof RailFinding ? sum.name() : LoadsWords.name(sum),
                                    check.kind().words(),
                                    LoadsWords.actual(check),
                                    LoadsWords.amount(check.allowed()),
                                    check.verdict().words())))
            .toList());
  }

  /** Where nobody says which return conductor a rail has, what was taken is said. */
  private static Optional<Block> sharedReturn(List<? extends SumFinding> sums) {
    List<RailFinding> rails =
        sums.stream().filter(RailFinding.class::isInstance).map(RailFinding.class::cast).toList();
    List<String> unnamed =
        rails.stream()
            .filter(rail -> rail.rail().sharedReturn().isEmpty())
            .map(RailFinding::name)
            .toList();
    return rails.size() < 2 || unnamed.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Caution(
                "Each rail counts as having a return conductor of its own. Where rails share one,"
                    + " its wire, contacts and drop bear the sum of them: give it a name in"
                    + " rails.csv, column return, the same for each (not said of "
                    + String.join(", ", unnamed)
                    + ")."));
  }

  private static List<Block> cautions() {
    return List.of(
        new Caution(
            "A controller that hangs can hold a coil on. A coil made for short strokes then"
                + " burns: let the program switch off by itself, and fuse each channel."),
        new Caution(
            "Parts run hot: above about 60 °C they burn skin. Let them cool before you touch."),
        new Caution(
            "Mains wiring, protective earth and anything above 60 V DC follow local code and"
                + " belong to a person licensed for them."));
  }

  private static void addSum(SumFinding sum, CheckTables tables, List<Block> blocks) {
    blocks.add(new Heading(2, Sentence.begun(LoadsWords.name(sum))));
    if (sum instanceof RailFinding rail) {
      String counted = rail.channels().isEmpty() ? "none" : String.join(", ", rail.channels());
      blocks.add(new Paragraph("Counted as on together: " + counted + "."));
      named("Always on, since no channel switches it: ", rail.always()).ifPresent(blocks::add);
      named("Perhaps on this rail, too, since the tables don't tell: ", rail.perhaps())
          .ifPresent(blocks::add);
    } else if (sum instanceof SupplyFinding supply) {
      named("Shared by the rails: ", supply.supply().rails()).ifPresent(blocks::add);
    }
    ChangeTable.of(sum.remedies()).ifPresent(blocks::add);
    blocks.addAll(tables.of(LoadsWords.name(sum), sum.checks()));
  }

  private static Optional<Block> named(String what, List<String> names) {
    return names.isEmpty()
        ? Optional.empty()
        : Optional.of(new Paragraph(what + String.join(", ", names) + "."));
  }

  /** Whether anything is not as it should be. */
  public static boolean findsSomething(
      List<ChannelStudy> studies, List<? extends SumFinding> sums) {
    Optional<Verdict> worst =
        java.util.stream.Stream.concat(
                studies.stream().map(study -> study.finding().verdict()),
                sums.stream().map(SumFinding::verdict))
            .max(Verdict::compareTo);
    return worst.filter(verdict -> verdict != Verdict.CARRIES).isPresent();
  }
}
