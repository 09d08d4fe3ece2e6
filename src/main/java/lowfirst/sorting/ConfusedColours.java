package lowfirst.sorting;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lowfirst.marking.Colour;
import lowfirst.sorting.Likeness.Circumstance;

/**
 * Which colours of bands are taken for each other, and by whom.
 *
 * <p>Poor light: pairs that everybody knows to be confused on dirty or overheated parts (common
 * practice). Deficient colour vision: pairs whose simulated colours differ by less than {@value
 * #ALIKE} in CIEDE2000, a limit chosen by us; the paint of real parts varies, so the table errs
 * towards warning.
 */
public final class ConfusedColours {
  static final double ALIKE = 10;

  /** Within each set any colour is taken for any other. */
  private static final List<Set<Colour>> POOR_LIGHT =
      List.of(
          EnumSet.of(Colour.BROWN, Colour.RED, Colour.ORANGE),
          EnumSet.of(Colour.BLUE, Colour.VIOLET),
          EnumSet.of(Colour.GREY, Colour.WHITE, Colour.SILVER),
          EnumSet.of(Colour.YELLOW, Colour.GOLD, Colour.ORANGE));

  private static final Map<Colour, Map<Colour, Set<Circumstance>>> TABLE = table();

  private ConfusedColours() {}

  /** Who takes one colour for the other; empty when nobody does. */
  public static Set<Circumstance> of(Colour one, Colour other) {
    return TABLE.get(one).get(other);
  }

  private static Map<Colour, Map<Colour, Set<Circumstance>>> table() {
    var table = new EnumMap<Colour, Map<Colour, Set<Circumstance>>>(Colour.class);
    for (Colour one : Colour.values()) {
      var row = new EnumMap<Colour, Set<Circumstance>>(Colour.class);
      for (Colour other : Colour.values()) {
        row.put(other, one == other ? Set.of() : circumstances(one, other));
      }
      table.put(one, row);
    }
    return table;
  }

  private static Set<Circumstance> circumstances(Colour one, Colour other) {
    var found = EnumSet.noneOf(Circumstance.class);
    if (POOR_LIGHT.stream().anyMatch(set -> set.contains(one) && set.contains(other))) {
      found.add(Circumstance.POOR_LIGHT);
    }
    addIfAlike(found, one, other, ColourVision.PROTANOPIA, Circumstance.PROTANOPIA);
    addIfAlike(found, one, other, ColourVision.DEUTERANOPIA, Circumstance.DEUTERANOPIA);
    addIfAlike(found, one, other, ColourVision.TRITANOPIA, Circumstance.TRITANOPIA);
    return found;
  }

  private static void addIfAlike(
      Set<Circumstance> found,
      Colour one,
      Colour other,
      ColourVision vision,
      Circumstance circumstance) {
    if (ColourDifference.of(one.rgb(), other.rgb(), vision) < ALIKE) {
      found.add(circumstance);
    }
  }
}
