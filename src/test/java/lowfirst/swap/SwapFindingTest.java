package lowfirst.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.board.Designator;
import lowfirst.board.Kit;
import lowfirst.board.OutputChannel;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Verdict;
import lowfirst.intake.shipped.ShippedTables;
import lowfirst.swap.rule.FuseRule;
import lowfirst.swap.rule.MosfetRule;
import lowfirst.swap.rule.PinRule;
import lowfirst.swap.rule.PlaceRule;
import lowfirst.swap.rule.SwapVerdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SwapFindingTest {
  private static final Kit KIT =
      BellPlayer.with(Map.of("swaps.csv", "board,designators,part type fitted,reason,who,date\n"));

  private static SwapFinding finding(String part, String candidate) {
    return finding(KIT, part, candidate);
  }

  /** BellPlayerLoadsTest has the sums: 4.2 V at the gate, the great damper draws most. */
  @Test
  void a_line_that_serves_every_place_is_asked_for_once() {
    List<String> lines =
        finding("BP-N60L", "IRLZ44N").missing().stream()
            .filter(text -> text.startsWith("RDSon of"))
            .toList();
    assertEquals(1, lines.size(), lines::toString);
    assertTrue(lines.get(0).contains("VGS ≤ 4.2 V and ID ≥ 8.84 A, which serves driver-1.01, "));
  }

  private static SwapFinding finding(Kit kit, String part, String candidate) {
    SwapTarget target = SwapTarget.named(kit, part, Optional.of("driver")).get(0);
    return SwapFinding.of(
        target.with(kit, candidate, ShippedTables.bodyOutlines()), ShippedTables.bodyOutlines());
  }

  private static ChannelChange firstChannel(SwapFinding finding) {
    return finding.channels().get(0);
  }

  @Test
  void every_channel_that_the_part_serves_is_run_before_and_after() {
    SwapFinding finding = finding("Q1", "IRL540N");
    List<String> served =
        KIT.channels().stream()
            .filter(channel -> channel.board().equals("driver"))
            .filter(channel -> channel.mosfet().equals(Optional.of(Designator.of("Q1"))))
            .map(OutputChannel::name)
            .toList();
    assertEquals(2, served.size(), "two driver boards are built");
    assertEquals(served, finding.channels().stream().map(c -> c.use().channel().name()).toList());
    assertTrue(firstChannel(finding).pairs().stream().anyMatch(ChannelChange.Pair::isChanged));
  }

  /** 63 mΩ is more than 50 mΩ, but a striker's 2.2 A heats neither: the load decides. */
  @Test
  void a_weaker_part_fits_where_its_loads_are_carried_all_the_same() {
    SwapFinding finding = finding("Q1", "IRL540N");
    SwapReason resistance = finding.reason(MosfetRule.ON_RESISTANCE).orElseThrow();
    assertEquals(SwapVerdict.DOES_NOT_FIT, resistance.answer().verdict());
    assertFalse(resistance.decidedBy().isEmpty());
    assertEquals(SwapVerdict.FITS, finding.verdict());
  }

  @Test
  void a_standard_mosfet_does_not_fit_on_a_five_volt_gate_whatever_the_load() {
    SwapFinding finding = finding("Q1", "IRF540N");
    assertEquals(SwapVerdict.DOES_NOT_FIT, finding.verdict());
    assertEquals(
        Verdict.OVERLOADED,
        firstChannel(finding).after().check(CheckKind.GATE_LEVEL).orElseThrow().verdict());
  }

  @Test
  void a_schottky_below_the_rail_does_not_fit_and_the_channel_says_so() {
    SwapFinding finding = finding("D1", "1N5817");
    assertEquals(SwapVerdict.DOES_NOT_FIT, finding.verdict());
    assertEquals(
        Verdict.OVERLOADED,
        firstChannel(finding).after().check(CheckKind.DIODE_VOLTAGE).orElseThrow().verdict());
  }

  @Test
  void pin_order_is_never_answered_by_a_load() {
    SwapFinding finding = finding("Q1", "2N7000");
    SwapReason order = finding.reason(PinRule.PIN_ORDER).orElseThrow();
    assertTrue(order.decidedBy().isEmpty());
    assertEquals(SwapVerdict.DOES_NOT_FIT, finding.verdict());
  }

  @Test
  void a_pull_down_of_the_same_value_with_its_ratings_keeps_the_gate_off() {
    SwapFinding finding = finding("R17", "10k 1% 0.25W");
    assertEquals(SwapVerdict.FITS, finding.verdict());
    assertTrue(firstChannel(finding).after().check(CheckKind.GATE_OFF).isPresent());
  }

  @Test
  void a_far_larger_pull_down_does_not_fit() {
    assertEquals(SwapVerdict.DOES_NOT_FIT, finding("R17", "10M 1% 0.25W").verdict());
  }

  @Test
  void a_part_of_which_nothing_is_known_stays_undecided_and_names_the_lines() {
    SwapFinding finding = finding("Q1", "ZZ999");
    assertEquals(SwapVerdict.UNDECIDED, finding.verdict());
    assertTrue(
        finding.channels().stream()
            .flatMap(channel -> channel.concerned().stream())
            .flatMap(check -> check.missing().stream())
            .anyMatch(text -> text.contains("VDS of ZZ999")));
    assertFalse(Double.isNaN(finding.margin().orElse(0)), "what has no size has no say in it");
  }

  @Test
  void the_part_itself_always_fits_its_own_place() {
    assertEquals(SwapVerdict.FITS, finding("Q1", "BP-N60L").verdict());
  }

  /** The more it resists, the hotter it gets: raising RDS(on) step by step never helps. */
  @Test
  void more_resistance_never_turns_a_misfit_into_a_fit() {
    SwapVerdict last = SwapVerdict.FITS;
    for (String milliohms : List.of("20", "50", "100", "200", "400", "800", "1600", "3200")) {
      SwapVerdict now = finding(withCandidate(milliohms), "Q1", "TRY-1").verdict();
      assertTrue(now.compareTo(last) >= 0, milliohms + " mOhm: " + now + " after " + last);
      last = now;
    }
    assertEquals(SwapVerdict.DOES_NOT_FIT, last);
  }

  private static Kit withCandidate(String milliohms) {
    String lines =
        """
        part type,symbol,condition,min,typ,max,unit,source
        TRY-1,kind,MOSFET,,,,,test
        TRY-1,polarity,N-channel,,,,,test
        TRY-1,package,TO-220,,,,,test
        TRY-1,pins,G D S,,,,,test
        TRY-1,tab,drain,,,,,test
        TRY-1,VDS,,,,100,V,test
        TRY-1,VGS,,,,16,V,test
        TRY-1,VGSth,,1,,2,V,test
        TRY-1,RDSon,VGS=4V,,,%s,mOhm,test
        TRY-1,RDSonRatio,TJ=150C,,,2,,test
        TRY-1,ID,TC=25C,,,40,A,test
        TRY-1,QG,VGS=5V,,,40,nC,test
        TRY-1,QGD,,,,20,nC,test
        TRY-1,RthJC,,,,1,K/W,test
        TRY-1,RthJA,,,,62,K/W,test
        TRY-1,TJ,,,,175,C,test
        """
            .formatted(milliohms);
    return withSheet(lines);
  }

  private static Kit withSheet(String lines) {
    Kit kit = KIT;
    Kit more = BellPlayer.with(Map.of("datasheets.csv", lines));
    return new Kit(
        kit.settings(),
        kit.boards(),
        more.datasheets().over(kit::datasheets),
        kit.rails(),
        kit.supplies(),
        kit.channels(),
        kit.drivers(),
        kit.loads(),
        kit.bag(),
        kit.swaps(),
        List.of(),
        kit.fingerprint());
  }

  /** 0.6 W for 0.5 W is a fifth more; 150 V for the 25.2 V of the highest rail far more. */
  @Test
  void the_margin_is_the_least_of_the_parts_limits() {
    assertEquals(0.2, finding("R33", "8k2 1% 0.6W").margin().orElseThrow(), 1e-9);
    assertTrue(finding("J17", "2x10 box header").margin().isEmpty(), "nothing has a size");
  }

  /**
   * Breaking 40 A for 50 A: a fifth less than the part asked for, but a quarter more than the 30 A
   * of the stronger of its two rails, which is what counts.
   */
  @Test
  void where_the_channels_answer_theirs_is_the_margin() {
    String sheet =
        """
        part type,symbol,condition,min,typ,max,unit,source
        TRY-1,kind,fuse,,,,,test
        TRY-1,IN,,,7,,A,test
        TRY-1,VN,DC,,,125,V,test
        TRY-1,family,UL 248-14,,,,,test
        TRY-1,I2t,10 x IN,80,,,A2s,test
        TRY-1,breaking capacity,125 V DC,,,40,A,test
        """;
    SwapFinding finding = finding(withSheet(sheet), "F1", "TRY-1");
    SwapReason breaking = finding.reason(FuseRule.BREAKING_CAPACITY).orElseThrow();
    assertEquals(-0.2, breaking.answer().margin().orElseThrow(), 1e-9);
    assertEquals(List.of("driver-1.01", "driver-2.01"), breaking.decidedBy());
    assertEquals(0.25, finding.margin().orElseThrow(), 1e-9);
  }

  /** The kind settles it: what another kind's numbers are, nobody needs to know. */
  @Test
  void another_kind_of_part_is_judged_no_further() {
    SwapFinding finding = finding("Q1", "1N4007");
    assertEquals(SwapVerdict.DOES_NOT_FIT, finding.verdict());
    assertEquals(1, finding.reasons().size());
    assertTrue(finding.channels().isEmpty() && finding.board().isEmpty());
    assertEquals(List.of(), finding.reasons(SwapVerdict.FITS));
  }

  /** A package from memory passes nothing, but what the BOM or a datasheet says of it counts. */
  @ParameterizedTest(name = "{1} for {0}, {2}")
  @CsvSource({
    "TO-220, ONE-220, memory, fits",
    "TO-247, ONE-220, memory, does not fit",
    "'',     ONE-220, memory, undecided",
    "'',     ONE-220, sure,   fits",
    "TO-247, ONE-220, sure,   fits",
    "TO-220, ZZ9 TO-220, memory, fits",
    "TO-220, ZZ9 TO-247, memory, does not fit",
  })
  void a_package_is_what_the_surest_source_says(
      String inBom, String candidate, String known, String verdict) {
    String source = known.equals("sure") ? "test sheet" : "from memory";
    Kit kit =
        SmallKit.of(
            Map.of(
                "boards.csv",
                "board,count,bom,placements\nmain,1,bom.csv,\n",
                "bom.csv",
                "designators,quantity,part type,package,description\nQ1,1,OLD,"
                    + inBom
                    + ",MOSFET\n",
                "datasheets.csv",
                "part type,symbol,condition,min,typ,max,unit,source\n"
                    + ("OLD,package,TO-220,,,,," + source + "\n")
                    + "ONE-220,kind,MOSFET,,,,,test sheet\n"
                    + "ONE-220,package,TO-220,,,,,test sheet\n"));
    SwapFinding finding = SmallKit.finding(kit, "Q1", candidate);
    assertEquals(
        verdict,
        finding.reason(PlaceRule.PACKAGE).orElseThrow().answer().verdict().words(),
        finding::toString);
  }
}
