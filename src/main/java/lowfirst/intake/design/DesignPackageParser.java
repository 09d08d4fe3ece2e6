package lowfirst.intake.design;

import java.util.Map;
import java.util.OptionalDouble;
import lowfirst.intake.design.DesignData.Hole;
import lowfirst.intake.design.DesignData.Pad;
import lowfirst.intake.design.DesignData.PartPackage;
import lowfirst.intake.xml.XmlCursor.Refused;

/**
 * Takes from an IPC-2581 file what tells of the bodies of parts: of a package its outline, its pins
 * and the pads they are soldered to, of a padstack whether a pin goes through it.
 */
final class DesignPackageParser {
  private final DesignCursor xml;
  private final DesignFigures figures;

  DesignPackageParser(DesignCursor xml) {
    this.xml = xml;
    this.figures = new DesignFigures(xml);
  }

  /** Reads the package at hand; of several of one name the first counts. */
  void readPackage(Map<String, PartPackage> packages) throws Refused {
    xml.count();
    int depth = xml.depth();
    String name = xml.reference("name");
    var body = new PartPackage(xml.attribute("height"));
    while (xml.next(depth)) {
      switch (xml.name()) {
        case "Outline" -> figures.addTo(body.outline);
        case "AssemblyDrawing" -> figures.addTo(body.drawing);
        case "Pin" -> pin(body);
        case "LandPattern" -> lands(body);
        default -> {
          // Marks and silkscreen say nothing of the body.
        }
      }
    }
    packages.putIfAbsent(name, body);
  }

  /** Reads the padstack at hand. */
  void readPadStack(Map<String, Hole> padStacks) throws Refused {
    xml.count();
    int depth = xml.depth();
    String name = xml.reference("name");
    var hole = Hole.NONE;
    while (xml.next(depth)) {
      if (xml.name().equals("PadstackHoleDef")) {
        boolean pin = xml.attribute("platingStatus").equals("PLATED");
        hole = pin ? Hole.PIN : Hole.OTHER;
      }
    }
    padStacks.put(name, hole);
  }

  private void lands(PartPackage body) throws Refused {
    int depth = xml.depth();
    while (xml.next(depth)) {
      if (xml.name().equals("Pad")) {
        xml.count();
        pad(body);
      }
    }
  }

  private void pad(PartPackage body) throws Refused {
    int depth = xml.depth();
    String padStack = xml.reference("padstackDefRef");
    String pin = "";
    OptionalDouble x = OptionalDouble.empty();
    OptionalDouble y = OptionalDouble.empty();
    while (xml.next(depth)) {
      if (xml.name().equals("Location")) {
        x = xml.number("x");
        y = xml.number("y");
      } else if (xml.name().equals("PinRef")) {
        pin = xml.attribute("pin");
      }
    }
    if (x.isPresent() && y.isPresent()) {
      body.pads.add(new Pad(padStack, pin, x.getAsDouble(), y.getAsDouble()));
    }
  }

  private void pin(PartPackage body) throws Refused {
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

  private void point(Extent extent) {
    OptionalDouble x = xml.number("x");
    OptionalDouble y = xml.number("y");
    if (x.isPresent() && y.isPresent()) {
      extent.begin(x.getAsDouble(), y.getAsDouble());
    }
  }
}
