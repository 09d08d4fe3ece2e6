package lowfirst.swap;

import static lowfirst.swap.Drawers.KIT;
import static lowfirst.swap.Drawers.OUTLINES;
import static lowfirst.swap.Drawers.search;
import static lowfirst.swap.Drawers.target;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lowfirst.intake.shipped.ShippedTables;
import lowfirst.part.Datasheets;
import lowfirst.swap.rule.SwapVerdict;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every part of the catalogue, searched for and swapped one by one. */
class EveryPartOfADrawerTest {
  private static Map<String, SwapVerdict> verdicts(DrawerResult result) {
    var map = new java.util.HashMap<String, SwapVerdict>();
    Stream.of(result.best(), result.open(), result.nearMisses())
        .flatMap(List::stream)
        .forEach(hit -> map.put(hit.partType(), hit.verdict()));
    return map;
  }

  /** The search takes short cuts; none may change an answer. */
  @ParameterizedTest
  @ValueSource(strings = {"Q1", "D1", "F1", "BP-N60L"})
  void it_answers_as_a_single_swap_does(String part) {
    Datasheets drawer = ShippedTables.catalogue();
    DrawerResult result = search(part, drawer, 10_000);
    Map<String, SwapVerdict> found = verdicts(result);
    var wrong = new ArrayList<String>();
    int compared = 0;
    for (var lines : drawer.byPartType()) {
      String name = lines.get(0).partType();
      SwapVerdict single =
          SwapFinding.of(target(part).with(KIT, name, OUTLINES), OUTLINES).verdict();
      SwapVerdict searched = found.getOrDefault(name, SwapVerdict.DOES_NOT_FIT);
      if (single != searched) {
        wrong.add(name + ": " + single + " alone, " + searched + " in the drawer");
      }
      compared++;
    }
    assertEquals(List.of(), wrong);
    assertEquals(compared, result.looked());
  }
}
