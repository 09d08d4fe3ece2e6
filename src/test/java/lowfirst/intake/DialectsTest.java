package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each dialect is read as its expectations say, with no option given. */
class DialectsTest {

  @ParameterizedTest
  @MethodSource("folders")
  void each_dialect_is_read_with_no_option_given(Path dialect) {
    assertEquals(
        String.join("\n", Dialects.expected(dialect)),
        String.join("\n", Dialects.shown(Dialects.read(Dialects.utf8(Dialects.tables(dialect))))));
  }

  @Test
  void there_are_twelve_dialects_at_least() throws Exception {
    assertTrue(folders().size() >= 12);
  }

  static List<Path> folders() throws IOException, URISyntaxException {
    return Dialects.folders();
  }
}
