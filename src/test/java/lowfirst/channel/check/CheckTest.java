package lowfirst.channel.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import lowfirst.quantity.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How a check's verdict and margin follow from its numbers. */
class CheckTest {
  private static final Datum KNOWN =
      Datum.of(Term.LOAD_CURRENT, 0.9, 1, 1.1, Source.kit("loads.csv"));
  private static final Datum MISSING = Datum.missing(Term.PERIOD, "period");

  @ParameterizedTest
  @CsvSource({
    "CONTACT_CURRENT, 1,   1,   CARRIES",
    "CONTACT_CURRENT, 1.1, 1,   OVERLOADED",
    "GATE_LEVEL,      4,   4,   CARRIES",
    "GATE_LEVEL,      3.9, 4,   OVERLOADED",
    "VOLTAGE_SCOPE,   60,  60,  CARRIES",
    "VOLTAGE_SCOPE,   61,  60,  UNDECIDED",
    "CONTACT_CURRENT, NaN, 1,   UNDECIDED",
    "CONTACT_CURRENT, 1,   NaN, UNDECIDED",
    "CONTACT_CURRENT, Infinity, 1, OVERLOADED",
  })
  void its_verdict_follows_from_its_two_numbers(
      CheckKind kind, double actual, double allowed, Verdict verdict) {
    assertEquals(verdict, Check.of(kind, actual, allowed, KNOWN).verdict());
    assertEquals(Verdict.UNDECIDED, Check.of(kind, actual, allowed, KNOWN, MISSING).verdict());
  }

  @Test
  void a_bound_may_pass_but_never_overload() {
    Check within = Check.bounded(CheckKind.CONTACT_CURRENT, 1, 2, MISSING, KNOWN);
    assertEquals(Verdict.CARRIES, within.verdict());
    assertEquals(List.of(), within.missing());
    Check beyond = Check.bounded(CheckKind.CONTACT_CURRENT, 3, 2, MISSING, KNOWN);
    assertEquals(Verdict.UNDECIDED, beyond.verdict());
    assertEquals(List.of("period"), beyond.missing());
    assertEquals(List.of(KNOWN, MISSING), beyond.data());
  }

  @ParameterizedTest
  @CsvSource({
    "CONTACT_CURRENT,      1.5, 2,   0.25",
    "CONTACT_CURRENT,      3,   2,   -0.5",
    "GATE_LEVEL,           5,   4,   0.25",
    "GATE_LEVEL,           3,   4,   -0.25",
    "JUNCTION_TEMPERATURE, 105, 125, 0.2",
  })
  void its_margin_is_a_share_of_the_limit_and_of_degrees_above_25(
      CheckKind kind, double actual, double allowed, double margin) {
    assertEquals(margin, Check.of(kind, actual, allowed, KNOWN).margin(), 1e-12);
  }

  @Test
  void what_has_no_bound_is_shown_as_no_quantity() {
    Check check = Check.of(CheckKind.CONTACT_CURRENT, Double.POSITIVE_INFINITY, 2, KNOWN);
    assertEquals(Optional.empty(), check.actual());
    assertEquals(2, check.allowed().orElseThrow().asDouble());
    assertEquals(CheckKind.CONTACT_CURRENT.dimension(), check.allowed().get().dimension());
    assertEquals("Iload ≤ Icontact", check.formula());
    assertEquals("A terminal run above its rating loosens, then burns.", check.remark());
  }

  @Test
  void a_number_is_shown_at_its_bad_corner_with_its_spread() {
    Check.Input input = Check.of(CheckKind.CONTACT_CURRENT, 1, 2, KNOWN).inputs().get(0);
    assertEquals("Iload", input.symbol());
    assertEquals(1.1, input.value().asDouble(), 1e-12, "more current is worse");
    assertEquals("loads.csv (900 mA to 1.1 A)", input.value().source().toString());
    Datum rating = Datum.of(Term.CONTACT_RATING, 2, 3, 4, Source.kit("channels.csv"));
    assertEquals(2, rating.input().value().asDouble(), 1e-12, "less rating is worse");
    Datum one = Datum.of(Term.CONTACT_RATING, 3, Source.kit("channels.csv"));
    assertEquals("channels.csv", one.input().value().source().toString(), "no spread");
    Datum endless =
        Datum.of(Term.CONTACT_RATING, Double.POSITIVE_INFINITY, Source.kit("channels.csv"));
    assertEquals(
        1,
        Check.of(CheckKind.CONTACT_CURRENT, 1, 2, KNOWN, KNOWN, MISSING, endless).inputs().size());
  }

  @Test
  void a_number_scales_with_all_its_corners() {
    Datum twice = KNOWN.times(2);
    assertEquals(List.of(1.8, 2.0, 2.2), List.of(twice.low(), twice.nominal(), twice.high()));
    assertEquals("Iload", twice.name());
  }
}
