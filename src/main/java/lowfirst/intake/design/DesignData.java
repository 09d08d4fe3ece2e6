package lowfirst.intake.design;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.intake.design.DesignTable.Text;
import lowfirst.intake.xml.XmlCursor.Spot;

/**
 * What an IPC-2581 file says of one board, as it stands there: attributes as texts, each with its
 * place; lengths in the file's own unit. Filled by {@link DesignParser}.
 */
final class DesignData {
  /** The standard's revision; empty when the file states none. */
  String revision = "";

  /** The unit of all lengths, {@code MILLIMETER}, {@code MICRON} or {@code INCH}; may be empty. */
  Text units = new Text("", new Spot(0, 0));

  /** Every bill of materials; a file may hold one for each variant or board. */
  final List<Bom> boms = new ArrayList<>();

  /** Those of the bill that counts. */
  List<BomItem> bomItems = List.of();

  /** Maker's part numbers by OEM design number, the first or chosen one of each. */
  final Map<String, String> makersNumbers = new HashMap<>();

  /** The sides that layers lie on. */
  final Map<String, String> layerSides = new HashMap<>();

  final List<Step> steps = new ArrayList<>();

  /** Steps and bills of materials that the content section names. */
  final List<String> named = new ArrayList<>();

  /** What a padstack's hole is for. */
  enum Hole {
    PIN,
    /** A screw, a peg, or a way for heat and current: no pin goes in. */
    OTHER,
    NONE
  }

  /** The holes of padstacks, by name. */
  final Map<String, Hole> padStacks = new HashMap<>();

  /** A step: one board, or a panel of boards. */
  static final class Step {
    final String name;
    final String type;
    final Extent profile = new Extent();
    final Map<String, PartPackage> packages = new LinkedHashMap<>();
    final List<Component> components = new ArrayList<>();

    Step(String name, String type) {
      this.name = name;
      this.type = type;
    }
  }

  /**
   * A bill of materials.
   *
   * @param steps those that its header says it is for
   */
  record Bom(String name, List<String> steps, List<BomItem> items) {}

  /** An item of the bill of materials. */
  record BomItem(
      Spot spot,
      String number,
      String internalNumber,
      String quantity,
      String description,
      String category,
      List<RefDes> places,
      List<Characteristic> characteristics) {}

  /** A reference designator of an item. */
  record RefDes(Spot spot, String name, String packageName, String populate) {}

  /**
   * Something that is said of an item: a name, a value, and what it is counted in.
   *
   * @param upper the end of a range that starts at the value; empty where it is no range
   * @param minus how far below it may be, in its own unit; may be empty
   * @param plus how far above
   */
  record Characteristic(
      Spot spot, String name, String value, String upper, String unit, String minus, String plus) {}

  /** A placed component. */
  record Component(
      Spot spot,
      String name,
      String packageName,
      String part,
      String layer,
      String mountType,
      String height,
      String standOff,
      Move move,
      Optional<At> location) {}

  /** Where something lies, as it is written. */
  record At(Spot spot, String x, String y) {}

  /** How a component is turned, as it is written. */
  record Move(Spot spot, String xOffset, String yOffset, String rotation) {
    static final Move NONE = new Move(new Spot(0, 0), "", "", "");
  }

  /** A pad of a land pattern, where it lies. */
  record Pad(String padStack, String pin, double x, double y) {}

  /** A package: its body from above, how tall it is, and its pins. */
  static final class PartPackage {
    final String height;
    final Extent outline = new Extent();

    /** Used where a package has no outline of its own. */
    final Extent drawing = new Extent();

    final Extent pins = new Extent();

    /** The pads that it is soldered to. */
    final List<Pad> pads = new ArrayList<>();

    int through;
    int surface;
    int unstated;

    PartPackage(String height) {
      this.height = height;
    }

    /** Where the pins don't say how they are mounted, or are left out, the pads do. */
    void settle(Map<String, Hole> padStacks) {
      var through = new HashSet<String>();
      var flat = new HashSet<String>();
      var lands = new Extent();
      for (Pad pad : pads) {
        Hole hole = padStacks.get(pad.padStack());
        if (hole != null && hole != Hole.OTHER) {
          // A pad that names no pin is one by itself.
          String pin = pad.pin().isEmpty() ? pad.x() + " " + pad.y() : pad.pin();
          (hole == Hole.PIN ? through : flat).add(pin);
          lands.begin(pad.x(), pad.y());
        }
      }
      flat.removeAll(through);
      if (this.through + surface > 0 || through.size() + flat.size() == 0) {
        return;
      }
      if (unstated == 0) {
        pins.include(lands);
        this.through = through.size();
        surface = flat.size();
      } else if (through.isEmpty()) {
        surface = unstated;
      } else {
        this.through = unstated;
      }
      unstated = 0;
    }

    /** The body; empty when nothing draws it. */
    Extent body() {
      return outline.isEmpty() ? drawing : outline;
    }
  }
}
