package lowfirst.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import lowfirst.board.Kit;
import lowfirst.channel.LoadFindings;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Verdict;
import lowfirst.swap.rule.SwapVerdict;
import lowfirst.swap.subject.SwappedKit;
import org.junit.jupiter.api.Test;

/** Swaps of drivers that carry the load themselves, and of regulators, for the loads of a kit. */
class StageSwapTest {
  private static final String ROWS =
      row("A-COOL", "", "kind", "Darlington driver array")
          + rated("A-COOL", "RthJA", "60", "K/W")
          + row("A-HOT", "", "kind", "Darlington driver array")
          + rated("A-HOT", "RthJA", "140", "K/W")
          + row("A-BLANK", "", "kind", "Darlington driver array")
          + rated("A-BLANK", "", "", "");

  private static String row(String part, String symbol, String kind, String words) {
    return part + "," + (symbol.isEmpty() ? kind : symbol) + "," + words + ",,,,,test sheet\n";
  }

  private static String rated(String part, String symbol, String amount, String unit) {
    String common =
        part
            + ",package,DIP-18,,,,,test sheet\n"
            + part
            + ",pins,1B 2B GND COM 2C 1C,,,,,test sheet\n"
            + part
            + ",channels,,2,2,2,,test sheet\n"
            + part
            + ",VCE,,,,50,V,test sheet\n"
            + part
            + ",IC,,,,0.5,A,test sheet\n"
            + part
            + ",ICtotal,,,,2.5,A,test sheet\n"
            + part
            + ",VCEsat,IC=350mA IB=500uA,,,1.6,V,test sheet\n"
            + part
            + ",TJ,,,,150,C,test sheet\n";
    return symbol.isEmpty()
        ? common
        : common + part + "," + symbol + ",,,," + amount + "," + unit + ",test sheet\n";
  }

  private static Kit kit(String swaps) {
    Map<String, String> tables =
        new HashMap<>(
            Map.of(
                "kit.properties",
                "ambient = 40 C\n",
                "boards.csv",
                "board,count,bom,placements\nmain,1,bom.csv,\n",
                "bom.csv",
                "designators,quantity,part type,description\nU1,1,A-COOL,Darlington array\n",
                "rails.csv",
                "rail,voltage,tolerance,current limit,return wire,return length,return contacts,"
                    + "contact rating\n12V,12 V,5 %,2 A,1 mm2,1 m,1,10 A\n"
                    + "logic,5 V,5 %,1 A,1 mm2,1 m,1,10 A\n",
                "drivers.csv",
                "driver,kind,part type,supply,at reset\nouts,Darlington array,A-COOL,logic,low\n",
                "loads.csv",
                "load,kind,rail,current,tolerance\nlamp,resistive,12V,300 mA,5 %\n"
                    + "lamp 2,resistive,12V,300 mA,5 %\n",
                "channels.csv",
                "channel,board,driver,trace width,trace layer,contact rating,wire,wire length,load\n"
                    + "out 1,main,outs,2 mm,external,5 A,1 mm2,1 m,lamp\n"
                    + "out 2,main,outs,2 mm,external,5 A,1 mm2,1 m,lamp 2\n",
                "datasheets.csv",
                "part type,symbol,condition,min,typ,max,unit,source\n" + ROWS,
                "swaps.csv",
                "board,designators,part type fitted,reason,who,date\n" + swaps));
    return SmallKit.of(tables);
  }

  private static SwapFinding finding(String candidate) {
    return SmallKit.finding(kit(""), "U1", candidate);
  }

  private static Check heat(SwapFinding finding) {
    return finding.channels().get(0).after().check(CheckKind.STAGE_TEMPERATURE).orElseThrow();
  }

  @Test
  void an_arrays_package_is_heated_by_all_loads_of_the_kit() {
    SwapFinding finding = finding("A-HOT");
    assertEquals(2, finding.channels().size(), "both outputs are served");
    double watts = 1.6 * 2 * 0.3 * 1.05 * 1.05;
    assertEquals(40 + 140 * watts, heat(finding).actualAmount(), 1e-6);
    assertEquals(Verdict.OVERLOADED, heat(finding).verdict());
    assertEquals(SwapVerdict.DOES_NOT_FIT, finding.verdict());
    Check now = finding.channels().get(0).before().check(CheckKind.STAGE_TEMPERATURE).orElseThrow();
    assertEquals(Verdict.CARRIES, now.verdict(), "40 °C and 60 K/W at 1.06 W");
  }

  @Test
  void a_datasheet_without_its_thermal_resistance_decides_nothing() {
    SwapFinding finding = finding("A-BLANK");
    assertEquals(SwapVerdict.UNDECIDED, finding.verdict());
    assertTrue(heat(finding).missing().toString().contains("RthJA of A-BLANK"));
  }

  private static boolean isOverloaded(Kit kit) {
    LoadFindings findings = LoadFindings.of(kit);
    return kit.channels().stream()
        .anyMatch(channel -> findings.verdictOf(channel) == Verdict.OVERLOADED);
  }

  @Test
  void an_accepted_array_is_what_the_loads_are_worked_out_with() {
    Kit swapped = SwappedKit.of(kit("main,U1,A-HOT,none left,me,2026-01-01\n"), SmallKit.OUTLINES);
    assertEquals("A-HOT", swapped.driver("outs").orElseThrow().partType());
    assertTrue(isOverloaded(swapped));
    assertFalse(isOverloaded(kit("")), "with the one on the BOM not");
  }
}
