package lowfirst.sheet.steps;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import lowfirst.assembly.AssemblyPlan;
import lowfirst.assembly.Batch;
import lowfirst.assembly.Step;
import lowfirst.board.Designator;
import lowfirst.board.Kit;
import lowfirst.sheet.document.Block.Cell;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Block.Table.Align;
import lowfirst.sheet.document.Block.Table.Column;
import lowfirst.sheet.document.Block.Table.Row;
import lowfirst.sheet.wording.StepWording;
import lowfirst.sorting.Meter;

/** The assembly as one table for machines: to add a column, add a line to {@link #cells}. */
final class StepsTable {
  private StepsTable() {}

  static Table of(Kit kit, AssemblyPlan plan) {
    Meter meter = Meter.of(kit.settings());
    var rows = new ArrayList<Row>();
    for (Batch batch : plan.batches()) {
      for (Step step : batch.steps()) {
        var at = new At(batch, step, meter);
        rows.add(new Row(CELLS.values().stream().map(cell -> Cell.of(cell.apply(at))).toList()));
      }
    }
    List<Column> columns =
        CELLS.keySet().stream().map(header -> new Column(header, Align.START, 1)).toList();
    return new Table("", columns, rows);
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
}
