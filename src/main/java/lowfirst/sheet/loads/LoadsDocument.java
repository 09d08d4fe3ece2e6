package lowfirst.sheet.loads;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lowfirst.channel.ChannelStudy;
import lowfirst.channel.OnCurrent;
import lowfirst.channel.RailFinding;
import lowfirst.channel.Remedy;
import lowfirst.channel.Sensitivity;
import lowfirst.channel.SumFinding;
import lowfirst.channel.SupplyFinding;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Verdict;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Caution;
import lowfirst.sheet.document.Block.Facts;
import lowfirst.sheet.document.Block.Figure;
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
  private static final int SENSITIVITIES_SHOWN = 3;

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
    for (List<ChannelStudy> alike : alike(studies)) {
      addChannel(alike, tables, blocks);
    }
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

  private static List<List<ChannelStudy>> alike(List<ChannelStudy> studies) {
    Map<List<Object>, List<ChannelStudy>> groups = new LinkedHashMap<>();
    for (ChannelStudy study : studies) {
      groups.computeIfAbsent(likeness(study), none -> new ArrayList<>()).add(study);
    }
    return List.copyOf(groups.values());
  }

  private static List<Object> likeness(ChannelStudy study) {
    return study.finding().checks().stream()
        .<Object>map(
            check ->
                List.of(
                    check.kind(),
                    check.actualAmount(),
                    check.allowedAmount(),
                    check.verdict(),
                    check.missing().size()))
        .toList();
  }

  private static void addChannel(List<ChannelStudy> alike, CheckTables tables, List<Block> blocks) {
    ChannelStudy study = alike.get(0);
    blocks.add(new Heading(2, names(alike)));
    blocks.add(new Paragraph(Sentence.of(LoadsWords.line(study))));
    if (alike.size() > 1) {
      blocks.add(
          new Paragraph(
              "The sources below are those of "
                  + study.inputs().channel().name()
                  + "; the others have the same numbers in their own rows."));
    }
    addRemedies(study.remedies(), blocks);
    blocks.add(new Facts(measured(study)));
    study
        .curve()
        .map(ChannelPlot::of)
        .ifPresent(drawing -> blocks.add(new Figure(drawing, drawing.words())));
    blocks.addAll(ReleaseWords.blocks(study));
    blocks.addAll(tables.of(study.inputs().channel().name(), study.finding().checks()));
  }

  private static String names(List<ChannelStudy> alike) {
    String first = "Channel " + alike.get(0).inputs().channel().name();
    if (alike.size() == 1) {
      return first;
    }
    return alike.size() == 2
        ? first + " and " + alike.get(1).inputs().channel().name()
        : first
            + " and "
            + (alike.size() - 1)
            + " alike, to "
            + alike.get(alike.size() - 1).inputs().channel().name();
  }

  /** What is missing stands above, for all channels together. */
  private static void addRemedies(List<Remedy> remedies, List<Block> blocks) {
    List<Remedy> changes = MissingNumbers.without(remedies);
    if (changes.isEmpty()) {
      return;
    }
    blocks.add(
        new Table(
            "What to change: any one line for each",
            List.of(Tables.words("for", 25), Tables.words("change", 75)),
            changes.stream()
                .map(remedy -> Tables.row(target(remedy, changes), LoadsWords.words(remedy)))
                .distinct()
                .toList()));
  }

  /** The part; or the check alone, where the part fails others that this change doesn't mend. */
  private static String target(Remedy remedy, List<Remedy> all) {
    String part = LoadsWords.part(remedy.check());
    String words = LoadsWords.words(remedy);
    Set<CheckKind> failing =
        all.stream()
            .map(Remedy::check)
            .filter(check -> LoadsWords.part(check).equals(part))
            .collect(Collectors.toSet());
    long mended =
        all.stream()
            .filter(other -> failing.contains(other.check()))
            .filter(other -> LoadsWords.words(other).equals(words))
            .map(Remedy::check)
            .distinct()
            .count();
    return mended == failing.size() ? part : remedy.check().words();
  }

  private static List<Facts.Fact> measured(ChannelStudy study) {
    var facts = new ArrayList<Facts.Fact>();
    double gate = study.inputs().gateVolts();
    if (Double.isFinite(gate) && !study.curve().isEmpty()) {
      facts.add(
          new Facts.Fact(
              "measure",
              String.format(
                  Locale.ROOT,
                  "gate to source at least %.2f V when on; about %s in the load, cold, never more"
                      + " than %s",
                  gate,
                  LoadsWords.amps(OnCurrent.amperes(study.inputs())),
                  LoadsWords.amps(study.inputs().loadAmps()))));
    }
    ReleaseWords.fact(study).ifPresent(facts::add);
    String matters =
        study.sensitivities().stream()
            .limit(SENSITIVITIES_SHOWN)
            .map(LoadsDocument::sensitivity)
            .collect(Collectors.joining("; "));
    facts.add(
        new Facts.Fact("matters most, a tenth worse", matters.isEmpty() ? "nothing" : matters));
    return facts;
  }

  private static String sensitivity(Sensitivity sensitivity) {
    String part = LoadsWords.part(sensitivity.check());
    return sensitivity.used() < 1
        ? String.format(
            Locale.ROOT,
            "%s (%.0f %% of what %s has left)",
            LoadsWords.noun(sensitivity.term()),
            100 * sensitivity.used(),
            part)
        : LoadsWords.noun(sensitivity.term()) + " (then " + part + " fails)";
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
    addRemedies(sum.remedies(), blocks);
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
