package lowfirst.sheet.steps;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lowfirst.assembly.AssemblyPlan;
import lowfirst.assembly.Step;
import lowfirst.board.Kit;
import lowfirst.part.BodyOutline;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Heading;
import lowfirst.sheet.document.Block.Paragraph;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Block.Table.Align;
import lowfirst.sheet.document.Block.Table.Column;
import lowfirst.sheet.document.Block.Table.Row;
import lowfirst.sheet.document.Tables;
import lowfirst.sheet.wording.DesignatorWords;
import lowfirst.sheet.wording.StepWording;

/** Heights that nobody knows, and those that stand on an assumption. */
final class HeightsToMeasure {
  private HeightsToMeasure() {}

  /** What to measure with a calliper, so that the order can be trusted. */
  static List<Block> blocks(Kit kit, AssemblyPlan plan) {
    var blocks = new ArrayList<Block>();
    var rows = new ArrayList<Row>();
    for (Step step : plan.steps()) {
      boolean soldered = step.stage() != Step.Stage.PLUG_IN;
      if (soldered && step.seatedHeightMillimetres().isEmpty()) {
        rows.add(row(step, "not known"));
      }
    }
    for (Step step : plan.steps()) {
      assumed(kit, step)
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
    return blocks;
  }

  private static OptionalDouble assumed(Kit kit, Step step) {
    boolean isAssumed =
        step.stage() == Step.Stage.SOLDER
            && step.why().contains("assumed")
            && outline(kit, step).filter(BodyOutline::isAssumed).isPresent();
    return isAssumed ? step.seatedHeightMillimetres() : OptionalDouble.empty();
  }

  /** The body found for a step's first place. */
  static Optional<BodyOutline> outline(Kit kit, Step step) {
    return kit.board(step.board()).flatMap(board -> board.outlineOf(step.designators().get(0)));
  }

  private static Row row(Step step, String height) {
    return Tables.row(
        step.number() + "",
        StepWording.name(step.partType()),
        step.board(),
        DesignatorWords.list(step.designators()),
        height);
  }
}
