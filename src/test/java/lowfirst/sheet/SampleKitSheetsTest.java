package lowfirst.sheet;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import lowfirst.board.Board;
import lowfirst.board.Kit;
import lowfirst.board.Unit;
import lowfirst.channel.LoadFindings;
import lowfirst.intake.KitFiles;
import lowfirst.intake.KitReader;
import lowfirst.sheet.power.FirstPowerDocument;
import lowfirst.sheet.power.WiringDocument;
import lowfirst.sheet.steps.AssemblyBook;
import lowfirst.sheet.text.TextWriter;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The paper documents of the sample kit, read as text. */
class SampleKitSheetsTest {
  private static Kit kit;

  @BeforeAll
  static void read_the_sample_kit() throws Exception {
    Path root = Path.of("sample-boms/bell-player");
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> paths = Files.walk(root)) {
      for (Path path : paths.filter(Files::isRegularFile).toList()) {
        files.put(root.relativize(path).toString().replace('\\', '/'), Files.readAllBytes(path));
      }
    }
    kit = KitReader.read(new KitFiles("bell-player", files, List.of())).kit();
  }

  private static String firstPower() {
    Board board = kit.board("driver").orElseThrow();
    return TextWriter.write(
        FirstPowerDocument.of(
            kit,
            lowfirst.assembly.AssemblyOrder.of(kit, lowfirst.assembly.AssemblyOptions.USUAL),
            board,
            new Unit("driver", 1),
            LoadFindings.none()),
        400);
  }

  /** 330 Ω ±1 % and 10 kΩ ±1 % in series: 10 330 Ω, from 10 226.7 Ω to 10 433.3 Ω. */
  @Test
  void the_gate_path_is_gate_resistor_plus_pull_down_with_both_tolerances() {
    assertTrue(firstPower().contains("10.3 kΩ (10.2 kΩ to 10.4 kΩ)"), firstPower());
  }

  /** 5 V ±5 %. */
  @Test
  void rails_are_expected_within_their_tolerance() {
    assertTrue(firstPower().contains("4.75 V to 5.25 V"));
  }

  /** 24 V at 0.2 A asks for 120 Ω, an E12 value; at 25.2 V it burns 5.3 W, so 11 W is safe. */
  @Test
  void the_dummy_load_is_a_preferred_value_rated_for_twice_its_heat() {
    assertTrue(firstPower().contains("A resistor of 120 Ω, rated 11 W or more"), firstPower());
  }

  /** 24 V over 12 Ω is 2 A; rail and coil may each be off by 5 %. */
  @Test
  void each_load_is_expected_at_the_current_that_its_data_give() {
    assertTrue(firstPower().contains("2 A (1.8 A to 2.2 A)"), firstPower());
  }

  @Test
  void a_unit_shows_its_own_channels_only() {
    assertTrue(firstPower().contains("driver-1.16"));
    assertTrue(!firstPower().contains("driver-2."));
  }

  @Test
  void what_is_above_extra_low_voltage_is_left_to_licensed_practice() {
    assertTrue(firstPower().contains("licensed electrician"));
  }

  /** 47 kΩ ±1 % read by a meter of ±(0.5 % + 2 digits): 46.23 kΩ to 47.77 kΩ may be right parts. */
  @Test
  void the_book_accepts_what_tolerance_and_meter_together_allow() {
    Board board = kit.board("controller").orElseThrow();
    var progress =
        lowfirst.progress.Progress.of(
            lowfirst.assembly.AssemblyOrder.of(kit, lowfirst.assembly.AssemblyOptions.USUAL),
            List.of());
    String book = TextWriter.write(AssemblyBook.of(kit, board, progress, 180), 300);
    assertTrue(book.contains("46.23 kΩ to 47.77 kΩ"), book);
  }

  @Test
  void logic_supply_and_the_returns_of_loads_are_listed_apart() {
    String wiring = TextWriter.write(WiringDocument.of(kit, LoadFindings.none()), 300);
    int logic = wiring.indexOf("Logic supply");
    int power = wiring.indexOf("Supplies of the loads");
    assertTrue(logic >= 0 && logic < wiring.indexOf("supply logic +"));
    assertTrue(wiring.indexOf("supply logic +") < power);
    assertTrue(power < wiring.indexOf("supply bells +"));
    assertTrue(wiring.contains("bell C5"));
  }
}
