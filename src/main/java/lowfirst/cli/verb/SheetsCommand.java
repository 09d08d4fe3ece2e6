package lowfirst.cli.verb;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.assembly.AssemblyOptions;
import lowfirst.assembly.AssemblyOrder;
import lowfirst.cli.file.ReportFolder;
import lowfirst.cli.manual.Example;
import lowfirst.cli.option.BatchOptions;
import lowfirst.cli.option.KitArgument;
import lowfirst.cli.option.Offered;
import lowfirst.cli.option.StoreOption;
import lowfirst.cli.process.ExitStatus;
import lowfirst.cli.process.ProgressBar;
import lowfirst.cli.process.Surroundings;
import lowfirst.intake.KitReading;
import lowfirst.progress.Progress;
import lowfirst.sheet.Orientation;
import lowfirst.sheet.SheetSet;
import lowfirst.sheet.pdf.Paper;
import lowfirst.sheet.pdf.PdfWriter;
import lowfirst.sheet.progress.StepAddress;
import lowfirst.sheet.sort.TrayLabelsDocument;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Everything on paper. */
@Command(
    name = "sheets",
    mixinStandardHelpOptions = true,
    header = "every sheet of a kit as PDF",
    description =
        "Writes every sheet of a kit as PDF: labels, assembly, first power, sign-off. "
            + "The names of the files written go to standard output.",
    exitCodeListHeading = ExitStatus.HEADING,
    exitCodeList = {
      "0:written",
      "1:written, but the tables or the order have faults",
      ExitStatus.NOT_UNDERSTOOD,
      ExitStatus.UNREADABLE_OR_UNWRITABLE,
      ExitStatus.OUR_BUG
    },
    footerHeading = Example.HEADING,
    footer = {
      "  lowfirst sheets my-kit",
      "  lowfirst sheets my-kit --paper letter --compartment 40x40",
      "  lowfirst sheets my-kit --only sign-off-driver-1 --into signed"
    })
public final class SheetsCommand implements Callable<Integer> {
  private static final Pattern SIZE =
      Pattern.compile("(\\d{1,3}(?:\\.\\d)?)\\s*[x×]\\s*(\\d{1,3}(?:\\.\\d)?)(?:\\s*mm)?");

  private final Surroundings surroundings;

  @Spec private CommandSpec spec;
  @Mixin private KitArgument kit = new KitArgument();
  @Mixin private BatchOptions batches = new BatchOptions();
  @Mixin private StoreOption store = new StoreOption();

  @Option(
      names = "--paper",
      paramLabel = "<a4|letter>",
      completionCandidates = Offered.Papers.class,
      defaultValue = "a4",
      description = "what the printer holds (default ${DEFAULT-VALUE})")
  private String paper;

  @Option(
      names = "--compartment",
      paramLabel = "<width>x<height>",
      defaultValue = "45x30",
      description = "size of the sorting tray's compartments in mm (default ${DEFAULT-VALUE})")
  private String compartment;

  @Option(
      names = "--bench-address",
      paramLabel = "<url>",
      description = "where the bench page is, for the codes beside the steps")
  private String benchAddress;

  @Option(
      names = "--into",
      paramLabel = "<folder>",
      description = "where the sheets go; usually reports/<kit>")
  private Path into;

  @Option(
      names = "--only",
      paramLabel = "<sheet>",
      description = "only the sheets whose name starts so")
  private String only = "";

  /** The verb in these surroundings. */
  public SheetsCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    Paper upright = paper();
    TrayLabelsDocument.Compartment tray = compartment();
    AssemblyOptions assembly = batches.options();
    KitReading reading = kit.read(surroundings);
    Path directory = kit.directory(surroundings);
    var progress =
        Progress.of(
            AssemblyOrder.of(reading.kit(), assembly), store.recorded(surroundings, directory));
    var options =
        new SheetSet.Options(
            upright.bodyWidthMillimetres(),
            upright.bodyHeightMillimetres(),
            tray,
            assembly,
            surroundings.clock().getZone(),
            new StepAddress(Optional.ofNullable(benchAddress)));
    write(chosen(SheetSet.of(reading.kit(), progress, options)), upright, folder(directory));
    return status(reading, progress);
  }

  private List<SheetSet.Sheet> chosen(List<SheetSet.Sheet> sheets) {
    List<SheetSet.Sheet> chosen =
        sheets.stream().filter(sheet -> sheet.name().startsWith(only)).toList();
    if (chosen.isEmpty() && !only.isEmpty()) {
      throw refused(
          "--only: no sheet starts with \""
              + only
              + "\"; there are: "
              + String.join(", ", sheets.stream().map(SheetSet.Sheet::name).toList()));
    }
    return chosen;
  }

  private void write(List<SheetSet.Sheet> sheets, Paper upright, Path folder) {
    var writer = new PdfWriter();
    try (var reports = ReportFolder.at(folder);
        var bar = new ProgressBar(surroundings, sheets.size())) {
      for (int at = 0; at < sheets.size(); at++) {
        SheetSet.Sheet sheet = sheets.get(at);
        bar.show(at, sheet.name());
        Paper laid = sheet.orientation() == Orientation.LANDSCAPE ? upright.turned() : upright;
        reports.write(sheet.name() + ".pdf", writer.write(sheet.document().get(), laid));
      }
      bar.show(sheets.size(), "");
      for (Path file : reports.publish()) {
        surroundings.out().println(shown(file));
      }
    }
  }

  /** Short where the file is below the place the command runs in. */
  private Path shown(Path file) {
    Path here = surroundings.directory();
    return file.startsWith(here) ? here.relativize(file) : file;
  }

  private Path folder(Path directory) {
    return into == null
        ? surroundings.directory().resolve("reports").resolve(StoreOption.name(directory))
        : surroundings.at(into);
  }

  private int status(KitReading reading, Progress progress) {
    boolean sound = KitArgument.isSound(reading, surroundings);
    boolean planned = progress.plan().problems().isEmpty();
    return sound && planned ? ExitStatus.OK : ExitStatus.FINDINGS;
  }

  private Paper paper() {
    return switch (paper.toLowerCase(Locale.ROOT)) {
      case "a4" -> Paper.A4;
      case "letter" -> Paper.LETTER;
      default -> throw refused("--paper: write a4 or letter, not \"" + paper + "\"");
    };
  }

  private TrayLabelsDocument.Compartment compartment() {
    Matcher size = SIZE.matcher(compartment.strip());
    if (size.matches()) {
      double width = Double.parseDouble(size.group(1));
      double height = Double.parseDouble(size.group(2));
      if (width >= 15 && width <= 150 && height >= 10 && height <= 150) {
        return new TrayLabelsDocument.Compartment(width, height);
      }
    }
    throw refused("--compartment: write width x height in mm, from 15x10 to 150x150, like 45x30");
  }

  private ParameterException refused(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
