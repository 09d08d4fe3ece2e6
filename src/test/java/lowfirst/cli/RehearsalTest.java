package lowfirst.cli;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class RehearsalTest {
  @Test
  void a_verb_that_could_not_read_its_kit_stops_the_build_of_the_image() {
    Exception stopped =
        assertThrows(
            IllegalStateException.class, () -> Rehearsal.main(new String[] {"no-such-kit"}));
    assertTrue(stopped.getMessage().contains("check no-such-kit"), stopped.getMessage());
  }
}
