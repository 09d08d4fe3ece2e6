package lowfirst.sheet.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import lowfirst.board.Kit;
import lowfirst.sheet.document.Said;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a load takes, in words. */
class ExpectedCurrentTest {

  /** By hand: 24 V over 12 Ω is 2 A, 48 W at 24 V is 2 A; both off by 5 % make 10 %. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "current=3 A | 3 A",
        "current=3 A,tolerance=10 % | 3 A (2.7 A to 3.3 A)",
        "resistance=12 Ω | 2 A (1.9 A to 2.1 A)",
        "resistance=12 Ω,tolerance=5 % | 2 A (1.8 A to 2.2 A)",
        "power=48 W | 2 A (1.9 A to 2.1 A)",
        "current=3 A,inrush=9 A | 3 A; at switching on up to 9 A",
        "on time=2 s | not known: write the current of \"bell\" in loads.csv",
      })
  void a_load_takes_what_its_data_give(String data, String words) {
    String[] pairs = data.split(",");
    String header = "load,kind,rail";
    String row = "bell,solenoid,bells";
    for (String pair : pairs) {
      header += "," + pair.split("=")[0];
      row += "," + pair.split("=")[1];
    }
    Kit kit =
        Said.kit(
            "rails.csv",
            "rail,voltage,tolerance\nbells,24 V,5 %\n",
            "loads.csv",
            header + "\n" + row + "\n");
    assertEquals(words, ExpectedCurrent.words(kit.loads().get(0), Optional.of(kit.rails().get(0))));
    assertTrue(
        ExpectedCurrent.words(kit.loads().get(0), Optional.empty())
            .startsWith(data.startsWith("current") ? "3 A" : "not known"));
  }
}
