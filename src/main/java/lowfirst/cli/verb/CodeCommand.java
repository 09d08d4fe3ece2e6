package lowfirst.cli.verb;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import lowfirst.cli.manual.Example;
import lowfirst.cli.option.Offered;
import lowfirst.cli.process.ExitStatus;
import lowfirst.cli.process.Surroundings;
import lowfirst.intake.kind.PartKindWords;
import lowfirst.marking.BandDecoding;
import lowfirst.marking.BandDecoding.Certainty;
import lowfirst.marking.Edition;
import lowfirst.marking.MarkingLookup;
import lowfirst.marking.MarkingLookup.Question;
import lowfirst.marking.MarkingLookup.Start;
import lowfirst.marking.PrintedReading.Carrier;
import lowfirst.part.PartKind;
import lowfirst.problem.Reading;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;
import lowfirst.sheet.csv.CsvWriter;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.sort.CodeDocument;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** One marking: what it is, how it was read, what else it could be. */
@Command(
    name = "code",
    mixinStandardHelpOptions = true,
    header = "what a marking says, or how a value is marked",
    description =
        "Reads one marking: colour bands by name or two-letter code, a printed code, or a value. "
            + "Says what it is, how it was read, what else it could be, and how the value is written.",
    exitCodeListHeading = ExitStatus.HEADING,
    exitCodeList = {
      "0:read",
      "1:ambiguous, or not a code",
      ExitStatus.NOT_UNDERSTOOD,
      ExitStatus.OUR_BUG
    },
    footerHeading = Example.HEADING,
    footer = {
      "  lowfirst code brown black orange gold",
      "  lowfirst code BN BK BK RD BN --from-start",
      "  lowfirst code 104K --as capacitor",
      "  lowfirst code 4.7k --tolerance 1%%"
    })
public final class CodeCommand implements Callable<Integer> {
  private static final int WIDTH = 100;

  private final Surroundings surroundings;

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "1..*",
      paramLabel = "<marking>",
      description = "colours, a print such as 4n7J, or a value such as 4.7k")
  private List<String> words = new ArrayList<>();

  @Option(
      names = "--as",
      paramLabel = "<part>",
      completionCandidates = Offered.Carriers.class,
      description = "what carries it: resistor, capacitor, inductor or network")
  private String part = "";

  @Option(names = "--from-start", description = "the first band named is surely the first")
  private boolean fromStart;

  @Option(
      names = "--edition",
      paramLabel = "<edition>",
      completionCandidates = Offered.Editions.class,
      description = "the table of colours: 2016 for IEC 60062:2016, the default, or older")
  private String edition = "2016";

  @Option(
      names = "--tolerance",
      paramLabel = "<percent>",
      description = "write the value with this tolerance")
  private String tolerance = "";

  @Option(
      names = "--coefficient",
      paramLabel = "<ppm/K>",
      description = "write the value with six bands and this temperature coefficient")
  private Integer coefficient;

  @Option(names = "--csv", description = "as one table for machines")
  private boolean csv;

  /** The verb in these surroundings. */
  public CodeCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    MarkingLookup lookup = MarkingLookup.of(String.join(" ", words), question());
    Optional<PartKind> typed =
        lookup.mayBeTypeNumber()
            ? PartKindWords.byTypeNumber(lookup.text().toUpperCase(Locale.ROOT))
            : Optional.empty();
    Document document = CodeDocument.of(lookup, typed);
    surroundings.out().print(csv ? CsvWriter.write(document) : surroundings.text(document, WIDTH));
    return typed.isPresent() || isSettled(lookup) ? ExitStatus.OK : ExitStatus.FINDINGS;
  }

  private static boolean isSettled(MarkingLookup lookup) {
    Optional<BandDecoding> bands = lookup.bands();
    boolean open =
        bands
            .filter(
                found ->
                    found.certainty() == Certainty.AMBIGUOUS
                        || found.certainty() == Certainty.DOUBTFUL)
            .isPresent();
    return !open && !lookup.isUnknown();
  }

  private Question question() {
    return new Question(
        carrier(),
        editionAsked(),
        fromStart ? Start.KNOWN : Start.UNKNOWN,
        toleranceAsked(),
        coefficient == null ? OptionalInt.empty() : OptionalInt.of(coefficient));
  }

  private Optional<Carrier> carrier() {
    return switch (part.toLowerCase(Locale.ROOT)) {
      case "" -> Optional.empty();
      case "resistor" -> Optional.of(Carrier.RESISTOR);
      case "capacitor" -> Optional.of(Carrier.CAPACITOR);
      case "inductor" -> Optional.of(Carrier.INDUCTOR);
      case "network" -> Optional.of(Carrier.RESISTOR_NETWORK);
      default -> throw refused("--as: write resistor, capacitor, inductor or network");
    };
  }

  private Edition editionAsked() {
    return switch (edition.toLowerCase(Locale.ROOT)) {
      case "2016" -> Edition.IEC_60062_2016;
      case "older" -> Edition.OLDER;
      default -> throw refused("--edition: write 2016 or older");
    };
  }

  private Optional<Tolerance> toleranceAsked() {
    if (tolerance.isEmpty()) {
      return Optional.empty();
    }
    Reading<Quantity> percent =
        Quantity.parse(tolerance.replaceFirst("^(±|\\+/?-)", ""), Dimension.PERCENT);
    return percent
        .value()
        .filter(amount -> amount.amount().signum() > 0)
        .map(amount -> Tolerance.percent(amount.amount().toPlainString()))
        .map(Optional::of)
        .orElseThrow(() -> refused("--tolerance: write per cent, such as 1%"));
  }

  private ParameterException refused(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
