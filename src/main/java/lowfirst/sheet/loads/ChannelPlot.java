package lowfirst.sheet.loads;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lowfirst.channel.JunctionCurve;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Ink;
import lowfirst.sheet.drawing.Shape;
import lowfirst.sheet.drawing.Shape.Label;
import lowfirst.sheet.drawing.Shape.Line;
import lowfirst.sheet.drawing.Shape.Paint;
import lowfirst.sheet.drawing.Shape.Path;
import lowfirst.sheet.drawing.Shape.Point;

/**
 * Junction temperature against load current, with the limit: where people would rather look than
 * read. Legible in black and white: the curve is solid, the limit dashed, the load a ring.
 */
final class ChannelPlot {
  private static final double WIDTH = 120;
  private static final double HEIGHT = 62;
  private static final double LEFT = 16;
  private static final double RIGHT = 6;
  private static final double TOP = 6;
  private static final double BOTTOM = 13;
  private static final double TYPE = 2.8;
  private static final Ink GREY = new Ink(0x999999);
  private static final Ink CURVE = new Ink(0x1F4E79);
  private static final Ink LIMIT = new Ink(0xB00020);

  private final JunctionCurve curve;
  private final double largestAmps;
  private final double lowestCelsius;
  private final double highestCelsius;
  private final List<Shape> shapes = new ArrayList<>();

  private ChannelPlot(JunctionCurve curve) {
    this.curve = curve;
    double last = curve.points().get(curve.points().size() - 1).amperes();
    this.largestAmps = Math.max(last, 1.05 * curve.loadAmps());
    this.lowestCelsius = 20;
    this.highestCelsius = 20 * Math.ceil((curve.limitCelsius() + 45) / 20);
  }

  /** The drawing of a curve. */
  static Drawing of(JunctionCurve curve) {
    return new ChannelPlot(curve).drawing();
  }

  private Drawing drawing() {
    axes();
    limit();
    curve();
    load();
    return new Drawing(WIDTH, HEIGHT, shapes, words());
  }

  private String words() {
    return String.format(
        Locale.ROOT,
        "Junction temperature against load current: %s at the load's %s; the limit is %s.",
        celsiusAtLoad(),
        LoadsWords.amps(curve.loadAmps()),
        LoadsWords.celsius(curve.limitCelsius()));
  }

  private String celsiusAtLoad() {
    double at = at(curve.loadAmps());
    return Double.isNaN(at) ? "no steady temperature" : LoadsWords.celsius(at);
  }

  private double x(double amps) {
    return LEFT + amps / largestAmps * (WIDTH - LEFT - RIGHT);
  }

  private double y(double celsius) {
    double share = (celsius - lowestCelsius) / (highestCelsius - lowestCelsius);
    return HEIGHT - BOTTOM - share * (HEIGHT - TOP - BOTTOM);
  }

  private void axes() {
    for (double celsius = lowestCelsius; celsius <= highestCelsius; celsius += 20) {
      shapes.add(new Line(LEFT, y(celsius), WIDTH - RIGHT, y(celsius), Paint.stroke(GREY, 0.1)));
      label(LEFT - 1.5, y(celsius) + 1, Label.Anchor.END, whole(celsius));
    }
    double step = step(largestAmps);
    for (int i = 0; i * step <= largestAmps; i++) {
      double amps = i * step;
      shapes.add(new Line(x(amps), y(lowestCelsius), x(amps), TOP, Paint.stroke(GREY, 0.1)));
      label(x(amps), y(lowestCelsius) + 4, Label.Anchor.MIDDLE, trimmed(amps));
    }
    Paint axis = Paint.stroke(Ink.BLACK, 0.3);
    shapes.add(new Line(LEFT, TOP, LEFT, y(lowestCelsius), axis));
    shapes.add(new Line(LEFT, y(lowestCelsius), WIDTH - RIGHT, y(lowestCelsius), axis));
    label(LEFT, TOP - 2, Label.Anchor.START, "junction temperature, °C");
    label(WIDTH - RIGHT, HEIGHT - 2.5, Label.Anchor.END, "load current, A");
  }

  /** A round step with five to ten marks. */
  private static double step(double largest) {
    double power = Math.pow(10, Math.floor(Math.log10(largest / 5)));
    double share = largest / 5 / power;
    return power * (share >= 5 ? 5 : share >= 2 ? 2 : 1);
  }

  private void limit() {
    double y = y(curve.limitCelsius());
    for (double from = LEFT; from < WIDTH - RIGHT; from += 3) {
      shapes.add(
          new Line(from, y, Math.min(from + 1.8, WIDTH - RIGHT), y, Paint.stroke(LIMIT, 0.4)));
    }
    // At the left, where the curve is still far below.
    labelOnWhite(
        LEFT + 1, y - 1, Label.Anchor.START, "limit " + LoadsWords.celsius(curve.limitCelsius()));
  }

  private void curve() {
    List<Point> points =
        curve.points().stream()
            .filter(point -> point.celsius() <= highestCelsius)
            .map(point -> new Point(x(point.amperes()), y(point.celsius())))
            .toList();
    if (points.size() > 1) {
      shapes.add(new Path(points, Path.Closing.OPEN, Paint.stroke(CURVE, 0.6)));
    }
  }

  private void load() {
    double amps = curve.loadAmps();
    double celsius = at(amps);
    boolean beyond = Double.isNaN(celsius) || celsius > highestCelsius;
    double y = beyond ? TOP : y(celsius);
    shapes.add(new Line(x(amps), y(lowestCelsius), x(amps), y, Paint.stroke(Ink.BLACK, 0.2)));
    if (!beyond) {
      shapes.add(new Shape.Circle(x(amps), y, 1.3, Paint.both(Ink.WHITE, Ink.BLACK, 0.4)));
    }
    boolean right = x(amps) > WIDTH / 2;
    labelOnWhite(
        x(amps) + (right ? -2 : 2),
        beyond ? TOP + 4 : y - 2,
        right ? Label.Anchor.END : Label.Anchor.START,
        "load " + LoadsWords.amps(amps) + (beyond ? ": off the chart" : ""));
  }

  /** The curve's temperature at a current, between its points; NaN beyond its end. */
  private double at(double amps) {
    var points = curve.points();
    for (int i = 1; i < points.size(); i++) {
      var low = points.get(i - 1);
      var high = points.get(i);
      if (amps <= high.amperes()) {
        double share = (amps - low.amperes()) / (high.amperes() - low.amperes());
        return low.celsius() + share * (high.celsius() - low.celsius());
      }
    }
    return Double.NaN;
  }

  /** A label among the lines, on white that no line crosses. */
  private void labelOnWhite(double x, double y, Label.Anchor anchor, String text) {
    double width = Label.width(text, TYPE) * 0.75;
    double left = anchor == Label.Anchor.END ? x - width : x;
    shapes.add(new Shape.Box(left, y - TYPE * 0.8, width, TYPE * 1.05, 0, Paint.fill(Ink.WHITE)));
    label(x, y, anchor, text);
  }

  private void label(double x, double y, Label.Anchor anchor, String text) {
    shapes.add(new Label(x, y, TYPE, anchor, Ink.BLACK, text));
  }

  private static String whole(double value) {
    return String.format(Locale.ROOT, "%.0f", value);
  }

  private static String trimmed(double value) {
    return lowfirst.quantity.Quantity.of(value, lowfirst.quantity.Dimension.RATIO).rounded(3);
  }
}
