package lowfirst.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.intake.XmlCursor.Spot;

/**
 * What an IPC-2581 file says of one board, as it stands there: attributes as texts, each with its
 * place; lengths in the file's own unit. Filled by {@link DesignParser}.
 */
final class DesignData {
  /** The standard's revision; empty when the file states none. */
  String revision = "";

  /** The unit of all lengths, {@code MILLIMETER}, {@code MICRON} or {@code INCH}; may be empty. */
  String units = "";

  String thickness = "";
  final List<BomItem> bomItems = new ArrayList<>();

  /** Maker's part numbers by OEM design number, the first or chosen one of each. */
  final Map<String, String> makersNumbers = new HashMap<>();

  /** The sides that layers lie on. */
  final Map<String, String> layerSides = new HashMap<>();

  final List<Step> steps = new ArrayList<>();
  final List<String> bomNames = new ArrayList<>();

  /** Steps that the content section names, the first first. */
  final List<String> named = new ArrayList<>();

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

  /** Something that is said of an item: a name, a value, and what it is counted in. */
  record Characteristic(Spot spot, String name, String value, String unit) {}

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
  record Move(Spot spot, String xOffset, String yOffset, String rotation, boolean mirrored) {
    static final Move NONE = new Move(new Spot(0, 0), "", "", "", false);
  }

  /** A package: its body from above, how tall it is, and its pins. */
  static final class PartPackage {
    final Spot spot;
    final String height;
    final Extent outline = new Extent();

    /** Used where a package has no outline of its own. */
    final Extent drawing = new Extent();

    final Extent pins = new Extent();
    int through;
    int surface;
    int unstated;

    PartPackage(Spot spot, String height) {
      this.spot = spot;
      this.height = height;
    }

    /** The body; empty when nothing draws it. */
    Extent body() {
      return outline.isEmpty() ? drawing : outline;
    }
  }
}
