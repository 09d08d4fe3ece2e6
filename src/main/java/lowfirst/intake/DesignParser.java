package lowfirst.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import lowfirst.intake.DesignData.At;
import lowfirst.intake.DesignData.BomItem;
import lowfirst.intake.DesignData.Characteristic;
import lowfirst.intake.DesignData.Component;
import lowfirst.intake.DesignData.Move;
import lowfirst.intake.DesignData.RefDes;
import lowfirst.intake.XmlCursor.Refused;
import lowfirst.intake.XmlCursor.Spot;

/**
 * Takes from an IPC-2581 file what tells of parts: the bill of materials, the approved makers'
 * numbers, the board's profile, packages and components. Copper, drills and nets are passed over.
 * Element and attribute names are those of the standard, which revisions A to C share.
 */
final class DesignParser {
  static final String ROOT = "IPC-2581";

  /** A board with more parts, packages and bill lines than this is not built by hand. */
  private static final int MOST_RECORDS = 200_000;

  /** No body or board has so many; they are kept until the polygon ends. */
  private static final int MOST_CORNERS = 50_000;

  /** What a name is about, in a qualified name. */
  private static final Pattern QUALIFIER = Pattern.compile("^[A-Z_]{2,20}:(?=.)");

  private final XmlCursor xml;
  private final DesignData data = new DesignData();
  private int records;

  private DesignParser(XmlCursor xml) {
    this.xml = xml;
  }

  /** What the file says; nothing of it when it is broken or out of bounds. */
  static DesignData parse(byte[] bytes) throws Refused {
    var parser = new DesignParser(XmlCursor.of(bytes));
    if (!parser.xml.root().equals(ROOT)) {
      throw new Refused(parser.xml.spot(), "its root element is not " + ROOT);
    }
    parser.document();
    for (DesignData.Step step : parser.data.steps) {
      step.packages.values().forEach(body -> body.settle(parser.data.padStacks));
    }
    return parser.data;
  }

  private void document() throws Refused {
    data.revision = xml.attribute("revision");
    while (xml.next(1)) {
      switch (xml.name()) {
        case "Content" -> content();
        case "Bom" -> bom();
        case "Avl" -> avl();
        case "Ecad" -> ecad();
        default -> {
          // History and logistics tell nothing of parts.
        }
      }
    }
  }

  private void count() throws Refused {
    if (++records > MOST_RECORDS) {
      throw new Refused(xml.spot(), "it holds more than " + MOST_RECORDS + " parts and packages");
    }
  }

  private void content() throws Refused {
    int depth = xml.depth();
    while (xml.next(depth)) {
      if (xml.name().equals("StepRef") || xml.name().equals("BomRef")) {
        data.named.add(reference("name"));
      }
    }
  }

  private void bom() throws Refused {
    int depth = xml.depth();
    var bom = new DesignData.Bom(reference("name"), new ArrayList<>(), new ArrayList<BomItem>());
    data.boms.add(bom);
    while (xml.next(depth)) {
      if (xml.name().equals("BomItem")) {
        bomItem(bom);
      } else if (xml.name().equals("BomHeader")) {
        stepsOf(bom);
      }
    }
  }

  private void stepsOf(DesignData.Bom bom) throws Refused {
    int depth = xml.depth();
    while (xml.next(depth)) {
      if (xml.name().equals("StepRef")) {
        bom.steps().add(reference("name"));
      }
    }
  }

  private void bomItem(DesignData.Bom bom) throws Refused {
    count();
    int depth = xml.depth();
    var item =
        new BomItem(
            xml.spot(),
            reference("OEMDesignNumberRef"),
            xml.attribute("internalPartNumber"),
            xml.attribute("quantity"),
            xml.attribute("description"),
            xml.attribute("category"),
            new ArrayList<>(),
            new ArrayList<>());
    while (xml.next(depth)) {
      if (xml.name().equals("RefDes")) {
        count();
        item.places()
            .add(
                new RefDes(
                    xml.spot(),
                    reference("name"),
                    reference("packageRef"),
                    xml.attribute("populate")));
      } else if (xml.name().equals("Characteristics")) {
        characteristics(item.characteristics());
      }
    }
    bom.items().add(item);
  }

  private void characteristics(List<Characteristic> into) throws Refused {
    int depth = xml.depth();
    while (xml.next(depth)) {
      count();
      String kind = xml.name().toLowerCase(Locale.ROOT);
      String name = xml.attribute(kind + "CharacteristicName");
      boolean ranged = kind.equals("ranged");
      String value = xml.attribute(kind + "Characteristic" + (ranged ? "LowerValue" : "Value"));
      String upper = ranged ? xml.attribute("rangedCharacteristicUpperValue") : "";
      if (!name.isEmpty() && !(value.isEmpty() && upper.isEmpty())) {
        into.add(
            new Characteristic(
                xml.spot(),
                name,
                value,
                upper,
                xml.attribute("engineeringUnitOfMeasure"),
                xml.attribute("engineeringNegativeTolerance"),
                xml.attribute("engineeringPositiveTolerance")));
      }
    }
  }

  private void avl() throws Refused {
    int depth = xml.depth();
    while (xml.next(depth)) {
      if (xml.name().equals("AvlItem")) {
        avlItem();
      }
    }
  }

  /** The chosen maker's number of an item, else the first. */
  private void avlItem() throws Refused {
    int depth = xml.depth();
    String number = reference("OEMDesignNumber");
    while (xml.next(depth)) {
      if (xml.name().equals("AvlVmpn")) {
        boolean chosen = isTrue("chosen");
        int inside = xml.depth();
        while (xml.next(inside)) {
          if (xml.name().equals("AvlMpn") && !xml.attribute("name").isEmpty()) {
            count();
            String name = xml.attribute("name");
            data.makersNumbers.merge(number, name, (first, next) -> chosen ? next : first);
          }
        }
      }
    }
  }

  private void ecad() throws Refused {
    int depth = xml.depth();
    while (xml.next(depth)) {
      if (xml.name().equals("CadHeader")) {
        data.units = xml.attribute("units");
      } else if (xml.name().equals("CadData")) {
        cadData();
      }
    }
  }

  private void cadData() throws Refused {
    int depth = xml.depth();
    while (xml.next(depth)) {
      switch (xml.name()) {
        case "Layer" -> {
          count();
          data.layerSides.put(reference("name"), xml.attribute("side"));
        }
        case "Stackup" -> data.thickness = xml.attribute("overallThickness");
        case "Step" -> step();
        default -> {
          // Nothing of parts.
        }
      }
    }
  }

  private void step() throws Refused {
    count();
    int depth = xml.depth();
    var step = new DesignData.Step(reference("name"), xml.attribute("type"));
    data.steps.add(step);
    while (xml.next(depth)) {
      switch (xml.name()) {
        case "Profile" -> figure(step.profile);
        case "PadStackDef" -> padStack();
        case "Package" -> bodyOf(step);
        case "Component" -> component(step);
        default -> {
          // Copper, drills and nets.
        }
      }
    }
  }

  private void component(DesignData.Step step) throws Refused {
    count();
    int depth = xml.depth();
    Spot spot = xml.spot();
    String name = reference("refDes");
    String packageName = reference("packageRef");
    String part = xml.attribute("part");
    String layer = reference("layerRef");
    String mountType = xml.attribute("mountType");
    String height = xml.attribute("height");
    String standOff = xml.attribute("standoff");
    Move move = Move.NONE;
    Optional<At> location = Optional.empty();
    while (xml.next(depth)) {
      if (xml.name().equals("Xform")) {
        move = move();
      } else if (xml.name().equals("Location")) {
        location = Optional.of(at());
      }
    }
    step.components.add(
        new Component(
            spot, name, packageName, part, layer, mountType, height, standOff, move, location));
  }

  private Move move() {
    return new Move(
        xml.spot(),
        xml.attribute("xOffset"),
        xml.attribute("yOffset"),
        xml.attribute("rotation"),
        isTrue("mirror"));
  }

  /** XML Schema has two words for it. */
  private boolean isTrue(String attribute) {
    String text = xml.attribute(attribute);
    return text.equals("true") || text.equals("1");
  }

  private At at() {
    return new At(xml.spot(), xml.attribute("x"), xml.attribute("y"));
  }

  private void bodyOf(DesignData.Step step) throws Refused {
    count();
    int depth = xml.depth();
    String name = reference("name");
    var body = new DesignData.PartPackage(xml.spot(), xml.attribute("height"));
    while (xml.next(depth)) {
      switch (xml.name()) {
        case "Outline" -> figure(body.outline);
        case "AssemblyDrawing" -> figure(body.drawing);
        case "Pin" -> pin(body);
        case "LandPattern" -> lands(body);
        default -> {
          // Marks and silkscreen say nothing of the body.
        }
      }
    }
    step.packages.putIfAbsent(name, body);
  }

  private void padStack() throws Refused {
    count();
    int depth = xml.depth();
    String name = reference("name");
    var hole = DesignData.Hole.NONE;
    while (xml.next(depth)) {
      if (xml.name().equals("PadstackHoleDef")) {
        boolean pin = xml.attribute("platingStatus").equals("PLATED");
        hole = pin ? DesignData.Hole.PIN : DesignData.Hole.OTHER;
      }
    }
    data.padStacks.put(name, hole);
  }

  private void lands(DesignData.PartPackage body) throws Refused {
    int depth = xml.depth();
    while (xml.next(depth)) {
      if (xml.name().equals("Pad")) {
        count();
        pad(body);
      }
    }
  }

  private void pad(DesignData.PartPackage body) throws Refused {
    int depth = xml.depth();
    String padStack = reference("padstackDefRef");
    String pin = "";
    OptionalDouble x = OptionalDouble.empty();
    OptionalDouble y = OptionalDouble.empty();
    while (xml.next(depth)) {
      if (xml.name().equals("Location")) {
        x = number("x");
        y = number("y");
      } else if (xml.name().equals("PinRef")) {
        pin = xml.attribute("pin");
      }
    }
    if (x.isPresent() && y.isPresent()) {
      body.pads.add(new DesignData.Pad(padStack, pin, x.getAsDouble(), y.getAsDouble()));
    }
  }

  private void pin(DesignData.PartPackage body) throws Refused {
    int depth = xml.depth();
    String type = xml.attribute("type") + " " + xml.attribute("mountType");
    if (type.contains("THRU") || type.contains("THROUGH") || type.contains("PRESSFIT")) {
      body.through++;
    } else if (type.contains("SURFACE")) {
      body.surface++;
    } else {
      body.unstated++;
    }
    while (xml.next(depth)) {
      if (xml.name().equals("Location")) {
        point(body.pins);
      }
    }
  }

  /** The extent of the polygons, circles and rectangles of an element, however deep they lie. */
  private void figure(Extent extent) throws Refused {
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
      default -> figure(extent);
    }
  }

  private void point(Extent extent) {
    OptionalDouble x = number("x");
    OptionalDouble y = number("y");
    if (x.isPresent() && y.isPresent()) {
      extent.begin(x.getAsDouble(), y.getAsDouble());
    }
  }

  /** The corners of a polygon, and how it is moved, which may be said after them. */
  private DesignPolygon polygon() throws Refused {
    int depth = xml.depth();
    var polygon = new DesignPolygon();
    while (xml.next(depth)) {
      OptionalDouble x = number("x");
      OptionalDouble y = number("y");
      if (xml.name().equals("Xform")) {
        polygon.move(
            number("xOffset").orElse(0),
            number("yOffset").orElse(0),
            number("rotation").orElse(0),
            isTrue("mirror"),
            number("scale").orElse(1));
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
    OptionalDouble centreX = number("centerX");
    OptionalDouble centreY = number("centerY");
    if (centreX.isPresent() && centreY.isPresent()) {
      boolean clockwise = xml.attribute("clockwise").equals("true");
      polygon.arc(x, y, centreX.getAsDouble(), centreY.getAsDouble(), clockwise);
    }
  }

  /** A name without its qualifier: {@code CMP:R1} is R1 among the components. */
  private String reference(String attribute) {
    return QUALIFIER.matcher(xml.attribute(attribute)).replaceFirst("");
  }

  private OptionalDouble number(String name) {
    return decimal(xml.attribute(name));
  }

  /** A decimal number as XML Schema writes one, an exponent included; empty when it is none. */
  static OptionalDouble decimal(String text) {
    if (text.isEmpty()
        || text.length() > 40
        || !text.chars().allMatch(c -> "0123456789+-.eE".indexOf(c) >= 0)) {
      return OptionalDouble.empty();
    }
    try {
      double number = Double.parseDouble(text);
      return Double.isFinite(number) ? OptionalDouble.of(number) : OptionalDouble.empty();
    } catch (NumberFormatException none) {
      return OptionalDouble.empty();
    }
  }
}
