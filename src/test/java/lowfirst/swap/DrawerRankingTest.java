package lowfirst.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lowfirst.board.Kit;
import lowfirst.channel.check.CheckKind;
import lowfirst.part.DatasheetLine;
import lowfirst.part.Datasheets;
import lowfirst.part.PartKind;
import lowfirst.swap.rule.DiodeRule;
import lowfirst.swap.rule.SwapVerdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Small drawers of which every place in the result is known by hand. */
class DrawerRankingTest {
  private static final Kit PLAYER =
      BellPlayer.with(Map.of("swaps.csv", "board,designators,part type fitted,reason,who,date\n"));

  /** A diode of 400 V and 1 A that serves no channel. */
  private static final Kit DIODE =
      SmallKit.of(
          Map.of(
              "boards.csv",
              "board,count,bom,placements\nmain,1,bom.csv,\n",
              "bom.csv",
              "designators,quantity,part type,description\nD1,1,OLD,diode\n",
              "datasheets.csv",
              "part type,symbol,condition,min,typ,max,unit,source\n"
                  + "OLD,kind,diode,,,,,test\nOLD,VRRM,,,,400,V,test\nOLD,IFav,,,,1,A,test\n"
                  + "a,VRRM,,,,100,V,test\na,IFav,,,,2,A,test\n"));

  private static Datasheets drawer(String... parts) {
    var lines = new ArrayList<DatasheetLine>();
    for (String part : parts) {
      String[] words = part.split(": ", 2);
      PartKind kind = words[0].startsWith("R-") ? PartKind.RESISTOR : PartKind.DIODE;
      lines.addAll(Sheets.lines(words[0], kind, words[1]));
    }
    return Datasheets.of(lines);
  }

  private static DrawerResult search(int most, String... parts) {
    SwapTarget target = SwapTarget.named(DIODE, "D1", Optional.empty()).get(0);
    return DrawerSearch.of(target, DIODE, drawer(parts), SmallKit.OUTLINES, most);
  }

  private static List<String> names(List<DrawerHit> hits) {
    return hits.stream().map(DrawerHit::partType).toList();
  }

  /** By the least margin; of equals by the mean, where more than twice is no better than twice. */
  private static final String[] ALL = {
    "d: VRRM <480 V; IFav <3 A", // 0.2 and 2, mean 0.6
    "c: VRRM <1200 V; IFav <1.5 A", // 2 and 0.5, mean 0.75
    "b: VRRM <600 V; IFav <2 A", // 0.5 and 1, mean 0.75
    "e: VRRM <600 V; IFav <1.6 A", // 0.5 and 0.6, mean 0.55
    "near: VRRM <300 V; IFav <2 A", // -0.25 and 1
    "nearer: VRRM <380 V; IFav <1 A", // -0.05 and 0
    "two amiss: VRRM <300 V; IFav <0.5 A",
    "amiss and open: VRRM <300 V",
    "open and amiss: IFav <0.5 A",
    "one open: IFav <1 A", // no margin, and a name that comes later
    "both open: TJ <150 degC",
    "R-other kind: VRRM <600 V; IFav <2 A"
  };

  @Test
  void what_fits_stands_by_its_least_margin_and_what_is_short_by_what_it_lacks() {
    DrawerResult result = search(9, ALL);
    assertEquals(List.of("b", "c", "e", "d"), names(result.best()));
    assertEquals(List.of("nearer", "near"), names(result.nearMisses()));
    assertEquals(List.of("one open", "both open"), names(result.open()));
    assertEquals(4, result.fitting());
    assertEquals(2, result.undecided());
    assertEquals(6, result.misfits());
    assertEquals(12, result.looked());
  }

  @Test
  void the_best_of_each_sort_are_kept_and_all_are_counted() {
    DrawerResult result = search(1, ALL);
    assertEquals(List.of("b"), names(result.best()));
    assertEquals(List.of("nearer"), names(result.nearMisses()));
    assertEquals(List.of("one open"), names(result.open()));
    assertEquals(12, result.looked());
  }

  @Test
  void margins_and_what_is_lacking_are_told() {
    DrawerResult result = search(9, ALL);
    DrawerHit best = result.best().get(0);
    assertEquals(0.5, best.margin(), 1e-9);
    assertEquals(0.75, best.mean(), 1e-9);
    assertEquals(List.of(), best.lacks());
    assertEquals(List.of(DiodeRule.REVERSE_VOLTAGE.words()), result.nearMisses().get(0).lacks());
    assertEquals(
        List.of(DiodeRule.REVERSE_VOLTAGE.words(), DiodeRule.AVERAGE_CURRENT.words()),
        result.open().get(1).lacks());
    assertEquals(0, result.open().get(1).mean(), "nothing has a size");
  }

  /** Part a of the kit's own sheet has 100 V and 2 A; the drawer's says 500 V of it. */
  @Test
  void the_kits_lines_fill_what_the_drawer_leaves_out_and_no_more() {
    DrawerHit hit = search(9, "a: VRRM <500 V").best().get(0);
    assertEquals(0.25, hit.margin(), 1e-9);
    assertEquals(0.625, hit.mean(), 1e-9);
  }

  private static DrawerResult searchFuse(String breaking, String volts) {
    List<DatasheetLine> lines =
        Sheets.lines(
            "TRY-F",
            PartKind.FUSE,
            "Irated <7 A; characteristic = T; family = UL 248-14; package = radial; I2t >80 A2s"
                + (volts.isEmpty() ? "" : "; Vrated@DC <" + volts)
                + (breaking.isEmpty() ? "" : "; breaking@DC <" + breaking));
    SwapTarget target = SwapTarget.named(PLAYER, "F1", Optional.of("driver")).get(0);
    return DrawerSearch.of(target, PLAYER, Datasheets.of(lines), SmallKit.OUTLINES, 9);
  }

  /** A quarter more than the 30 A of the stronger rail; all else has more to spare. */
  @Test
  void the_channels_margins_count() {
    assertEquals(0.25, searchFuse("40 A", "125 V").best().get(0).margin(), 1e-9);
  }

  /**
   * A fuse of 7 A in channels of rails that deliver 20 A and 30 A at no more than 25.2 V: what the
   * channels lack is said once, and their margins count.
   */
  @ParameterizedTest(name = "breaks {0} at {1}: {2}")
  @CsvSource({
    "50 A, 125 V, fits, ''",
    "25 A, 125 V, does not fit, FUSE_BREAKING",
    "50 A, 20 V,  does not fit, FUSE_VOLTAGE",
    "25 A, 20 V,  does not fit, too many",
    "25 A, '',    does not fit, too many",
    "50 A, '',    undecided, FUSE_VOLTAGE",
    "'',   125 V, undecided, FUSE_BREAKING",
    "'',   '',    undecided, FUSE_VOLTAGE FUSE_BREAKING",
  })
  void a_fuse_is_tried_in_the_channels_that_it_serves(
      String breaking, String volts, String verdict, String lacks) {
    DrawerResult result = searchFuse(breaking, volts);
    assertEquals(verdict.equals("fits") ? 1 : 0, result.fitting(), result::toString);
    assertEquals(verdict.equals("undecided") ? 1 : 0, result.undecided(), result::toString);
    var hits = new ArrayList<>(result.best());
    hits.addAll(result.open());
    hits.addAll(result.nearMisses());
    List<List<String>> wanted =
        lacks.equals("too many")
            ? List.of()
            : List.of(
                Stream.of(lacks.split(" "))
                    .filter(kind -> !kind.isEmpty())
                    .map(kind -> CheckKind.valueOf(kind).words())
                    .toList());
    assertEquals(wanted, hits.stream().map(DrawerHit::lacks).toList());
  }

  /** Two ways to one answer: the search takes short cuts, the single swap none. */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "Q1, IRL540N", "Q1, IRLZ44N", "Q1, IRF540N", "Q1, 2N7000", "Q1, BP-N100L", "Q1, BP-N60L",
    "D1, BP-F3A", "D1, 1N5404", "D1, 1N4007", "D1, 1N5817", "F1, 213 series 5 A", "F1, BP-T500",
  })
  void it_says_of_a_part_what_a_single_swap_says(String place, String candidate) {
    SwapTarget target = SwapTarget.named(PLAYER, place, Optional.of("driver")).get(0);
    Datasheets sheet = Datasheets.of(PLAYER.datasheets().about(candidate));
    DrawerResult result = DrawerSearch.of(target, PLAYER, sheet, SmallKit.OUTLINES, 9);
    SwapFinding single =
        SwapFinding.of(target.with(PLAYER, candidate, SmallKit.OUTLINES), SmallKit.OUTLINES);
    assertEquals(1, result.looked());
    assertEquals(single.verdict() == SwapVerdict.FITS ? 1 : 0, result.fitting());
    assertEquals(single.verdict() == SwapVerdict.UNDECIDED ? 1 : 0, result.undecided());
  }
}
