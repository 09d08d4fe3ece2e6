package lowfirst.sheet.map;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import lowfirst.assembly.Step;
import lowfirst.progress.Progress;
import lowfirst.progress.State;
import lowfirst.progress.Tally;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Ink;
import lowfirst.sheet.drawing.Shape;
import lowfirst.sheet.drawing.Shape.Paint;
import lowfirst.sheet.drawing.Shape.Point;
import lowfirst.sheet.wording.Counted;

/**
 * The whole job as one low picture: every step a bar that is taller the taller its part is, filled
 * from below as it is seated, soldered and inspected. The step on the bench carries a mark.
 */
public final class Skyline {
  private static final double BAR = 4;
  private static final double GAP = 1.2;
  private static final double TALLEST = 17;
  private static final double LOWEST = 3;

  /** Room above the bars for the mark. */
  private static final double HEAD = 5;

  private static final Ink EDGE = new Ink(0x5A5A5A);
  private static final Ink FILLING = new Ink(0x2F2F2F);

  private Skyline() {}

  /** The steps of a plan as they stand. */
  public static Drawing of(Progress progress, OptionalInt current) {
    List<Step> steps = progress.plan().steps();
    double tallest =
        steps.stream()
            .mapToDouble(step -> step.seatedHeightMillimetres().orElse(0))
            .max()
            .orElse(1);
    var shapes = new ArrayList<Shape>();
    int finished = 0;
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      Tally tally = progress.tally(step);
      double x = GAP + i * (BAR + GAP);
      bar(shapes, x, height(step, tallest), share(tally));
      if (current.isPresent() && current.getAsInt() == step.number()) {
        mark(shapes, x + BAR / 2);
      }
      finished += tally.isFinished() ? 1 : 0;
    }
    double width = GAP + Math.max(1, steps.size()) * (BAR + GAP);
    return new Drawing(
        width,
        HEAD + TALLEST + 1,
        shapes,
        finished + " of " + Counted.of(steps.size(), "step") + " finished, the lowest parts first");
  }

  private static void bar(List<Shape> shapes, double x, double height, double share) {
    double foot = HEAD + TALLEST;
    if (share > 0) {
      shapes.add(
          new Shape.Box(x, foot - height * share, BAR, height * share, 0, Paint.fill(FILLING)));
    }
    shapes.add(new Shape.Box(x, foot - height, BAR, height, 0, Paint.stroke(EDGE, 0.5)));
  }

  private static void mark(List<Shape> shapes, double middle) {
    shapes.add(
        new Shape.Path(
            List.of(new Point(middle - 3, 0.2), new Point(middle + 3, 0.2), new Point(middle, 4.4)),
            Shape.Path.Closing.CLOSED,
            Paint.fill(Ink.BLACK)));
  }

  /** By the root of the height, so that a resistor still shows beside a tall capacitor. */
  private static double height(Step step, double tallest) {
    double share = Math.sqrt(step.seatedHeightMillimetres().orElse(tallest) / tallest);
    return LOWEST + (TALLEST - LOWEST) * Math.min(1, share);
  }

  /** A third for each of the three states reached, over all parts; what is set aside counts all. */
  private static double share(Tally tally) {
    double rounds =
        tally.reached(State.SEATED)
            + tally.reached(State.SOLDERED)
            + tally.reached(State.INSPECTED)
            + 3.0 * tally.in(State.SET_ASIDE);
    return tally.total() == 0 ? 0 : rounds / (3.0 * tally.total());
  }
}
