package lowfirst.intake.shipped;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toSet;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import lowfirst.part.DatasheetLine;
import lowfirst.part.PartKind;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CatalogueTest {
  private static final List<DatasheetLine> LINES = ShippedTables.catalogue().lines();

  /** Symbols that are words: their text stands in the condition column. */
  private static final Set<String> WORDS =
      Set.of(
          "kind",
          "polarity",
          "package",
          "pins",
          "tab",
          "technology",
          "tolerance",
          "characteristic",
          "dielectric",
          "class",
          "family",
          "function",
          "output",
          "clamp");

  private static final Map<String, Dimension> DIMENSIONS =
      Map.ofEntries(
          Map.entry("VDS", Dimension.VOLTAGE),
          Map.entry("VGS", Dimension.VOLTAGE),
          Map.entry("VGSth", Dimension.VOLTAGE),
          Map.entry("RDSon", Dimension.RESISTANCE),
          Map.entry("RDSonRatio", Dimension.RATIO),
          Map.entry("ID", Dimension.CURRENT),
          Map.entry("QG", Dimension.CHARGE),
          Map.entry("QGS", Dimension.CHARGE),
          Map.entry("QGD", Dimension.CHARGE),
          Map.entry("Ciss", Dimension.CAPACITANCE),
          Map.entry("Crss", Dimension.CAPACITANCE),
          Map.entry("RthJA", Dimension.THERMAL_RESISTANCE),
          Map.entry("RthJC", Dimension.THERMAL_RESISTANCE),
          Map.entry("TJ", Dimension.TEMPERATURE),
          Map.entry("EAS", Dimension.ENERGY),
          Map.entry("VRRM", Dimension.VOLTAGE),
          Map.entry("IFav", Dimension.CURRENT),
          Map.entry("IFSM", Dimension.CURRENT),
          Map.entry("VF", Dimension.VOLTAGE),
          Map.entry("trr", Dimension.TIME),
          Map.entry("VZ", Dimension.VOLTAGE),
          Map.entry("VCEO", Dimension.VOLTAGE),
          Map.entry("IC", Dimension.CURRENT),
          Map.entry("hFE", Dimension.RATIO),
          Map.entry("VCEsat", Dimension.VOLTAGE),
          Map.entry("CTR", Dimension.PERCENT),
          Map.entry("VIH", Dimension.VOLTAGE),
          Map.entry("VIL", Dimension.VOLTAGE),
          Map.entry("PD", Dimension.POWER),
          Map.entry("TCR", Dimension.TEMPERATURE_COEFFICIENT),
          Map.entry("I2t", Dimension.JOULE_INTEGRAL),
          Map.entry("length", Dimension.LENGTH),
          Map.entry("diameter", Dimension.LENGTH));

  @Test
  void it_holds_more_than_sixty_part_types_that_are_not_from_memory() {
    Set<String> sourced =
        LINES.stream()
            .filter(line -> line.source().canPass())
            .map(DatasheetLine::partType)
            .collect(toSet());
    assertTrue(sourced.size() >= 60, sourced.size() + " part types");
  }

  @Test
  void every_line_names_its_maker_and_its_document() {
    for (DatasheetLine line : LINES) {
      assertFalse(line.maker().isBlank(), line::toString);
      assertTrue(line.source().text().length() > 15, line::toString);
    }
  }

  @Test
  void a_line_is_a_word_or_has_numbers() {
    for (DatasheetLine line : LINES) {
      boolean numbers = numbers(line).findAny().isPresent();
      assertEquals(WORDS.contains(line.symbol()), !numbers, line::toString);
      assertTrue(numbers || !line.condition().isBlank(), line::toString);
    }
  }

  @Test
  void every_symbol_has_the_dimension_it_stands_for() {
    for (DatasheetLine line : LINES) {
      Dimension wanted = DIMENSIONS.get(line.symbol());
      if (wanted != null) {
        numbers(line).forEach(n -> assertEquals(wanted, n.dimension(), line::toString));
      }
    }
  }

  @Test
  void min_is_at_most_typ_is_at_most_max() {
    for (DatasheetLine line : LINES) {
      List<Quantity> ascending = numbers(line).toList();
      assertEquals(ascending.stream().sorted().toList(), ascending, line::toString);
    }
  }

  @Test
  void every_part_type_states_a_kind_that_the_program_knows() {
    Map<String, Set<String>> kinds =
        LINES.stream()
            .filter(line -> line.symbol().equals("kind"))
            .collect(
                groupingBy(DatasheetLine::partType, mapping(DatasheetLine::condition, toSet())));
    Set<String> words = Stream.of(PartKind.values()).map(PartKind::words).collect(toSet());
    for (DatasheetLine line : LINES) {
      Set<String> stated = kinds.getOrDefault(line.partType(), Set.of());
      assertEquals(1, stated.size(), line::toString);
      assertTrue(words.containsAll(stated), line::toString);
    }
  }

  @Test
  void no_line_stands_twice() {
    assertEquals(LINES.size(), Set.copyOf(LINES).size());
  }

  @Test
  void a_line_from_memory_can_pass_nothing() {
    List<DatasheetLine> remembered =
        LINES.stream().filter(line -> line.source().text().startsWith("from memory")).toList();
    assertFalse(remembered.isEmpty());
    remembered.forEach(
        line -> assertEquals(Source.Origin.MEMORY, line.source().origin(), line::toString));
  }

  /** Zener tables print 5 % limits for the suffix A; JEDEC registration of the 1N4728A series. */
  @Test
  void a_zener_with_suffix_a_is_within_five_percent() {
    LINES.stream()
        .filter(line -> line.symbol().equals("VZ") && line.partType().endsWith("A"))
        .forEach(
            line -> {
              double typ = line.typ().orElseThrow().asDouble();
              assertEquals(0.95 * typ, line.min().orElseThrow().asDouble(), 1e-9, line::toString);
              assertEquals(1.05 * typ, line.max().orElseThrow().asDouble(), 1e-9, line::toString);
            });
  }

  /** Makers round, so within 6 %: PD = (TJ - 25 °C) / RthJC. */
  @Test
  void the_power_at_25_degrees_agrees_with_the_thermal_resistance_to_the_case() {
    int compared = 0;
    for (DatasheetLine power : LINES) {
      if (power.symbol().equals("PD") && power.condition().equals("TC=25C")) {
        Optional<Double> rth = max(power, "RthJC");
        Optional<Double> tj = max(power, "TJ");
        if (rth.isPresent() && tj.isPresent()) {
          double watts = power.max().orElseThrow().asDouble();
          assertEquals((tj.get() - 25) / rth.get(), watts, 0.067 * watts, power::toString);
          compared++;
        }
      }
    }
    assertTrue(compared >= 6, compared + " compared");
  }

  @ParameterizedTest
  @CsvSource({"IRF540N,40 mΩ,44 mΩ", "2N7000,5.3 Ω,6 Ω"})
  void two_makers_of_one_type_number_keep_their_own_rows(
      String partType, String oneMaker, String other) {
    Set<String> values =
        ShippedTables.catalogue().about(partType, "RDSon").stream()
            .map(line -> line.max().orElseThrow().toString())
            .collect(toSet());
    assertTrue(values.containsAll(Set.of(oneMaker, other)), values::toString);
  }

  private static Optional<Double> max(DatasheetLine like, String symbol) {
    return ShippedTables.catalogue().about(like.partType(), symbol).stream()
        .filter(line -> line.maker().equals(like.maker()))
        .flatMap(line -> line.max().stream())
        .map(Quantity::asDouble)
        .findFirst();
  }

  private static Stream<Quantity> numbers(DatasheetLine line) {
    return Stream.of(line.min(), line.typ(), line.max()).flatMap(Optional::stream);
  }
}
