package lowfirst.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.swap.rule.Answer;
import lowfirst.swap.rule.CapacitorRule;
import lowfirst.swap.subject.Evidence;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A ceramic has almost no series resistance, and a low-drop regulator may oscillate on it: the
 * LM2940 wants 22 µF or more and a certain resistance (National SNVS769H). A classic 7805 is stable
 * with nothing at its output (onsemi MC7800/D).
 */
class OutputCapacitorTest {
  private static Optional<Answer> stability(String regulator, String capacitor, String candidate) {
    return SmallKit.finding(
            SmallKit.of(
                Map.of(
                    "boards.csv",
                    "board,count,bom,placements\nmain,1,bom.csv,\n",
                    "bom.csv",
                    "designators,quantity,value,part type,description\n"
                        + "R1,1,10k,,resistor\n"
                        + ("U1,1,," + regulator + ",voltage regulator\n")
                        + ("C1,1,22uF 20% 25V,," + capacitor + "\n"))),
            "C1",
            candidate)
        .reason(CapacitorRule.REGULATOR_STABILITY)
        .map(SwapReason::answer);
  }

  @ParameterizedTest(name = "{2} for {1} beside {0}")
  @CsvSource({
    "LM2940-5.0, electrolytic capacitor, 22uF X7R 10% 25V, undecided",
    "LM2940-5.0, tantalum capacitor,     22uF X7R 10% 25V, undecided",
    "LM2940-5.0, electrolytic capacitor, 22uF 20% 35V,     silent",
    "LM2940-5.0, ceramic capacitor,      22uF X7R 10% 25V, silent",
    "MC7805,     electrolytic capacitor, 22uF X7R 10% 25V, silent",
  })
  void a_ceramic_may_make_a_low_drop_regulator_ring(
      String regulator, String capacitor, String candidate, String verdict) {
    assertEquals(
        verdict,
        stability(regulator, capacitor, candidate)
            .map(answer -> answer.verdict().words())
            .orElse("silent"));
  }

  @Test
  void the_regulator_and_what_its_sheet_says_are_named() {
    Answer answer =
        stability("LM2940-5.0", "electrolytic capacitor", "22uF X7R 10% 25V").orElseThrow();
    Evidence asked = answer.asked().orElseThrow();
    assertTrue(asked.word().startsWith("LM2940-5.0: ESR is critical"), asked::word);
    assertTrue(asked.source().text().contains("SNVS769H"), asked::toString);
    assertEquals(List.of("ESR of 22uF X7R 10% 25V: a row in datasheets.csv"), answer.missing());
  }
}
