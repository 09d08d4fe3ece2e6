package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import lowfirst.problem.Kind;
import org.junit.jupiter.api.Test;

/** A small file with a large sheet in it: slow, and so apart from what is quick. */
class HugeWorkbookTest {
  @Test
  void a_file_that_unpacks_without_end_is_refused() throws IOException {
    var blanks = new char[80 << 20];
    Arrays.fill(blanks, ' ');
    byte[] bomb = WorkbookTest.workbook("<worksheet>" + new String(blanks) + "</worksheet>");
    assertEquals(List.of(Kind.FILE_TOO_LARGE), WorkbookTest.faults(bomb));
  }
}
