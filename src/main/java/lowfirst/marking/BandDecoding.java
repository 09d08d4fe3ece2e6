package lowfirst.marking;

import java.util.List;

/**
 * Everything that a row of bands can mean, looked at from both ends.
 *
 * @param bands the bands as given
 * @param edition the table of colours used
 * @param readings every legal reading, the likeliest first; none when the bands are no code
 */
public record BandDecoding(BandSequence bands, Edition edition, List<BandReading> readings) {

  /** How far the bands alone settle the value. */
  public enum Certainty {
    /** One value only, from whichever end. */
    CERTAIN,
    /** Several legal values, of which only one is a preferred number in the ordinary range. */
    LIKELY,
    /** Two or more values that shops sell: the bands can't tell, a meter can. */
    AMBIGUOUS,
    /** Legal, but nothing that shops sell. */
    DOUBTFUL,
    /** No legal reading from either end. */
    NOT_A_CODE
  }

  public BandDecoding {
    readings = List.copyOf(readings);
  }

  /** The readings that differ from the likeliest in value or tolerance. */
  public List<BandReading> others() {
    return readings.stream()
        .skip(1)
        .filter(other -> !other.meansTheSameAs(readings.get(0)))
        .toList();
  }

  /** How far the bands alone settle the value. */
  public Certainty certainty() {
    if (readings.isEmpty()) {
      return Certainty.NOT_A_CODE;
    }
    BandReading first = readings.get(0);
    if (!first.isPlausible()) {
      return Certainty.DOUBTFUL;
    }
    Certainty certainty = Certainty.CERTAIN;
    for (BandReading other : readings) {
      if (!first.sameValueAs(other)) {
        if (other.isPlausible()) {
          return Certainty.AMBIGUOUS;
        }
        certainty = Certainty.LIKELY;
      }
    }
    return certainty;
  }
}
