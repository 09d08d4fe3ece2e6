package lowfirst.cli.verb;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import lowfirst.board.Kit;
import lowfirst.channel.BuildSpread;
import lowfirst.channel.ChannelStudy;
import lowfirst.channel.KitInputs;
import lowfirst.channel.LoadFindings;
import lowfirst.channel.SumFinding;
import lowfirst.cli.file.ReportFolder;
import lowfirst.cli.manual.Example;
import lowfirst.cli.option.KitArgument;
import lowfirst.cli.process.ExitStatus;
import lowfirst.cli.process.Surroundings;
import lowfirst.intake.KitReading;
import lowfirst.sheet.csv.CsvWriter;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.loads.BuildsDocument;
import lowfirst.sheet.loads.LoadsDocument;
import lowfirst.sheet.loads.LoadsTable;
import lowfirst.sheet.loads.SymbolsDocument;
import lowfirst.sheet.pdf.Paper;
import lowfirst.sheet.pdf.PdfWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Whether every channel, rail and return carries its load. */
@Command(
    name = "loads",
    mixinStandardHelpOptions = true,
    header = "whether every channel carries its load",
    description = "Shows whether every channel, its wiring, its supply and return carry the load.",
    exitCodeListHeading = ExitStatus.HEADING,
    exitCodeList = {
      "0:everything carries",
      "1:something is overloaded or undecided",
      ExitStatus.NOT_UNDERSTOOD,
      ExitStatus.UNREADABLE_OR_UNWRITABLE,
      ExitStatus.OUR_BUG
    },
    footerHeading = Example.HEADING,
    footer = {
      "  lowfirst loads my-kit",
      "  lowfirst loads my-kit --csv > loads.csv",
      "  lowfirst loads my-kit --pdf loads.pdf",
      "  lowfirst loads my-kit --monte-carlo 1000 --seed 1"
    })
public final class LoadsCommand implements Callable<Integer> {
  private static final int WIDTH = 120;

  private final Surroundings surroundings;

  @Mixin private KitArgument kit = new KitArgument();

  @Option(names = "--csv", description = "every check as one table for machines")
  private boolean csv;

  @Option(names = "--pdf", paramLabel = "<file>", description = "write it as PDF, with drawings")
  private Path pdf;

  @Option(
      names = "--monte-carlo",
      paramLabel = "<builds>",
      description = "also try so many builds, each part somewhere within its tolerance")
  private int builds;

  @Option(
      names = "--seed",
      paramLabel = "<number>",
      description = "which builds; the same seed gives the same (default: ${DEFAULT-VALUE})")
  private long seed = 1;

  @Option(
      names = "--symbols",
      description = "only list the datasheet symbols that a finding understands")
  private boolean symbols;

  /** The verb in these surroundings. */
  public LoadsCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    if (symbols) {
      surroundings.out().print(written(SymbolsDocument.of()));
      return ExitStatus.OK;
    }
    KitReading reading = kit.read(surroundings);
    Kit read = reading.kit();
    String title = read.settings().title();
    KitInputs inputs = KitInputs.of(read);
    List<ChannelStudy> studies = ChannelStudy.of(inputs);
    List<SumFinding> sums = LoadFindings.of(inputs).sums();
    boolean sound = KitArgument.isSound(reading, surroundings);
    if (csv) {
      surroundings.out().print(CsvWriter.write(LoadsTable.of(title, studies, sums)));
    } else {
      Document document = LoadsDocument.of(title, read.fingerprint().hexadecimal(), studies, sums);
      surroundings.out().print(surroundings.text(document, WIDTH));
      writePdf(document);
    }
    if (builds > 0) {
      Document spread = BuildsDocument.of(title, spreads(inputs), seed);
      surroundings.out().print(written(spread));
    }
    return sound && !LoadsDocument.findsSomething(studies, sums)
        ? ExitStatus.OK
        : ExitStatus.FINDINGS;
  }

  private String written(Document document) {
    return csv ? CsvWriter.write(document) : surroundings.text(document, WIDTH);
  }

  private Map<String, BuildSpread> spreads(KitInputs inputs) {
    var spreads = new LinkedHashMap<String, BuildSpread>();
    inputs
        .channels()
        .forEach(in -> spreads.put(in.channel().name(), BuildSpread.of(in, builds, seed)));
    return spreads;
  }

  private void writePdf(Document document) {
    if (pdf == null) {
      return;
    }
    ReportFolder.put(surroundings.at(pdf), new PdfWriter().write(document, Paper.A4));
  }
}
