package lowfirst.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lowfirst.PublishedTable;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class SeriesTest {

  @ParameterizedTest
  @EnumSource
  void every_series_equals_an_independent_list(Series series) {
    Map<String, String> row =
        PublishedTable.rows("e-series.csv").stream()
            .filter(candidate -> candidate.get("series").equals(series.name()))
            .findFirst()
            .orElseThrow();
    List<Integer> published =
        Arrays.stream(row.get("members").split(" ")).map(Integer::valueOf).toList();
    assertEquals(published, series.members());
  }

  /** IEC 60063: 10^(k/n) rounded, checked with whole numbers only, so that no rounding can lie. */
  @Test
  void only_the_nine_historical_members_differ_from_the_rule() {
    int different = 0;
    for (Series series : List.of(Series.E24, Series.E48, Series.E96, Series.E192)) {
      int size = series.members().size();
      int scale = series == Series.E24 ? 10 : 100;
      for (int k = 0; k < size; k++) {
        if (!isRounded(series.members().get(k), scale, k, size)) {
          different++;
        }
      }
    }
    assertEquals(9, different);
  }

  /** Whether m - 1/2 <= scale * 10^(k/n) < m + 1/2, by raising all to the n-th power. */
  private static boolean isRounded(int member, int scale, int k, int n) {
    BigInteger exact = BigInteger.TEN.pow(k).multiply(BigInteger.valueOf(2L * scale).pow(n));
    return BigInteger.valueOf(2L * member - 1).pow(n).compareTo(exact) <= 0
        && BigInteger.valueOf(2L * member + 1).pow(n).compareTo(exact) > 0;
  }

  @Test
  void each_coarser_series_is_every_other_member_of_the_next() {
    assertEveryOther(Series.E12, Series.E24);
    assertEveryOther(Series.E6, Series.E12);
    assertEveryOther(Series.E3, Series.E6);
    assertEveryOther(Series.E48, Series.E96);
    assertEveryOther(Series.E96, Series.E192);
  }

  private static void assertEveryOther(Series coarse, Series fine) {
    for (int i = 0; i < coarse.members().size(); i++) {
      assertEquals(fine.members().get(2 * i), coarse.members().get(i));
    }
  }

  @Test
  void the_next_preferred_value_at_or_above_is_taken() {
    assertEquals(120, Series.E12.atOrAbove(120), 1e-9);
    assertEquals(150, Series.E12.atOrAbove(121), 1e-9);
    assertEquals(1000, Series.E12.atOrAbove(830), 1e-9);
  }

  static Stream<Map<String, String>> gaps() {
    return PublishedTable.rows("tolerance-gaps.csv").stream();
  }

  static Stream<Map<String, String>> shared() {
    return PublishedTable.rows("series-shared.csv").stream();
  }

  @ParameterizedTest
  @MethodSource("gaps")
  void the_tolerance_bands_of_neighbours_leave_as_many_gaps_as_counted(Map<String, String> row) {
    Series series = Series.valueOf(row.get("series"));
    Tolerance tolerance = Tolerance.percent(row.get("percent"));
    List<Integer> members = series.members();
    int gaps = 0;
    for (int i = 0; i < members.size(); i++) {
      boolean last = i == members.size() - 1;
      int next = last ? 10 * members.get(0) : members.get(i + 1);
      Quantity top = tolerance.highest(ohms(members.get(i)));
      gaps += top.compareTo(tolerance.lowest(ohms(next))) < 0 ? 1 : 0;
    }
    assertEquals(Integer.parseInt(row.get("pairs")), members.size());
    assertEquals(Integer.parseInt(row.get("gaps")), gaps);
  }

  private static Quantity ohms(int amount) {
    return Quantity.of(String.valueOf(amount), Dimension.RESISTANCE);
  }

  @ParameterizedTest
  @MethodSource("shared")
  void E24_is_only_partly_in_the_finer_series(Map<String, String> row) {
    Series finer = Series.valueOf(row.get("series"));
    List<Integer> shared =
        Series.E24.members().stream().filter(member -> finer.contains(ohms(member))).toList();
    assertEquals(
        Arrays.stream(row.get("shared").split(" ")).map(Integer::valueOf).toList(), shared);
    assertEquals(Integer.parseInt(row.get("not shared")), 24 - shared.size());
  }

  @Test
  void a_one_per_cent_part_may_have_an_E24_value_that_E96_lacks() {
    assertFalse(Series.E96.contains(Quantity.of("4700", Dimension.RESISTANCE)));
    assertTrue(Series.sold(470, Tolerance.percent("1")));
    assertTrue(Series.sold(475, Tolerance.percent("1")));
    assertFalse(Series.sold(475, Tolerance.percent("5")));
    assertFalse(Series.sold(473, Tolerance.percent("1")));
  }

  @Test
  void an_amount_with_too_many_figures_or_none_is_in_no_series() {
    assertFalse(Series.E192.contains(Quantity.of("4701", Dimension.RESISTANCE)));
    assertFalse(Series.E192.contains(Quantity.of("0", Dimension.RESISTANCE)));
    assertFalse(Series.E192.contains(Quantity.of("-100", Dimension.RESISTANCE)));
  }
}
