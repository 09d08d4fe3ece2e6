package lowfirst.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import lowfirst.swap.rule.CapacitorRule;
import lowfirst.swap.rule.LogicRule;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the rails of a kit ask of parts; a rail without a tolerance may be 10 % off. */
class RailDemandsTest {
  private static SwapFinding finding(String item, String rails, String place, String candidate) {
    return finding(item, rails, "", place, candidate);
  }

  private static SwapFinding finding(
      String item, String rails, String drivers, String place, String candidate) {
    return SmallKit.finding(
        SmallKit.of(
            Map.of(
                "boards.csv",
                "board,count,bom,placements\nmain,1,bom.csv,\n",
                "bom.csv",
                "designators,quantity,value,part type,package,description\n" + item + "\n",
                "rails.csv",
                "rail,voltage,tolerance\n" + rails + "\n",
                "drivers.csv",
                "driver,part type,supply\n" + drivers)),
        place,
        candidate);
  }

  /** LS runs from 5 V and 5 %, HCT from 5 V and 10 %, HC from 2 V to 6 V (JESD7A). */
  @ParameterizedTest(name = "{0} for {1} from {2}: {3}")
  @CsvSource({
    "74HCT244, 74LS244,  'logic,5 V,5 %',               fits",
    "74HCT244, 74LS244,  'logic,5 V,10 %',              fits",
    "74HCT244, 74LS244,  'logic,5 V,',                  fits",
    "74LS244,  74S244,   'logic,5 V,5 %',               fits",
    "74LS244,  74S244,   'logic,5 V,6 %',               does not fit",
    "74LS244,  74S244,   'logic,5 V,',                  undecided",
    "74LS244,  74LS244A, 'logic,5 V,',                  silent",
    "74HCT244, 74HC244,  'logic,3.3 V,',                does not fit",
    "74HC244,  74HCT244, 'logic,5.6 V,5 %',             fits",
    "74HC244,  74HCT244, 'logic,5.6 V,',                undecided",
    "74HC244,  74HCT244, 'logic,,',                     undecided",
    // which rail it hangs on nobody says: logic hangs on the lowest
    "74HCT244, 74LS244,  'load,24 V,5 %\nlogic,5 V,5 %', fits",
  })
  void logic_needs_a_supply_within_its_family(
      String candidate, String asked, String rails, String verdict) {
    SwapFinding finding =
        finding("U1,1,," + asked + ",DIP-20,logic circuit", rails, "U1", candidate);
    assertEquals(
        verdict,
        finding.reason(LogicRule.SUPPLY).map(r -> r.verdict().words()).orElse("silent"),
        finding::toString);
  }

  /** HC runs from 3.3 V and LS only from 5 V. */
  @ParameterizedTest(name = "{0} from {1}: {2}")
  @CsvSource({
    "'out,74HC244,logic\n', fits",
    "'out,74HC244,low\n',   does not fit",
    "'out,74HC14,logic\n',  does not fit",
    "'out,74HC244,blank\n', undecided",
    "'',                    does not fit",
  })
  void a_driver_hangs_on_the_rail_that_its_row_names(String drivers, String verdict) {
    SwapFinding finding =
        finding(
            "U1,1,,74HC244,DIP-20,logic circuit",
            "low,3.3 V,5 %\nblank,,\nlogic,5 V,5 %",
            drivers,
            "U1",
            "74LS244");
    assertEquals(
        verdict,
        finding.reason(LogicRule.SUPPLY).orElseThrow().verdict().words(),
        finding::toString);
  }

  @Test
  void what_a_supply_lacks_is_named() {
    assertEquals(List.of("tolerance of rail logic: rails.csv"), lacking("logic,5 V,"));
    assertEquals(
        List.of("its supply: supply of a driver in drivers.csv, or a rail in rails.csv"),
        lacking("logic,,"));
  }

  private static List<String> lacking(String rails) {
    return finding("U1,1,,74HC244,DIP-20,logic circuit", rails, "U1", "74LS244")
        .reason(LogicRule.SUPPLY)
        .orElseThrow()
        .answer()
        .missing();
  }

  /** A quarter above 24 V and 10 % is 33 V; the BOM says nothing. */
  @ParameterizedTest(name = "{0} at {1}: {2}")
  @CsvSource({
    "470uF 20% 35V, 'supply,24 V,',             fits",
    "470uF 20% 30V, 'supply,24 V,',             undecided",
    "470uF 20% 30V, 'supply,24 V,0 %',          fits",
    "470uF 20% 24V, 'supply,24 V,0 %',          does not fit",
    "470uF 20% 35V, 'supply,28 V,0 %',          fits",
    "470uF 20% 35V, 'supply,24 V,\nmore,30 V,', undecided",
    "470uF 20% 99V, 'supply,24 V,\nmore,,',     undecided",
  })
  void a_capacitor_needs_a_quarter_more_than_the_highest_rail(
      String candidate, String rails, String verdict) {
    SwapFinding finding =
        finding("C1,1,470uF 20%,,,electrolytic capacitor", rails, "C1", candidate);
    assertEquals(
        verdict,
        finding.reason(CapacitorRule.VOLTAGE).orElseThrow().verdict().words(),
        finding::toString);
  }
}
