package lowfirst.intake.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.ColumnMap;
import lowfirst.intake.column.HeaderWords;
import lowfirst.intake.column.TableKind;
import lowfirst.intake.design.DesignData.BomItem;
import lowfirst.intake.design.DesignData.Characteristic;

/**
 * Which characteristics of a bill of materials tell what of a part. The standard leaves their names
 * to whoever writes the file, so they are matched like the headers of a table.
 */
final class Characteristics {
  static final List<Column> ASKED =
      List.of(
          Column.VALUE,
          Column.PART_TYPE,
          Column.DESCRIPTION,
          Column.HEIGHT,
          Column.TOLERANCE,
          Column.VOLTAGE,
          Column.POWER,
          Column.NOT_FITTED);

  /** Names of what a part's value measures. */
  private static final Set<String> MEASURED =
      Set.of("resistance", "capacitance", "inductance", "frequency");

  private final Map<Column, List<String>> names = new EnumMap<>(Column.class);
  private final List<String> guessed = new ArrayList<>();

  private record Ranked(String name, int rank) {}

  /** The names that tell something in these items; what the user says of them comes first. */
  Characteristics(String file, List<BomItem> items, ColumnMap map) {
    var all = new LinkedHashSet<String>();
    items.forEach(item -> item.characteristics().forEach(said -> all.add(said.name())));
    for (Column column : ASKED) {
      Optional<String> told = map.column(TableKind.BOM, file, column);
      var ranked = new ArrayList<Ranked>();
      for (String name : all) {
        int rank = told.filter(wanted -> same(wanted, name)).isPresent() ? -1 : rank(column, name);
        if (rank < Integer.MAX_VALUE) {
          ranked.add(new Ranked(name, rank));
        }
      }
      ranked.sort(Comparator.comparingInt(Ranked::rank));
      boolean sure = !ranked.isEmpty() && ranked.get(0).rank() < HeaderWords.WEAK;
      if (sure || (!ranked.isEmpty() && column == Column.VALUE)) {
        names.put(
            column,
            ranked.stream()
                .filter(one -> !sure || one.rank() < HeaderWords.WEAK)
                .map(Ranked::name)
                .toList());
        if (!sure) {
          guessed.add(ranked.get(0).name());
        }
      }
    }
  }

  private static boolean same(String one, String other) {
    return HeaderWords.key(one).equals(HeaderWords.key(other));
  }

  private static int rank(Column column, String name) {
    if (column == Column.VALUE && MEASURED.contains(HeaderWords.key(name))) {
      return HeaderWords.WEAK / 2;
    }
    return HeaderWords.matches(TableKind.BOM, name).stream()
        .filter(match -> match.column() == column)
        .mapToInt(HeaderWords.Match::rank)
        .min()
        .orElse(Integer.MAX_VALUE);
  }

  /** The names that tell of a column, the surest first. */
  List<String> names(Column column) {
    return names.getOrDefault(column, List.of());
  }

  /** Names that were taken for the value for want of a surer one. */
  List<String> guessed() {
    return guessed;
  }

  /** What an item's characteristics say of a column, the unit after a number. */
  Optional<DesignTable.Text> of(BomItem item, Column column) {
    Optional<DesignTable.Text> own =
        said(item, column)
            .map(said -> new DesignTable.Text(EngineeringValue.text(said, column), said.spot()));
    return own.isEmpty() && column == Column.TOLERANCE ? valueTolerance(item) : own;
  }

  /** Whether some value carries its tolerance itself. */
  boolean haveTolerances(List<BomItem> items) {
    return items.stream().anyMatch(item -> valueTolerance(item).isPresent());
  }

  /** The tolerance that stands beside an item's value, in units of the value. */
  private Optional<DesignTable.Text> valueTolerance(BomItem item) {
    return said(item, Column.VALUE)
        .flatMap(
            said ->
                EngineeringValue.tolerance(said)
                    .map(text -> new DesignTable.Text(text, said.spot())));
  }

  private Optional<Characteristic> said(BomItem item, Column column) {
    for (String name : names(column)) {
      for (Characteristic said : item.characteristics()) {
        if (said.name().equals(name)) {
          return Optional.of(said);
        }
      }
    }
    return Optional.empty();
  }
}
