package lowfirst.sorting;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lowfirst.marking.Colour;
import lowfirst.sorting.ColourDifference.Lab;
import lowfirst.sorting.Likeness.Circumstance;

/**
 * Which colours of bands are taken for each other, and by whom.
 *
 * <p>Poor light: pairs that everybody knows to be confused on dirty or overheated parts (common
 * practice). Deficient colour vision: pairs whose simulated colours differ by less than {@value
 * #ALIKE} in CIEDE2000, a limit chosen by us; the paint of real parts varies, so the table errs
 * towards warning.
 */
final class ConfusedColours {
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
  static Set<Circumstance> of(Colour one, Colour other) {
    return TABLE.get(one).get(other);
  }

  private static Map<Colour, Map<Colour, Set<Circumstance>>> table() {
    var table = new EnumMap<Colour, Map<Colour, Set<Circumstance>>>(Colour.class);
    for (Colour colour : Colour.values()) {
      table.put(colour, new EnumMap<>(Map.of(colour, Set.of())));
    }
    var looks = new EnumMap<Circumstance, Map<Colour, Lab>>(Circumstance.class);
    looks.put(Circumstance.PROTANOPIA, looks(ColourVision.PROTANOPIA));
    looks.put(Circumstance.DEUTERANOPIA, looks(ColourVision.DEUTERANOPIA));
    looks.put(Circumstance.TRITANOPIA, looks(ColourVision.TRITANOPIA));
    for (Colour one : Colour.values()) {
      for (Colour other : Colour.values()) {
        if (one.compareTo(other) < 0) {
          Set<Circumstance> circumstances = circumstances(one, other, looks);
          table.get(one).put(other, circumstances);
          table.get(other).put(one, circumstances);
        }
      }
    }
    return table;
  }

  private static Map<Colour, Lab> looks(ColourVision vision) {
    var looks = new EnumMap<Colour, Lab>(Colour.class);
    for (Colour colour : Colour.values()) {
      looks.put(colour, Lab.of(vision.seen(colour.rgb())));
    }
    return looks;
  }

  private static Set<Circumstance> circumstances(
      Colour one, Colour other, Map<Circumstance, Map<Colour, Lab>> looks) {
    var found = EnumSet.noneOf(Circumstance.class);
    for (Set<Colour> alike : POOR_LIGHT) {
      if (alike.contains(one) && alike.contains(other)) {
        found.add(Circumstance.POOR_LIGHT);
      }
    }
    for (var look : looks.entrySet()) {
      Lab first = look.getValue().get(one);
      Lab second = look.getValue().get(other);
      if (ColourDifference.ciede2000(first, second) < ALIKE) {
        found.add(look.getKey());
      }
    }
    return found;
  }
}
