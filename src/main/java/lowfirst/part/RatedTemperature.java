package lowfirst.part;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Up to which temperature a rating holds, and of what: of the air around a part or, with better
 * cooling than air gives, of its leads or its case. Ratings of different places can't be compared
 * by their numbers.
 *
 * @param place where the temperature is measured
 * @param celsius in degrees Celsius
 */
public record RatedTemperature(Place place, double celsius) {

  /** Where a maker measures the temperature that a rating holds up to. */
  public enum Place {
    AIR("TA", "TAMB"),
    LEADS("TL", "TT"),
    CASE("TC", "TMB");

    private final List<String> symbols;

    Place(String... symbols) {
      this.symbols = List.of(symbols);
    }

    /** Its usual letter symbol: TA, TL or TC. */
    public String symbol() {
      return symbols.get(0);
    }
  }

  /** Whether it is that of the air, and not of metal that something keeps cool. */
  public boolean isOfAir() {
    return place == Place.AIR;
  }

  /** What a condition states of it; nothing of a range. Where it states several, the air counts. */
  public static Optional<RatedTemperature> in(TestCondition condition) {
    for (Place place : Place.values()) {
      for (String symbol : place.symbols) {
        OptionalDouble celsius = condition.value(symbol);
        if (celsius.isPresent()) {
          return Optional.of(new RatedTemperature(place, celsius.getAsDouble()));
        }
      }
    }
    return Optional.empty();
  }
}
