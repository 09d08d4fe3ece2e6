package lowfirst.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lowfirst.board.Designator;
import lowfirst.board.Kit;
import lowfirst.swap.subject.SwapUse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which channels a place serves, and as what; and what a name means in a kit. */
class SwapUseTest {
  private static final Kit KIT =
      SmallKit.of(
          Map.of(
              "boards.csv",
              "board,count,bom,placements\nmain,1,main.csv,\nother,1,other.csv,\n",
              "main.csv",
              "designators,quantity,value,part type,description\n"
                  + "Q1,1,,TRY-1,MOSFET\n"
                  + "\"R1,R2,R3\",3,10k,,resistor 1 %\n"
                  + "D1,1,,1N4007,diode\nF1,1,,BP-T7A,fuse\n"
                  + "\"U1,U2\",2,,ULN2003A,Darlington array\nU3,1,,ULN2803A,Darlington array\n"
                  + "U4,1,,74HC595,shift register\nU5,1,,,Darlington array\n"
                  + ",4,,FOOT-1,rubber foot\n",
              "other.csv",
              "designators,quantity,part type,description\nQ1,1,TRY-1,MOSFET\n",
              "drivers.csv",
              "driver,kind,part type,PWM frequency\n"
                  + "array,Darlington array,ULN2003A,\n"
                  + "pin,logic pin,74HC595,\nfast,logic pin,,1 kHz\n",
              "channels.csv",
              "channel,board,MOSFET,gate resistor,pull-down,flyback diode,fuse,driver\n"
                  + "one,main,Q1,R1,R2,D1,F1,pin\n"
                  + "two,main,,,,D1,,array\n"
                  + "three,main,,,,,,fast\n"
                  + "four,main,Q1,,,,,fast\n"));

  private static List<SwapUse> uses(String board, String... places) {
    return SwapUse.in(KIT, board, Stream.of(places).map(Designator::of).toList());
  }

  private static String said(SwapUse use) {
    return use.channel().name() + " " + use.role() + " " + use.switching() + " " + use.place();
  }

  @ParameterizedTest
  @CsvSource({
    "main,  Q1, 'one MOSFET SELDOM Q1, four MOSFET PWM Q1'",
    "main,  R1, one GATE_RESISTOR SELDOM R1",
    "main,  R2, one PULL_DOWN SELDOM R2",
    "main,  R3, ''",
    "main,  D1, 'one FLYBACK_DIODE SELDOM D1, two FLYBACK_DIODE SELDOM D1'",
    "main,  F1, one FUSE SELDOM F1",
    // the array that carries the load; not one of another type, nor what only drives a gate
    "main,  U1, two STAGE SELDOM U1",
    "main,  U3, ''",
    "main,  U4, ''",
    // an array and a driver that both name no type have nothing to do with each other
    "main,  U5, ''",
    // the same designator on another board is another part
    "other, Q1, ''",
  })
  void a_place_serves_the_channels_that_name_it(String board, String place, String uses) {
    assertEquals(
        List.of(uses.isEmpty() ? new String[0] : uses.split(", ")),
        uses(board, place).stream().map(SwapUseTest::said).toList());
  }

  @Test
  void a_part_serves_channels_only_if_each_of_its_places_does() {
    assertTrue(SmallKit.swap(KIT, "R1", "1k").servesOnlyChannels());
    assertFalse(SmallKit.swap(KIT, "R3", "1k").servesOnlyChannels());
    assertFalse(SmallKit.swap(KIT, "10k", "1k").servesOnlyChannels(), "R3 does not");
    assertTrue(SmallKit.swap(KIT, "Q1", "TRY-1").isUnderPwm());
    assertFalse(SmallKit.swap(KIT, "F1", "BP-T500").isUnderPwm());
  }

  @Test
  void what_has_no_place_on_the_board_changes_nothing_on_it() {
    SwapFinding finding = SmallKit.finding(KIT, "FOOT-1", "FOOT-2");
    assertTrue(finding.swap().designators().isEmpty());
    assertTrue(finding.board().isEmpty());
    assertFalse(finding.swap().servesOnlyChannels());
  }

  private static String named(String text, String board) {
    return SwapTarget.named(KIT, text, Optional.ofNullable(board)).stream()
        .map(target -> target.board().name() + " " + target.designators())
        .reduce((one, other) -> one + ", " + other)
        .orElse("");
  }

  @ParameterizedTest
  @CsvSource({
    "q1,          , 'main [Q1], other [Q1]'",
    "' Q1 ',  main, main [Q1]",
    "Q1,     other, other [Q1]",
    "Q1,      none, ''",
    "TRY-1,       , 'main [Q1], other [Q1]'",
    "try 1,   main, main [Q1]",
    "10k,         , 'main [R1, R2, R3]'",
    "R2,          , main [R2]",
    "R9,          , ''",
    "'',          , ''",
  })
  void a_designator_is_one_place_and_a_part_type_every_place_of_it(
      String text, String board, String places) {
    assertEquals(places, named(text, board));
  }

  @ParameterizedTest
  @CsvSource({"Q1, true", " q1 , true", "R1, false", "TRY-1, false", "R9, false"})
  void a_designator_on_two_boards_has_to_be_asked_about(String text, boolean ambiguous) {
    assertEquals(
        ambiguous, SwapTarget.isAmbiguous(SwapTarget.named(KIT, text, Optional.empty()), text));
  }
}
