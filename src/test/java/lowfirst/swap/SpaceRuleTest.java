package lowfirst.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.swap.rule.Answer;
import lowfirst.swap.rule.SpaceRule;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A resistor of 6.3 x 2.5 mm (0207) at 50, 50 becomes one of 11.9 x 4.5 mm (0414); beside it stands
 * another 0207. Side by side they meet below (4.5 + 2.5)/2 = 3.5 mm, end to end below (11.9 +
 * 6.3)/2 = 9.1 mm.
 */
class SpaceRuleTest {
  private static final String SHEET =
      "part type,symbol,condition,min,typ,max,unit,source\n"
          + "BIG,kind,resistor,,,,,test sheet\nBIG,package,DIN0414,,,,,test sheet\n"
          + "BARE,kind,ceramic capacitor,,,,,test sheet\nBARE,package,MLCC,,,,,test sheet\n"
          + "DISC,kind,ceramic capacitor,,,,,test sheet\n"
          + "DISC,package,disc D7 W2.5 P5.08,,,,,test sheet\n";

  private static Optional<SwapReason> space(String bom, String placements, String candidate) {
    String place = candidate.equals("BIG") ? "10k" : "10n";
    return SmallKit.finding(
            SmallKit.of(
                Map.of(
                    "boards.csv",
                    "board,count,bom,placements\nmain,1,bom.csv,places.csv\n",
                    "bom.csv",
                    "designators,quantity,value,package,description\n" + bom,
                    "places.csv",
                    "designator,x,y,rotation,side\n" + placements,
                    "datasheets.csv",
                    SHEET)),
            place,
            candidate)
        .reason(SpaceRule.NEIGHBOURS);
  }

  private static Answer besides(String here, String there) {
    return space(
            "R1,1,10k,DIN0207,resistor\nR2,1,22k,DIN0207,resistor\n",
            "R1,50,50," + here + "\nR2," + there + "\n",
            "BIG")
        .orElseThrow()
        .answer();
  }

  @ParameterizedTest(name = "{0} beside {1}")
  @CsvSource({
    // side by side, end to end
    "'0,top',   '50,53.4,0,top',  undecided",
    "'0,top',   '50,53.6,0,top',  fits",
    "'0,top',   '50,46.6,0,top',  undecided",
    "'0,top',   '59,50,0,top',    undecided",
    "'0,top',   '59.2,50,0,top',  fits",
    "'0,top',   '41,50,0,top',    undecided",
    "'0,top',   '59,53.4,0,top',  undecided",
    // either one turned: (4.5 + 6.3)/2 = 5.4 mm, both: 3.5 mm
    "'90,top',  '55.3,50,0,top',  undecided",
    "'90,top',  '55.5,50,0,top',  fits",
    "'270,top', '55.5,50,0,top',  fits",
    "'180,top', '59,50,0,top',    undecided",
    "'0,top',   '50,55.3,90,top', undecided",
    "'0,top',   '50,55.5,90,top', fits",
    "'90,top',  '53.4,50,90,top', undecided",
    "'90,top',  '53.6,50,90,top', fits",
    // what met before, below 2.5 mm, is not the swap's doing; nor is the other side of the board
    "'0,top',   '50,52.4,0,top',  fits",
    "'0,top',   '50,52.6,0,top',  undecided",
    "'0,top',   '50,53.4,0,bottom', fits",
  })
  void a_wider_body_needs_room_beside_its_neighbours(String here, String there, String verdict) {
    Answer answer = besides(here, there);
    assertEquals(verdict, answer.verdict().words());
    assertEquals(
        verdict.equals("fits") ? List.of() : List.of("room between R1 and R2: try it dry"),
        answer.missing());
  }

  /**
   * An angle that is not stated or can't be read may be 0° or 90°: R1 standing meets R2 beside it
   * below (4.5 + 6.3)/2 = 5.4 mm, and both standing meet end to end below 9.1 mm.
   */
  @ParameterizedTest(name = "{0} beside {1}")
  @CsvSource({
    "'0,top',   '50,55,,top',      R2",
    "'0,top',   '50,55.5,,top',    ''",
    "',top',    '50,59,90,top',    R1",
    "'?,top',   '50,59,90,top',    R1",
    "',top',    '50,59.2,,top',    ''",
    "',top',    '50,59,,top',      'R1, R2'",
  })
  void a_body_whose_rotation_is_not_known_is_tried_both_ways(
      String here, String there, String unturned) {
    Answer answer = besides(here, there);
    assertEquals(unturned.isEmpty() ? "fits" : "undecided", answer.verdict().words());
    assertEquals(
        unturned.isEmpty()
            ? List.of()
            : List.of(
                "room between R1 and R2: try it dry",
                "rotation of "
                    + unturned
                    + " (tried at 0° and at 90°): a column of the placement list"),
        answer.missing());
  }

  @Test
  void the_longer_side_of_both_bodies_is_told() {
    Answer answer = besides("0,top", "50,90,0,top");
    assertEquals("6.3 mm", answer.asked().orElseThrow().quantity().orElseThrow().toString());
    assertEquals("body now, 0207 lying", answer.asked().orElseThrow().word());
    assertEquals("11.9 mm", answer.offered().orElseThrow().quantity().orElseThrow().toString());
  }

  /** Places of one swap all get the wider body: (4.5 + 4.5)/2 = 4.5 mm side by side. */
  @ParameterizedTest
  @CsvSource({"54.4, undecided", "54.6, fits"})
  void places_of_one_swap_are_neighbours_too(String along, String verdict) {
    Answer answer =
        space(
                "R1 R2,2,10k,DIN0207,resistor\n",
                "R1,50,50,0,top\nR2,50," + along + ",0,top\n",
                "BIG")
            .orElseThrow()
            .answer();
    assertEquals(verdict, answer.verdict().words());
    assertTrue(verdict.equals("fits") || answer.missing().size() == 1, answer::toString);
  }

  /** The package table has no body for a radial MLCC; a disc of 7 mm by 2.5 mm names its own. */
  @Test
  void a_body_that_nobody_knows_touches_nothing_and_is_called_unknown() {
    String places = "C1,50,50,0,top\nC2,50,51,0,top\n";
    String bom = "C1,1,10n,%s,ceramic capacitor\nC2,1,22n,%s,ceramic capacitor\n";
    String disc = "disc D7 W2.5 P5.08";
    assertEquals(Optional.empty(), space(bom.formatted(disc, disc), places, "BARE"));
    assertEquals(Optional.empty(), space(bom.formatted(disc, disc), places, "DISC"));
    Answer beside = space(bom.formatted("MLCC", "MLCC"), places, "DISC").get().answer();
    assertEquals("fits", beside.verdict().words());
    Answer instead = space(bom.formatted("MLCC", disc), places, "DISC").get().answer();
    assertEquals("undecided", instead.verdict().words());
    assertEquals("not known", instead.asked().orElseThrow().word());
  }
}
