package lowfirst.sheet.steps;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lowfirst.assembly.AssemblyOptions;
import lowfirst.assembly.AssemblyPlan;
import lowfirst.assembly.Batch;
import lowfirst.assembly.Step;
import lowfirst.board.Board;
import lowfirst.board.Kit;
import lowfirst.part.PartType;
import lowfirst.problem.Problem;
import lowfirst.sheet.body.PartPicture;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Caution;
import lowfirst.sheet.document.Block.Facts;
import lowfirst.sheet.document.Block.Facts.Fact;
import lowfirst.sheet.document.Block.Figure;
import lowfirst.sheet.document.Block.Heading;
import lowfirst.sheet.document.Block.Paragraph;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.map.BoardMaps;
import lowfirst.sheet.wording.Counted;
import lowfirst.sheet.wording.Sentence;
import lowfirst.sheet.wording.StepWording;
import lowfirst.sorting.Meter;

/** The assembly, step by step, as {@code steps} shows it. */
public final class StepsDocument {
  static final String BENCH =
      "The iron is hot enough to burn and its fumes harm lungs: keep your head out of the plume and"
          + " the air moving, park the iron in its stand, wash your hands after tin-lead solder and"
          + " don't eat at the bench (HSE INDG248).";
  static final String LEAD_ENDS =
      "Cut lead ends fly: wear eye protection, and hold each end while you cut it.";
  static final String RAIL_CHECK =
      "First the rail check: with every socket empty, power the board with limited current and"
          + " measure each supply at the sockets' pins. Switch off and wait until the supply reads"
          + " 0 V. Only then plug in.";

  private final Kit kit;
  private final AssemblyPlan plan;
  private final Meter meter;
  private final Pictures pictures;
  private final List<Block> blocks = new ArrayList<>();

  /** Worded once for all steps of a kind: a large board has thousands, of few kinds. */
  private final Map<PartType, Map<Step.Stage, Work>> told = new HashMap<>();

  /** What is told of every step of a sort. */
  private record Work(
      String shortName,
      String name,
      String marking,
      String reading,
      String wayRound,
      String seat,
      String solder,
      String lookFor) {
    List<String> byHand() {
      return List.of(seat, solder, lookFor);
    }
  }

  /** What was told in a batch, the work with the step that told it. */
  private record Said(Map<List<String>, Integer> work, Set<String> cautions) {
    Said() {
      this(new HashMap<>(), new HashSet<>());
    }
  }

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
    blocks.addAll(HeightsToMeasure.blocks(kit, plan));
    return new Document("Assembly steps of " + kit.settings().title(), "", blocks);
  }

  private boolean listsPartsWithoutPlaces() {
    return kit.boards().stream()
        .flatMap(board -> board.items().stream())
        .anyMatch(item -> item.isFitted() && item.designators().isEmpty());
  }

  private String summary(AssemblyOptions options) {
    int steps = plan.steps().size();
    if (steps == 0) {
      return listsPartsWithoutPlaces()
          ? "The BOM lists parts, but names no place for them on a board, such as R1, so there are no"
              + " steps: lowfirst check says what to do."
          : "Nothing in this kit is to be fitted.";
    }
    long flips = plan.batches().stream().filter(batch -> !batch.isPluggedIn()).count();
    int parts = plan.steps().stream().mapToInt(Step::partsToPick).sum();
    return Counted.of(parts, "part")
        + " in "
        + Counted.of(steps, "step")
        + ", "
        + Counted.of(flips, "flip")
        + ": as few as possible with at most "
        + Counted.of(options.partsPerBatch(), "part")
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
    List<BatchSection> sections = BatchSection.of(batches);
    boolean mapped = pictures == Pictures.MAPS_AND_PARTS && !board.placements().isEmpty();
    Iterator<Figure> figures =
        mapped ? maps(board, sections).iterator() : Collections.emptyIterator();
    for (int at = 0; at < sections.size(); at++) {
      section(board, sections.get(at), at == 0, figures);
    }
  }

  private void section(Board board, BatchSection section, boolean isFirst, Iterator<Figure> maps) {
    Batch batch = section.whole();
    blocks.add(new Heading(2, section.title()));
    if (isFirst && !board.placements().isEmpty()) {
      blocks.add(new Paragraph(StepWording.origin(board.outline())));
    }
    if (batch.isPluggedIn()) {
      blocks.add(new Paragraph(RAIL_CHECK));
    }
    if (maps.hasNext()) {
      blocks.add(maps.next());
    }
    var said = new Said();
    batch.steps().forEach(step -> step(step, board, said));
    if (!batch.isPluggedIn()) {
      blocks.add(new Facts(List.of(new Fact(section.flipTitle(), section.flip(board.count())))));
    }
  }

  /** A map over each section, with the places that were filled by then. */
  private static List<Figure> maps(Board board, List<BatchSection> sections) {
    var maps = BoardMaps.of(board);
    var done = new ArrayList<BoardMaps.Layer>();
    var figures = new ArrayList<Figure>();
    for (BatchSection section : sections) {
      Batch batch = section.whole();
      figures.add(map(batch, maps, done));
      done.add(maps.layer(batch.steps().stream().flatMap(s -> s.spots().stream()).toList()));
    }
    return figures;
  }

  private static Figure map(Batch batch, BoardMaps maps, List<BoardMaps.Layer> done) {
    return new Figure(maps.map(AssemblyBook.lit(batch), done, batch.steps().get(0).side()), "");
  }

  /** One step. Work that is the same as in an earlier step of the batch is not told again. */
  private void step(Step step, Board board, Said said) {
    Work work =
        told.computeIfAbsent(step.partType(), type -> new EnumMap<>(Step.Stage.class))
            .computeIfAbsent(step.stage(), stage -> work(step));
    blocks.add(new Heading(3, "Step " + step.number() + ": " + work.shortName()));
    var facts = new ArrayList<Fact>();
    facts.add(new Fact("pick", StepWording.pick(step, work.name())));
    add(facts, "swapped", StepWording.swapped(kit, step));
    add(facts, "marked", work.marking());
    add(facts, "measure", work.reading());
    facts.add(new Fact("where", StepWording.where(step, board.outline())));
    facts.add(new Fact("way round", work.wayRound()));
    Integer earlier = said.work().putIfAbsent(work.byHand(), step.number());
    if (earlier == null) {
      facts.add(new Fact("seat", work.seat()));
      facts.add(new Fact("solder", work.solder()));
      facts.add(new Fact("look for", work.lookFor()));
    } else {
      facts.add(new Fact("work", "seat, solder and look as in step " + earlier));
    }
    facts.add(new Fact("why now", StepWording.rule(step)));
    blocks.add(new Facts(facts, picture(step)));
    StepWording.caution(step)
        .filter(said.cautions()::add)
        .map(Sentence::begun)
        .map(Caution::new)
        .ifPresent(blocks::add);
  }

  private Work work(Step step) {
    return new Work(
        StepWording.shortName(step.partType()),
        StepWording.name(step.partType()),
        StepWording.marking(step),
        StepWording.reading(step, meter),
        StepWording.wayRound(step),
        StepWording.seat(step),
        StepWording.solder(step),
        StepWording.lookFor(step));
  }

  private static void add(List<Fact> facts, String name, String text) {
    if (!text.isEmpty()) {
      facts.add(new Fact(name, text));
    }
  }

  private Optional<Drawing> picture(Step step) {
    return pictures == Pictures.NONE
        ? Optional.empty()
        : Optional.of(PartPicture.of(step.partType(), HeightsToMeasure.outline(kit, step)));
  }

  /** For machines: a row a step, nothing wrapped or left out. */
  public static Document table(Kit kit, AssemblyPlan plan) {
    return new Document(
        "Assembly steps of " + kit.settings().title(), "", List.of(StepsTable.of(kit, plan)));
  }
}
