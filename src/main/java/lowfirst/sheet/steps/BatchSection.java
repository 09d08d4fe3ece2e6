package lowfirst.sheet.steps;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import lowfirst.assembly.Batch;
import lowfirst.assembly.Step;
import lowfirst.board.Side;
import lowfirst.sheet.wording.StepWording;

/**
 * Batches under one heading, with one map: one batch, or several in a row of which nobody knows how
 * tall they are. Each of those is a step or two, and has a flip of its own.
 */
record BatchSection(List<Batch> batches) {

  /** The sections of one board, in the order to work. */
  static List<BatchSection> of(List<Batch> batches) {
    var sections = new ArrayList<BatchSection>();
    var open = new ArrayList<Batch>();
    for (Batch batch : batches) {
      boolean joins =
          !open.isEmpty()
              && isOfUnknownHeight(open.get(0))
              && isOfUnknownHeight(batch)
              && side(open.get(0)) == side(batch);
      if (!joins && !open.isEmpty()) {
        sections.add(new BatchSection(List.copyOf(open)));
        open.clear();
      }
      open.add(batch);
    }
    if (!open.isEmpty()) {
      sections.add(new BatchSection(List.copyOf(open)));
    }
    return sections;
  }

  private static boolean isOfUnknownHeight(Batch batch) {
    return !batch.isPluggedIn()
        && batch.steps().stream().allMatch(step -> step.seatedHeightMillimetres().isEmpty());
  }

  private static Side side(Batch batch) {
    return batch.steps().get(0).side();
  }

  /** All of them as if they were one. */
  Batch whole() {
    List<Step> steps = batches.stream().flatMap(batch -> batch.steps().stream()).toList();
    return new Batch(batches.get(0).number(), batches.get(0).board(), steps);
  }

  /**
   * What stands over it, for example {@code Batches 4 to 6: 7 parts, height not known, top side}.
   */
  String title() {
    String title = StepWording.batchTitle(whole());
    return batches.size() == 1
        ? title
        : title.replaceFirst(
            "Batch \\d+",
            "Batches "
                + batches.get(0).number()
                + " to "
                + batches.get(batches.size() - 1).number());
  }

  /** When to flip, for example {@code Flip after steps 4 and 7}. */
  String flipTitle() {
    if (batches.size() == 1) {
      return "Flip now";
    }
    List<Integer> last =
        batches.stream()
            .map(batch -> batch.steps().get(batch.steps().size() - 1).number())
            .toList();
    int most = last.get(last.size() - 1);
    if (last.size() > 2 && most - last.get(0) == last.size() - 1) {
      return "Flip after each of steps " + last.get(0) + " to " + most;
    }
    return last.stream()
        .map(String::valueOf)
        .limit(last.size() - 1L)
        .collect(Collectors.joining(", ", "Flip after steps ", " and " + most));
  }

  /** What to do at a flip. */
  String flip(int units) {
    return batches.size() == 1
        ? StepWording.flip(batches.get(0), units)
        : "each time " + StepWording.flip(units);
  }
}
