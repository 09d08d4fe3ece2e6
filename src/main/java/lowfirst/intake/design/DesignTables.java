package lowfirst.intake.design;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.ColumnMap;
import lowfirst.intake.column.HeaderUnit;
import lowfirst.intake.column.Lengths;
import lowfirst.intake.column.TableKind;
import lowfirst.intake.design.DesignData.BomItem;
import lowfirst.intake.design.DesignData.Component;
import lowfirst.intake.design.DesignData.RefDes;
import lowfirst.intake.design.DesignTable.Text;
import lowfirst.intake.xml.XmlCursor.Spot;
import lowfirst.intake.xml.XmlNumber;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/** Lays out the bill of materials and the components of an IPC-2581 file as two tables. */
final class DesignTables {
  private final String file;
  private final DesignData data;
  private final DesignData.Step step;
  private final Characteristics characteristics;
  private final Map<String, Component> components = new HashMap<>();
  private final Map<String, String> values = new HashMap<>();
  private final List<Problem> problems = new ArrayList<>();
  private final DesignTable bom;
  private final DesignTable placements;

  DesignTables(String file, DesignData data, DesignData.Step step, ColumnMap map) {
    this.file = file;
    this.data = data;
    this.step = step;
    this.characteristics = new Characteristics(file, data.bomItems, map);
    this.bom = new DesignTable(TableKind.BOM, file, bomColumns());
    this.placements =
        new DesignTable(TableKind.PLACEMENTS, file, placementColumns(unit(data.units.text())));
    step.components.forEach(component -> components.putIfAbsent(component.name(), component));
    data.bomItems.forEach(this::add);
    step.components.forEach(this::add);
    characteristics.guessed().forEach(name -> problems.add(guessed(name)));
  }

  /** The standard has MILLIMETER, MICRON and INCH; other spellings are understood, too. */
  static String unit(String units) {
    String unit = HeaderUnit.canonical(units.toLowerCase(Locale.ROOT));
    return !unit.isEmpty() && Lengths.isUnit(unit) ? unit : "";
  }

  DesignTable bom() {
    return bom;
  }

  DesignTable placements() {
    return placements;
  }

  List<Problem> problems() {
    return problems;
  }

  private Map<Column, String> bomColumns() {
    var columns = new LinkedHashMap<Column, String>();
    columns.put(Column.DESIGNATORS, "RefDes name");
    columns.put(Column.QUANTITY, "BomItem quantity");
    columns.put(Column.PACKAGE, "RefDes packageRef");
    columns.put(Column.FITTED, "RefDes populate");
    columns.put(Column.PART_TYPE, "OEMDesignNumberRef, AvlMpn");
    columns.put(Column.DESCRIPTION, "BomItem description");
    for (Column column : Characteristics.ASKED) {
      List<String> named = characteristics.names(column);
      if (!named.isEmpty()) {
        String own = columns.containsKey(column) ? columns.get(column) + ", " : "";
        columns.put(column, own + DesignTable.CHARACTERISTIC + " " + String.join(", ", named));
      }
    }
    if (characteristics.haveTolerances(data.bomItems)) {
      columns.merge(
          Column.TOLERANCE, "engineering tolerance of the value", (own, more) -> own + ", " + more);
    }
    return columns;
  }

  private static Map<Column, String> placementColumns(String unit) {
    String in = unit.isEmpty() ? "" : " (" + unit + ")";
    var columns = new LinkedHashMap<Column, String>();
    columns.put(Column.DESIGNATOR, "Component refDes");
    columns.put(Column.X, "Location x" + in);
    columns.put(Column.Y, "Location y" + in);
    columns.put(Column.ROTATION, "Xform rotation");
    columns.put(Column.SIDE, "Layer side");
    columns.put(Column.VALUE, "value of its BomItem, or its part");
    columns.put(Column.PACKAGE, "Component packageRef");
    return columns;
  }

  /** One row for all places of an item that are alike. */
  private void add(BomItem item) {
    if (item.category().equals("DOCUMENT")) {
      return;
    }
    record Alike(String packageName, String populate) {}
    var alike = new LinkedHashMap<Alike, List<RefDes>>();
    for (RefDes place : item.places()) {
      String named = packageName(place);
      alike
          .computeIfAbsent(new Alike(named, place.populate()), none -> new ArrayList<>())
          .add(place);
    }
    if (alike.isEmpty()) {
      bom.add(item.spot(), cells(item, item.quantity()));
    }
    alike.forEach(
        (key, places) -> {
          // Of an item that is split the quantity is all its places', which are counted instead.
          boolean all = places.size() == item.places().size();
          Map<Column, Text> cells = cells(item, all ? item.quantity() : "");
          Spot spot = places.get(0).spot();
          String names = String.join(", ", places.stream().map(RefDes::name).toList());
          cells.put(Column.DESIGNATORS, new Text(names, spot));
          cells.put(Column.FITTED, new Text(key.populate(), spot));
          cells.put(Column.PACKAGE, new Text(key.packageName(), spot));
          bom.add(spot, cells);
          Text value = cells.get(Column.VALUE);
          places.forEach(place -> values.put(place.name(), value == null ? "" : value.text()));
        });
  }

  private Map<Column, Text> cells(BomItem item, String quantity) {
    var cells = new EnumMap<Column, Text>(Column.class);
    Spot spot = item.spot();
    cells.put(Column.QUANTITY, new Text(quantity, spot));
    cells.put(Column.DESCRIPTION, new Text(item.description(), spot));
    cells.put(Column.PART_TYPE, new Text(partNumber(item), spot));
    for (Column column : Characteristics.ASKED) {
      boolean own = !item.description().isEmpty() && column == Column.DESCRIPTION;
      if (!own) {
        characteristics.of(item, column).ifPresent(text -> cells.put(column, text));
      }
    }
    return cells;
  }

  /** A maker's number; the owner's own where there is none. */
  private String partNumber(BomItem item) {
    String makers = data.makersNumbers.getOrDefault(item.number(), "");
    return !makers.isEmpty()
        ? makers
        : !item.number().isEmpty() ? item.number() : item.internalNumber();
  }

  private String packageName(RefDes place) {
    Component component = components.get(place.name());
    String name = place.packageName();
    if (name.isEmpty() && component != null) {
      name = component.packageName();
    }
    return component == null ? name : packageText(component, name);
  }

  private void add(Component component) {
    var cells = new EnumMap<Column, Text>(Column.class);
    Spot spot = component.spot();
    cells.put(Column.DESIGNATOR, new Text(component.name(), spot));
    component
        .location()
        .ifPresent(
            at -> {
              cells.put(Column.X, new Text(plain(at.x()), at.spot()));
              cells.put(Column.Y, new Text(plain(at.y()), at.spot()));
            });
    cells.put(Column.ROTATION, rotation(component));
    String side = data.layerSides.getOrDefault(component.layer(), "");
    cells.put(Column.SIDE, new Text(side.isEmpty() ? component.layer() : side, spot));
    String value = data.bomItems.isEmpty() ? component.part() : values.get(component.name());
    cells.put(Column.VALUE, new Text(value == null ? "" : value, spot));
    cells.put(Column.PACKAGE, new Text(packageText(component, component.packageName()), spot));
    placements.add(spot, cells);
  }

  /**
   * An Xform may be left out, and its rotation too: then the part is not turned. (IPC-2581, section
   * 3.3, from memory; public test case 3 of its consortium, revision A, has an Xform just for the
   * components that are turned or lie on the bottom.)
   */
  private static Text rotation(Component component) {
    String rotation = component.move().rotation();
    return rotation.isEmpty()
        ? new Text("0", component.spot())
        : new Text(plain(rotation), component.move().spot());
  }

  /** The package's name, with a word for what its pins or mount type say beyond it. */
  private String packageText(Component component, String name) {
    boolean flat = DesignBodies.isSurfaceMount(component, step.packages.get(name));
    return flat && !name.isEmpty() ? name + " (surface-mount)" : name;
  }

  /** XML Schema's numbers may carry an exponent. */
  private static String plain(String number) {
    boolean exponent = number.indexOf('e') >= 0 || number.indexOf('E') >= 0;
    return exponent && XmlNumber.in(number).isPresent()
        ? BigDecimal.valueOf(Double.parseDouble(number)).toPlainString()
        : number;
  }

  private Problem guessed(String name) {
    return new Problem(
        Kind.COLUMN_GUESSED,
        Place.ofFile(file),
        "the characteristic \"" + name + "\" was taken for the value",
        "if that is wrong, name the right one with --column bom.value=NAME");
  }
}
