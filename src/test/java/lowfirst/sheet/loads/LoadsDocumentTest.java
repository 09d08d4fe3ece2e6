package lowfirst.sheet.loads;

import static lowfirst.sheet.document.Said.assertSays;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lowfirst.board.Kit;
import lowfirst.channel.BuildSpread;
import lowfirst.channel.CarryLimit;
import lowfirst.channel.ChannelFinding;
import lowfirst.channel.ChannelInputs;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.ChannelKit;
import lowfirst.channel.ChannelStudy;
import lowfirst.channel.CoilRelease;
import lowfirst.channel.KitInputs;
import lowfirst.channel.LoadFindings;
import lowfirst.channel.RailFinding;
import lowfirst.channel.Remedy;
import lowfirst.channel.Sensitivity;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.document.Said;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of channels and rails. */
class LoadsDocumentTest {
  /** 24 V over 24 Ω is 1 A; 5 % more volts on 5 % fewer ohms are 1.1053 A. */
  private static final ChannelInputs TYPICAL = ChannelKit.typical().inputs();

  private static final ChannelInputs FLOATING =
      ChannelKit.typical().with("channels", "pull-down=").inputs();
  private static final ChannelInputs UNKNOWN_LOAD =
      ChannelKit.typical().with("loads", "resistance=").inputs();

  private static Check check(CheckKind kind, double actual, double allowed, Datum... data) {
    boolean missing = Stream.of(data).anyMatch(datum -> !datum.isKnown());
    boolean good = kind.sense() == CheckKind.Sense.AT_MOST ? actual <= allowed : actual >= allowed;
    return new Check(
        kind,
        actual,
        allowed,
        List.of(data),
        missing ? Verdict.UNDECIDED : good ? Verdict.CARRIES : Verdict.OVERLOADED);
  }

  private static ChannelStudy study(ChannelInputs in, Optional<CarryLimit> limit, Check... checks) {
    return new ChannelStudy(
        in,
        new ChannelFinding(in.channel(), List.of(checks)),
        limit,
        List.of(),
        List.of(),
        List.of(),
        Optional.empty());
  }

  private static String line(ChannelInputs in, Optional<CarryLimit> limit, Check... checks) {
    return LoadsWords.line(study(in, limit, checks));
  }

  /** Two rails that say nothing of their returns may share one; one alone has nothing to share. */
  @Test
  void what_was_taken_of_the_returns_is_said_where_nobody_says_it() {
    ChannelKit one = ChannelKit.typical();
    ChannelKit two =
        one.with("rails.2", one.row("rails") + "; rail=second")
            .with("loads.2", one.row("loads") + "; load=other; rail=second")
            .with("channels.2", one.row("channels") + "; channel=out 2; load=other; fuse=");
    assertEquals(List.of(), returns(one));
    assertEquals(List.of("(not said of power, second)."), returns(two));
    ChannelKit half = two.with("rails", "return=main");
    assertEquals(List.of("(not said of second)."), returns(half));
    assertEquals(List.of(), returns(half.with("rails.2", "return=main")));
  }

  private static List<String> returns(ChannelKit kit) {
    LoadFindings findings = LoadFindings.of(kit.kit());
    return LoadsDocument.of("t", "f", List.of(), findings.sums()).blocks().stream()
        .filter(Block.Caution.class::isInstance)
        .map(caution -> ((Block.Caution) caution).text())
        .filter(text -> text.startsWith("Each rail counts as having a return conductor"))
        .map(text -> text.substring(text.indexOf('(')))
        .toList();
  }

  @Test
  void a_channel_that_carries_says_what_and_up_to_what() {
    Check good = check(CheckKind.FUSE_CURRENT, 1, 2);
    assertEquals("carries 1.11 A", line(TYPICAL, Optional.empty(), good));
    // A limit is never rounded up: two figures, the rest cut off.
    assertEquals(
        "carries 1.11 A, up to 3.7 A; limited by the fuse",
        line(
            TYPICAL, Optional.of(new CarryLimit(3.79, Optional.of(CheckKind.FUSE_CURRENT))), good));
    assertEquals(
        "carries 1.11 A, up to 1.1 kA",
        line(TYPICAL, Optional.of(new CarryLimit(1199, Optional.empty())), good));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "DRAIN_CURRENT | 20 | 15 | the MOSFET's current, 20 A of at most 15 A",
        "GATE_LEVEL | 3.9 | 4 | the gate's on-voltage, 3.9 V of at least 4 V",
        "DRAIN_CURRENT | 15.002 | 15 | the MOSFET's current, 15.002 A of at most 15 A",
        "GATE_OFF | 2.5 | 1 | the gate's off-voltage, 2.5 V of at most 1 V",
        "STAGE_VOLTAGE | Infinity | 50 | the driver, a coil without a flyback diode",
        "SWITCHING_TIME | Infinity | 1 | the switching time, the gate never gets high enough to switch",
        "JUNCTION_TEMPERATURE | Infinity | 150 | the MOSFET's heat, no steady value: it runs away",
        "INRUSH_JUNCTION | Infinity | 150 | the MOSFET's heat, no steady value: it runs away",
        "FUSE_PULSE | Infinity | 3 | the fuse, without bound",
      })
  void an_overloaded_channel_names_the_part_and_both_numbers(
      CheckKind kind, double actual, double allowed, String words) {
    assertEquals(
        "overloaded at 1.11 A: " + words,
        line(TYPICAL, Optional.empty(), check(kind, actual, allowed)));
  }

  @Test
  void an_overloaded_channel_says_what_it_would_carry() {
    assertEquals(
        "overloaded at 1.11 A: the fuse, 3 A of at most 2 A; would carry 990 mA",
        line(
            TYPICAL,
            Optional.of(new CarryLimit(0.999, Optional.empty())),
            check(CheckKind.FUSE_CURRENT, 3, 2)));
    assertEquals(
        "overloaded: the fuse, 3 A of at most 2 A",
        line(UNKNOWN_LOAD, Optional.empty(), check(CheckKind.FUSE_CURRENT, 3, 2)));
  }

  @Test
  void a_gate_that_nothing_pulls_down_is_told_so() {
    Check off = check(CheckKind.GATE_OFF, 2.5, 1);
    assertEquals(
        "overloaded at 1.11 A: the gate's off-voltage, nothing pulls it down",
        line(FLOATING, Optional.empty(), off));
    for (String reset : List.of("low", "high")) {
      ChannelInputs driven =
          ChannelKit.typical()
              .with("channels", "pull-down=")
              .with("drivers", "at reset=" + reset)
              .inputs();
      assertTrue(driven.has(Fitted.DRIVEN_AT_RESET) || driven.has(Fitted.ON_AT_RESET), reset);
      assertTrue(line(driven, Optional.empty(), off).endsWith("2.5 V of at most 1 V"), reset);
    }
    assertTrue(
        line(FLOATING, Optional.empty(), check(CheckKind.FUSE_CURRENT, 3, 2))
            .endsWith("3 A of at most 2 A"));
  }

  @Test
  void an_undecided_channel_says_how_many_numbers_are_missing_and_the_first() {
    Check one = check(CheckKind.FUSE_CURRENT, Double.NaN, 2, Datum.missing(Term.FUSE_RATING));
    Check two = check(CheckKind.TRACE_CURRENT, Double.NaN, 2, Datum.missing(Term.TRACE_WIDTH));
    Check again = check(CheckKind.FUSE_PULSE, Double.NaN, 2, Datum.missing(Term.FUSE_RATING));
    String first = "IN: write it in datasheets.csv IN, or the fuse's value in the BOM";
    assertEquals(
        "undecided: 1 number is missing, first " + first,
        line(TYPICAL, Optional.empty(), one, again));
    assertEquals(
        "undecided: 2 numbers are missing, first " + first,
        line(TYPICAL, Optional.empty(), one, two));
  }

  @Test
  void an_undecided_channel_without_gaps_says_why() {
    var remembered = new Check(CheckKind.FUSE_CURRENT, 1, 2, List.of(), Verdict.UNDECIDED);
    assertEquals(
        "undecided: it would pass only on a value from memory, in fuse carries the load",
        line(TYPICAL, Optional.empty(), remembered));
    var high = new Check(CheckKind.VOLTAGE_SCOPE, 72, 60, List.of(), Verdict.UNDECIDED);
    assertEquals(
        "undecided: above 60 V DC; ask a person licensed to work on it",
        line(TYPICAL, Optional.empty(), high));
  }

  // --- amounts and names

  @Test
  void amounts_and_margins_that_are_not_known_leave_no_number() {
    Check good = check(CheckKind.FUSE_CURRENT, 1.5, 2);
    assertEquals("1.5 A", LoadsWords.actual(good));
    assertEquals("+25 %", LoadsWords.margin(good));
    assertEquals("-50 %", LoadsWords.margin(check(CheckKind.FUSE_CURRENT, 3, 2)));
    assertEquals(
        "no limit", LoadsWords.actual(check(CheckKind.FUSE_PULSE, Double.POSITIVE_INFINITY, 3)));
    Check unknown = check(CheckKind.FUSE_CURRENT, Double.NaN, 2, Datum.missing(Term.FUSE_RATING));
    assertEquals("?", LoadsWords.actual(unknown));
    assertEquals("", LoadsWords.margin(unknown));
    assertEquals("an unknown current", LoadsWords.amps(Double.NaN));
    assertEquals("85 °C", LoadsWords.celsius(84.6));
  }

  @ParameterizedTest
  @CsvSource({
    "TRACE_WIDTH, trace width w",
    "SUPPLY, voltage Vrail",
    "AMBIENT, ambient TA",
    "ON_RESISTANCE, RDSon",
    "GATE_RESISTOR, RG",
    "OTHERS_ON_STAGE, Iothers",
    "CONSTANT, factor",
  })
  void a_number_goes_by_its_column_and_its_symbol(Term term, String words) {
    assertEquals(words, LoadsWords.noun(term));
  }

  private static Remedy remedy(
      CheckKind check, Remedy.Action action, Term term, String value, Dimension dimension) {
    return new Remedy(
        check,
        action,
        Optional.ofNullable(term),
        Optional.ofNullable(value).map(v -> Quantity.of(v, dimension)),
        Optional.empty(),
        "",
        false);
  }

  private static Remedy fit(CheckKind check, Fitted fit, String ohms, boolean alone) {
    return new Remedy(
        check,
        Remedy.Action.FIT,
        Optional.empty(),
        Optional.ofNullable(ohms).map(v -> Quantity.of(v, Dimension.RESISTANCE)),
        Optional.of(fit),
        "",
        alone);
  }

  @Test
  void a_remedy_is_an_instruction() {
    assertEquals(
        "a wire of at least 2.5 mm²",
        LoadsWords.words(
            remedy(
                CheckKind.WIRE_CURRENT,
                Remedy.Action.RAISE,
                Term.WIRE_AREA,
                "2.5",
                Dimension.AREA)));
    assertEquals(
        "a load of at most 2 A",
        LoadsWords.words(
            remedy(
                CheckKind.FUSE_CURRENT,
                Remedy.Action.LOWER,
                Term.LOAD_CURRENT,
                "2",
                Dimension.CURRENT)));
    assertEquals(
        "a coil with a pull-in voltage of at most 2 V",
        LoadsWords.words(
            remedy(CheckKind.PULL_IN, Remedy.Action.LOWER, Term.PULL_IN, "2", Dimension.VOLTAGE)));
    assertEquals(
        "a part with VBEsat of at most 2 V",
        LoadsWords.words(
            remedy(
                CheckKind.FORCED_GAIN,
                Remedy.Action.LOWER,
                Term.BASE_VOLTAGE,
                "2",
                Dimension.VOLTAGE)));
    assertEquals(
        "IN in the sheet",
        LoadsWords.words(
            new Remedy(
                CheckKind.FUSE_CURRENT,
                Remedy.Action.LOOK_UP,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "IN in the sheet",
                false)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "GATE_OFF | PULL_DOWN | 4700 | true | fit a pull-down of 4.7 kΩ at the gate; then it carries",
        "GATE_OFF | PULL_DOWN | | false | fit a pull-down at the gate",
        "DRAIN_CURRENT | GATE_RESISTOR | | true | fit a gate resistor; then it carries",
        "AVALANCHE_ENERGY | FLYBACK_DIODE | | false | fit a flyback diode across the load",
        "STAGE_VOLTAGE | FLYBACK_DIODE | | false | fit a flyback diode across the load; or join the"
            + " driver's own clamp diodes to the load's rail, and name the driver as flyback diode in"
            + " channels.csv",
        "UNFUSED_WIRE | FUSE | | false | fit a fuse, on the board or in the lead, and name it in the"
            + " BOM and in channels.csv",
        "UNFUSED_TRACK | FUSE | | false | fit a fuse, on the board or in the lead, and name it in the"
            + " BOM and in channels.csv",
      })
  void a_part_to_fit_is_named_with_its_value(
      CheckKind check, Fitted part, String ohms, boolean alone, String words) {
    assertEquals(words, LoadsWords.words(fit(check, part, ohms, alone)));
  }

  // --- the whole report

  private static Kit kit(int channels) {
    ChannelKit kit = ChannelKit.typical();
    for (int number = 2; number <= channels; number++) {
      kit = kit.with("channels." + number, kit.row("channels") + "; channel=out " + number);
    }
    return kit.kit();
  }

  private static Document report(Kit kit) {
    KitInputs inputs = KitInputs.of(kit);
    return LoadsDocument.of(
        "test", "0123456789abcdef", ChannelStudy.of(inputs), LoadFindings.of(inputs).sums());
  }

  /** 25.2 V and 1.1053 A are 27.85 W. */
  @Test
  void a_limit_that_rails_share_is_counted_listed_and_explained() {
    ChannelKit kit =
        ChannelKit.typical().with("supplies", "supply=PC; rails=power; power limit=27 W");
    Document document = report(kit.kit());
    assertTrue(
        Said.lines(document)
            .get(2)
            .contains(
                "1 rail: 1 carries, 0 overloaded, 0 undecided. 1 shared supply limit: 0 carry, 1"
                    + " overloaded, 0 undecided. Every number"),
        Said.lines(document).get(2));
    assertSays(
        document,
        "supply PC | supply unit delivers its rails together | 27.9 W | 27 W | overloaded",
        "# Supply PC",
        "Shared by the rails: power.",
        "the supply | a supply unit (or loads switched on one after another) with a power limit of"
            + " at least 28 W; then it carries");
    KitInputs inputs = KitInputs.of(kit.kit());
    assertTrue(
        Said.lines(LoadsTable.of("t", ChannelStudy.of(inputs), LoadFindings.of(inputs).sums()))
            .stream()
            .anyMatch(row -> row.startsWith("supply | PC | supply unit delivers its rails")));
    assertEquals(
        1,
        Said.rows(report(kit.with("supplies", "power limit=").kit()), "What is missing: find this")
            .stream()
            .filter(
                row ->
                    row.equals(
                        "power limit of supply PC: write it in supplies.csv | supply unit"
                            + " delivers its rails together, supply unit delivers the inrush |"
                            + " supply PC"))
            .count());
  }

  @Test
  void a_load_of_unknown_rail_is_named_at_each_rail_and_asked_for_once() {
    Document document = report(ChannelKit.typical().with("loads", "rail=").kit());
    String perhaps = "Perhaps on this rail, too, since the tables don't tell: out 1.";
    assertSays(
        document,
        "# Rail power",
        "Counted as on together: none.",
        perhaps,
        "# Rail logic",
        "Counted as on together: none.",
        perhaps);
    assertEquals(
        1,
        Said.rows(document, "What is missing: find this").stream()
            .filter(row -> row.startsWith("rail of load striker: write it in loads.csv |"))
            .count());
  }

  @Test
  void the_report_counts_and_lists_the_channels_then_shows_each() {
    Document one = report(kit(1));
    List<String> lines = Said.lines(one);
    assertEquals("Loads of test", lines.get(0));
    assertEquals("tables 0123456789ab", lines.get(1));
    assertTrue(
        lines
            .get(2)
            .startsWith("1 channel: 1 carries, 0 overloaded, 0 undecided. 1 rail: 1 carries"),
        lines.get(2));
    String row = Said.rows(one, "Channels").get(0);
    assertTrue(row.startsWith("out 1 | striker | carries 1.11 A, up to "), row);
    assertSays(
        one,
        "! Parts run hot: above about 60 °C they burn skin. Let them cool before you touch.",
        "# Channel out 1",
        "Every check: check | finding | actual | allowed | margin | formula, numbers and their"
            + " sources",
        "# Rail power",
        "Counted as on together: out 1.",
        "Further numbers, and where they come from: number | value | source");
    assertTrue(lines.stream().anyMatch(line -> line.startsWith("Carries 1.11 A, up to ")));
    assertTrue(Said.rows(one, "Rails and returns").size() >= 4);
    for (String rail : Said.rows(one, "Rails and returns")) {
      assertTrue(
          rail.matches("power \\| [a-z ]+ \\| [\\d.]+ m?[AV] \\| [\\d.]+ m?[AV] \\| carries"),
          rail);
    }
    // 1.1053 A against a supply of 5 A.
    assertTrue(
        Said.rows(one, "Rails and returns")
            .contains("power | supply delivers the sum | 1.11 A | 5 A | carries"));
  }

  @Test
  void channels_with_the_same_numbers_are_shown_once() {
    assertSays(
        report(kit(2)),
        "# Channel out 1 and out 2",
        "The sources below are those of out 1; the others have the same numbers in their own rows.",
        "Counted as on together: out 1, out 2.");
    Document three = report(kit(3));
    assertSays(three, "# Channel out 1 and 2 alike, to out 3");
    assertTrue(Said.lines(three).get(2).startsWith("3 channels: "));
    assertEquals(3, Said.rows(three, "Channels").size());
    // One that differs stands by itself.
    ChannelKit other = ChannelKit.typical();
    other = other.with("channels.2", other.row("channels") + "; channel=out 2; wire length=9 m");
    assertSays(report(other.kit()), "# Channel out 1", "# Channel out 2");
    assertFalse(
        Said.lines(report(kit(1))).stream().anyMatch(line -> line.startsWith("The sources below")));
  }

  /** Every line of a check can be worked out again: its numbers stand beside their sources. */
  @Test
  void every_check_shows_its_numbers_and_every_number_its_source() {
    Document document = report(kit(1));
    List<String> checks = Said.rows(document, "Every check");
    String drop =
        checks.stream().filter(r -> r.startsWith("drain voltage")).findFirst().orElseThrow();
    // 24 V + 5 % + 1.1 V of the diode are 26.3 V, of 0.8 times 100 V: 67 % are left.
    assertTrue(
        drop.startsWith("drain voltage within VDS | carries | 26.3 V | 80 V | +67 % | "), drop);
    assertTrue(drop.contains("Vmax + VF ≤ 0.8·VDS. With "), drop);
    assertTrue(drop.contains("VDS 100 V"), drop);
    assertTrue(
        drop.endsWith(
            "Wiring adds short spikes to the rail: a fifth of the rating is kept for them."),
        drop);
    assertFalse(drop.contains("MISSING"));
    List<String> sources = Said.rows(document, "Where the numbers come from");
    assertTrue(
        sources.stream().anyMatch(row -> row.startsWith("VDS | 100 V | test part, invented")),
        sources.toString());
    List<String> further = Said.rows(document, "Further numbers, and where they come from");
    assertTrue(
        further.stream().anyMatch(row -> row.startsWith("Areturn | ")), "the rail's: " + further);
    assertTrue(further.stream().noneMatch(sources::contains), "each stands once");
    for (String row : sources) {
      assertTrue(row.matches("[^|]+ \\| [^|]+ \\| [^|]+"), row);
    }
  }

  @Test
  void what_is_missing_stands_at_its_check_and_among_the_remedies() {
    Document document =
        report(
            ChannelKit.typical()
                .withoutDatasheet("T-FUSE", "I2t")
                .withoutDatasheet("T-FUSE", "VN")
                .kit());
    String voltage =
        Said.rows(document, "Every check").stream()
            .filter(row -> row.startsWith("fuse breaks this voltage"))
            .findFirst()
            .orElseThrow();
    assertTrue(
        voltage.startsWith("fuse breaks this voltage | undecided | 25.2 V | ? |  | "), voltage);
    assertTrue(voltage.contains(". MISSING: VN"), voltage);
    String duty =
        Said.rows(report(ChannelKit.typical().with("loads", "rated duty=").kit()), "Every check")
            .stream()
            .filter(row -> row.startsWith("on no more often than the load bears"))
            .findFirst()
            .orElseThrow();
    assertTrue(duty.contains("duty = on time over on and off time. MISSING: "), duty);
    List<String> missing = Said.rows(document, "What is missing: find this");
    assertTrue(
        missing.stream()
            .anyMatch(row -> row.matches("VN .* \\| fuse breaks this voltage \\| [^|]+")),
        missing.toString());
    assertTrue(Said.rows(document, "What to change: any one line for each").isEmpty());
    assertTrue(Said.rows(report(kit(1)), "What is missing: find this").isEmpty());
  }

  /** One thermal resistance, which the heat and with it the coil's pull-in follow from. */
  @Test
  void a_number_that_several_checks_of_several_channels_lack_is_asked_for_once() {
    ChannelKit kit = ChannelKit.typical().withoutDatasheet("T-FET", "RthJA");
    for (int more = 2; more <= 5; more++) {
      kit = kit.another(more);
    }
    List<String> missing = Said.rows(report(kit.kit()), "What is missing: find this");
    assertEquals(1, missing.size(), missing.toString());
    assertTrue(missing.get(0).startsWith("RthJA of T-FET"), missing.toString());
    assertTrue(missing.get(0).contains("junction temperature"), missing.toString());
    assertTrue(missing.get(0).endsWith(" | out 1, out 2, out 3 and 2 more"), missing.toString());
  }

  /** A lamp of 1 A that draws 8 A for a moment, on a supply of 0.9 A: each asks for its own. */
  @Test
  void where_a_part_fails_two_checks_each_has_a_change_of_its_own() {
    Document document =
        report(
            ChannelKit.typical()
                .with("loads", "kind=lamp; inductance=; resistance=; current=1 A; inrush=8 A")
                .with("rails", "current limit=0.9 A")
                .kit());
    List<String> changes =
        Said.rows(document, "What to change: any one line for each").stream()
            .filter(row -> row.contains("current limit"))
            .toList();
    assertEquals(2, changes.size(), changes.toString());
    assertTrue(changes.get(0).startsWith("supply delivers the sum | "), changes.toString());
    assertTrue(changes.get(1).startsWith("supply delivers the inrush | "), changes.toString());
  }

  /** What the second channel's row lacks stands at the first, which it names. */
  @Test
  void a_formula_stands_once_and_is_pointed_to_from_there_on() {
    ChannelKit kit = ChannelKit.typical();
    kit = kit.with("channels.2", kit.row("channels") + "; channel=out 2; wire length=9 m");
    List<String> drops =
        Said.rows(report(kit.kit()), "Every check").stream()
            .filter(row -> row.startsWith("drain voltage within VDS"))
            .toList();
    assertEquals(2, drops.size());
    assertTrue(drops.get(0).contains("| Vmax + VF ≤ 0.8·VDS. With "), drops.get(0));
    assertTrue(drops.get(1).contains("| As at out 1. With "), drops.get(1));
    assertTrue(drops.get(1).contains("VDS 100 V"), drops.get(1));
    assertFalse(drops.get(1).contains("Wiring adds short spikes"), drops.get(1));
  }

  @Test
  void no_remedy_is_left_out() {
    List<Remedy> many =
        Stream.of(Term.values())
            .limit(20)
            .map(
                term ->
                    remedy(
                        CheckKind.FUSE_CURRENT, Remedy.Action.RAISE, term, "2", term.dimension()))
            .distinct()
            .toList();
    ChannelStudy typical = ChannelStudy.of(TYPICAL);
    var study =
        new ChannelStudy(
            TYPICAL,
            typical.finding(),
            Optional.empty(),
            many,
            List.of(),
            List.of(),
            Optional.empty());
    Document document = LoadsDocument.of("t", "f", List.of(study), List.of());
    assertEquals(many.size(), Said.rows(document, "What to change: any one line for each").size());
    assertSays(document, "tables f", "matters most, a tenth worse: nothing");
    assertTrue(
        Said.lines(document).get(2).contains("0 rails: 0 carry"), Said.lines(document).get(2));
    assertFalse(
        Said.lines(document).stream().anyMatch(line -> line.startsWith("Rails and returns")));
    assertFalse(Said.lines(document).stream().anyMatch(line -> line.startsWith("measure:")));
  }

  @Test
  void the_numbers_that_matter_most_stand_with_how_much_they_take() {
    ChannelStudy typical = ChannelStudy.of(TYPICAL);
    var study =
        new ChannelStudy(
            TYPICAL,
            typical.finding(),
            Optional.empty(),
            List.of(),
            List.of(
                new Sensitivity(Term.LOAD_CURRENT, CheckKind.FUSE_CURRENT, 1.2),
                new Sensitivity(Term.AMBIENT, CheckKind.JUNCTION_TEMPERATURE, 0.25),
                new Sensitivity(Term.TRACE_WIDTH, CheckKind.TRACE_CURRENT, 0.1),
                new Sensitivity(Term.SUPPLY, CheckKind.PULL_IN, 0.05)),
            List.of(),
            Optional.empty());
    assertSays(
        LoadsDocument.of("t", "f", List.of(study), List.of()),
        "matters most, a tenth worse: current Iload (then the fuse fails); ambient TA (25 % of what"
            + " the MOSFET's heat has left); trace width w (10 % of what the copper track has left)");
  }

  /**
   * Gate: 4.7 V by 10 kΩ - 1 % under 220 Ω + 1 % and 30 Ω, less what the return lifts. Load: 24 V
   * over 24 Ω, 2 × 2 m of 1 mm² at 0.0172 Ω (0.069 Ω), 50 mm of track (0.012 Ω) and 50 mΩ: 0.993 A,
   * the return counted.
   */
  @Test
  void what_to_measure_is_told_where_the_channel_is_known() {
    String measure =
        Said.lines(report(kit(1))).stream()
            .filter(line -> line.startsWith("measure: "))
            .findFirst()
            .orElseThrow();
    assertTrue(measure.startsWith("measure: gate to source at least 4.5"), measure);
    assertTrue(
        measure.contains("; about 993 mA in the load, cold, never more than 1.11 A"), measure);
    assertTrue(
        Said.lines(report(kit(1))).stream()
            .anyMatch(line -> line.startsWith("<Junction temperature against load current: ")));
  }

  @Test
  void a_kit_without_channels_says_where_they_would_stand() {
    assertEquals(
        List.of(
            "Loads of t",
            "tables f",
            "This kit has no channels: channels.csv names what each MOSFET switches."),
        Said.lines(LoadsDocument.of("t", "f", List.of(), List.of())),
        "and nothing of coils");
  }

  @Test
  void anything_but_carrying_is_something_found() {
    ChannelStudy good = study(TYPICAL, Optional.empty(), check(CheckKind.FUSE_CURRENT, 1, 2));
    ChannelStudy bad = study(TYPICAL, Optional.empty(), check(CheckKind.FUSE_CURRENT, 3, 2));
    List<RailFinding> rails = LoadFindings.of(KitInputs.of(kit(1))).rails();
    assertFalse(LoadsDocument.findsSomething(List.of(good), rails));
    assertTrue(LoadsDocument.findsSomething(List.of(good, bad), rails));
    assertFalse(LoadsDocument.findsSomething(List.of(), List.of()));
    List<RailFinding> weak =
        LoadFindings.of(
                KitInputs.of(ChannelKit.typical().with("rails", "current limit=0.5 A").kit()))
            .rails();
    assertTrue(LoadsDocument.findsSomething(List.of(good), weak));
  }

  @Test
  void machines_get_a_row_for_every_check_and_every_way_to_let_go() {
    Kit kit = kit(1);
    KitInputs inputs = KitInputs.of(kit);
    Document table = LoadsTable.of("t", ChannelStudy.of(inputs), LoadFindings.of(inputs).rails());
    List<String> rows = Said.rows(table, "checks");
    assertTrue(
        rows.stream()
            .anyMatch(
                row ->
                    row.startsWith(
                        "channel | out 1 | drain voltage within VDS | carries | 26.3 V | 80 V | +67 %"
                            + " | Vmax + VF ≤ 0.8·VDS | ")),
        rows.toString());
    String drain = rows.stream().filter(r -> r.contains("drain voltage")).findFirst().orElseThrow();
    assertTrue(drain.contains("VDS = 100 V ["), drain);
    assertTrue(rows.stream().anyMatch(row -> row.startsWith("rail | power | supply delivers")));
    List<String> letting =
        rows.stream().filter(row -> row.contains("coil current gone, ")).toList();
    assertEquals(3, letting.size());
    assertTrue(
        letting
            .get(0)
            .startsWith(
                "channel | out 1 | coil current gone, the diode alone | for information | "),
        letting.get(0));
    assertEquals(rows.stream().distinct().toList(), rows);
  }

  @Test
  void symbols_are_listed_with_their_column() {
    List<String> rows = Said.rows(SymbolsDocument.of(), "symbols");
    assertEquals(lowfirst.channel.data.DatasheetSymbol.values().length, rows.size());
    for (String row : rows) {
      assertTrue(row.matches("[^|]+ \\| [^|]+ \\| [^|]+"), row);
    }
    assertTrue(rows.stream().anyMatch(row -> row.startsWith("RDSon | ")), rows.toString());
  }

  @Test
  void builds_are_counted_with_their_share() {
    Map<String, BuildSpread> spreads = new LinkedHashMap<>();
    spreads.put("out 1", new BuildSpread(1000, 25, 3));
    assertSays(
        BuildsDocument.of("t", spreads, 42),
        "Builds of t",
        "Every number evenly between its corners, seed 42. The corners above decide; this only shows"
            + " how near they are.",
        "builds: channel | builds | overloaded | share | undecided",
        "out 1 | 1000 | 25 | 2.50 % | 3");
  }

  // --- how a coil lets go

  private static CoilRelease way(
      CoilRelease.Way way, String value, Dimension dimension, double seconds, double watts) {
    return new CoilRelease(
        way,
        Optional.ofNullable(value).map(v -> Quantity.of(v, dimension)),
        seconds,
        26.3,
        way == CoilRelease.Way.DIODE ? 0 : 0.031,
        watts);
  }

  private static ChannelStudy releasing(ChannelInputs in, List<CoilRelease> ways) {
    return new ChannelStudy(
        in, ChannelFinding.of(in), Optional.empty(), List.of(), List.of(), ways, Optional.empty());
  }

  private static final CoilRelease DIODE =
      way(CoilRelease.Way.DIODE, null, Dimension.VOLTAGE, 0.012, 0);
  private static final CoilRelease ZENER =
      way(CoilRelease.Way.ZENER, "47", Dimension.VOLTAGE, 0.0011, 0.031);
  private static final CoilRelease RESISTOR =
      way(CoilRelease.Way.RESISTOR, "43", Dimension.RESISTANCE, 0.0023, Double.NaN);

  @Test
  void a_coil_is_told_how_fast_it_lets_go_and_what_would_hasten_it() {
    ChannelStudy study = releasing(TYPICAL, List.of(DIODE, ZENER, RESISTOR));
    Document document = LoadsDocument.of("t", "f", List.of(study), List.of());
    assertSays(
        document,
        "letting go: the coil's current is gone after 12 ms with the diode alone, 1.1 ms with a 47 V"
            + " Zener in series, 2.3 ms with 43 Ω in series",
        "How the coil lets go, and what would change it: the current dies in | gone after | drain up"
            + " to | heat in the added part",
        "the diode alone | 12 ms | 26.3 V | ",
        "a 47 V Zener in series | 1.1 ms | 26.3 V | 31 mJ each time, 31 mW as a mean",
        "43 Ω in series | 2.3 ms | 26.3 V | 31 mJ each time");
    // 0.8 × 100 V less 25.2 V and 1.1 V leave 53.7 V.
    assertTrue(
        Said.lines(document).stream()
            .anyMatch(
                line ->
                    line.startsWith("Both go in series with the diode, never in its place: ")
                        && line.contains("clamps at no more than 53.7 V at 1.11 A")
                        && line.endsWith("The coil itself lets go before all current is gone.")));
    List<String[]> cells = ReleaseWords.cells(study);
    assertEquals("drain up to 26.3 V", cells.get(0)[2]);
    assertEquals("drain up to 26.3 V; 31 mJ each time", cells.get(2)[2]);
  }

  @Test
  void a_coil_without_room_is_told_why_nothing_hastens_it() {
    assertEquals(
        "the coil's current is gone after 12 ms with the diode alone; the switch's voltage rating"
            + " leaves no room for a Zener or a resistor to hasten it",
        ReleaseWords.fact(releasing(TYPICAL, List.of(DIODE))).orElseThrow().text());
    assertTrue(ReleaseWords.blocks(releasing(TYPICAL, List.of(DIODE))).isEmpty());
  }

  @Test
  void what_is_missing_for_a_coil_is_named_and_other_loads_are_not_told() {
    ChannelInputs unknown = ChannelKit.typical().with("loads", "inductance=").inputs();
    assertTrue(
        ReleaseWords.fact(releasing(unknown, List.of()))
            .orElseThrow()
            .text()
            .startsWith(
                "not worked out; missing: inductance of load striker: write it in loads.csv"),
        ReleaseWords.fact(releasing(unknown, List.of())).toString());
    ChannelInputs lamp = ChannelKit.typical().with("loads", "kind=lamp; inductance=").inputs();
    assertTrue(ReleaseWords.fact(releasing(lamp, List.of())).isEmpty());
  }

  @Test
  void under_pwm_the_added_part_carries_in_every_pause() {
    ChannelInputs pwm =
        ChannelKit.typical()
            .with("drivers", "PWM frequency=1 kHz")
            .with("loads", "duty=50 %")
            .inputs();
    assertTrue(pwm.has(Fitted.PWM));
    String advice =
        ((Block.Paragraph) ReleaseWords.blocks(releasing(pwm, List.of(DIODE, ZENER))).get(1))
            .text();
    assertTrue(advice.endsWith("and the coil holds less current."), advice);
    assertTrue(advice.contains(" This driver uses PWM: "), advice);
  }

  @Test
  void a_number_read_twice_from_one_source_stands_there_once() {
    Datum rating = Datum.of(Term.FUSE_RATING, 2, Source.kit("bom.csv"));
    ChannelStudy study =
        study(
            TYPICAL,
            Optional.empty(),
            check(CheckKind.FUSE_CURRENT, 1, 2, rating),
            check(CheckKind.FUSE_BREAKING, 1, 2, rating));
    Document document = LoadsDocument.of("t", "f", List.of(study), List.of());
    assertEquals(List.of("IN | 2 A | bom.csv"), Said.rows(document, "Where the numbers come from"));
  }
}
