package lowfirst.intake.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lowfirst.board.Board;
import lowfirst.board.Bounds;
import lowfirst.board.Designator;
import lowfirst.board.Driver;
import lowfirst.board.Item;
import lowfirst.board.Kit;
import lowfirst.board.Load;
import lowfirst.board.OutputChannel;
import lowfirst.board.Rail;
import lowfirst.board.SupplyUnit;
import lowfirst.board.Swap;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.TableKind;
import lowfirst.part.PartKind;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/** Whether what the tables call by name exists, and has its name for itself. */
final class ReferenceChecks {
  private final Kit kit;
  private final Set<String> rails;
  private final Set<String> drivers;
  private final Set<String> loads;
  private final Map<String, Set<Designator>> designators = new HashMap<>();
  private final NamedCells cells;
  private final List<Problem> problems = new ArrayList<>();

  private ReferenceChecks(Kit kit, NamedCells cells) {
    this.kit = kit;
    this.cells = cells;
    this.rails = kit.rails().stream().map(Rail::name).collect(Collectors.toSet());
    this.drivers = kit.drivers().stream().map(Driver::name).collect(Collectors.toSet());
    this.loads = kit.loads().stream().map(Load::name).collect(Collectors.toSet());
    for (Board board : kit.boards()) {
      var known = new HashSet<Designator>();
      // Only channels and swaps name designators.
      if (!kit.channels().isEmpty() || !kit.swaps().isEmpty()) {
        board.items().forEach(item -> known.addAll(item.designators()));
        board.placements().forEach(placement -> known.add(placement.designator()));
      }
      designators.put(board.name(), known);
    }
  }

  static List<Problem> of(Kit kit, NamedCells cells) {
    var checks = new ReferenceChecks(kit, cells);
    checks.names();
    kit.channels().forEach(checks::channel);
    kit.loads()
        .forEach(
            load -> {
              Place place = cells.of(TableKind.LOADS, Column.RAIL, load.place(), load.rail());
              checks.named(load.rail(), checks.rails, TableKind.RAILS, place);
              checks.railOf(load, place);
            });
    kit.supplies().forEach(checks::supply);
    kit.drivers()
        .forEach(
            driver -> {
              String supply = driver.supply();
              Place place = cells.of(TableKind.DRIVERS, Column.SUPPLY, driver.place(), supply);
              checks.named(supply, checks.rails, TableKind.RAILS, place);
            });
    kit.swaps().forEach(checks::swap);
    return checks.problems;
  }

  private void names() {
    var seen = new HashSet<String>();
    kit.rails().forEach(rail -> once(TableKind.RAILS, rail.name(), rail.place(), seen));
    kit.channels()
        .forEach(channel -> once(TableKind.CHANNELS, channel.name(), channel.place(), seen));
    kit.drivers().forEach(driver -> once(TableKind.DRIVERS, driver.name(), driver.place(), seen));
    kit.loads().forEach(load -> once(TableKind.LOADS, load.name(), load.place(), seen));
  }

  /** Each of these tables has its name in the column that it can't do without. */
  private void once(TableKind kind, String name, Place line, Set<String> seen) {
    Column column = kind.required().get(0);
    if (!seen.add(kind + " " + name)) {
      problems.add(
          new Problem(
              Kind.NAME_TWICE,
              cells.of(kind, column, line, name),
              "there are two of the " + column.words() + " \"" + name + "\"; the first one counts",
              "give each a name of its own"));
    }
  }

  private void channel(OutputChannel channel) {
    named(
        channel.board(),
        designators.keySet(),
        TableKind.BOARDS,
        cell(channel, Column.BOARD, channel.board()));
    named(
        channel.driver(),
        drivers,
        TableKind.DRIVERS,
        cell(channel, Column.DRIVER, channel.driver()));
    named(channel.load(), loads, TableKind.LOADS, cell(channel, Column.LOAD, channel.load()));
    part(channel, "MOSFET", Column.MOSFET, channel.mosfet());
    part(channel, "gate resistor", Column.GATE_RESISTOR, channel.gateResistor());
    part(channel, "pull-down", Column.PULL_DOWN, channel.pullDown());
    part(channel, "flyback diode", Column.FLYBACK_DIODE, channel.flybackDiode());
    part(channel, "fuse", Column.FUSE, channel.fuse());
    value(channel, "gate resistor", Column.GATE_RESISTOR, channel.gateResistor());
    value(channel, "pull-down", Column.PULL_DOWN, channel.pullDown());
  }

  /** A value that the part may have, but not in this place. */
  private void value(OutputChannel channel, String role, Column column, Optional<Designator> part) {
    Bounds bounds = column == Column.PULL_DOWN ? Bounds.PULL_DOWN : Bounds.GATE_RESISTOR;
    part.flatMap(designator -> itemOf(channel, designator))
        .filter(item -> item.partType().kind() == PartKind.RESISTOR)
        .flatMap(item -> item.partType().value())
        .map(value -> bounds.within(role + " " + part.get(), value))
        .filter(within -> !within.isRead())
        .ifPresent(
            within ->
                problems.add(
                    new Problem(
                        Kind.OUT_OF_RANGE,
                        cell(channel, column, part.get().text()),
                        within.fault(),
                        "name another part, or correct its value in that board's BOM")));
  }

  private void supply(SupplyUnit supply) {
    Place place =
        cells.of(
            TableKind.SUPPLIES, Column.RAILS, supply.place(), String.join(", ", supply.rails()));
    supply.rails().forEach(rail -> named(rail, rails, TableKind.RAILS, place));
    if (supply.rails().isEmpty()) {
      problems.add(
          new Problem(
              Kind.CELL_EMPTY,
              place,
              "the rails that share the supply \"" + supply.name() + "\" are missing",
              "write their names, with commas between them"));
    }
  }

  private Place cell(OutputChannel channel, Column column, String text) {
    return cells.of(TableKind.CHANNELS, column, channel.place(), text);
  }

  private void part(OutputChannel channel, String role, Column column, Optional<Designator> part) {
    Set<Designator> known = designators.get(channel.board());
    if (known != null && part.isPresent() && !known.contains(part.get())) {
      problems.add(
          new Problem(
              Kind.REFERENCE_UNKNOWN,
              cell(channel, column, part.get().text()),
              "the " + role + " " + part.get() + " is not on the board " + channel.board(),
              "correct the designator, or add the part to that board's BOM"));
      return;
    }
    boolean isLeftOut =
        part.flatMap(designator -> itemOf(channel, designator))
            .filter(item -> !item.isFitted())
            .isPresent();
    if (isLeftOut) {
      problems.add(
          new Problem(
              Kind.REFERENCE_UNKNOWN,
              cell(channel, column, part.get().text()),
              "the " + role + " " + part.get() + " is not fitted by the BOM of " + channel.board(),
              "leave the cell empty where none is fitted, or fit the part in that board's BOM"));
    }
  }

  private Optional<Item> itemOf(OutputChannel channel, Designator designator) {
    return kit.board(channel.board()).flatMap(board -> board.itemOf(designator));
  }

  private void swap(Swap swap) {
    named(
        swap.board(),
        designators.keySet(),
        TableKind.BOARDS,
        cells.of(TableKind.SWAPS, Column.BOARD, swap.place(), swap.board()));
    for (Designator designator : swap.designators()) {
      boolean known =
          designators.entrySet().stream()
              .filter(board -> swap.board().isEmpty() || board.getKey().equals(swap.board()))
              .anyMatch(board -> board.getValue().contains(designator));
      boolean boardKnown = swap.board().isEmpty() || designators.containsKey(swap.board());
      if (boardKnown && !known) {
        problems.add(
            new Problem(
                Kind.REFERENCE_UNKNOWN,
                cells.of(TableKind.SWAPS, Column.DESIGNATORS, swap.place(), designator.text()),
                designator
                    + " is on no board"
                    + (swap.board().isEmpty() ? "" : " called " + swap.board()),
                "correct the designator or the board"));
      }
    }
  }

  /** A load without a rail may hang on any. */
  private void railOf(Load load, Place place) {
    boolean isAsked = !rails.isEmpty() || !kit.channels().isEmpty();
    if (isAsked && load.rail().isEmpty()) {
      problems.add(
          new Problem(
              Kind.CELL_EMPTY,
              place,
              "the rail of the load \""
                  + load.name()
                  + "\" is missing: it may hang on any, so no rail's sum is complete",
              rails.isEmpty() ? "write its name, and add it to rails.csv" : oneOf(rails)));
    }
  }

  private static String oneOf(Set<String> known) {
    return "write one of: "
        + known.stream().sorted().limit(8).collect(Collectors.joining(", "))
        + (known.size() > 8 ? ", ..." : "");
  }

  private void named(String name, Set<String> known, TableKind where, Place place) {
    String file = where.key() + ".csv";
    if (!name.isEmpty() && !known.contains(name)) {
      problems.add(
          new Problem(
              Kind.REFERENCE_UNKNOWN,
              place,
              "there is no " + where.required().get(0).words() + " \"" + name + "\" in " + file,
              known.isEmpty() ? "add it to " + file : oneOf(known)));
    }
  }
}
