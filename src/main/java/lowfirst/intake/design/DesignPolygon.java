package lowfirst.intake.design;

import java.util.ArrayList;
import java.util.List;

/**
 * A polygon of IPC-2581 with straight and round edges. It may be moved as a whole: scaled, mirrored
 * about the y axis, turned anticlockwise about its origin, shifted, in this order.
 */
final class DesignPolygon {
  private record Edge(double x, double y, double centreX, double centreY, Kind kind) {
    enum Kind {
      BEGIN,
      LINE,
      CLOCKWISE,
      ANTICLOCKWISE
    }
  }

  private final List<Edge> edges = new ArrayList<>();
  private double xx = 1;
  private double yx = 0;
  private double xy = 0;
  private double yy = 1;
  private double offsetX;
  private double offsetY;
  private boolean mirrored;

  void begin(double x, double y) {
    edges.add(new Edge(x, y, x, y, Edge.Kind.BEGIN));
  }

  void line(double x, double y) {
    edges.add(new Edge(x, y, x, y, Edge.Kind.LINE));
  }

  /** An arc about a centre, from where the last edge ended. */
  void arc(double x, double y, double centreX, double centreY, boolean clockwise) {
    edges.add(
        new Edge(
            x, y, centreX, centreY, clockwise ? Edge.Kind.CLOCKWISE : Edge.Kind.ANTICLOCKWISE));
  }

  int size() {
    return edges.size();
  }

  /** Moves it as a whole. */
  void move(double x, double y, double degrees, boolean mirror, double scale) {
    // Quarter turns are exact, so that a rectangle stays one.
    double quarters = degrees / 90;
    boolean whole = quarters == Math.rint(quarters) && Math.abs(quarters) < 1000;
    double sine =
        whole ? Math.rint(Math.sin(Math.toRadians(degrees))) : Math.sin(Math.toRadians(degrees));
    double cosine =
        whole ? Math.rint(Math.cos(Math.toRadians(degrees))) : Math.cos(Math.toRadians(degrees));
    double side = mirror ? -scale : scale;
    xx = side * cosine;
    yx = side * sine;
    xy = -scale * sine;
    yy = scale * cosine;
    offsetX = x;
    offsetY = y;
    mirrored = mirror;
  }

  /** Widens an extent by its corners and by what its arcs reach beyond them. */
  void addTo(Extent extent) {
    for (Edge edge : edges) {
      double x = movedX(edge.x(), edge.y());
      double y = movedY(edge.x(), edge.y());
      switch (edge.kind()) {
        case BEGIN -> extent.begin(x, y);
        case LINE -> extent.line(x, y);
        default ->
            extent.arc(
                x,
                y,
                movedX(edge.centreX(), edge.centreY()),
                movedY(edge.centreX(), edge.centreY()),
                (edge.kind() == Edge.Kind.CLOCKWISE) != mirrored);
      }
    }
  }

  private double movedX(double x, double y) {
    return xx * x + xy * y + offsetX;
  }

  private double movedY(double x, double y) {
    return yx * x + yy * y + offsetY;
  }
}
