package lowfirst.cli.manual;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** What troff takes for its own is written so that it is printed. */
class TroffTest {

  @Test
  void a_line_that_troff_would_take_for_a_request_is_printed() {
    String page = new Troff("x", "", "").line(".so is 'c:\\new-kit' of 4 Ω").toString();
    assertTrue(page.endsWith("\\&.so is \\(aqc:\\enew\\-kit\\(aq of 4 \\[u03A9]\n"), page);
  }
}
