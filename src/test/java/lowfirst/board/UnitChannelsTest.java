package lowfirst.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import lowfirst.intake.KitFiles;
import lowfirst.intake.KitReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Twelve drivers whose channels name their unit, mostly, and two panels whose channels don't. */
class UnitChannelsTest {
  private final Kit kit = kit();

  @ParameterizedTest
  @CsvSource({
    "driver, 1, driver-1 driver-1.03",
    "driver, 2, driver-2/1",
    "driver, 3, ''",
    "driver, 12, driver-12.01",
    "panel, 1, left driver-1.07",
    "panel, 2, left driver-1.07",
    "spare, 1, ''"
  })
  void a_unit_has_the_channels_that_start_with_its_serial_or_all_where_none_does(
      String board, int number, String names) {
    List<OutputChannel> channels = UnitChannels.of(kit, new Unit(board, number));
    assertEquals(names, String.join(" ", channels.stream().map(OutputChannel::name).toList()));
    assertTrue(channels.stream().allMatch(channel -> channel.board().equals(board)));
  }

  @Test
  void a_board_is_unit_named_when_any_of_its_channels_names_a_unit_of_its_own() {
    assertEquals(Set.of("driver"), UnitChannels.unitNamedBoards(kit));
    assertEquals(
        Set.of(), UnitChannels.unitNamedBoards(SampleBoards.kit(SampleBoards.board("driver"))));
  }

  /** A letter or figure that follows makes another name of it; a unit past the count isn't one. */
  @ParameterizedTest
  @CsvSource({
    "driver-1, driver-1",
    "driver-1.03, driver-1",
    "driver-2/1, driver-2",
    "driver-12.01, driver-12",
    "driver-13.01, ''",
    "driver-1b, ''",
    "any bell, ''",
    "left, ''",
    "driver-1.07, ''"
  })
  void a_channel_is_on_the_unit_whose_serial_its_name_starts_with(String name, String serial) {
    OutputChannel channel =
        kit.channels().stream().filter(each -> each.name().equals(name)).findFirst().orElseThrow();
    assertEquals(serial, UnitChannels.unitOf(kit, channel).map(Unit::serial).orElse(""));
  }

  @Test
  void a_channel_without_a_board_is_on_no_unit() {
    OutputChannel wire = OutputChannel.straightThrough("driver-1", kit.channels().get(0).place());
    assertEquals(Optional.empty(), UnitChannels.unitOf(kit, wire));
  }

  private static Kit kit() {
    Map<String, String> tables =
        Map.of(
            "boards.csv",
            "board,count,bom\ndriver,12,bom.csv\npanel,2,bom.csv\nspare,1,bom.csv\n",
            "bom.csv",
            "designators,quantity,value\nQ1,1,logic level\n",
            "channels.csv",
            """
            channel,board,mosfet,load
            driver-1,driver,Q1,bell
            driver-1.03,driver,Q1,bell
            driver-1b,driver,Q1,bell
            any bell,driver,Q1,bell
            driver-2/1,driver,Q1,bell
            driver-12.01,driver,Q1,bell
            driver-13.01,driver,Q1,bell
            left,panel,Q1,bell
            driver-1.07,panel,Q1,bell
            """,
            "loads.csv",
            "load,kind,rail\nbell,solenoid,bells\n");
    Map<String, byte[]> files = new TreeMap<>();
    tables.forEach((name, text) -> files.put(name, text.getBytes(StandardCharsets.UTF_8)));
    return KitReader.read(new KitFiles("kit", files, List.of())).kit();
  }
}
