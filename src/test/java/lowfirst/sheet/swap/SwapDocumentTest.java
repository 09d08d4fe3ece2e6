package lowfirst.sheet.swap;

import static lowfirst.sheet.document.Said.assertSays;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lowfirst.board.Kit;
import lowfirst.channel.ChannelFinding;
import lowfirst.channel.ChannelKit;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Role;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import lowfirst.intake.shipped.ShippedTables;
import lowfirst.progress.SmallPlan;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.document.Said;
import lowfirst.sorting.LookAlikes;
import lowfirst.swap.BoardChange;
import lowfirst.swap.ChannelChange;
import lowfirst.swap.DrawerHit;
import lowfirst.swap.DrawerResult;
import lowfirst.swap.SwapFinding;
import lowfirst.swap.SwapReason;
import lowfirst.swap.SwapTarget;
import lowfirst.swap.rule.Answer;
import lowfirst.swap.rule.SwapRule;
import lowfirst.swap.rule.SwapVerdict;
import lowfirst.swap.subject.Evidence;
import lowfirst.swap.subject.SwapCase;
import lowfirst.swap.subject.SwapUse;
import org.junit.jupiter.api.Test;

/** What is said of a substitute; the findings are put together by hand. */
class SwapDocumentTest {
  private static final Kit KIT = ChannelKit.typical().kit();
  private static final SwapCase CASE = swap("Q1", "IRL540N");
  private static final Source SHEET = Source.datasheet("sheet A");
  private static final Source OTHER = Source.datasheet("sheet B");
  private static final List<SwapReason> REAL =
      SwapFinding.of(CASE, ShippedTables.bodyOutlines()).reasons();
  private static final SwapRule RULE = REAL.get(0).rule();

  private static SwapCase swap(String part, String candidate) {
    return SwapTarget.named(KIT, part, Optional.empty())
        .get(0)
        .with(KIT, candidate, ShippedTables.bodyOutlines());
  }

  private static Evidence volts(String volts, String condition, Source source) {
    return Evidence.of(Quantity.of(volts, Dimension.VOLTAGE), condition, source);
  }

  private static Answer answer(
      SwapVerdict verdict, Evidence asked, Evidence offered, Double margin, String remark) {
    return new Answer(
        verdict,
        Optional.ofNullable(asked),
        Optional.ofNullable(offered),
        margin == null ? OptionalDouble.empty() : OptionalDouble.of(margin),
        List.of(),
        remark);
  }

  private static Answer missing(String... what) {
    return new Answer(
        SwapVerdict.UNDECIDED,
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        List.of(what),
        "");
  }

  private static SwapFinding finding(List<SwapReason> reasons, ChannelChange... channels) {
    return new SwapFinding(CASE, reasons, List.of(channels), Optional.empty());
  }

  /** One that rests on its channels. */
  private static SwapFinding finding(ChannelChange... channels) {
    return finding(
        List.of(new SwapReason(RULE, answer(SwapVerdict.FITS, null, null, null, ""), List.of())),
        channels);
  }

  private static SwapFinding finding(Answer answer, String... decidedBy) {
    return finding(List.of(new SwapReason(RULE, answer, List.of(decidedBy))));
  }

  private static Document said(SwapFinding... findings) {
    return SwapDocument.of(List.of(findings));
  }

  private static Check check(CheckKind kind, double actual, double allowed, Datum... data) {
    Verdict verdict =
        data.length > 0
            ? Verdict.UNDECIDED
            : actual <= allowed ? Verdict.CARRIES : Verdict.OVERLOADED;
    return new Check(kind, actual, allowed, List.of(data), verdict);
  }

  private static ChannelChange change(Check before, Check after) {
    SwapUse first = CASE.uses().get(0);
    return new ChannelChange(
        first,
        new ChannelFinding(first.channel(), List.of(before)),
        new ChannelFinding(first.channel(), List.of(after)));
  }

  private static final Check OLD = check(CheckKind.DRAIN_CURRENT, 1.1, 14);
  private static final Check GOOD = check(CheckKind.DRAIN_CURRENT, 1.1, 22);
  private static final Check BAD = check(CheckKind.DRAIN_CURRENT, 1.1, 1);

  @Test
  void what_fits_is_said_with_its_least_margin() {
    SwapFinding fits =
        finding(
            answer(SwapVerdict.FITS, volts("60", "", SHEET), volts("100", "", OTHER), 0.25, ""));
    assertEquals("fits, least margin +25 %", SwapWords.line(fits));
    Document document = said(fits);
    assertSays(
        document,
        "Swap: IRL540N in place of T-FET at Q1 of main",
        "Fits, least margin +25 %.",
        "Part against part: rule | asked | offered | margin | says",
        RULE.words() + " | 60 V | 100 V | +25 % | fits",
        "Why each rule, and where its numbers stand: rule | why | from",
        RULE.words() + " | " + RULE.why() + " [" + RULE.source() + "] | sheet A / sheet B");
    assertTrue(Said.lines(document).stream().noneMatch(line -> line.startsWith("! ")));
    assertTrue(Said.lines(document).stream().noneMatch(line -> line.startsWith("# ")));
    assertTrue(Said.lines(document).stream().noneMatch(line -> line.startsWith("What is missing")));
    assertEquals("fits", SwapWords.line(finding(answer(SwapVerdict.FITS, null, null, null, ""))));
  }

  @Test
  void what_does_not_fit_is_said_with_the_first_reason_and_a_caution() {
    SwapFinding bad =
        finding(
            answer(
                SwapVerdict.DOES_NOT_FIT,
                volts("60", "", SHEET),
                volts("30", "at 25 °C", SHEET),
                -0.5,
                "it would break down"));
    assertSays(
        said(bad),
        "Does not fit: " + RULE.words() + ", 30 V for 60 V.",
        "! Do not fit it here.",
        "It would break down.",
        RULE.words() + " | 60 V | 30 V (at 25 °C) | -50 % | does not fit",
        RULE.words() + " | " + RULE.why() + " [" + RULE.source() + "] | sheet A");
  }

  /** Both are 30 V: the conditions tell them apart. */
  @Test
  void equal_amounts_are_told_apart_by_their_conditions() {
    SwapFinding bad =
        finding(
            answer(
                SwapVerdict.DOES_NOT_FIT,
                volts("30", "at 100 °C", SHEET),
                volts("30", "at 25 °C", SHEET),
                null,
                ""));
    assertEquals(
        "does not fit: " + RULE.words() + ", 30 V (at 25 °C) for 30 V (at 100 °C)",
        SwapWords.line(bad));
    SwapFinding words =
        finding(
            answer(
                SwapVerdict.DOES_NOT_FIT,
                Evidence.of("G D S", SHEET),
                Evidence.of("S G D", SHEET),
                null,
                ""));
    assertEquals("does not fit: " + RULE.words() + ", S G D for G D S", SwapWords.line(words));
    SwapFinding half =
        finding(answer(SwapVerdict.DOES_NOT_FIT, volts("30", "", SHEET), null, null, ""));
    assertEquals("does not fit: " + RULE.words(), SwapWords.line(half));
  }

  @Test
  void what_is_not_known_is_listed_once_and_is_no_pass() {
    SwapFinding open =
        finding(
            List.of(
                new SwapReason(RULE, missing("VGS of IRL540N", "VDS of IRL540N"), List.of()),
                new SwapReason(REAL.get(1).rule(), missing("VGS of IRL540N"), List.of())),
            change(
                OLD,
                check(CheckKind.FUSE_CURRENT, Double.NaN, 2, Datum.missing(Term.FUSE_RATING))));
    assertEquals(
        "undecided: " + RULE.words() + ", not known: VGS of IRL540N", SwapWords.line(open));
    Document document = said(open);
    assertSays(
        document,
        "! Not known is not safe: find what is missing below before you fit it.",
        "What is missing: find this",
        "VGS of IRL540N",
        "VDS of IRL540N",
        RULE.words() + " | not known | not known |  | undecided");
    assertEquals(
        List.of("VGS of IRL540N", "VDS of IRL540N"),
        Said.rows(document, "What is missing").subList(0, 2));
  }

  @Test
  void a_load_that_is_carried_all_the_same_is_told_so() {
    SwapFinding rescued =
        finding(
            answer(
                SwapVerdict.DOES_NOT_FIT, volts("60", "", SHEET), volts("55", "", SHEET), -0.1, ""),
            "out 1");
    assertSays(
        said(rescued), RULE.words() + " | 60 V | 55 V | -10 % | the load is carried all the same");
    assertSays(
        said(finding(answer(SwapVerdict.FITS, null, null, null, ""), "out 1")),
        RULE.words() + " | not known | not known |  | fits");
  }

  @Test
  void a_channel_can_be_what_decides() {
    SwapFinding bad = finding(change(OLD, BAD));
    assertEquals("does not fit: channel out 1, drain current within ID", SwapWords.line(bad));
    assertEquals(
        "does not fit: channel out 1, drain current within ID, as with the part asked for",
        SwapWords.line(finding(change(BAD, BAD))));
    assertSays(
        said(bad),
        "For its load, as MOSFET of out 1: does not fit: check | before | after | margin",
        "drain current within ID | carries, 1.1 A of 14 A | overloaded, 1.1 A of 1 A | +92 % to -10 %");
  }

  @Test
  void channels_with_the_same_numbers_are_shown_once() {
    SwapFinding two = finding(change(OLD, GOOD), change(OLD, GOOD));
    assertTrue(
        Said.lines(said(two))
            .contains(
                "For its load, as MOSFET of out 1, out 1: fits: check | before | after | margin"),
        Said.lines(said(two)).toString());
    SwapFinding five =
        finding(
            IntStream.range(0, 5).mapToObj(i -> change(OLD, GOOD)).toArray(ChannelChange[]::new));
    assertTrue(
        Said.lines(said(five))
            .contains(
                "For its load, as MOSFET of out 1 and 4 more with the same numbers: fits: check | before |"
                    + " after | margin"));
    SwapFinding differing =
        finding(change(OLD, GOOD), change(OLD, check(CheckKind.DRAIN_CURRENT, 1.1, 20)));
    assertEquals(
        2,
        Said.lines(said(differing)).stream()
            .filter(line -> line.startsWith("For its load"))
            .count());
  }

  @Test
  void a_check_in_a_cell_says_what_is_of_what_may_be() {
    assertEquals("carries, 1.1 A of 14 A", SwapWords.check(Optional.of(OLD)));
    assertEquals("not done", SwapWords.check(Optional.empty()));
    assertEquals(
        "undecided",
        SwapWords.check(
            Optional.of(
                check(CheckKind.FUSE_CURRENT, Double.NaN, 2, Datum.missing(Term.FUSE_RATING)))));
    var both = new ChannelChange.Pair(CheckKind.DRAIN_CURRENT, Optional.of(OLD), Optional.of(OLD));
    assertEquals("+92 %", SwapWords.margins(both));
    var lost = new ChannelChange.Pair(CheckKind.DRAIN_CURRENT, Optional.of(OLD), Optional.empty());
    assertEquals("+92 % to ", SwapWords.margins(lost));
  }

  @Test
  void a_source_is_named_once() {
    assertEquals(
        "sheet A",
        SwapWords.sources(answer(SwapVerdict.FITS, volts("1", "", SHEET), null, null, "")));
    assertEquals(
        "sheet B",
        SwapWords.sources(answer(SwapVerdict.FITS, null, volts("1", "", OTHER), null, "")));
    assertEquals("", SwapWords.sources(missing("x")));
  }

  // --- the board

  private static BoardChange moved(int others) {
    var moved = new ArrayList<BoardChange.Moved>();
    for (int i = 1; i <= others; i++) {
      moved.add(new BoardChange.Moved(SmallPlan.designators("R" + i), 2, 3));
    }
    Kit alike =
        Said.kit("bom.csv", "designators,value,description\nC1,10p,ceramic\nC2,100p,ceramic\n");
    var pairs = LookAlikes.in(alike);
    return new BoardChange(
        Optional.of(SmallPlan.RESISTORS),
        Optional.of(SmallPlan.DIODE),
        moved,
        pairs,
        pairs.subList(0, 1));
  }

  private static Document onBoard(BoardChange change) {
    return said(
        new SwapFinding(
            CASE,
            List.of(
                new SwapReason(RULE, answer(SwapVerdict.FITS, null, null, null, ""), List.of())),
            List.of(),
            Optional.of(change)));
  }

  @Test
  void what_changes_on_the_board_is_told() {
    assertSays(
        onBoard(moved(2)),
        "On main: what | how",
        "its step now | step 1: 1 mm, lowest first",
        "its step with the swap | step 2: 2 mm, lowest first",
        "R1 | moves from batch 2 to batch 3",
        "R2 | moves from batch 2 to batch 3",
        "new look-alikes | 10 pF ceramic capacitor and 100 pF ceramic capacitor",
        "no longer alike | 10 pF ceramic capacitor and 100 pF ceramic capacitor");
    assertTrue(
        Said.lines(
                onBoard(
                    new BoardChange(
                        Optional.empty(), Optional.empty(), List.of(), List.of(), List.of())))
            .stream()
            .noneMatch(line -> line.startsWith("On main")));
  }

  @Test
  void of_many_steps_that_move_a_dozen_are_named() {
    assertTrue(
        Said.rows(onBoard(moved(12)), "On main").stream().noneMatch(row -> row.startsWith("and ")));
    assertSays(
        onBoard(moved(13)), "R12 | moves from batch 2 to batch 3", "and | 1 step more moves");
    assertSays(onBoard(moved(15)), "and | 3 steps more move");
  }

  @Test
  void a_part_on_several_boards_has_a_heading_for_each() {
    SwapFinding fits = finding(answer(SwapVerdict.FITS, null, null, null, ""));
    assertSays(
        said(fits, fits), "Swap on several boards", "# IRL540N in place of T-FET at Q1 of main");
  }

  @Test
  void machines_get_every_reason_and_every_check() {
    SwapFinding all =
        finding(
            List.of(
                new SwapReason(
                    RULE,
                    answer(
                        SwapVerdict.FITS,
                        volts("60", "", SHEET),
                        volts("100", "", OTHER),
                        0.25,
                        ""),
                    List.of()),
                new SwapReason(RULE, missing("a", "b"), List.of())),
            change(OLD, GOOD));
    List<String> rows = Said.rows(SwapDocument.table(List.of(all)), "reasons");
    assertEquals(
        List.of(
            "main | rule | " + RULE + " | fits | 60 V | 100 V | +25 % |  | sheet A / sheet B",
            "main | rule | " + RULE + " | undecided | not known | not known |  | a; b | ",
            "out 1 | check | DRAIN_CURRENT | carries | carries, 1.1 A of 14 A | carries, 1.1 A of 22 A"
                + " | +92 % to +95 % |  | "),
        rows);
  }

  // --- a drawer

  private static DrawerHit hit(String name, SwapVerdict verdict, double margin, String... lacks) {
    return new DrawerHit(name, verdict, margin, margin, List.of(lacks));
  }

  private static DrawerResult drawer(DrawerHit... best) {
    return new DrawerResult(
        CASE,
        1,
        2,
        3,
        List.of(best),
        List.of(hit("NEAR", SwapVerdict.DOES_NOT_FIT, -0.1, "voltage")),
        List.of(hit("OPEN", SwapVerdict.UNDECIDED, Double.POSITIVE_INFINITY, "VGS", "VDS")));
  }

  @Test
  void a_drawer_is_told_by_what_fits_what_nearly_does_and_what_is_not_known() {
    Document document = DrawerDocument.of(drawer(hit("BEST", SwapVerdict.FITS, 0.4)));
    assertSays(
        document,
        "Drawer for T-FET at Q1 of main",
        "6 part types: 1 fit, 2 undecided, 3 do not fit.",
        "Each was tried in every channel that the part serves: 1 channel.",
        "What fits, the best margin first: part type | least margin",
        "BEST | +40 %",
        "Near misses: they lack one thing: part type | margin | lacks",
        "NEAR | -10 % | voltage",
        "Undecided: their rows leave something out: part type | margin | not known",
        "OPEN |  | VGS; VDS",
        "! Before you fit one, ask for it by itself: lowfirst swap <kit> <part> <candidate> also looks"
            + " at bodies, order and look-alikes.");
    assertFalse(
        Said.lines(DrawerDocument.of(drawer())).stream().anyMatch(l -> l.startsWith("What fits")));
    assertEquals(
        List.of(
            "BEST | fits | +40 % | ",
            "NEAR | does not fit | -10 % | voltage", "OPEN | undecided |  | VGS; VDS"),
        Said.rows(DrawerDocument.table(drawer(hit("BEST", SwapVerdict.FITS, 0.4))), "drawer"));
  }

  @Test
  void a_part_that_serves_no_channel_is_tried_in_none() {
    SwapCase plain =
        new SwapCase(
            CASE.kit(), CASE.board(), List.of(), CASE.asked(), CASE.offered(), List.of(), false);
    Document document =
        DrawerDocument.of(new DrawerResult(plain, 1, 0, 0, List.of(), List.of(), List.of()));
    assertSays(document, "1 part type: 1 fit, 0 undecided, 0 do not fit.");
    assertFalse(Said.lines(document).stream().anyMatch(line -> line.startsWith("Each was tried")));
    assertEquals("IRL540N in place of T-FET of main", SwapWords.what(plain));
    SwapCase twice =
        new SwapCase(
            CASE.kit(),
            CASE.board(),
            CASE.designators(),
            CASE.asked(),
            CASE.offered(),
            List.of(CASE.uses().get(0), CASE.uses().get(0)),
            false);
    assertSays(
        DrawerDocument.of(new DrawerResult(twice, 1, 0, 0, List.of(), List.of(), List.of())),
        "Each was tried in every channel that the part serves: 2 channels.");
  }

  @Test
  void every_role_has_its_word() {
    assertEquals(
        "MOSFET, gate resistor, pull-down, flyback diode, fuse, driver",
        List.of(
                Role.MOSFET,
                Role.GATE_RESISTOR,
                Role.PULL_DOWN,
                Role.FLYBACK_DIODE,
                Role.FUSE,
                Role.STAGE)
            .stream()
            .map(SwapWords::role)
            .collect(Collectors.joining(", ")));
  }
}
