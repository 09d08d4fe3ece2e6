package lowfirst.swap.rule;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import lowfirst.part.DatasheetLine;
import lowfirst.part.RatedTemperature;
import lowfirst.part.TestCondition;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.swap.subject.Evidence;
import lowfirst.swap.subject.SwapCase;
import lowfirst.swap.subject.SwapPart;

/**
 * The average current of two diodes, each rated at temperatures of its own. Every line of the BOM's
 * part must be kept by one of the candidate's: each of them may be what the place was chosen for. A
 * candidate that is rated in cooler air counts with what is left of its rating in the warmer air of
 * the other: in a straight line to nothing at its junction temperature. A rating at the leads or
 * the case, which something keeps cool there, says nothing of one in air.
 */
final class DiodeCurrent {
  private static final String SYMBOL = "IFav";

  private static final List<String> CHANNEL =
      List.of("the current and the air there: a channel in channels.csv");

  private DiodeCurrent() {}

  static Optional<Answer> judge(SwapCase swap) {
    Optional<Answer> plain = Comparison.atLeast(SYMBOL).of(swap);
    boolean fits = plain.filter(answer -> answer.verdict() == SwapVerdict.FITS).isPresent();
    if (!fits) {
      return plain;
    }
    Answer open = null;
    for (List<Evidence> needs : makers(swap.asked())) {
      Optional<Answer> answer = open(swap, needs);
      if (answer.isEmpty()) {
        return plain; // the BOM accepts what this maker promises
      }
      open = answer.get();
    }
    return Optional.ofNullable(open).or(() -> plain);
  }

  /** Of each maker what it promises, a line for each condition. */
  private static Collection<List<Evidence>> makers(SwapPart part) {
    var makers = new LinkedHashMap<String, List<Evidence>>();
    for (DatasheetLine line : part.lines(SYMBOL)) {
      SwapPart.limit(line)
          .ifPresent(
              limit ->
                  makers
                      .computeIfAbsent(line.maker(), first -> new ArrayList<>())
                      .add(Evidence.of(limit, line.condition(), line.source())));
    }
    return makers.values();
  }

  /** What stays open of these promises: each maker of the candidate must keep every one of them. */
  private static Optional<Answer> open(SwapCase swap, List<Evidence> needs) {
    for (List<Evidence> gives : makers(swap.offered())) {
      for (Evidence asked : needs) {
        var open = new ArrayList<Answer>();
        boolean kept = false;
        for (Evidence offered : gives) {
          Optional<Answer> answer = open(swap, asked, offered);
          answer.ifPresent(isPlaceShared(asked, offered) ? a -> open.add(0, a) : open::add);
          kept |= answer.isEmpty();
        }
        if (!kept) {
          return Optional.of(open.get(0));
        }
      }
    }
    return Optional.empty();
  }

  /** Whether both are rated by a temperature of the same place, so that one tells of the other. */
  private static boolean isPlaceShared(Evidence asked, Evidence offered) {
    Optional<RatedTemperature.Place> place = ratedAt(asked).map(RatedTemperature::place);
    return place.isPresent() && place.equals(ratedAt(offered).map(RatedTemperature::place));
  }

  /** What stays open of one promise where one line is to keep it; nothing where it does. */
  private static Optional<Answer> open(SwapCase swap, Evidence asked, Evidence offered) {
    Optional<RatedTemperature> warm = ratedAt(asked);
    Optional<RatedTemperature> cool = ratedAt(offered);
    boolean cooled = cool.filter(at -> !at.isOfAir()).isPresent();
    if (asked.word().isBlank() && !cooled) {
      // the BOM's part asks for no temperature, and the candidate for no cooling
      return isEnough(asked, offered) ? Optional.empty() : Optional.of(less(swap, asked, offered));
    }
    if (warm.isEmpty() || cool.isEmpty()) {
      String name = (warm.isEmpty() ? swap.asked() : swap.offered()).name();
      return Optional.of(
          Answer.missing(
              Optional.of(asked),
              Optional.of(offered),
              List.of(
                  "the temperature at which IFav of "
                      + name
                      + " is rated (TA=, TL= or TC=): condition of its row in datasheets.csv"),
              "a rating at cooled leads or a cooled case is several times that in air"));
    }
    if (warm.get().place() != cool.get().place()) {
      return Optional.of(
          Answer.missing(
              Optional.of(asked),
              Optional.of(offered),
              CHANNEL,
              "the one is rated by the temperature of its "
                  + words(warm.get())
                  + ", the other by that of its "
                  + words(cool.get())
                  + ": the currents can't be compared"));
    }
    if (cool.get().celsius() < warm.get().celsius()) {
      return derated(swap, asked, offered, warm.get(), cool.get());
    }
    return isEnough(asked, offered) ? Optional.empty() : Optional.of(less(swap, asked, offered));
  }

  private static boolean isEnough(Evidence asked, Evidence offered) {
    return offered.quantity().orElseThrow().compareTo(asked.quantity().orElseThrow()) >= 0;
  }

  /** Rated for less, where its datasheet states no current for the other's condition. */
  private static Answer less(SwapCase swap, Evidence asked, Evidence offered) {
    return Answer.missing(
        Optional.of(asked),
        Optional.of(offered),
        List.of(
            SYMBOL
                + " of "
                + swap.offered().name()
                + (asked.word().isBlank() ? "" : " at " + asked.word())
                + ": a row in datasheets.csv"),
        "the other is rated for more there");
  }

  private static Optional<RatedTemperature> ratedAt(Evidence current) {
    return RatedTemperature.in(TestCondition.parse(current.word()));
  }

  /** What is missing where too little is left of a rating in the warmth of the other's. */
  private static Optional<Answer> derated(
      SwapCase swap,
      Evidence asked,
      Evidence offered,
      RatedTemperature warm,
      RatedTemperature cool) {
    double junction =
        swap.offered()
            .least("TJ")
            .flatMap(Evidence::quantity)
            .map(Quantity::asDouble)
            .orElse(Double.NaN);
    double left = Math.max(0, (junction - warm.celsius()) / (junction - cool.celsius()));
    double amps = offered.quantity().orElseThrow().asDouble() * left;
    if (amps >= asked.quantity().orElseThrow().asDouble()) {
      return Optional.empty();
    }
    String symbol = warm.place().symbol();
    Evidence there =
        Double.isNaN(amps)
            ? offered
            : Evidence.of(
                Quantity.of(amps, Dimension.CURRENT),
                "with the warmer " + words(warm) + " of the other's rating",
                Source.computed(
                    "IFav·(TJ − " + symbol + ")/(TJ − " + symbol + "(IFav)), " + offered.source()));
    return Optional.of(
        Answer.missing(
            Optional.of(asked),
            Optional.of(there),
            CHANNEL,
            "it is rated in cooler "
                + words(warm)
                + ": "
                + (Double.isNaN(amps) ? "unknown" : amps(amps))
                + " is left where the other is rated"));
  }

  private static String amps(double amps) {
    return Quantity.of(amps, Dimension.CURRENT).rounded(2);
  }

  /** What is measured there. */
  private static String words(RatedTemperature at) {
    return switch (at.place()) {
      case AIR -> "air";
      case LEADS -> "leads";
      case CASE -> "case";
    };
  }
}
