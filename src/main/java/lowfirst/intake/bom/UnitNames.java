package lowfirst.intake.bom;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lowfirst.board.Designator;
import lowfirst.board.Placement;
import lowfirst.intake.cell.DesignatorList;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.TableRow;
import lowfirst.intake.column.WholeNumber;

/**
 * Units of one part that a BOM names one by one: U1A and U1B, where only U1 is placed, or where the
 * quantity counts U1 alone. They are one part unless something contradicts: U1 in the BOM itself,
 * U1A placed, two values, or a quantity that counts the units.
 *
 * @param parts the part of each unit
 * @param placed the parts that are placed under their own name
 */
record UnitNames(Map<Designator, Designator> parts, Set<Designator> placed) {
  private static final Pattern UNIT = Pattern.compile("(\\p{L}{1,4}\\d{1,5})[-._]?[A-Ha-h]");

  /** Of these, names such as R1A and R1B are more often two places for one of two sizes. */
  private static final Set<String> SINGLE = Set.of("R", "C", "L");

  /** What may not differ between the lines of one part. */
  private static final List<Column> SAME =
      List.of(Column.VALUE, Column.PACKAGE, Column.PART_TYPE, Column.FITTED, Column.NOT_FITTED);

  /** The units among the designators of a BOM, each row's in order. */
  static UnitNames of(List<TableRow> rows, List<DesignatorList> named, List<Placement> placements) {
    // Nearly no BOM has any, so nothing is looked up before there are some.
    if (named.stream().noneMatch(UnitNames::mayNameUnits)) {
      return new UnitNames(Map.of(), Set.of());
    }
    var placed = new HashSet<Designator>();
    placements.forEach(placement -> placed.add(placement.designator()));
    Set<Designator> counted = counted(rows, named);
    var unitsOf = new LinkedHashMap<Designator, Set<Designator>>();
    var all = new HashSet<Designator>();
    var wrong = new HashSet<Designator>();
    var first = new HashMap<Designator, TableRow>();
    for (int i = 0; i < rows.size(); i++) {
      for (Designator designator : named.get(i).designators()) {
        boolean again = !all.add(designator);
        Optional<Designator> part =
            partOf(designator).filter(one -> placed.contains(one) || counted.contains(one));
        if (part.isPresent()) {
          unitsOf.computeIfAbsent(part.get(), none -> new LinkedHashSet<>()).add(designator);
          TableRow other = first.putIfAbsent(part.get(), rows.get(i));
          boolean differs = other != null && differ(other, rows.get(i));
          if (again || differs || placed.contains(designator)) {
            wrong.add(part.get());
          }
        }
      }
    }
    unitsOf
        .entrySet()
        .removeIf(
            entry ->
                entry.getValue().size() < 2
                    || all.contains(entry.getKey())
                    || wrong.contains(entry.getKey()));
    return of(unitsOf, placed).withoutMiscounted(rows, named);
  }

  /** The parts whose units share a row with a quantity that counts parts, and not units. */
  private static Set<Designator> counted(List<TableRow> rows, List<DesignatorList> named) {
    var counted = new HashSet<Designator>();
    for (int i = 0; i < rows.size(); i++) {
      List<Designator> units = named.get(i).designators();
      if (units.size() < 2) {
        continue;
      }
      var parts = new LinkedHashSet<Designator>();
      units.forEach(unit -> parts.add(partOf(unit).orElse(unit)));
      int quantity = WholeNumber.in(rows.get(i).text(Column.QUANTITY)).orElse(0);
      if (quantity < units.size() && quantity == parts.size()) {
        counted.addAll(parts);
      }
    }
    counted.removeIf(part -> SINGLE.contains(part.prefix()));
    return counted;
  }

  private static boolean mayNameUnits(DesignatorList list) {
    for (Designator designator : list.designators()) {
      if (!designator.isUsual() && partOf(designator).isPresent()) {
        return true;
      }
    }
    return false;
  }

  /** The part whose unit this may be by its name: U1 of U1A. */
  private static Optional<Designator> partOf(Designator designator) {
    String text = designator.text();
    Matcher unit = UNIT.matcher(text);
    return unit.matches() ? Optional.of(Designator.of(unit.group(1))) : Optional.empty();
  }

  private static UnitNames of(Map<Designator, Set<Designator>> unitsOf, Set<Designator> placed) {
    var parts = new HashMap<Designator, Designator>();
    unitsOf.forEach((part, units) -> units.forEach(unit -> parts.put(unit, part)));
    return new UnitNames(parts, placed);
  }

  private static boolean differ(TableRow one, TableRow other) {
    return SAME.stream().anyMatch(column -> !one.text(column).equals(other.text(column)));
  }

  /** Without those of rows whose quantity is not that of the parts. */
  private UnitNames withoutMiscounted(List<TableRow> rows, List<DesignatorList> named) {
    if (parts.isEmpty()) {
      return this;
    }
    var right = new HashMap<>(parts);
    for (int i = 0; i < rows.size(); i++) {
      List<Designator> units = named.get(i).designators();
      int counted = WholeNumber.in(rows.get(i).text(Column.QUANTITY)).orElse(0);
      if (counted > 0 && counted != joined(units).size()) {
        Set<Designator> miscounted = new HashSet<>();
        units.forEach(unit -> miscounted.add(parts.get(unit)));
        right.values().removeIf(miscounted::contains);
      }
    }
    return new UnitNames(right, placed);
  }

  /** The designators with each part in place of its units, once. */
  List<Designator> joined(List<Designator> named) {
    var joined = new ArrayList<Designator>();
    for (Designator designator : named) {
      Designator part = parts.getOrDefault(designator, designator);
      if (part.equals(designator) || !joined.contains(part)) {
        joined.add(part);
      }
    }
    return joined;
  }

  /** What was read as a part, and why. */
  String said(Designator part) {
    return of(part)
        + " were read as units of one part, "
        + part
        + (placed.contains(part) ? ", which is placed" : ", as the quantity has it");
  }

  /** The units of a part, in order. */
  private String of(Designator part) {
    return parts.entrySet().stream()
        .filter(unit -> unit.getValue().equals(part))
        .map(Map.Entry::getKey)
        .sorted()
        .map(Designator::text)
        .collect(Collectors.joining(", "));
  }
}
