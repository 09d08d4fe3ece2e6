package lowfirst.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import lowfirst.assembly.AssemblyPlan;
import lowfirst.assembly.Step;
import lowfirst.channel.ChannelStudy;
import lowfirst.channel.check.Verdict;
import lowfirst.intake.KitReading;
import lowfirst.problem.Severity;
import lowfirst.progress.Progress;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.loads.LoadsWords;
import lowfirst.sheet.progress.ProgressWords;
import lowfirst.sheet.wording.Counted;
import lowfirst.sheet.wording.StepWording;
import lowfirst.sorting.SortPlan;
import lowfirst.swap.SwapFinding;

/** The guided walk through the whole job that {@code demo} prints: a chapter for each verb. */
public final class DemoDocument {
  /** What the chapter about paper says. */
  public static final String PAPER =
      "Everything again for the bench and for the day something fails: tray labels, the assembly"
          + " sheets with their maps, wiring, first power in safe stages, and a sign-off record for"
          + " each unit, in which what is ticked already stands filled in.";

  private DemoDocument() {}

  /**
   * One station of the walk.
   *
   * @param question what the builder asks at this point
   * @param answer what the tool found, in sentences
   * @param findings what needs a look, each named
   * @param commands what to type to see it again
   * @param files what was written, as the user would type it
   */
  public record Chapter(
      String question,
      String answer,
      List<Block.Facts.Fact> findings,
      List<String> commands,
      List<String> files) {
    public Chapter {
      findings = List.copyOf(findings);
      commands = List.copyOf(commands);
      files = List.copyOf(files);
    }
  }

  /**
   * The walk.
   *
   * @param kit the kit's folder as the user would type it
   * @param kept tables that were found changed and left as they are
   */
  public static Document of(String kit, List<String> kept, List<Chapter> chapters) {
    var blocks = new ArrayList<Block>();
    blocks.add(
        new Block.Paragraph(
            "The bell player is a kit that was invented to try the tool on: one controller board,"
                + " two driver boards, 32 outputs for bells, lamps and motors. Its tables are in "
                + kit
                + "; change one and run this again. Where it says lowfirst, type java -jar and the path"
                + " of the jar. Every part type that begins with BP- is"
                + " invented."));
    if (!kept.isEmpty()) {
      blocks.add(
          new Block.Paragraph(
              "Changed by you, and used as they are: " + String.join(", ", kept) + "."));
    }
    int number = 1;
    for (Chapter chapter : chapters) {
      blocks.add(new Block.Heading(2, number++ + ". " + chapter.question()));
      blocks.add(new Block.Paragraph(chapter.answer()));
      var facts = new ArrayList<>(chapter.findings());
      chapter.commands().forEach(command -> facts.add(new Block.Facts.Fact("again", command)));
      chapter.files().forEach(file -> facts.add(new Block.Facts.Fact("written", file)));
      blocks.add(new Block.Facts(facts));
    }
    blocks.add(
        new Block.Caution(
            "this was a walk through paper. The iron burns, cut leads fly, capacitors keep their"
                + " charge, and a coil that is held on overheats: each sheet says so where it"
                + " matters. Mains wiring and protective earth belong to local code and a licensed"
                + " electrician."));
    return new Document("The whole job, on the bell player", "", blocks);
  }

  /** Whether the tables agree. */
  public static String check(KitReading reading) {
    return "The tables were read and held against each other: "
        + counted(reading, Severity.FAULT, "fault")
        + ", "
        + counted(reading, Severity.CAUTION, "caution")
        + ", "
        + counted(reading, Severity.NOTE, "note")
        + ". Each comes with its file, line, cell and what to do.";
  }

  private static String counted(KitReading reading, Severity severity, String word) {
    long count = reading.problems().stream().filter(p -> p.severity() == severity).count();
    return Counted.of(count, word);
  }

  /** What lacks, what is too many, and what is easily mistaken for what. */
  public static String sort(SortPlan plan) {
    long lacking = plan.lines().stream().filter(line -> line.shortage() > 0).count();
    long spare = plan.lines().stream().filter(line -> line.surplus() > 0).count();
    String worst =
        plan.lines().stream()
            .filter(line -> line.shortage() > 0)
            .map(line -> line.shortage() + " x " + StepWording.shortName(line.compartment().type()))
            .collect(Collectors.joining(", "));
    return Counted.of(plan.lines().size(), "part type")
        + " to sort. "
        + (lacking == 0 ? "Nothing is short. " : "Short: " + worst + ". ")
        + Counted.of(spare, "part type")
        + " came with some too many. Bag lines that fit nothing: "
        + plan.unknown().size()
        + ". Pairs that can be mistaken for one another: "
        + plan.lookAlikes().size()
        + "; the list says how to tell them apart.";
  }

  /** How the assembly runs, first and last. */
  public static String steps(AssemblyPlan plan) {
    List<Step> steps = plan.steps();
    if (steps.isEmpty()) {
      return "There is nothing to fit.";
    }
    long parts = steps.stream().mapToLong(Step::partsToPick).sum();
    long plugged = steps.stream().filter(step -> step.stage() == Step.Stage.PLUG_IN).count();
    return Counted.of(parts, "part")
        + " in "
        + Counted.of(steps.size(), "step")
        + ", the lowest first, beginning with "
        + StepWording.shortName(steps.get(0).partType())
        + ". "
        + (plugged == 0
            ? ""
            : Counted.of(plugged, "step")
                + " of plugging circuits into their sockets "
                + (plugged == 1 ? "waits" : "wait")
                + " for the rail check. ")
        + "Each step says what to pick and how it is marked, where it goes, which way round, and"
        + " which rule put it there.";
  }

  /** Whether the substitute fits. */
  public static String swap(List<SwapFinding> findings) {
    String answers =
        findings.stream()
            .map(
                finding ->
                    finding.swap().offered().name()
                        + " in place of "
                        + finding.swap().asked().name()
                        + ": "
                        + finding.verdict().words())
            .collect(Collectors.joining("; "));
    return answers
        + ". The board, the marking and every load that the part switches were asked. An accepted"
        + " swap stands in swaps.csv with its reason and shows on every sheet.";
  }

  /** How many channels carry. */
  public static String loads(List<ChannelStudy> studies) {
    long carrying = counted(studies, Verdict.CARRIES);
    return carrying
        + " of "
        + Counted.of(studies.size(), "channel")
        + (carrying == 1 ? " carries its load" : " carry their load")
        + " in the worst case: hottest air, highest rail, weakest drive. What does"
        + " not, and what nobody can say for want of a number:";
  }

  /** The channels that don't carry, each with why. */
  public static List<Block.Facts.Fact> notCarried(List<ChannelStudy> studies) {
    return studies.stream()
        .filter(study -> !study.finding().carries())
        .map(
            study -> new Block.Facts.Fact(study.finding().channel().load(), LoadsWords.line(study)))
        .toList();
  }

  private static long counted(List<ChannelStudy> studies, Verdict verdict) {
    return studies.stream().filter(study -> study.finding().verdict() == verdict).count();
  }

  /** What was recorded, and where to go on. */
  public static String progress(Progress progress) {
    long aside = progress.setAside().size();
    return "Some first ticks were recorded; each is on the disk when the command returns, and undo"
        + " is one more entry. "
        + (aside == 0 ? "" : Counted.of(aside, "part") + " set aside with the reason. ")
        + progress.next().map(next -> "Now " + ProgressWords.next(next) + ".").orElse("All done.");
  }
}
