package lowfirst.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import lowfirst.assembly.AssemblyOptions;
import lowfirst.assembly.AssemblyPlan;
import lowfirst.assembly.Batch;
import lowfirst.assembly.Step;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Kit;
import lowfirst.part.BodyOutline;
import lowfirst.problem.Problem;
import lowfirst.sheet.Block.Caution;
import lowfirst.sheet.Block.Cell;
import lowfirst.sheet.Block.Facts;
import lowfirst.sheet.Block.Facts.Fact;
import lowfirst.sheet.Block.Figure;
import lowfirst.sheet.Block.Heading;
import lowfirst.sheet.Block.Paragraph;
import lowfirst.sheet.Block.Table;
import lowfirst.sheet.Block.Table.Align;
import lowfirst.sheet.Block.Table.Column;
import lowfirst.sheet.Block.Table.Row;
import lowfirst.sorting.Meter;

/** The assembly, step by step, as {@code steps} shows it. */
public final class StepsDocument {
  static final String BENCH =
      "the iron is hot enough to burn and its fumes harm lungs: keep your head out of the plume and"
          + " the air moving, park the iron in its stand, wash your hands after tin-lead solder and"
          + " don't eat at the bench (HSE INDG248).";
  static final String LEAD_ENDS =
      "cut lead ends fly: wear eye protection, and hold each end while you cut it.";
  static final String RAIL_CHECK =
      "First the rail check: with every socket empty, power the board with limited current and"
          + " measure each supply at the sockets' pins. Switch off and wait until the supply reads"
          + " 0 V. Only then plug in.";

  private final Kit kit;
  private final AssemblyPlan plan;
  private final Meter meter;
  private final Pictures pictures;
  private final List<Block> blocks = new ArrayList<>();

  /** Whether a document has pictures. */
  private enum Pictures {
    NONE,
    MAPS_AND_PARTS
  }

  private StepsDocument(Kit kit, AssemblyPlan plan, Pictures pictures) {
    this.kit = kit;
    this.plan = plan;
    this.meter = Meter.of(kit.settings());
    this.pictures = pictures;
  }

  /** For reading in a terminal. */
  public static Document of(Kit kit, AssemblyPlan plan, AssemblyOptions options) {
    return new StepsDocument(kit, plan, Pictures.NONE).document(options);
  }

  /** For paper and pages: with a board map before each batch, and each part as it looks. */
  public static Document illustrated(Kit kit, AssemblyPlan plan, AssemblyOptions options) {
    return new StepsDocument(kit, plan, Pictures.MAPS_AND_PARTS).document(options);
  }

  private Document document(AssemblyOptions options) {
    blocks.add(new Paragraph(summary(options)));
    if (!plan.batches().isEmpty()) {
      blocks.add(new Caution(BENCH));
      blocks.add(new Caution(LEAD_ENDS));
    }
    problems();
    for (Board board : kit.boards()) {
      List<Batch> batches =
          plan.batches().stream().filter(batch -> batch.board().equals(board.name())).toList();
      if (!batches.isEmpty()) {
        board(board, batches);
      }
    }
    heightsToMeasure();
    return new Document("Assembly steps of " + kit.settings().title(), "", blocks);
  }

  private String summary(AssemblyOptions options) {
    int steps = plan.steps().size();
    if (steps == 0) {
      return "Nothing in this kit is to be fitted.";
    }
    long flips = plan.batches().stream().filter(batch -> !batch.isPluggedIn()).count();
    int parts = plan.steps().stream().mapToInt(Step::partsToPick).sum();
    return count(parts, "part")
        + " in "
        + count(steps, "step")
        + ", "
        + count(flips, "flip")
        + ": as few as possible with at most "
        + count(options.partsPerBatch(), "part")
        + " and "
        + StepWording.millimetres(options.heightSpreadMillimetres())
        + " mm of height between them before each. Lowest first is good practice, no standard: turned"
        + " over, a board rests on its tallest parts.";
  }

  private void problems() {
    for (Problem problem : plan.problems()) {
      blocks.add(new Caution(problem.message() + "; " + problem.remedy() + "."));
    }
  }

  private void board(Board board, List<Batch> batches) {
    String built = board.count() > 1 ? ", " + board.count() + " built side by side" : "";
    blocks.add(new Heading(2, "Board " + board.name() + built));
    var done = new ArrayList<Designator>();
    for (Batch batch : batches) {
      batch(board, batch, done);
      batch.steps().forEach(step -> done.addAll(step.designators()));
    }
  }

  private void batch(Board board, Batch batch, List<Designator> done) {
    blocks.add(new Heading(2, StepWording.batchTitle(batch)));
    if (batch.isPluggedIn()) {
      blocks.add(new Paragraph(RAIL_CHECK));
    }
    if (pictures == Pictures.MAPS_AND_PARTS && !board.placements().isEmpty()) {
      blocks.add(map(board, batch, done));
    }
    var said = new HashMap<String, Integer>();
    batch.steps().forEach(step -> step(step, said));
    if (!batch.isPluggedIn()) {
      blocks.add(new Paragraph(StepWording.flip(batch, board.count())));
    }
  }

  private static Figure map(Board board, Batch batch, List<Designator> done) {
    Map<Designator, String> lit = new LinkedHashMap<>();
    batch
        .steps()
        .forEach(
            step -> step.designators().forEach(name -> lit.putIfAbsent(name, "" + step.number())));
    return new Figure(
        BoardMap.of(board, lit, done, batch.steps().get(0).side()),
        "The places of batch " + batch.number() + ", each with the number of its step.");
  }

  /**
   * One step. Work that is the same as in an earlier step of the batch is not told again.
   *
   * @param said what was told in this batch, with the step that told it
   */
  private void step(Step step, Map<String, Integer> said) {
    blocks.add(
        new Heading(3, "Step " + step.number() + ": " + StepWording.shortName(step.partType())));
    if (pictures == Pictures.MAPS_AND_PARTS) {
      blocks.add(new Figure(PartPicture.of(step.partType(), outline(step)), ""));
    }
    var facts = new ArrayList<Fact>();
    facts.add(new Fact("pick", StepWording.pick(step)));
    add(facts, "marked", StepWording.marking(step));
    add(facts, "measure", StepWording.reading(step, meter));
    facts.add(new Fact("where", StepWording.where(step)));
    facts.add(new Fact("way round", StepWording.wayRound(step)));
    String work = StepWording.seat(step) + StepWording.solder(step) + StepWording.lookFor(step);
    Integer earlier = said.putIfAbsent(work, step.number());
    if (earlier == null) {
      facts.add(new Fact("seat", StepWording.seat(step)));
      facts.add(new Fact("solder", StepWording.solder(step)));
      facts.add(new Fact("look for", StepWording.lookFor(step)));
    } else {
      facts.add(new Fact("work", "seat, solder and look as in step " + earlier));
    }
    facts.add(new Fact("why now", StepWording.rule(step)));
    blocks.add(new Facts(facts));
    StepWording.caution(step)
        .filter(text -> said.putIfAbsent(text, step.number()) == null)
        .map(Caution::new)
        .ifPresent(blocks::add);
  }

  private static void add(List<Fact> facts, String name, String text) {
    if (!text.isEmpty()) {
      facts.add(new Fact(name, text));
    }
  }

  /** What to measure with a calliper, so that the order can be trusted. */
  private void heightsToMeasure() {
    var rows = new ArrayList<Row>();
    for (Step step : plan.steps()) {
      boolean soldered = step.stage() != Step.Stage.PLUG_IN;
      if (soldered && step.seatedHeightMillimetres().isEmpty()) {
        rows.add(row(step, "not known"));
      }
    }
    for (Step step : plan.steps()) {
      assumed(step)
          .ifPresent(
              height ->
                  rows.add(row(step, "about " + StepWording.millimetres(height) + " mm assumed")));
    }
    if (!rows.isEmpty()) {
      blocks.add(new Heading(2, "Heights to measure"));
      blocks.add(
          new Paragraph(
              "Nobody states these heights. Measure one part of each and write it in the BOM, in a"
                  + " column \"height mm\"; then the order is sure and needs fewer flips."));
      blocks.add(
          new Table(
              "",
              List.of(
                  new Column("step", Align.END, 5),
                  new Column("part", Align.START, 40),
                  new Column("board", Align.START, 12),
                  new Column("places", Align.START, 25),
                  new Column("height", Align.START, 18)),
              rows));
    }
  }

  private OptionalDouble assumed(Step step) {
    boolean isAssumed =
        outline(step).filter(BodyOutline::isAssumed).isPresent()
            && step.stage() == Step.Stage.SOLDER
            && step.why().contains("assumed");
    return isAssumed ? step.seatedHeightMillimetres() : OptionalDouble.empty();
  }

  private Optional<BodyOutline> outline(Step step) {
    return kit.board(step.board()).map(board -> board.outlines().get(step.designators().get(0)));
  }

  private static Row row(Step step, String height) {
    return new Row(
        Stream.of(
                step.number() + "",
                StepWording.name(step.partType()),
                step.board(),
                DesignatorWords.list(step.designators()),
                height)
            .map(Cell::of)
            .toList());
  }

  /** For machines: a row a step, nothing wrapped or left out. */
  public static Document table(Kit kit, AssemblyPlan plan) {
    Meter meter = Meter.of(kit.settings());
    var rows = new ArrayList<Row>();
    for (Batch batch : plan.batches()) {
      for (Step step : batch.steps()) {
        rows.add(
            new Row(
                CELLS.values().stream()
                    .map(cell -> Cell.of(cell.apply(new At(batch, step, meter))))
                    .toList()));
      }
    }
    List<Column> columns =
        CELLS.keySet().stream().map(header -> new Column(header, Align.START, 1)).toList();
    return new Document(
        "Assembly steps of " + kit.settings().title(), "", List.of(new Table("", columns, rows)));
  }

  private record At(Batch batch, Step step, Meter meter) {}

  private static final Map<String, Function<At, String>> CELLS = cells();

  private static Map<String, Function<At, String>> cells() {
    var cells = new LinkedHashMap<String, Function<At, String>>();
    cells.put("batch", at -> at.batch().number() + "");
    cells.put("step", at -> at.step().number() + "");
    cells.put("board", at -> at.step().board());
    cells.put("units", at -> at.step().units() + "");
    cells.put("side", at -> at.step().side().words());
    cells.put("work", at -> work(at.step()));
    cells.put("part", at -> StepWording.name(at.step().partType()));
    cells.put("kind", at -> at.step().partType().kind().words());
    cells.put("pieces", at -> at.step().partsToPick() + "");
    cells.put("marking", at -> StepWording.marking(at.step()));
    cells.put("measure", at -> StepWording.reading(at.step(), at.meter()));
    cells.put("designators", at -> plain(at.step()));
    cells.put("height mm", at -> height(at.step()));
    cells.put("way round", at -> StepWording.wayRound(at.step()));
    cells.put("seat", at -> StepWording.seat(at.step()));
    cells.put("solder", at -> StepWording.solder(at.step()));
    cells.put("look for", at -> StepWording.lookFor(at.step()));
    cells.put("caution", at -> StepWording.caution(at.step()).orElse(""));
    cells.put("rule", at -> at.step().rule().words());
    cells.put("why", at -> at.step().why());
    return cells;
  }

  private static String plain(Step step) {
    return String.join(" ", step.designators().stream().map(Designator::text).toList());
  }

  private static String height(Step step) {
    return step.seatedHeightMillimetres().isPresent()
        ? StepWording.millimetres(step.seatedHeightMillimetres().getAsDouble())
        : "";
  }

  /** The kind of work in words. */
  private static String work(Step step) {
    return switch (step.stage()) {
      case SOLDER -> "solder";
      case FASTEN_AND_SOLDER -> "fasten and solder";
      case PLUG_IN -> "plug in";
    };
  }

  private static String count(long number, String noun) {
    return number + " " + (number == 1 ? noun : noun + "s");
  }
}
