package lowfirst.intake.kind;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import lowfirst.part.PartKind;

/**
 * The kind of a part, weighed from all that is written about it. Votes for kinds of one family add
 * up; within the winning family the strongest single vote decides, a general kind only when no
 * narrower one is named.
 */
public final class PartKindGuess {
  /** A letter that boards hardly ever use otherwise: R, C, L, D. */
  static final int SUREST = 4;

  /** A vote as strong as a type number that stands where the value does. */
  static final int STRONG = 3;

  /** A vote as strong as other letters of a designator, or a description. */
  static final int WEAK = 2;

  /** A vote that counts where nothing else speaks. */
  static final int WEAKEST = 1;

  private final Map<PartKind, Integer> votes = new EnumMap<>(PartKind.class);

  /** Adds a vote, if there is one. */
  void vote(Optional<PartKind> kind, int weight) {
    kind.ifPresent(named -> votes.merge(named, weight, Integer::sum));
  }

  /** Whether there is a vote for just this kind. */
  boolean has(PartKind kind) {
    return votes.containsKey(kind);
  }

  /** The kind that most speaks for. */
  PartKind kind() {
    var families = new EnumMap<PartKind, Integer>(PartKind.class);
    votes.forEach((kind, weight) -> families.merge(family(kind), weight, Integer::sum));
    PartKind best = PartKind.UNKNOWN;
    int most = 0;
    for (Map.Entry<PartKind, Integer> entry : families.entrySet()) {
      if (entry.getValue() > most) {
        best = entry.getKey();
        most = entry.getValue();
      }
    }
    return within(best);
  }

  private PartKind within(PartKind family) {
    PartKind best = family;
    int most = 0;
    for (Map.Entry<PartKind, Integer> entry : votes.entrySet()) {
      boolean narrower = entry.getKey() != family;
      int weight = entry.getValue() + (narrower ? 100 : 0);
      if (family(entry.getKey()) == family && weight > most) {
        best = entry.getKey();
        most = weight;
      }
    }
    return best;
  }

  /** Whether two kinds are of one family, so that the narrower one may stand for both. */
  public static boolean areKin(PartKind one, PartKind other) {
    return family(one) == family(other);
  }

  /** The general kind that a narrower one belongs to. */
  private static PartKind family(PartKind kind) {
    return switch (kind) {
      case RESISTOR_NETWORK, TRIMMER, POTENTIOMETER, THERMISTOR, PHOTORESISTOR -> PartKind.RESISTOR;
      case CERAMIC_CAPACITOR,
          FILM_CAPACITOR,
          ELECTROLYTIC_CAPACITOR,
          TANTALUM_CAPACITOR,
          TRIMMER_CAPACITOR ->
          PartKind.CAPACITOR;
      case SCHOTTKY_DIODE, ZENER_DIODE, LED, BRIDGE_RECTIFIER -> PartKind.DIODE;
      case BIPOLAR_TRANSISTOR, JFET, MOSFET, THYRISTOR -> PartKind.TRANSISTOR;
      case OPTOCOUPLER, DRIVER_ARRAY, REGULATOR, MODULE -> PartKind.INTEGRATED_CIRCUIT;
      case PIN_HEADER, SCREW_TERMINAL -> PartKind.CONNECTOR;
      case RESONATOR -> PartKind.CRYSTAL;
      default -> kind;
    };
  }
}
