package lowfirst.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import lowfirst.part.Datasheets;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.swap.subject.FittedPart;
import lowfirst.swap.subject.LogicFamily;
import lowfirst.swap.subject.SwapPart;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LogicFamilyTest {
  private static Optional<LogicFamily.Named> named(String typeNumber) {
    PartType type =
        FittedPart.of(
            typeNumber, Sheets.blank(PartKind.INTEGRATED_CIRCUIT), Datasheets.of(List.of()));
    return LogicFamily.in(SwapPart.offered(type, Optional.empty(), Datasheets.of(List.of())));
  }

  /**
   * Supplies: HC and HCT, JEDEC JESD7A; standard, LS and S types 5 V and 5 %, ALS and F types 5 V
   * and 10 %, as their makers' data books print them.
   */
  @ParameterizedTest
  @CsvSource({
    "7404,         04,  TTL,  TTL,          4.75, 5.25",
    "SN74LS244N,   244, TTL,  TTL,          4.75, 5.25",
    "74S00,        00,  TTL,  TTL,          4.75, 5.25",
    "SN74ALS244,   244, TTL,  TTL,          4.5,  5.5",
    "74F08,        08,  TTL,  TTL,          4.5,  5.5",
    "SN74HC595N,   595, CMOS, RAIL_TO_RAIL, 2,    6",
    "MC74HCT244A,  244, TTL,  RAIL_TO_RAIL, 4.5,  5.5",
    "74AC14,       14,  CMOS, RAIL_TO_RAIL, 2,    6",
    "74ACT14,      14,  TTL,  RAIL_TO_RAIL, 4.5,  5.5",
    "SN74AHCT125N, 125, TTL,  RAIL_TO_RAIL, 4.5,  5.5",
    "sn74ahc125n,  125, CMOS, RAIL_TO_RAIL, 2,    5.5",
  })
  void the_letters_after_74_tell_levels_and_supply(
      String typeNumber,
      String function,
      LogicFamily.Input input,
      LogicFamily.Output output,
      double least,
      double most) {
    LogicFamily.Named named = named(typeNumber).orElseThrow();
    assertEquals(function, named.function());
    LogicFamily family = named.family();
    assertEquals(input, family.input());
    assertEquals(output, family.output());
    assertEquals(least + " V to " + most + " V", family.supplyRange());
    assertTrue(family.runsFrom(least, most), "its limits are allowed");
    assertFalse(family.runsFrom(least - 0.01, most));
    assertFalse(family.runsFrom(least, most + 0.01));
  }

  @ParameterizedTest
  @CsvSource({"LM358", "CD4017B", "74XYZ99", "7", "NE555"})
  void other_circuits_are_not_of_the_series(String typeNumber) {
    assertEquals(Optional.empty(), named(typeNumber));
  }
}
