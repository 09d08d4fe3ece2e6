package lowfirst.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import be.webtechie.resistorcalculator.definition.ColorCode;
import be.webtechie.resistorcalculator.util.Calculate;
import be.webtechie.resistorcalculator.util.ResistorValue;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;
import lowfirst.PublishedTable;
import lowfirst.marking.ColourCode.Body;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Tolerance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Independent implementations: be.webtechie:resistor-calculator 0.1.4 from Maven Central, for every
 * row of colours that it knows, and npm electro-grammar 1.3.0, recorded, for written values. Every
 * disagreement is listed with its reason; an unlisted one fails.
 */
class IndependentDecoderTest {

  /** Why the other decoder says something else, or nothing. */
  private enum Disagreement {
    /** It lets a code begin with black; a code's figures start at 10 (IEC 60062, clause 3). */
    BLACK_FIRST,
    /** It has no tolerance for orange: the older table. */
    NO_ORANGE_TOLERANCE,
    /** It has 0 % for yellow; the maker's card has ±0.02 %. */
    YELLOW_IS_ZERO,
    /** It has ±0.25 % for grey; no table has. */
    GREY_IS_WRONG,
    /** It takes white for a tolerance of 0 %. */
    WHITE_IS_ZERO
  }

  private static final Map<Colour, ColorCode> THEIRS = new EnumMap<>(Colour.class);

  static {
    for (Colour colour : Colour.values()) {
      if (colour != Colour.PINK) {
        THEIRS.put(colour, ColorCode.valueOf(colour.name()));
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"3, THREE, 0, 1080", "4, FOUR, 3, 7560", "5, FIVE, 4, 75600"})
  void agrees_with_ours_on_every_row_of_bands_but_for_the_listed_reasons(
      int bands, Layout layout, int tolerancePlace, int agreed) {
    int[] agreements = new int[1];
    var disagreements = new TreeMap<Disagreement, Integer>();
    eachSequence(
        bands,
        sequence -> {
          Optional<BandReading> ours =
              ColourCode.decodeFromStart(sequence, Body.RESISTOR, Edition.IEC_60062_2016)
                  .readings()
                  .stream()
                  .filter(reading -> reading.layout() == layout)
                  .findFirst();
          Optional<ResistorValue> theirs = theirs(sequence);
          if (same(ours, theirs)) {
            agreements[0] += ours.isPresent() ? 1 : 0;
          } else {
            disagreements.merge(reason(sequence, ours, theirs, tolerancePlace), 1, Integer::sum);
          }
        });
    // Of 12 colours without pink, nine begin; of ten tolerances orange, yellow and grey differ.
    assertEquals(agreed, agreements[0], disagreements::toString);
  }

  private static boolean same(Optional<BandReading> ours, Optional<ResistorValue> theirs) {
    if (ours.isEmpty() || theirs.isEmpty()) {
      return ours.isEmpty() && theirs.isEmpty();
    }
    double ohms = ours.get().value().asDouble();
    double percent = ours.get().tolerance().orElseThrow().plus().doubleValue();
    return Math.abs(theirs.get().getOhm() - ohms) <= 1e-9 * ohms
        && theirs.get().getTolerance() == percent;
  }

  private static Disagreement reason(
      BandSequence sequence,
      Optional<BandReading> ours,
      Optional<ResistorValue> theirs,
      int tolerancePlace) {
    if (sequence.bands().get(0) == Colour.BLACK && ours.isEmpty()) {
      return Disagreement.BLACK_FIRST;
    }
    Colour tolerance = sequence.bands().get(tolerancePlace);
    if (tolerancePlace > 0 && tolerance == Colour.ORANGE && theirs.isEmpty()) {
      return Disagreement.NO_ORANGE_TOLERANCE;
    }
    if (tolerancePlace > 0 && tolerance == Colour.YELLOW) {
      return Disagreement.YELLOW_IS_ZERO;
    }
    if (tolerancePlace > 0 && tolerance == Colour.GREY) {
      return Disagreement.GREY_IS_WRONG;
    }
    if (tolerancePlace > 0 && tolerance == Colour.WHITE && ours.isEmpty()) {
      return Disagreement.WHITE_IS_ZERO;
    }
    throw new AssertionError("unexplained: " + sequence + ": " + ours + ", they: " + theirs);
  }

  private static Optional<ResistorValue> theirs(BandSequence sequence) {
    try {
      return Optional.of(
          Calculate.resistorValue(sequence.bands().stream().map(THEIRS::get).toList()));
    } catch (IllegalArgumentException refused) {
      return Optional.empty();
    }
  }

  private static void eachSequence(int bands, Consumer<BandSequence> visit) {
    List<Colour> colours = List.copyOf(THEIRS.keySet());
    long all = Math.round(Math.pow(colours.size(), bands));
    for (long number = 0; number < all; number++) {
      var sequence = new ArrayList<Colour>();
      long rest = number;
      for (int band = 0; band < bands; band++) {
        sequence.add(colours.get((int) (rest % colours.size())));
        rest /= colours.size();
      }
      visit.accept(new BandSequence(sequence));
    }
  }

  static Stream<Map<String, String>> written() {
    return PublishedTable.rows("electro-grammar.csv").stream();
  }

  /**
   * It doesn't read a bare number, a bare n, or a slash before the voltage; it takes a bare u for
   * micro-ohms, and drops the mark of R47.
   */
  @ParameterizedTest
  @MethodSource("written")
  void a_recorded_parser_reads_written_values_as_ours_does(Map<String, String> row) {
    String text = row.get("text");
    boolean capacitor = row.get("kind").equals("capacitor");
    Dimension dimension = capacitor ? Dimension.CAPACITANCE : Dimension.RESISTANCE;
    if (row.get("kind").isEmpty()) {
      assertTrue(text.matches("[\\d.]+|\\d+n\\d*|.*/.*"), "unexplained: they don't read " + text);
      return;
    }
    double value = Double.parseDouble(row.get("value"));
    if (text.matches("\\d+u\\d*")) {
      assertEquals("resistor", row.get("kind"), "they read it right by now: drop this case");
      return;
    }
    WrittenValue ours = WrittenValue.parse(text, Optional.of(dimension)).orThrow();
    if (text.equals("R47")) {
      assertEquals(0.47, ours.value().asDouble());
      assertEquals(47, value, "they read it right by now: drop this case");
      return;
    }
    assertEquals(value, ours.value().asDouble(), value * 1e-9);
    assertEquals(
        row.get("tolerance percent"),
        ours.tolerance().map(t -> t.plus().toPlainString()).orElse(""));
    assertEquals(
        row.get("voltage"), ours.voltage().map(v -> v.amount().toPlainString()).orElse(""));
    assertEquals(row.get("power"), ours.power().map(v -> v.amount().toPlainString()).orElse(""));
  }

  static Stream<Map<String, String>> wrongCharts() {
    return PublishedTable.rows("colour-charts-in-error.csv").stream();
  }

  @ParameterizedTest
  @MethodSource("wrongCharts")
  void no_wrong_chart_is_followed(Map<String, String> row) {
    BandSequence bands = BandSequence.parse(row.get("bands")).orThrow();
    List<BandReading> readings =
        ColourCode.decodeFromStart(bands, Body.RESISTOR, Edition.IEC_60062_2016).readings();
    assertTrue(
        readings.stream()
            .noneMatch(
                reading ->
                    reading.value().toString().equals(row.get("wrong value"))
                        && reading
                            .tolerance()
                            .map(Tolerance::toString)
                            .orElse("")
                            .equals(row.get("wrong tolerance"))),
        readings::toString);
  }
}
