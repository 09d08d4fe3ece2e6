package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lowfirst.board.Board;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Exports of real boards that nobody here wrote, against what a person counted in them. They are
 * not part of the project: run with {@code -Dreal.kits=FOLDER}; skipped without it.
 */
class RealKitsTest {
  private static final Pattern LINES = Pattern.compile("(\\d+) (?:BOM |non-empty )?lines");
  private static final Pattern REFERENCES =
      Pattern.compile("= (\\d+) reference|(\\d+) references|references = (\\d+)");
  private static final Pattern PLACEMENTS = Pattern.compile("^(\\d+) placements");

  private static String folder() {
    return System.getProperty("real.kits", "");
  }

  @Test
  void real_kits_are_given() {
    assumeTrue(!folder().isEmpty(), "no real kits given: -Dreal.kits=FOLDER");
    assertTrue(Files.exists(Path.of(folder(), "EXPECTED.csv")));
  }

  @TestFactory
  Stream<DynamicTest> each_file_holds_what_a_person_counted() throws IOException {
    if (folder().isEmpty()) {
      return Stream.of();
    }
    var tests = new ArrayList<DynamicTest>();
    for (CSVRecord row : expected()) {
      String file = row.get("file");
      String counted = row.get("count by a careful human");
      tests.add(
          DynamicTest.dynamicTest(
              file,
              () -> {
                if (row.get("kind").equals("BOM")) {
                  assertBom(file, counted);
                } else {
                  assertPlacements(file, counted);
                }
              }));
    }
    return tests.stream();
  }

  private static List<CSVRecord> expected() throws IOException {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    Path path = Path.of(folder(), "EXPECTED.csv");
    try (CSVParser parser = CSVParser.parse(path, StandardCharsets.UTF_8, format)) {
      return parser.getRecords();
    }
  }

  private static void assertBom(String file, String counted) throws IOException {
    Board board = board(file, new KitFiles.Given(Optional.of(file), List.of()));
    assertEquals(first(LINES, counted).orElseThrow(), board.bomLines().size(), "lines");
    int designators = board.bomLines().stream().mapToInt(item -> item.designators().size()).sum();
    // A file with one row a reference is described by its lines alone.
    int references = first(REFERENCES, counted).orElse(board.bomLines().size());
    assertEquals(references, designators, "references");
  }

  private static void assertPlacements(String file, String counted) throws IOException {
    Board board = board(file, new KitFiles.Given(Optional.empty(), List.of(file)));
    assertEquals(first(PLACEMENTS, counted).orElseThrow(), board.placements().size());
  }

  private static Board board(String file, KitFiles.Given given) throws IOException {
    byte[] bytes = Files.readAllBytes(Path.of(folder(), file));
    var files = new KitFiles("real", Map.of(file, bytes), List.of(), Optional.of(given));
    return KitReader.read(files).kit().boards().get(0);
  }

  private static OptionalInt first(Pattern pattern, String text) {
    Matcher matcher = pattern.matcher(text);
    if (!matcher.find()) {
      return OptionalInt.empty();
    }
    for (int group = 1; group <= matcher.groupCount(); group++) {
      if (matcher.group(group) != null) {
        return OptionalInt.of(Integer.parseInt(matcher.group(group)));
      }
    }
    return OptionalInt.empty();
  }
}
