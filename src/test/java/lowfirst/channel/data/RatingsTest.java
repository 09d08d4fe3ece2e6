package lowfirst.channel.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.part.DatasheetLine;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which of several datasheet lines counts. */
class RatingsTest {
  private static final DatasheetSymbol SYMBOL = DatasheetSymbol.VGSTH;

  private static DatasheetLine line(String maker, String min, String typ, String max) {
    return new DatasheetLine(
        "T",
        maker,
        SYMBOL.text(),
        "",
        volts(min),
        volts(typ),
        volts(max),
        Source.datasheet(maker + " sheet"));
  }

  private static Optional<Quantity> volts(String amount) {
    return amount.isEmpty()
        ? Optional.empty()
        : Optional.of(Quantity.of(amount, Dimension.VOLTAGE));
  }

  private static Ratings of(String words, DatasheetLine... lines) {
    return Ratings.of("T", List.of(lines), words);
  }

  private static Datum between(Ratings ratings) {
    return ratings.between(Term.THRESHOLD, SYMBOL);
  }

  @Test
  void a_rating_is_the_lowest_and_a_harm_the_highest_of_all_makers() {
    Ratings ratings = of("", line("Alpha", "1", "", "3"), line("Beta", "2", "", "4"));
    assertEquals(3, ratings.limit(Term.THRESHOLD, SYMBOL).nominal());
    assertEquals("Alpha sheet", ratings.limit(Term.THRESHOLD, SYMBOL).source().toString());
    assertEquals(4, ratings.harm(Term.THRESHOLD, SYMBOL).nominal());
    assertEquals("Beta sheet", ratings.harm(Term.THRESHOLD, SYMBOL).source().toString());
    assertEquals(1, ratings.rated(Term.THRESHOLD, SYMBOL, line -> true).nominal());
    Datum spread = between(ratings);
    assertEquals(List.of(1.0, 2.5, 4.0), List.of(spread.low(), spread.nominal(), spread.high()));
  }

  @Test
  void of_two_lines_alike_the_first_is_cited() {
    Ratings ratings = of("", line("Alpha", "", "", "3"), line("Beta", "", "", "3"));
    assertEquals("Alpha sheet", ratings.limit(Term.THRESHOLD, SYMBOL).source().toString());
  }

  /** Gamma's 1 V counts as the lowest of all, unless Bet alone is named. */
  @ParameterizedTest
  @CsvSource({
    "bet, 2",
    "T by Bet, 2",
    "'Bet, T', 2",
    "alphabet Bet, 2",
    "alphabet, 1",
    "better, 1",
    "bet2, 1",
    "2bet, 1"
  })
  void a_maker_is_named_by_a_word_of_its_own(String words, double limit) {
    Ratings ratings = of(words, line("Gamma", "1", "", "1"), line("Bet", "2", "", "2"));
    assertEquals(limit, ratings.limit(Term.THRESHOLD, SYMBOL).nominal());
  }

  @Test
  void where_the_bom_names_a_maker_only_that_maker_counts() {
    Ratings ratings =
        of("MOSFET by beta, cheap", line("Alpha", "1", "", "3"), line("Beta", "2", "", "4"));
    assertEquals(4, ratings.limit(Term.THRESHOLD, SYMBOL).nominal());
    assertEquals(1, ratings.lines().size());
    assertEquals(
        2,
        of("by nobody", line("Alpha", "1", "", "3"), line("Gamma", "2", "", "4")).lines().size());
  }

  @Test
  void a_maker_who_does_not_state_a_number_leaves_it_missing() {
    DatasheetLine silent = line("Beta", "1", "", "");
    for (Datum datum :
        List.of(
            of("", line("Alpha", "1", "", "3"), silent).harm(Term.THRESHOLD, SYMBOL),
            between(of("", line("Alpha", "1", "", "3"), silent)))) {
      assertEquals(
          "VGSth of T: write it in datasheets.csv (Beta's part doesn't state it, Alpha's does: write whose"
              + " yours is into the BOM's column maker)",
          datum.missing());
    }
  }

  @Test
  void a_line_without_a_maker_speaks_for_all_makers() {
    Ratings ratings =
        of("", line("Alpha", "1", "", ""), line("Beta", "1", "", ""), line("", "", "", "3"));
    assertTrue(ratings.harm(Term.THRESHOLD, SYMBOL).isKnown());
    Ratings one = of("", line("Alpha", "1", "", ""), line("", "", "", "3"));
    assertTrue(one.harm(Term.THRESHOLD, SYMBOL).isKnown());
    assertFalse(of("", line("Alpha", "1", "", "")).harm(Term.THRESHOLD, SYMBOL).isKnown());
  }

  @Test
  void a_typical_value_alone_is_said_not_to_count() {
    assertEquals(
        "VGSth of T: write it in datasheets.csv, column min and max (only a typical value is there,"
            + " and it can't pass)",
        between(of("", line("Alpha", "", "2", ""))).missing());
    assertEquals(
        "VGSth of T: write it in datasheets.csv",
        between(of("", line("Alpha", "1", "", ""))).missing());
    assertEquals("VGSth of T: write it in datasheets.csv", between(of("")).missing());
  }
}
