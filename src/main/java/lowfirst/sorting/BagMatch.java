package lowfirst.sorting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lowfirst.board.BagLine;
import lowfirst.marking.BandSequence;
import lowfirst.marking.PrintedCode;
import lowfirst.marking.WrittenValue;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.problem.Reading;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/**
 * Which part types a label in {@code bag.csv} can mean: a type number, a value with words beside
 * it, a row of bands or a printed code.
 */
final class BagMatch {
  private static final int NAMED = 100;
  private static final int VALUED = 40;
  private static final int WORD = 4;

  private final String folded;
  private final Set<String> words;
  private final Optional<BandSequence> bands;
  private final String text;

  private BagMatch(String text) {
    this.text = text;
    this.folded = Compartments.folded(text);
    this.words = words(text);
    this.bands = BandSequence.parse(text).value().filter(found -> found.count() >= 3);
  }

  /** The compartments that fit a label best; several when it fits them equally well. */
  static List<Compartment> of(BagLine line, List<Compartment> compartments) {
    var match = new BagMatch(line.text());
    var best = new ArrayList<Compartment>();
    int most = 0;
    for (Compartment compartment : compartments) {
      int score = match.score(compartment);
      if (score > most) {
        best.clear();
        most = score;
      }
      if (score == most && score > 0) {
        best.add(compartment);
      }
    }
    return best;
  }

  private int score(Compartment compartment) {
    PartType type = compartment.type();
    boolean named =
        !type.typeNumber().isBlank() && Compartments.folded(type.typeNumber()).equals(folded);
    boolean byText = !type.text().isBlank() && Compartments.folded(type.text()).equals(folded);
    if (named) {
      return NAMED;
    }
    if (bands.isPresent()) {
      return compartment.marking().bands().contains(bands.get()) ? NAMED : 0;
    }
    int valued = valued(type);
    if (valued < 0) {
      return 0;
    }
    int shared = shared(compartment);
    if (valued > 0) {
      return valued + WORD * shared;
    }
    if (byText && type.value().isEmpty()) {
      return VALUED + WORD * shared;
    }
    // Without a value most of the words have to fit, or the label means something else.
    return shared > 0 && 3 * shared >= 2 * words.size() ? WORD * shared : 0;
  }

  /** Positive when the label states this value, negative when it states another one. */
  private int valued(PartType type) {
    Optional<Dimension> dimension = type.value().map(Quantity::dimension);
    if (dimension.isEmpty()) {
      return 0;
    }
    Reading<WrittenValue> written = WrittenValue.parse(text, dimension);
    if (written.isRead()) {
      return fits(written.orThrow(), type) ? VALUED : -1;
    }
    boolean printed =
        PrintedCode.readings(text).stream()
            .anyMatch(
                reading ->
                    reading.value().equals(type.value())
                        && type.kind().isCapacitor()
                            == (reading.value().orElseThrow().dimension()
                                == Dimension.CAPACITANCE));
    return printed ? VALUED : WrittenValue.parse(text, Optional.empty()).isRead() ? -1 : 0;
  }

  private static boolean fits(WrittenValue written, PartType type) {
    return type.value().filter(value -> value.sameAs(written.value())).isPresent()
        && agrees(written.tolerance(), type.tolerance())
        && agrees(written.voltage(), type.ratedVoltage())
        && agrees(written.power(), type.ratedPower());
  }

  private static <T> boolean agrees(Optional<T> stated, Optional<T> wanted) {
    return stated.isEmpty() || wanted.isEmpty() || stated.equals(wanted);
  }

  private int shared(Compartment compartment) {
    PartType type = compartment.type();
    Set<String> theirs =
        words(
            String.join(
                " ",
                type.text(),
                type.typeNumber(),
                type.packageName(),
                type.kind().words(),
                otherWords(type.kind()),
                String.join(" ", compartment.descriptions())));
    return (int) words.stream().filter(theirs::contains).count();
  }

  /** Short names that people write on bags. */
  private static String otherWords(PartKind kind) {
    return switch (kind) {
      case ELECTROLYTIC_CAPACITOR -> "elco cap";
      case CERAMIC_CAPACITOR, FILM_CAPACITOR, CAPACITOR -> "cap";
      case SWITCH -> "tact button";
      case POTENTIOMETER -> "pot";
      default -> "";
    };
  }

  private static Set<String> words(String text) {
    return Arrays.stream(text.toLowerCase(Locale.ROOT).split("[\\s,;/()]+"))
        .map(word -> word.replaceAll("[^\\p{L}\\p{N}.µ-]", ""))
        .filter(word -> !word.isEmpty())
        .collect(Collectors.toCollection(HashSet::new));
  }
}
