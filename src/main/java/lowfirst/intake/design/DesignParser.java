package lowfirst.intake.design;

import java.util.Optional;
import lowfirst.intake.design.DesignData.At;
import lowfirst.intake.design.DesignData.Component;
import lowfirst.intake.design.DesignData.Move;
import lowfirst.intake.design.DesignTable.Text;
import lowfirst.intake.xml.XmlCursor.Refused;
import lowfirst.intake.xml.XmlCursor.Spot;

/**
 * Takes from an IPC-2581 file what tells of parts: the bill of materials and the approved makers'
 * numbers ({@link DesignBillParser}), packages ({@link DesignPackageParser}), and here the board
 * with its profile, layers and components. Copper, drills and nets are passed over. Element and
 * attribute names are those of the standard, which revisions A to C share.
 */
final class DesignParser {
  private final DesignCursor xml;
  private final DesignBillParser bills;
  private final DesignPackageParser packages;
  private final DesignFigures figures;
  private final DesignData data = new DesignData();

  private DesignParser(DesignCursor xml) {
    this.xml = xml;
    this.bills = new DesignBillParser(xml);
    this.packages = new DesignPackageParser(xml);
    this.figures = new DesignFigures(xml);
  }

  /** What the file says; nothing of it when it is broken or out of bounds. */
  static DesignData parse(byte[] bytes) throws Refused {
    var parser = new DesignParser(DesignCursor.of(bytes));
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
        case "Bom" -> bills.readBill(data.boms);
        case "Avl" -> bills.readMakersNumbers(data.makersNumbers);
        case "Ecad" -> ecad();
        default -> {
          // History and logistics tell nothing of parts.
        }
      }
    }
  }

  private void content() throws Refused {
    int depth = xml.depth();
    while (xml.next(depth)) {
      if (xml.name().equals("StepRef") || xml.name().equals("BomRef")) {
        data.named.add(xml.reference("name"));
      }
    }
  }

  private void ecad() throws Refused {
    int depth = xml.depth();
    while (xml.next(depth)) {
      if (xml.name().equals("CadHeader")) {
        data.units = new Text(xml.attribute("units"), xml.spot());
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
          xml.count();
          data.layerSides.put(xml.reference("name"), xml.attribute("side"));
        }
        case "Step" -> step();
        default -> {
          // Nothing of parts.
        }
      }
    }
  }

  private void step() throws Refused {
    xml.count();
    int depth = xml.depth();
    var step = new DesignData.Step(xml.reference("name"), xml.attribute("type"));
    data.steps.add(step);
    while (xml.next(depth)) {
      switch (xml.name()) {
        case "Profile" -> figures.addTo(step.profile);
        case "PadStackDef" -> packages.readPadStack(data.padStacks);
        case "Package" -> packages.readPackage(step.packages);
        case "Component" -> component(step);
        default -> {
          // Copper, drills and nets.
        }
      }
    }
  }

  private void component(DesignData.Step step) throws Refused {
    xml.count();
    int depth = xml.depth();
    Spot spot = xml.spot();
    String name = xml.reference("refDes");
    String packageName = xml.reference("packageRef");
    String part = xml.attribute("part");
    String layer = xml.reference("layerRef");
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
        xml.spot(), xml.attribute("xOffset"), xml.attribute("yOffset"), xml.attribute("rotation"));
  }

  private At at() {
    return new At(xml.spot(), xml.attribute("x"), xml.attribute("y"));
  }
}
