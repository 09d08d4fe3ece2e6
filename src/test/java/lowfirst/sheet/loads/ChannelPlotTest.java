package lowfirst.sheet.loads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.DoubleStream;
import lowfirst.channel.JunctionCurve;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Shape;
import org.junit.jupiter.api.Test;

/**
 * The plot of a straight curve: 40 °C without load, 10 K more for each ampere, up to 10 A; the
 * limit is 115 °C, so the axis goes from 20 to 160 °C. It is 120 by 62 mm with margins of 16 left,
 * 6 right and above, 13 below: 98 mm for the current, 43 mm for the temperature.
 */
class ChannelPlotTest {

  private static JunctionCurve curve(double loadAmps, double upTo) {
    return new JunctionCurve(
        DoubleStream.iterate(0, amps -> amps <= upTo, amps -> amps + upTo / 5)
            .mapToObj(amps -> new JunctionCurve.Point(amps, 40 + 10 * amps))
            .toList(),
        115,
        loadAmps);
  }

  private static <T> List<T> shapes(Drawing drawing, Class<T> kind) {
    return drawing.shapes().stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  private static Shape.Label label(Drawing drawing, String text) {
    return shapes(drawing, Shape.Label.class).stream()
        .filter(label -> label.text().equals(text))
        .findFirst()
        .orElseThrow(() -> new AssertionError(text + " in " + drawing.shapes()));
  }

  private static double x(double amperes) {
    return 16 + 98 * amperes / 10;
  }

  private static double y(double celsius) {
    return 49 - 43 * (celsius - 20) / 140;
  }

  @Test
  void the_curve_runs_through_its_points_and_the_load_is_a_ring_on_it() {
    Drawing plot = ChannelPlot.of(curve(3, 10));
    assertEquals(120, plot.widthMillimetres());
    assertEquals(62, plot.heightMillimetres());
    Shape.Path line = shapes(plot, Shape.Path.class).get(0);
    assertEquals(Shape.Path.Closing.OPEN, line.closing());
    assertEquals(6, line.points().size());
    for (int i = 0; i < 6; i++) {
      assertEquals(x(2 * i), line.points().get(i).x(), 1e-9);
      assertEquals(y(40 + 20 * i), line.points().get(i).y(), 1e-9);
    }
    // 3 A lie between the points at 2 and 4 A: 70 °C.
    Shape.Circle ring = shapes(plot, Shape.Circle.class).get(0);
    assertEquals(x(3), ring.x(), 1e-9);
    assertEquals(y(70), ring.y(), 1e-9);
    Shape.Label load = label(plot, "load 3 A");
    assertEquals(x(3) + 2, load.x(), 1e-9);
    assertEquals(y(70) - 2, load.y(), 1e-9);
    assertEquals(Shape.Label.Anchor.START, load.anchor());
    assertEquals(
        "Junction temperature against load current: 70 °C at the load's 3 A; the limit is 115 °C.",
        plot.words());
    assertTrue(
        shapes(plot, Shape.Line.class).stream()
            .anyMatch(
                upright ->
                    upright.x1() == x(3)
                        && upright.x2() == x(3)
                        && Math.abs(upright.y1() - 49) < 1e-9
                        && Math.abs(upright.y2() - y(70)) < 1e-9));
  }

  @Test
  void a_load_in_the_right_half_has_its_words_to_the_left() {
    Shape.Label load = label(ChannelPlot.of(curve(8, 10)), "load 8 A");
    assertEquals(x(8) - 2, load.x(), 1e-9);
    assertEquals(Shape.Label.Anchor.END, load.anchor());
  }

  /** A label above a line is covered by none that was drawn before, and is drawn last itself. */
  @Test
  void the_words_of_limit_and_load_stand_on_white() {
    Drawing plot = ChannelPlot.of(curve(8, 10));
    for (String words : List.of("limit 115 °C", "load 8 A")) {
      Shape.Label label = label(plot, words);
      int at = plot.shapes().indexOf(label);
      Shape.Box white = (Shape.Box) plot.shapes().get(at - 1);
      boolean start = label.anchor() == Shape.Label.Anchor.START;
      assertEquals(label.x(), white.x() + (start ? 0 : white.width()), 1e-9);
      assertTrue(white.y() < label.y() - 2 && white.y() + white.height() > label.y());
    }
  }

  @Test
  void the_axes_have_round_numbers() {
    Drawing plot = ChannelPlot.of(curve(3, 10));
    for (int celsius = 20; celsius <= 160; celsius += 20) {
      Shape.Label mark = label(plot, "" + celsius);
      assertEquals(14.5, mark.x(), 1e-9);
      assertEquals(y(celsius) + 1, mark.y(), 1e-9);
    }
    // A fifth of 10 A is 2 A.
    for (int amperes = 0; amperes <= 10; amperes += 2) {
      int here = amperes;
      Shape.Label mark =
          shapes(plot, Shape.Label.class).stream()
              .filter(found -> found.text().equals("" + here) && found.y() > 50)
              .findFirst()
              .orElseThrow();
      assertEquals(x(amperes), mark.x(), 1e-9);
      assertEquals(53, mark.y(), 1e-9);
    }
    assertEquals(4, label(plot, "junction temperature, °C").y(), 1e-9);
    assertEquals(114, label(plot, "load current, A").x(), 1e-9);
    assertEquals(59.5, label(plot, "load current, A").y(), 1e-9);
  }

  @Test
  void the_grid_stands_behind_its_numbers_between_two_axes() {
    List<Shape.Line> lines = shapes(ChannelPlot.of(curve(3, 10)), Shape.Line.class);
    List<Shape.Line> level =
        lines.stream().filter(l -> l.y1() == l.y2() && l.x2() - l.x1() > 97).toList();
    // Eight temperatures, and the axis.
    assertEquals(9, level.size());
    for (Shape.Line line : level) {
      assertEquals(16, line.x1(), 1e-9);
      assertEquals(114, line.x2(), 1e-9);
    }
    List<Shape.Line> upright =
        lines.stream().filter(l -> l.x1() == l.x2() && Math.abs(l.y1() - l.y2()) > 42).toList();
    // 0, 2, 4, 6, 8, 10 A, and the axis.
    assertEquals(7, upright.size());
    for (Shape.Line line : upright) {
      assertEquals(6, Math.min(line.y1(), line.y2()), 1e-9);
      assertEquals(49, Math.max(line.y1(), line.y2()), 1e-9);
    }
  }

  /** Dashes of 1.8 mm every 3 mm: 33 of them on 98 mm. */
  @Test
  void the_limit_is_dashed() {
    Drawing plot = ChannelPlot.of(curve(3, 10));
    List<Shape.Line> dashes =
        shapes(plot, Shape.Line.class).stream()
            .filter(line -> Math.abs(line.y1() - y(115)) < 1e-9)
            .toList();
    assertEquals(33, dashes.size());
    assertEquals(16, dashes.get(0).x1(), 1e-9);
    for (Shape.Line dash : dashes) {
      assertEquals(Math.min(dash.x1() + 1.8, 114), dash.x2(), 1e-9);
      assertEquals(dash.y1(), dash.y2(), 1e-9);
    }
    assertEquals(17, label(plot, "limit 115 °C").x(), 1e-9);
    assertEquals(y(115) - 1, label(plot, "limit 115 °C").y(), 1e-9);
  }

  /** The curve ends at 5 A; a load of 8 A has no steady temperature. The axis ends at 8.4 A. */
  @Test
  void a_load_beyond_the_curve_is_off_the_chart() {
    Drawing plot = ChannelPlot.of(curve(8, 5));
    assertTrue(shapes(plot, Shape.Circle.class).isEmpty());
    Shape.Label load = label(plot, "load 8 A: off the chart");
    assertEquals(16 + 98 * 8 / 8.4 - 2, load.x(), 1e-9);
    assertEquals(10, load.y(), 1e-9);
    assertTrue(plot.words().contains("no steady temperature at the load's 8 A"), plot.words());
  }

  /** 14 A would be 180 °C: above the axis, so only points up to 160 °C are drawn. */
  @Test
  void what_is_hotter_than_the_axis_is_left_out() {
    Drawing plot = ChannelPlot.of(curve(14, 15));
    assertEquals(5, shapes(plot, Shape.Path.class).get(0).points().size());
    label(plot, "load 14 A: off the chart");
    assertTrue(plot.words().contains("180 °C at the load's 14 A"), plot.words());
  }

  /** A fifth of 25, 12 and 0.6 A: marks every 5, 2 and 0.1 A. */
  @Test
  void marks_are_one_two_or_five() {
    label(ChannelPlot.of(curve(3, 25)), "25");
    label(ChannelPlot.of(curve(3, 25)), "5");
    label(ChannelPlot.of(curve(3, 12)), "12");
    label(ChannelPlot.of(curve(0.3, 0.6)), "0.3");
  }
}
