package lowfirst.sheet.map;

import static lowfirst.progress.SmallPlan.ONE;
import static lowfirst.progress.SmallPlan.PLAN;
import static lowfirst.progress.SmallPlan.TWO;
import static lowfirst.progress.SmallPlan.tick;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import lowfirst.progress.Event;
import lowfirst.progress.Progress;
import lowfirst.progress.State;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Shape;
import org.junit.jupiter.api.Test;

/** The job as bars: steps of 1, 2 and 3 mm, of four, two and two places on both units. */
class SkylineTest {
  /** A bar reaches from 3 mm to 17 mm, by the root of its height over the tallest. */
  private static final double LOW = 3 + 14 * Math.sqrt(1.0 / 3);

  private static final double MIDDLE = 3 + 14 * Math.sqrt(2.0 / 3);

  @Test
  void without_work_there_are_outlines_that_stand_on_one_line() {
    Drawing skyline = skyline();
    List<Shape.Box> bars = boxes(skyline);
    assertEquals(3, bars.size());
    assertEquals(LOW, bars.get(0).height(), 1e-9);
    assertEquals(MIDDLE, bars.get(1).height(), 1e-9);
    assertEquals(17, bars.get(2).height(), 1e-9);
    for (int i = 0; i < 3; i++) {
      assertEquals(22, bars.get(i).y() + bars.get(i).height(), 1e-9, "all on the foot");
      assertEquals(1.2 + i * 5.2, bars.get(i).x(), 1e-9);
    }
    assertEquals(1.2 + 3 * 5.2, skyline.widthMillimetres(), 1e-9);
    assertEquals(23, skyline.heightMillimetres(), 1e-9);
    assertEquals("0 of 3 steps finished, the lowest parts first", skyline.words());
  }

  /** Two of four places seated and one of these soldered: 3 of 12 thirds. */
  @Test
  void a_bar_fills_from_below_by_a_third_for_each_state_of_each_place() {
    List<Shape.Box> bars =
        boxes(skyline(tick(1, ONE, State.SEATED, "R1", "R2"), tick(2, ONE, State.SOLDERED, "R1")));
    assertEquals(4, bars.size());
    assertEquals(LOW * 3 / 12, bars.get(0).height(), 1e-9);
    assertEquals(22, bars.get(0).y() + bars.get(0).height(), 1e-9);
    assertEquals(LOW, bars.get(1).height(), 1e-9);
  }

  @Test
  void what_is_set_aside_counts_as_done() {
    Drawing skyline =
        skyline(tick(1, ONE, State.INSPECTED, "D1"), tick(2, TWO, State.SET_ASIDE, "D1"));
    List<Shape.Box> bars = boxes(skyline);
    assertEquals(bars.get(2).height(), bars.get(1).height(), 1e-9, "filled to the top");
    assertEquals("1 of 3 steps finished, the lowest parts first", skyline.words());
  }

  @Test
  void the_step_on_the_bench_bears_a_mark_over_its_middle() {
    Drawing skyline = Skyline.of(Progress.of(PLAN, List.of()), OptionalInt.of(2));
    List<Shape.Path> marks =
        skyline.shapes().stream()
            .filter(Shape.Path.class::isInstance)
            .map(Shape.Path.class::cast)
            .toList();
    assertEquals(1, marks.size());
    // The second bar reaches from 6.4 to 10.4 mm; the mark points down to its middle.
    assertEquals(
        List.of(new Shape.Point(5.4, 0.2), new Shape.Point(11.4, 0.2), new Shape.Point(8.4, 4.4)),
        marks.get(0).points());
  }

  private static Drawing skyline(Event... events) {
    return Skyline.of(Progress.of(PLAN, List.of(events)), OptionalInt.empty());
  }

  private static List<Shape.Box> boxes(Drawing drawing) {
    return drawing.shapes().stream()
        .filter(Shape.Box.class::isInstance)
        .map(Shape.Box.class::cast)
        .toList();
  }
}
