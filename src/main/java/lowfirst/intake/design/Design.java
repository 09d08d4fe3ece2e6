package lowfirst.intake.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import lowfirst.board.Board;
import lowfirst.board.BodyFinder;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.board.Placement;
import lowfirst.board.Side;
import lowfirst.intake.bom.BomReader;
import lowfirst.intake.column.ColumnMap;
import lowfirst.intake.column.Lengths;
import lowfirst.intake.placement.LengthUnit;
import lowfirst.intake.placement.PlacementReader;
import lowfirst.intake.table.Table;
import lowfirst.intake.table.Understanding;
import lowfirst.intake.xml.XmlCursor;
import lowfirst.intake.xml.XmlCursor.Refused;
import lowfirst.intake.xml.XmlCursor.Spot;
import lowfirst.intake.xml.XmlNumber;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * A board as an IPC-2581 file describes it: the same items and placements that a BOM and a
 * placement list give, and with them the board's size and its packages' bodies.
 *
 * <p>Coordinates are the board's own, seen from the top on both sides, and rotations are
 * anticlockwise seen from the top, as the standard has it. A placement is the middle of the body,
 * which the package's outline tells; the file's own location is the package's origin.
 *
 * @param size the rectangle around the board's profile, if there is one
 * @param problems what is wrong with the file, what is missing, and what was taken for granted
 */
public record Design(
    List<Item> items,
    List<Placement> placements,
    Optional<Board.Size> size,
    Optional<DesignBodies> bodies,
    List<Problem> problems,
    List<Understanding> understood) {

  /** Whether these bytes are such a file. */
  public static boolean isOne(byte[] bytes) {
    return XmlCursor.startsWith(bytes, DesignCursor.ROOT);
  }

  /**
   * The board of a file; empty, with a fault that says where, when it can't be read; never throws.
   */
  public static Design read(String file, byte[] bytes, ColumnMap map) {
    try {
      return new Reader(file, DesignParser.parse(bytes), map).read();
    } catch (Refused refused) {
      var fault =
          new Problem(
              Kind.DESIGN_UNREADABLE,
              Place.ofCell(file, refused.spot().line(), refused.spot().column(), "", ""),
              refused.getMessage() + ", so nothing of this file was used",
              refused.remedy());
      return new Design(
          List.of(), List.of(), Optional.empty(), Optional.empty(), List.of(fault), List.of());
    }
  }

  /** The bodies found by name, with what the file's packages know better. */
  public BodyFinder over(BodyFinder found) {
    return bodies.map(known -> known.over(found)).orElse(found);
  }

  /** Whether another placement list counts from the same origin, by the parts in both. */
  public boolean hasOriginOf(List<Placement> others) {
    var own = new HashMap<Designator, Placement>();
    placements.forEach(placement -> own.put(placement.designator(), placement));
    int both = 0;
    int near = 0;
    for (Placement other : others) {
      Placement here = own.get(other.designator());
      if (here != null) {
        both++;
        double apart =
            Math.hypot(
                here.xMillimetres() - other.xMillimetres(),
                here.yMillimetres() - other.yMillimetres());
        // An origin at a pin instead of the middle moves a part by less than its body.
        near += apart < 25 ? 1 : 0;
      }
    }
    return near * 2 > both;
  }

  /** Reads one file's data. */
  private static final class Reader {
    private final String file;
    private final DesignData data;
    private final ColumnMap map;
    private final DesignData.Step step;
    private final Optional<DesignData.Bom> bom;
    private final List<Problem> problems = new ArrayList<>();
    private final List<Understanding> understood = new ArrayList<>();

    Reader(String file, DesignData data, ColumnMap map) {
      this.file = file;
      this.data = data;
      this.map = map;
      this.step = step();
      this.bom = bom();
      data.bomItems = bom.map(DesignData.Bom::items).orElse(List.of());
    }

    /** The step that holds the components: the board, not the panel that repeats it. */
    private DesignData.Step step() {
      List<DesignData.Step> filled =
          data.steps.stream().filter(one -> !one.components.isEmpty()).toList();
      if (filled.isEmpty()) {
        return data.steps.stream()
            .filter(one -> !one.profile.isEmpty())
            .findFirst()
            .orElse(new DesignData.Step("", ""));
      }
      // Of steps that fit as well the first.
      DesignData.Step chosen =
          filled.stream()
              .min(
                  Comparator.comparing((DesignData.Step one) -> !one.type.equals("BOARD"))
                      .thenComparing(one -> !data.named.contains(one.name)))
              .orElseThrow();
      if (filled.size() > 1) {
        note(
            "several steps hold components, of which \"" + chosen.name + "\" was read",
            "split the file if you build another of its boards");
      }
      // A package may stand in the step of the panel.
      data.steps.forEach(one -> one.packages.forEach(chosen.packages::putIfAbsent));
      return chosen;
    }

    /** The bill of materials that is for the step, else one that the content section names. */
    private Optional<DesignData.Bom> bom() {
      return data.boms.stream()
          .filter(one -> !one.items().isEmpty())
          .min(
              Comparator.comparing((DesignData.Bom one) -> !one.steps().contains(step.name))
                  .thenComparing(one -> !data.named.contains(one.name())));
    }

    Design read() {
      var tables = new DesignTables(file, data, step, map);
      problems.addAll(tables.problems());
      Table placed = tables.placements().table(data.revision);
      double scale = Lengths.millimetres(LengthUnit.of(placed, map).x());
      var bodies = new DesignBodies(file, step, scale);
      List<Placement> placements = placements(tables.placements(), placed, bodies);
      List<Item> items = items(tables.bom(), placements);
      Optional<Board.Size> size = size(scale);
      sayWhatIsMissing(size, bodies);
      return new Design(items, placements, size, Optional.of(bodies), problems, understood);
    }

    private List<Placement> placements(DesignTable from, Table table, DesignBodies bodies) {
      if (from.isEmpty()) {
        return List.of();
      }
      PlacementReader.Placements read = PlacementReader.in(table, map);
      // A # in front of a name is said of the bill, where that names parts.
      read.problems().stream()
          .filter(problem -> data.bomItems.isEmpty() || problem.kind() != Kind.OPTIONAL_PART)
          .forEach(problem -> problems.add(from.placed(problem)));
      understood.add(
          read.understanding()
              .noting("each place is the middle of the body that the package's outline draws"));
      var placements = new ArrayList<Placement>();
      boolean offset = false;
      double scale = Lengths.millimetres(LengthUnit.of(table, map).x());
      for (Placement placement : read.placements()) {
        DesignData.Component component = step.components.get(placement.place().line() - 1);
        boolean bottom = placement.side() == Side.BOTTOM;
        double[] middle = bodies.middle(component, bottom, placement.rotationDegrees());
        OptionalDouble dx = XmlNumber.in(component.move().xOffset());
        OptionalDouble dy = XmlNumber.in(component.move().yOffset());
        offset |= dx.orElse(0) != 0 || dy.orElse(0) != 0;
        placements.add(
            from.placed(
                placement, middle[0] + dx.orElse(0) * scale, middle[1] + dy.orElse(0) * scale));
      }
      if (offset) {
        note(
            "the offsets of some components' Xform were added to their locations",
            "compare their places with the board");
      }
      return placements;
    }

    private List<Item> items(DesignTable from, List<Placement> placements) {
      if (from.isEmpty()) {
        return List.of();
      }
      Table table = from.table(data.revision);
      understood.add(0, table.understanding());
      BomReader.Items read = BomReader.in(table, placements);
      read.problems().forEach(problem -> problems.add(from.placed(problem)));
      if (data.boms.size() > 1) {
        note(
            "it holds "
                + data.boms.size()
                + " bills of materials, of which \""
                + bom.map(DesignData.Bom::name).orElse("")
                + "\" was read",
            "export the one that you build");
      }
      return read.items().stream().map(from::placed).toList();
    }

    private Optional<Board.Size> size(double scale) {
      Extent profile = step.profile;
      if (profile.isEmpty() || !(profile.width() > 0) || !(profile.height() > 0)) {
        return Optional.empty();
      }
      if (profile.isSlanted()) {
        note(
            "the board's outline is no plain rectangle: the rectangle around it was taken",
            "nothing, unless parts are said to lie inside where there is no board");
      }
      return Optional.of(
          new Board.Size(
              profile.left() * scale,
              profile.bottom() * scale,
              profile.width() * scale,
              profile.height() * scale));
    }

    private void sayWhatIsMissing(Optional<Board.Size> size, DesignBodies bodies) {
      List<DesignData.Component> all = step.components;
      if (size.isEmpty()) {
        note(
            "the file has no profile of the board",
            "draw the board's outline in the design and export it again, or give the board's width"
                + " and height in boards.csv");
      }
      String units = data.units.text();
      if (units.isEmpty() && !all.isEmpty()) {
        note(
            "the file has no units in its CadHeader",
            "say which they are with --column placements.unit=mil (or mm, inch, µm)");
      }
      if (!units.isEmpty() && DesignTables.unit(units).isEmpty()) {
        Spot spot = data.units.spot();
        problems.add(
            new Problem(
                Kind.UNIT_UNKNOWN,
                Place.ofCell(file, spot.line(), spot.column(), "units", units),
                "the units \"" + units + "\" of its CadHeader are not known",
                "say which they are with --column placements.unit=mil (or mm, inch, µm)"));
      }
      lacking(
          "height",
          one -> bodies.height(one, step.packages.get(one.packageName())).isEmpty(),
          "nothing for a part without a caution about its height, which the package table tells;"
              + " give the packages of the others their heights in the design, and export it again");
      lacking(
          "package",
          one -> !step.packages.containsKey(one.packageName()),
          "export the packages, too, or look at the cautions about heights");
    }

    private void lacking(String what, Predicate<DesignData.Component> lack, String remedy) {
      long lacking = step.components.stream().filter(lack).count();
      if (lacking > 0) {
        String of = lacking + " of " + step.components.size() + " components";
        note("the file has no " + what + " for " + of, remedy);
      }
    }

    private void note(String message, String remedy) {
      problems.add(new Problem(Kind.DESIGN_INCOMPLETE, Place.ofFile(file), message, remedy));
    }
  }
}
