package lowfirst.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Driver;
import lowfirst.board.Kit;
import lowfirst.board.Load;
import lowfirst.board.OutputChannel;
import lowfirst.board.Rail;
import lowfirst.board.Swap;
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
  private final List<Problem> problems = new ArrayList<>();

  private ReferenceChecks(Kit kit) {
    this.kit = kit;
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

  static List<Problem> of(Kit kit) {
    var checks = new ReferenceChecks(kit);
    checks.names();
    kit.channels().forEach(checks::channel);
    kit.loads()
        .forEach(
            load -> checks.named(load.rail(), checks.rails, "rail", "rails.csv", load.place()));
    kit.drivers()
        .forEach(
            driver ->
                checks.named(driver.supply(), checks.rails, "rail", "rails.csv", driver.place()));
    kit.swaps().forEach(checks::swap);
    return checks.problems;
  }

  private void names() {
    var seen = new HashMap<String, Place>();
    kit.rails().forEach(rail -> once("rail", rail.name(), rail.place(), seen));
    kit.channels().forEach(channel -> once("channel", channel.name(), channel.place(), seen));
    kit.drivers().forEach(driver -> once("driver", driver.name(), driver.place(), seen));
    kit.loads().forEach(load -> once("load", load.name(), load.place(), seen));
    var boards = new HashSet<String>();
    for (Board board : kit.boards()) {
      if (!boards.add(board.name())) {
        twice("board", board.name(), Place.ofFile("boards.csv"));
      }
    }
  }

  private void once(String what, String name, Place place, Map<String, Place> seen) {
    if (seen.putIfAbsent(what + " " + name, place) != null) {
      twice(what, name, place);
    }
  }

  private void twice(String what, String name, Place place) {
    problems.add(
        new Problem(
            Kind.NAME_TWICE,
            place,
            "there are two of the " + what + " \"" + name + "\"; the first one counts",
            "give each a name of its own"));
  }

  private void channel(OutputChannel channel) {
    Place place = channel.place();
    named(channel.board(), designators.keySet(), "board", "boards.csv", place);
    named(channel.driver(), drivers, "driver", "drivers.csv", place);
    named(channel.load(), loads, "load", "loads.csv", place);
    part(channel, "MOSFET", channel.mosfet());
    part(channel, "gate resistor", channel.gateResistor());
    part(channel, "pull-down", channel.pullDown());
    part(channel, "flyback diode", channel.flybackDiode());
    part(channel, "fuse", channel.fuse());
  }

  private void part(OutputChannel channel, String role, Optional<Designator> part) {
    Set<Designator> known = designators.get(channel.board());
    if (known != null && part.isPresent() && !known.contains(part.get())) {
      problems.add(
          new Problem(
              Kind.REFERENCE_UNKNOWN,
              channel.place(),
              "the " + role + " " + part.get() + " is not on the board " + channel.board(),
              "correct the designator, or add the part to that board's BOM"));
    }
  }

  private void swap(Swap swap) {
    named(swap.board(), designators.keySet(), "board", "boards.csv", swap.place());
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
                swap.place(),
                designator
                    + " is on no board"
                    + (swap.board().isEmpty() ? "" : " called " + swap.board()),
                "correct the designator or the board"));
      }
    }
  }

  private void named(String name, Set<String> known, String what, String file, Place place) {
    if (!name.isEmpty() && !known.contains(name)) {
      problems.add(
          new Problem(
              Kind.REFERENCE_UNKNOWN,
              place,
              "there is no " + what + " \"" + name + "\" in " + file,
              known.isEmpty()
                  ? "add it to " + file
                  : "write one of: "
                      + known.stream().sorted().limit(8).collect(Collectors.joining(", "))
                      + (known.size() > 8 ? ", ..." : "")));
    }
  }
}
