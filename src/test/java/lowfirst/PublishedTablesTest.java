package lowfirst;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PublishedTablesTest {

  static Stream<String> files() throws IOException {
    try (Stream<Path> found = Files.list(Path.of("src/test/resources/published"))) {
      return found.map(path -> path.getFileName().toString()).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void each_published_table_says_where_its_values_come_from(String file) {
    String text = PublishedTable.text(file);
    for (String stated : PublishedTable.STATED) {
      assertTrue(
          text.lines().anyMatch(line -> line.matches("# " + stated + ": \\S.*")),
          () -> file + " lacks the line \"# " + stated + ": ...\"");
    }
    assertFalse(PublishedTable.rows(file).isEmpty(), () -> file + " has no rows");
  }
}
