package lowfirst.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import lowfirst.marking.BandReading.Direction;
import lowfirst.marking.ColourCode.Body;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Laws over every row of three, four, five and six bands. The counts were computed from the grammar
 * (first figure not black, 13 multipliers, 10 tolerances) and from IEC 60063 by counting, apart
 * from our code: a maker's five-band part of ±1 % may have an E96 or an E24 value, and so on.
 */
class EveryBandSequenceTest {
  private static final Edition EDITION = Edition.IEC_60062_2016;

  @ParameterizedTest
  @CsvSource({
    "3, THREE, 1170, 312, 810, 42",
    "4, FOUR, 11700, 3120, 6400, 506",
    "5, FIVE, 117000, 18993, 64000, 2354"
  })
  void as_many_codes_are_legal_preferred_and_reversible_as_counted_independently(
      int bands, Layout layout, int legal, int preferred, int reversible, int bothPreferred) {
    int[] counts = new int[4];
    eachSequence(
        bands,
        sequence -> {
          Optional<BandReading> reading = reading(sequence, layout);
          if (reading.isEmpty()) {
            return;
          }
          counts[0]++;
          counts[1] += reading.get().isPreferred() ? 1 : 0;
          Optional<BandReading> backwards = reading(sequence.reversed(), layout);
          if (backwards.isPresent()) {
            counts[2]++;
            boolean both = reading.get().isPreferred() && backwards.get().isPreferred();
            counts[3] += both && !sequence.isPalindrome() ? 1 : 0;
          }
        });
    assertEquals(
        List.of(legal, preferred, reversible, bothPreferred),
        List.of(counts[0], counts[1], counts[2], counts[3]));
  }

  @ParameterizedTest
  @CsvSource({"3, THREE", "4, FOUR", "5, FIVE"})
  void every_legal_sequence_decodes_encodes_and_parses_back(int bands, Layout layout) {
    eachSequence(
        bands,
        sequence -> {
          Optional<BandReading> reading = reading(sequence, layout);
          if (reading.isPresent()) {
            BandReading read = reading.get();
            BandSequence written =
                BandEncoding.encode(
                        read.value(), read.tolerance().orElseThrow(), layout, OptionalInt.empty())
                    .orThrow();
            assertEquals(sequence, written);
            assertEquals(sequence, BandSequence.parse(sequence.words()).orThrow());
            assertEquals(sequence, BandSequence.parse(sequence.toString()).orThrow());
          }
        });
  }

  @Test
  void every_six_band_sequence_is_a_five_band_one_with_a_coefficient() {
    int[] legal = new int[1];
    for (Colour last : Colour.values()) {
      eachSequence(
          5,
          five -> {
            var bands = new ArrayList<>(five.bands());
            bands.add(last);
            var six = new BandSequence(bands);
            Optional<BandReading> reading = reading(six, Layout.SIX);
            boolean expected =
                last.ppmPerKelvin().isPresent() && reading(five, Layout.FIVE).isPresent();
            assertEquals(expected, reading.isPresent(), six::toString);
            legal[0] += expected ? 1 : 0;
          });
    }
    // 117,000 five-band codes and the nine colours that have a coefficient.
    assertEquals(9 * 117_000, legal[0]);
  }

  @Test
  void no_four_band_code_that_ends_in_gold_or_silver_reads_from_the_other_end() {
    eachSequence(
        4,
        sequence -> {
          Colour last = sequence.bands().get(3);
          if (last == Colour.GOLD || last == Colour.SILVER) {
            assertTrue(
                ColourCode.decode(sequence).readings().stream()
                    .allMatch(reading -> reading.direction() == Direction.AS_GIVEN),
                sequence::toString);
          }
        });
  }

  /**
   * Gold or silver fourth, a failure-rate colour fifth, both readings preferred: counted apart from
   * our code, 96 codes say the same value in both, 486 don't.
   */
  @Test
  void a_failure_rate_band_makes_as_many_codes_ambiguous_as_counted_independently() {
    int[] counts = new int[2];
    eachSequence(
        5,
        sequence -> {
          Optional<BandReading> military = reading(sequence, Layout.FOUR_AND_FAILURE_RATE);
          Optional<BandReading> five = reading(sequence, Layout.FIVE);
          if (military.isPresent()
              && five.isPresent()
              && military.get().isPreferred()
              && five.get().isPreferred()) {
            counts[military.get().sameValueAs(five.get()) ? 0 : 1]++;
          }
        });
    assertEquals(List.of(96, 486), List.of(counts[0], counts[1]));
  }

  /**
   * Five bands, 1 or 2 % at both ends, 1 Ω to 10 MΩ both ways: 53 pairs, 21 of them 1 % both ways.
   */
  @Test
  void as_many_shop_resistors_read_both_ways_as_counted_independently() {
    var pairs = new java.util.HashSet<java.util.Set<BandSequence>>();
    var onePercent = new java.util.HashSet<java.util.Set<BandSequence>>();
    eachSequence(
        5,
        sequence -> {
          Optional<BandReading> forward = reading(sequence, Layout.FIVE).filter(this::isInShops);
          Optional<BandReading> backward =
              reading(sequence.reversed(), Layout.FIVE).filter(this::isInShops);
          if (forward.isPresent() && backward.isPresent() && !sequence.isPalindrome()) {
            pairs.add(java.util.Set.of(sequence, sequence.reversed()));
            if (sequence.bands().get(0) == Colour.BROWN
                && sequence.bands().get(4) == Colour.BROWN) {
              onePercent.add(java.util.Set.of(sequence, sequence.reversed()));
            }
          }
        });
    assertEquals(List.of(53, 21), List.of(pairs.size(), onePercent.size()));
  }

  private boolean isInShops(BandReading reading) {
    double ohms = reading.value().asDouble();
    double percent = reading.tolerance().orElseThrow().plus().doubleValue();
    return reading.isPreferred() && ohms >= 1 && ohms <= 10e6 && (percent == 1 || percent == 2);
  }

  @Test
  void looking_from_the_other_end_never_changes_what_the_readings_are() {
    eachSequence(
        4,
        sequence ->
            assertEquals(
                values(ColourCode.decode(sequence)),
                values(ColourCode.decode(sequence.reversed())),
                sequence::toString));
  }

  private static List<String> values(BandDecoding decoding) {
    return decoding.readings().stream()
        .map(reading -> reading.value() + " " + reading.tolerance() + reading.layout())
        .sorted()
        .toList();
  }

  private static Optional<BandReading> reading(BandSequence sequence, Layout layout) {
    return ColourCode.decodeFromStart(sequence, Body.RESISTOR, EDITION).readings().stream()
        .filter(reading -> reading.layout() == layout)
        .findFirst();
  }

  private static void eachSequence(int bands, Consumer<BandSequence> visit) {
    Colour[] colours = Colour.values();
    int[] at = new int[bands];
    while (true) {
      var sequence = new ArrayList<Colour>(bands);
      for (int index : at) {
        sequence.add(colours[index]);
      }
      visit.accept(new BandSequence(sequence));
      int place = bands - 1;
      while (place >= 0 && ++at[place] == colours.length) {
        at[place--] = 0;
      }
      if (place < 0) {
        return;
      }
    }
  }
}
