package lowfirst.intake.design;

import java.util.OptionalDouble;
import lowfirst.intake.xml.XmlCursor.Refused;

/**
 * Reads how far the figures of an IPC-2581 file reach: its outlines, drawings and profiles, made of
 * polygons with straight and round edges. How lines are drawn and filled is passed over.
 */
final class DesignFigures {
  /** No body or board has so many; they are kept until the polygon ends. */
  private static final int MOST_CORNERS = 50_000;

  private final DesignCursor xml;

  DesignFigures(DesignCursor xml) {
    this.xml = xml;
  }

  /** Widens an extent by the polygons within the element at hand, however deep they lie. */
  void addTo(Extent extent) throws Refused {
    int depth = xml.depth();
    while (xml.next(depth)) {
      shape(extent);
    }
  }

  private void shape(Extent extent) throws Refused {
    switch (xml.name()) {
      case "Polygon", "Polyline" -> polygon().addTo(extent);
      // Holes in a profile don't widen it; marks on a drawing are no body.
      case "Cutout", "Marking", "Xform", "Location", "LineDesc", "LineDescRef", "FillDesc" -> {}
      default -> addTo(extent);
    }
  }

  /** The corners of the polygon at hand, and how it is moved, which may be said after them. */
  private DesignPolygon polygon() throws Refused {
    int depth = xml.depth();
    var polygon = new DesignPolygon();
    while (xml.next(depth)) {
      OptionalDouble x = xml.number("x");
      OptionalDouble y = xml.number("y");
      if (xml.name().equals("Xform")) {
        polygon.move(
            xml.number("xOffset").orElse(0),
            xml.number("yOffset").orElse(0),
            xml.number("rotation").orElse(0),
            xml.isTrue("mirror"),
            xml.number("scale").orElse(1));
      } else if (x.isPresent() && y.isPresent()) {
        if (polygon.size() >= MOST_CORNERS) {
          throw new Refused(xml.spot(), "a polygon has more than " + MOST_CORNERS + " corners");
        }
        switch (xml.name()) {
          case "PolyBegin" -> polygon.begin(x.getAsDouble(), y.getAsDouble());
          case "PolyStepSegment" -> polygon.line(x.getAsDouble(), y.getAsDouble());
          case "PolyStepCurve" -> curve(polygon, x.getAsDouble(), y.getAsDouble());
          default -> {
            // How its line is drawn.
          }
        }
      }
    }
    return polygon;
  }

  private void curve(DesignPolygon polygon, double x, double y) {
    OptionalDouble centreX = xml.number("centerX");
    OptionalDouble centreY = xml.number("centerY");
    if (centreX.isPresent() && centreY.isPresent()) {
      boolean clockwise = xml.isTrue("clockwise");
      polygon.arc(x, y, centreX.getAsDouble(), centreY.getAsDouble(), clockwise);
    }
  }
}
