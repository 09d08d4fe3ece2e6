package lowfirst.sheet.power;

import static lowfirst.sheet.document.Said.assertSays;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import lowfirst.assembly.AssemblyOptions;
import lowfirst.assembly.AssemblyOrder;
import lowfirst.assembly.AssemblyPlan;
import lowfirst.board.Board;
import lowfirst.board.Kit;
import lowfirst.channel.ChannelKit;
import lowfirst.channel.LoadFindings;
import lowfirst.channel.check.Verdict;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.document.Said;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** First power and wiring: what to expect is worked out by hand beside each. */
class PowerSheetsTest {
  private static final String FIND_OUT =
      "Find what the channel report says is missing: whether the output carries its load is"
          + " undecided. Once it carries, ";

  private static final String RAILS =
      """
      rail,voltage,tolerance,current limit,return wire,return length,return contacts,contact rating
      logic,5 V,5 %,1 A,0.5 mm2,0.3 m,1,3 A
      bells,24 V,5 %,20 A,6 mm2,2 m,2,15 A
      high,58 V,5 %,,,,,
      bare,,,,,,,7 A
      """;
  private static final String CHANNELS =
      """
      channel,board,MOSFET,gate resistor,pull-down,pull-down side,flyback diode,fuse,driver,wire,wire length,contact rating,load
      out 1,driver,Q1,R1,R2,gate,D1,F1,pin,1 mm2,3 m,15 A,bell
      out 2,driver,Q2,R3,R2,,,,pin,,,,lamp
      out 3,driver,,,,,,,,,,,heater
      out 4,driver,,R1,R9,driver,,F9,,,,,none
      out 5,driver,,R9,R2,gate,,,,,,,none
      out 6,driver,,D1,R2,driver,,,,,,,none
      """;
  private static final String BOM =
      """
      designators,value,description,height mm
      R1,330 1%,resistor,2
      R2,10k 1%,resistor,2
      R3,1k,resistor,2
      D2 D1,1N4007,diode,3
      D9,1N4148,DNP diode,3
      Q1 Q2,BP-N60L,MOSFET,19
      F1,2 A,fuse,10
      """;
  private static final Kit KIT =
      Said.kit(
          "kit.properties",
          "title = Bells\n",
          "boards.csv",
          "board,count,bom\ndriver,2,bom.csv\n",
          "bom.csv",
          BOM,
          "rails.csv",
          RAILS,
          "drivers.csv",
          "driver,kind,supply,low level max\npin,logic pin,logic,0.2 V\n",
          "loads.csv",
          """
          load,kind,rail,resistance,max on time,current
          bell,solenoid,bells,12 Ohm,1 s,
          lamp,lamp,bells,,,1 A
          heater,resistive,high,20 Ohm,,
          """,
          "channels.csv",
          CHANNELS);

  private static Document firstPower(Kit kit, LoadFindings findings) {
    Board board = kit.boards().get(0);
    AssemblyPlan plan = AssemblyOrder.of(kit, AssemblyOptions.USUAL);
    return FirstPowerDocument.of(kit, plan, board, board.units().get(0), findings);
  }

  private static Document firstPower() {
    return firstPower(KIT, LoadFindings.none());
  }

  /** 5 V at 1 A are 5 Ω; 24 V at 20 A are 1.2 Ω; 58 V and 5 % are 60.9 V, above 60 V. */
  @Test
  void before_power_each_rail_is_measured_and_what_is_too_high_left_alone() {
    String how =
        "Resistance range, red on the plus terminal, black on the return; wait until it settles.";
    String apart =
        "Resistance range, plus terminal to plus terminal, both ways round. | no short either way;"
            + " they meet only in the return | A few ohms: a bridge or a part in the wrong place."
            + " | __ | [ ]";
    assertSays(
        firstPower(),
        "First power",
        "Bells · unit driver-1",
        "! Mains wiring, protective earth, and anything above 60 V DC are for local code and a"
            + " licensed electrician. Use a finished supply with a current limit.",
        "! Large capacitors stay charged after power is off: wait, and measure before you touch. A"
            + " coil held on too long overheats.",
        "# Before power: meter only, loads unplugged",
        "logic to return | "
            + how
            + " | climbs while capacitors charge; far above 5 Ω | Stays at or below 5 Ω: that takes"
            + " all the supply has. | __ | [ ]",
        "bells to return | "
            + how
            + " | climbs while capacitors charge; far above 1.2 Ω | Stays at or below 1.2 Ω: that"
            + " takes all the supply has. | __ | [ ]",
        "high rail | Leave it unconnected. | above 60 V DC | Not on this sheet: leave it to licensed"
            + " practice. | __ | [ ]",
        "logic to bells | " + apart,
        "logic to high | " + apart,
        "bells to high | " + apart,
        "# Before power: which way round",
        "D1, D2 | 1N4007 diode | the band is the cathode: over the bar printed on the board | [ ]");
    List<String> lines = Said.lines(firstPower());
    assertEquals(3, lines.stream().filter(line -> line.contains("plus terminal to plus")).count());
    // A rail that this board doesn't use isn't measured; a part not fitted has no way round.
    assertTrue(lines.stream().noneMatch(line -> line.startsWith("bare ")));
    assertTrue(lines.stream().noneMatch(line -> line.startsWith("R1")));
  }

  /**
   * 330 Ω and 10 kΩ, each within 1 %: 10 330 Ω, 10 227 to 10 433. 1 kΩ within 5 %, assumed, and 10
   * kΩ: 11 kΩ, 10 850 to 11 150.
   */
  @Test
  void the_gate_path_is_what_hangs_on_the_drivers_pin() {
    assertSays(
        firstPower(),
        "# Before power: channel by channel",
        "out 1 | Q1, R1, R2, F1 | 10.3 kΩ (10.2 kΩ to 10.4 kΩ) | __ | __ | __ | [ ]",
        "out 2 | Q2, R3, R2 | 11 kΩ (10.8 kΩ to 11.2 kΩ), or 10 kΩ (9.9 kΩ to 10.1 kΩ) if the"
            + " pull-down hangs on the driver | __ | __ | none | [ ]",
        "out 3 |  | no pull-down named: open | __ | __ | none | [ ]",
        "out 4 | R1, R9, F9 | value of R9 not known | __ | __ | none | [ ]",
        "out 5 | R9, R2 | value of R9 not known | __ | __ | none | [ ]",
        "out 6 | D1, R2 | 10 kΩ (9.9 kΩ to 10.1 kΩ) | __ | __ | none | [ ]");
  }

  @Test
  void with_power_each_rail_has_its_range_and_its_rule_to_stop() {
    assertSays(
        firstPower(),
        "# Stage 1: rail check, loads unplugged",
        "logic voltage | Start with the supply's limit at 0.1 A, not at 1 A. Measure where it"
            + " comes onto the board, against the return. | 4.75 V to 5.25 V | Supply goes into its"
            + " limit, a reading is outside, anything smells or is warm: off. | __ | [ ]",
        "bells voltage | Start with the supply's limit at 0.1 A, not at 20 A. Measure where it"
            + " comes onto the board, against the return. | 22.8 V to 25.2 V | Supply goes into its"
            + " limit, a reading is outside, anything smells or is warm: off. | __ | [ ]",
        "# Stage 2: driver connected, loads unplugged",
        "logic with driver | Off, wait for the capacitors, connect what drives the outputs, on again."
            + " Measure as before. | 4.75 V to 5.25 V | Lower than before, or current near 1 A: off. | __ | [ ]",
        "# Stage 2: each output in turn, loads unplugged",
        "out 1 | Q1 | at most 200 mV | __ | not known | __ | [ ]",
        "out 3 | not named | near 0 V | __ | not known | __ | [ ]",
        "# Stage 3: one channel on a dummy load",
        // 24 V at 0.2 A: 120 Ω; 25.2 V on it make 5.29 W, twice that is 10.6 W.
        "bells dummy load | A resistor of 120 Ω, rated 11 W or more, in place of one load; switch that"
            + " output on, then off. | on: 200 mA, MOSFET's drain near 0 V; off: no current, drain at"
            + " 24 V | Drain stays above 1 V when on, or current flows when off: off, check that"
            + " channel. | __ | [ ]",
        "# Stage 4: each load in turn",
        "out 1 | "
            + FIND_OUT
            + "connect bell, switch it on briefly. | undecided: unplugged until it carries; then 2 A"
            + " (1.9 A to 2.1 A) | It is still undecided, or: More current, or on longer than 1 s:"
            + " off. | __ | [ ]",
        "out 2 | "
            + FIND_OUT
            + "connect lamp, switch it on briefly. | undecided: unplugged until it carries; then 1 A"
            + " | It is still undecided, or: More current, a smell, a hot MOSFET: off. | __ | [ ]");
    List<String> lines = Said.lines(firstPower());
    assertTrue(lines.stream().noneMatch(line -> line.startsWith("high voltage")), "above 60 V");
    assertTrue(lines.stream().noneMatch(line -> line.startsWith("high dummy")), "above 60 V");
    assertTrue(lines.stream().noneMatch(line -> line.contains("onnect heater")), "above 60 V");
    assertEquals(1, lines.stream().filter(line -> line.contains(" with driver | ")).count());
  }

  /** 24 V ±5 % on 24 Ω ±5 %: 905 mA to 1.11 A, behind a fuse of 2.5 A; on 3 Ω it is 8 A. */
  @Test
  void a_load_is_connected_only_where_its_output_carries_it() {
    Kit carries = ChannelKit.typical().kit();
    assertSays(
        firstPower(carries, findings(carries)),
        "out 1 | Connect striker, switch it on briefly. | 1 A (900 mA to 1.1 A) | More current, a"
            + " smell, a hot MOSFET: off. | __ | [ ]");
    Kit overloaded = ChannelKit.typical().with("loads", "resistance=3 Ohm").kit();
    assertSays(
        firstPower(overloaded, findings(overloaded)),
        "out 1 | Leave striker unplugged: the output is overloaded. Change what the channel report"
            + " says first. | overloaded: stays unplugged | Don't switch it on with this load. | __ |"
            + " [ ]");
    Kit undecided = ChannelKit.typical().with("channels", "wire length=").kit();
    assertSays(
        firstPower(undecided, findings(undecided)),
        "out 1 | "
            + FIND_OUT
            + "connect striker, switch it on briefly. | undecided: unplugged until it carries; then 1"
            + " A (900 mA to 1.1 A) | It is still undecided, or: More current, a smell, a hot MOSFET:"
            + " off. | __ | [ ]");
  }

  /**
   * 1.11 A over a return contact of 1 A, of which 0.8 A are used; then over one of unknown rating.
   */
  @Test
  void a_load_is_connected_only_where_its_supply_and_return_carry_it_too() {
    String wire = "! Wire, but leave unplugged: out 1 (striker). ";
    Kit overloaded = ChannelKit.typical().with("rails", "contact rating=1 A").kit();
    assertEquals(
        Verdict.CARRIES,
        findings(overloaded).verdictOf(overloaded.channels().get(0)),
        "the output by itself");
    assertSays(
        firstPower(overloaded, findings(overloaded)),
        "out 1 | Leave striker unplugged: the supply or the return of rail power is overloaded."
            + " Change what the channel report says first. | overloaded: stays unplugged | Don't"
            + " switch it on with this load. | __ | [ ]");
    assertSays(
        WiringDocument.of(overloaded, findings(overloaded)),
        wire + "Overloaded: see in the channel report what to change.");
    Kit undecided = ChannelKit.typical().with("rails", "contact rating=").kit();
    assertTrue(
        Said.lines(firstPower(undecided, findings(undecided))).stream()
            .anyMatch(
                line ->
                    line.startsWith(
                        "out 1 | Find what the channel report says is missing: whether the supply"
                            + " or the return of rail power carries its loads is undecided. Once"
                            + " it carries, connect striker,")));
    assertSays(
        WiringDocument.of(undecided, findings(undecided)),
        wire + "Undecided: see in the channel report what is missing.");
    Kit unit =
        ChannelKit.typical().with("supplies", "supply=PC; rails=power; power limit=20 W").kit();
    assertTrue(
        Said.lines(firstPower(unit, findings(unit))).stream()
            .anyMatch(line -> line.startsWith("out 1 | Leave striker unplugged: the supply")));
  }

  /** A lamp of 0.2 A draws 15 times as much for a moment: 3.3 A of 3 A, and 0.23 A when on. */
  @Test
  void an_inrush_of_all_at_once_keeps_no_single_load_unplugged() {
    Kit kit =
        ChannelKit.typical()
            .with("loads", "kind=lamp; inductance=; resistance=; current=0.2 A; inrush time=1 ms")
            .with("rails", "current limit=3 A")
            .kit();
    assertEquals(Verdict.OVERLOADED, findings(kit).rails().get(0).verdict());
    assertTrue(
        Said.lines(firstPower(kit, findings(kit))).stream()
            .anyMatch(line -> line.startsWith("out 1 | Connect striker")));
  }

  /** 24 V on 3 Ω are 8 A behind a fuse of 2.5 A, on 48 Ω 0.5 A. */
  @Test
  void of_two_channels_of_one_name_each_has_its_own_finding() {
    ChannelKit one = ChannelKit.typical();
    Kit kit =
        one.with("rails", "current limit=9.5 A")
            .with("loads", "resistance=3 Ohm")
            .with("loads.2", one.row("loads") + "; load=small; resistance=48 Ohm")
            .another(2)
            .with("channels.2", "channel=out 1; load=small; fuse=; trace width=4 mm")
            .kit();
    List<String> lines = Said.lines(firstPower(kit, findings(kit)));
    assertTrue(lines.stream().anyMatch(line -> line.startsWith("out 1 | Leave striker unplugged")));
    assertTrue(lines.stream().anyMatch(line -> line.startsWith("out 1 | Connect small")));
    assertTrue(lines.stream().noneMatch(line -> line.startsWith("out 1 | Connect striker")));
  }

  @Test
  void the_gates_on_voltage_is_that_of_the_finding() {
    Kit kit = ChannelKit.typical().kit();
    List<String> gate =
        Said.lines(firstPower(kit, findings(kit))).stream()
            .filter(line -> line.startsWith("out 1 | Q1 | at most 300 mV"))
            .toList();
    // 4.7 V by 10 kΩ - 1 % under 222 Ω and 30 Ω, less what the return lifts.
    assertTrue(gate.get(0).matches(".*\\| at least 4\\.5\\d V \\| __ \\| \\[ ]"), gate.toString());
  }

  private static LoadFindings findings(Kit kit) {
    return LoadFindings.of(kit);
  }

  private static final String SOCKETED =
      """
      designators,value,description
      U1,LM358,op amp DIP-8
      XU1,,IC socket DIP-8
      """;

  private static Kit withRail(String rail) {
    return Said.kit(
        "bom.csv", SOCKETED, "rails.csv", "rail,voltage,tolerance,current limit\n" + rail + "\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a,5 V,5 %,1 A | 4.75 V to 5.25 V | Lower than before, or current near 1 A: off.",
        "a,5 V,5 %, | 4.75 V to 5.25 V | Lower than before, or an IC gets hot: off.",
        "a,5 V,, | 5 V; tolerance not stated, see rails.csv | Lower than before, or an IC gets hot:"
            + " off.",
        "a,,5 %, | not stated: write the voltage in rails.csv | Lower than before, or an IC gets hot:"
            + " off.",
      })
  void what_a_rail_lacks_is_said_where_it_would_stand(String rail, String expect, String stop) {
    assertSays(
        firstPower(withRail(rail), LoadFindings.none()),
        "a with ICs | Off, wait for the capacitors, plug the ICs in, each the right way round, on again."
            + " Measure as before. | "
            + expect
            + " | "
            + stop
            + " | __ | [ ]");
    if (rail.endsWith(",")) {
      assertSays(
          firstPower(withRail(rail), LoadFindings.none()),
          "a to return | Resistance range, red on the plus terminal, black on the return; wait until"
              + " it settles. | climbs while capacitors charge; no short | Stays at a few ohms: find"
              + " the short first. | __ | [ ]",
          "a voltage | Start with the supply's limit at 0.1 A. Measure at the supply pins of each"
              + " socket, against the return. | "
              + expect
              + " | Supply goes into its limit, a reading is outside, anything smells or is warm: off."
              + " | __ | [ ]");
    }
  }

  /** 60 V itself is still extra-low voltage. */
  @ParameterizedTest
  @CsvSource({
    "'60 V,0 %', false",
    "'60.1 V,0 %', true",
    "'54 V,', false", // 10 % more, as the channel report assumes, are 59.4 V
    "'55 V,', true"
  })
  void the_limit_is_sixty_volts(String volts, boolean deferred) {
    assertEquals(
        deferred,
        Said.lines(firstPower(withRail("a," + volts + ","), LoadFindings.none())).stream()
            .anyMatch(line -> line.startsWith("a rail | Leave it unconnected.")));
  }

  @Test
  void a_kit_without_supplies_says_what_is_not_known() {
    Document document = firstPower(Said.kit("bom.csv", SOCKETED), LoadFindings.none());
    assertSays(
        document,
        "supply to return | Resistance range, red on the plus terminal, black on the return; wait"
            + " until it settles. | climbs while capacitors charge; no short | Stays at a few ohms:"
            + " find the short first. | __ | [ ]",
        "supply voltage | Start with the supply's limit at 0.1 A. Measure at the supply pins of each"
            + " socket, against the return. | not known: write the supplies in rails.csv, then it is"
            + " worked out | Supply goes into its limit, anything smells or is warm: off. | __ | [ ]",
        "supply with ICs | Off, wait for the capacitors, plug the ICs in, each the right way round, on"
            + " again. Measure as before. | as before | Lower than before, or an IC gets hot: off. | __ | [ ]");
    assertEquals(
        List.of(
            "# Before power: meter only, ICs out of their sockets",
            "# Before power: which way round",
            "# Stage 1: rail check, ICs out of their sockets",
            "# Stage 2: ICs in"),
        headings(document));
    List<String> lines = Said.lines(document);
    assertTrue(lines.stream().anyMatch(line -> line.startsWith("XU1 | ")));
    assertTrue(lines.stream().noneMatch(line -> line.startsWith("U1 | ")), "plugged in later");
    assertTrue(lines.stream().noneMatch(line -> line.contains("coil")), "no output");
  }

  @Test
  void of_sockets_and_outputs_nothing_is_said_where_there_are_none() {
    Document document =
        firstPower(
            Said.kit("bom.csv", "designators,value,description\nU1,LM358,op amp DIP-8\n"),
            LoadFindings.none());
    assertEquals(
        List.of(
            "# Before power: meter only",
            "# Before power: which way round",
            "# Stage 1: rail check"),
        headings(document));
    List<String> lines = Said.lines(document);
    assertTrue(lines.stream().anyMatch(line -> line.startsWith("U1 | ")), "soldered in");
    assertTrue(lines.stream().noneMatch(line -> line.contains("socket")), lines.toString());
  }

  private static List<String> headings(Document document) {
    return Said.lines(document).stream().filter(line -> line.startsWith("# ")).toList();
  }

  // --- wiring

  @Test
  void every_wire_is_listed_with_what_the_kit_says_of_it() {
    assertSays(
        WiringDocument.of(KIT, LoadFindings.none()),
        "Wiring list",
        "Bells",
        "! Wire with every supply off and unplugged. Mains, protective earth and anything above 60 V"
            + " DC: local code and a licensed electrician.",
        "# Logic supply",
        "supply logic + | boards, logic + | 0.5 mm² | 0.3 m | 1 × 3 A | 1 A | __ | [ ]",
        "boards, return of logic | supply logic − | 0.5 mm² | 0.3 m | 1 × 3 A | 1 A | __ | [ ]",
        "supply bare + | boards, bare + | not stated, see rails.csv | not stated | 7 A | not stated |"
            + " __ | [ ]",
        "# Supplies of the loads, and their returns",
        "supply bells + | boards, bells + | 6 mm² | 2 m | 2 × 15 A | 20 A | __ | [ ]",
        "supply high + | boards, high + | not stated, see rails.csv | not stated | not stated | not"
            + " stated | __ | [ ]",
        "# Loads",
        "out 1 | bell: leave unplugged | bells + | 1 mm² | 3 m | 15 A | F1, 2 A | not known | __ | [ ]",
        "out 2 | lamp: leave unplugged | bells + | not stated, see channels.csv | not stated | not stated | none | not"
            + " known | __ | [ ]",
        "out 4 | none | not known | not stated, see channels.csv | not stated | not stated | F9 | not"
            + " known | __ | [ ]");
    assertEquals(
        4 + 4 + 6,
        Said.rows(WiringDocument.of(KIT, LoadFindings.none()), "").size(),
        "two wires a rail");
  }

  @Test
  void what_does_not_carry_stays_unplugged() {
    String wire = "! Wire, but leave unplugged: out 1 (striker). ";
    Kit overloaded = ChannelKit.typical().with("loads", "resistance=3 Ohm").kit();
    assertSays(
        WiringDocument.of(overloaded, findings(overloaded)),
        wire + "Overloaded: see in the channel report what to change.");
    Kit undecided = ChannelKit.typical().with("channels", "wire length=").kit();
    assertSays(
        WiringDocument.of(undecided, findings(undecided)),
        wire + "Undecided: see in the channel report what is missing.");
    Kit carries = ChannelKit.typical().kit();
    assertTrue(
        Said.lines(WiringDocument.of(carries, findings(carries))).stream()
            .noneMatch(line -> line.contains("unplugged: ")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"rail=", "rail=ghost"})
  void a_load_of_unknown_rail_stays_unplugged_and_is_wired_to_none(String rail) {
    Kit kit = ChannelKit.typical().with("loads", rail).kit();
    Document wiring = WiringDocument.of(kit, findings(kit));
    assertSays(
        wiring,
        "! Wire, but leave unplugged: out 1 (striker). Undecided: see in the channel report what is"
            + " missing.");
    assertTrue(
        Said.rows(wiring, "").stream()
            .anyMatch(
                row -> row.startsWith("out 1 | striker: leave unplugged | not known | 1 mm²")));
    assertTrue(
        Said.lines(firstPower(kit, findings(kit))).stream()
            .anyMatch(row -> row.startsWith("out 1 | " + FIND_OUT + "connect striker")));
  }

  @Test
  void a_supply_unit_of_several_rails_is_named_on_the_wiring_list() {
    ChannelKit kit =
        ChannelKit.typical().with("supplies", "supply=PC; rails=power; power limit=120 W");
    assertSays(
        WiringDocument.of(kit.kit(), LoadFindings.none()),
        "One supply unit, PC, feeds power: together at most 120 W.");
  }

  @Test
  void where_no_supply_is_known_the_wiring_list_says_so_without_an_empty_table() {
    Kit bare = Said.kit("bom.csv", "designators,value\nR1,1k\n");
    assertSays(
        WiringDocument.of(bare, LoadFindings.none()),
        "rails.csv names no supply that is free of loads.",
        "The kit's tables name no supply of a load.");
    Kit shared =
        Said.kit(
            "bom.csv", "designators,value\nR1,1k\n",
            "rails.csv", "rail,voltage\nbells,24 V\n",
            "loads.csv", "load,kind,rail\nbell,solenoid,bells\n");
    assertSays(
        WiringDocument.of(shared, LoadFindings.none()),
        "rails.csv names no supply that is free of loads.");
  }

  /** 1.1 A through 2 × 2 m of 1 mm² and 50 mm of track, hot: 0.0172 · 4 · 1.1 is 76 mV and more. */
  @Test
  void the_drop_is_that_of_the_finding() {
    Kit kit = ChannelKit.typical().kit();
    String row =
        Said.rows(WiringDocument.of(kit, findings(kit)), "").stream()
            .filter(line -> line.startsWith("out 1"))
            .findFirst()
            .orElseThrow();
    assertTrue(row.matches(".* \\| (8|9|1\\d)\\d mV \\| __ \\| \\[ ]"), row);
  }

  @Test
  void without_channels_there_is_no_table_of_loads() {
    assertFalse(
        Stream.of(WiringDocument.of(withRail("a,5 V,,"), LoadFindings.none()))
            .flatMap(document -> Said.lines(document).stream())
            .anyMatch("# Loads"::equals));
  }
}
