package lowfirst.swap.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import lowfirst.intake.shipped.ShippedTables;
import lowfirst.part.DatasheetLine;
import lowfirst.quantity.Quantity;
import lowfirst.swap.subject.SwapPart;
import lowfirst.swap.subject.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which test conditions are the harder ones, held to what makers print. */
class CoveredConditionTest {

  /** Symbols of which less is better; of the others more is. */
  private static final Set<String> LOSSES = Set.of("VF", "VCEsat", "VBEon", "VIon", "QG", "ZZ");

  /**
   * Where a datasheet gives an amount under two conditions, the one that counts as harder must have
   * the worse figure: else it would promise more of the easier one than its maker does.
   */
  @Test
  void makers_print_the_worse_figure_under_the_harder_condition() {
    List<DatasheetLine> lines = ShippedTables.catalogue().lines();
    var witnesses = new TreeSet<String>();
    for (DatasheetLine hard : lines) {
      for (DatasheetLine easy : lines) {
        boolean comparable =
            hard.partType().equals(easy.partType())
                && hard.maker().equals(easy.maker())
                && hard.symbol().equals(easy.symbol())
                && !easy.condition().isBlank()
                && !Words.same(hard.condition(), easy.condition());
        Optional<Quantity> worse = SwapPart.limit(hard);
        Optional<Quantity> better = SwapPart.limit(easy);
        if (comparable
            && worse.isPresent()
            && better.isPresent()
            && CoveredCondition.covers(hard.symbol(), hard.condition(), easy.condition())) {
          int sign = LOSSES.contains(hard.symbol()) ? 1 : -1;
          assertTrue(
              sign * worse.get().compareTo(better.get()) >= 0, () -> hard + " against " + easy);
          witnesses.add(hard.symbol());
        }
      }
    }
    assertEquals(Set.of("ID", "VF"), witnesses);
  }

  @ParameterizedTest(name = "{0}: {1} for {2}: {3}")
  @CsvSource({
    "VF, IF=3A, IF=1A, true",
    "VF, IF=1A, IF=3A, false",
    "VF, IF=1A, '', true",
    "VF, '', IF=1A, false",
    "VF, IF=1 A, IF=1000mA, true",
    "VF, 'IF=3A, TJ=25C', IF=1A, true",
    "VF, 'IF=3A, TJ=100C', IF=1A, false",
    "VF, IF=3A pulsed, IF=1A, false",
    "VF, IF=3A pulsed, IF=1A pulsed, true",
    "VF, IF=1...3A, IF=1A, false",
    "ID, TC=100C, TC=25C, true",
    "ID, TC=25C, TC=100C, false",
    "ID, TC=100C, TA=25C, false",
    // no temperature of a rating is the usual one
    "ID, TC=25C, VGS=10V, false",
    "VCEsat, 'IC=500mA, IB=15mA', 'IC=150mA, IB=15mA', true",
    "VCEsat, 'IC=500mA, IB=50mA', 'IC=150mA, IB=15mA', false",
    // the gain of onsemi's 2N3904 is least at both ends: 40 at 0.1 mA, 100 at 10 mA, 30 at 100 mA
    "hFE, 'IC=100mA, VCE=1V', 'IC=10mA, VCE=1V', false",
    "hFE, 'IC=0.1mA, VCE=1V', 'IC=10mA, VCE=1V', false",
    // less base current, less voltage at the collector: harder; never the other way
    "VCEsat, 'IC=150mA, IB=7.5mA', 'IC=150mA, IB=15mA', true",
    "VCEsat, 'IC=150mA, IB=15mA', 'IC=150mA, IB=7.5mA', false",
    "hFE, 'IC=10mA, VCE=1V', 'IC=10mA, VCE=5V', true",
    "hFE, 'IC=10mA, VCE=5V', 'IC=10mA, VCE=1V', false",
    "VBEon, IC=10mA, IC=2mA, true",
    "VBEon, IC=2mA, IC=10mA, false",
    "VIon, IC=20mA, IC=2mA, true",
    "VIon, IC=2mA, IC=20mA, false",
    "QG, VGS=10V, VGS=5V, true",
    "QG, VGS=5V, VGS=10V, false",
    "ZZ, IZ=1mA, IZ=5mA, true",
    "ZZ, IZ=5mA, IZ=1mA, false",
    "PD, TA=70C, TA=25C, true",
    "PD, TA=25C, TA=70C, false",
    "PD, '', TA=25C, false",
    "PD, TA=25C, ' ', true",
    "VF, IF=1A, 'IF=1A, TJ=25C', true",
    "VF, IF=1A, 'IF=1A, TJ=100C', false",
    "VF, 'IF=1A, Tamb=25C', 'IF=1A, TA=25C', true",
    "VF, 'IF=1A, f=1kHz', IF=1A, false",
    "IFSM, tp=10ms, tp=8ms, false",
    "VRRM, IR=1mA, IR=2mA, false",
  })
  void a_condition_covers_what_is_the_same_or_easier(
      String symbol, String stated, String wanted, boolean covers) {
    assertEquals(covers, CoveredCondition.covers(symbol, stated, wanted));
  }
}
