package lowfirst.sheet.progress;

import static lowfirst.progress.SmallPlan.ONE;
import static lowfirst.progress.SmallPlan.PLAN;
import static lowfirst.progress.SmallPlan.TWO;
import static lowfirst.progress.SmallPlan.tick;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import lowfirst.progress.Event;
import lowfirst.progress.Progress;
import lowfirst.progress.SmallPlan;
import lowfirst.progress.State;
import lowfirst.sheet.csv.CsvWriter;
import lowfirst.sheet.text.TextWriter;
import org.junit.jupiter.api.Test;

class ProgressDocumentTest {
  private static final Event.Tick ASIDE =
      new Event.Tick(
          "a",
          TWO,
          SmallPlan.designators("D1"),
          State.SET_ASIDE,
          "Ben",
          SmallPlan.minute(9),
          Optional.empty(),
          Optional.of("band rubbed off"));

  private static final Progress HALFWAY =
      Progress.of(PLAN, List.of(tick(1, ONE, State.SEATED, "R1", "R2"), ASIDE));

  @Test
  void it_says_where_to_go_on_how_much_is_done_and_what_was_set_aside() {
    String text = words(HALFWAY, ZoneOffset.UTC);
    assertTrue(
        text.contains(
            "Go on with step 1 (batch 1, board driver): seat part 1 resistor, R1, R2 on driver-2."),
        text);
    assertTrue(text.contains("0 of 8 parts inspected"), text);
    assertTrue(text.contains("band rubbed off Ben 2026-03-01 18:09"), text);
    assertTrue(text.contains("seat step 2, part 2 diode"), text);
  }

  @Test
  void times_are_those_of_the_bench() {
    String text = words(HALFWAY, ZoneId.of("Asia/Kolkata"));
    assertTrue(text.contains("2026-03-01 23:39"), text);
  }

  @Test
  void for_machines_there_is_a_row_for_each_part_of_each_unit() {
    List<String> lines =
        CsvWriter.write(ProgressDocument.everyPart("bells", HALFWAY, ZoneOffset.UTC))
            .lines()
            .toList();
    assertEquals(1 + 8, lines.size());
    assertTrue(
        lines.contains(
            "\"\",every part,driver-2,2,D1,part 2 diode,set aside,Ben,2026-03-01T18:09:00Z,,"
                + "band rubbed off,,"),
        lines.toString());
  }

  @Test
  void when_all_is_inspected_it_names_what_comes_next() {
    Progress done =
        Progress.of(
            PLAN,
            List.of(
                tick(1, ONE, State.INSPECTED, "R1", "R2", "D1", "U1"),
                tick(2, TWO, State.INSPECTED, "R1", "R2", "D1", "U1")));
    String text = words(done, ZoneOffset.UTC);
    assertTrue(text.contains("Every part is inspected. Next come the first-power checks"), text);
  }

  private static String words(Progress progress, ZoneId zone) {
    return TextWriter.write(ProgressDocument.of("bells", progress, zone), 110)
        .replaceAll("\\s+", " ");
  }
}
