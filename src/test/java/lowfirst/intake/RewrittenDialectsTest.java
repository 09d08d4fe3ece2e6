package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Each dialect with other line ends, marks and encodings, with its rows shuffled, and twice: none
 * of that changes what is read.
 */
class RewrittenDialectsTest {
  private static final Pattern ROWS = Pattern.compile("rows: (\\S+) (\\d+)-(\\d+)");

  @TestFactory
  Stream<DynamicTest> each_dialect_is_read_however_it_was_saved() throws Exception {
    return Dialects.folders().stream().flatMap(RewrittenDialectsTest::tests);
  }

  private static Stream<DynamicTest> tests(Path dialect) {
    String name = dialect.getFileName().toString();
    Map<String, UnaryOperator<String>> texts = new LinkedHashMap<>();
    texts.put("with CRLF", text -> text.replace("\n", "\r\n"));
    texts.put("with CR", text -> text.replace("\n", "\r"));
    texts.put("without a last line end", text -> text.replaceFirst("\n$", ""));
    var tests = new ArrayList<DynamicTest>();
    texts.forEach((how, change) -> tests.add(test(name + " " + how, dialect, change, "", "UTF-8")));
    tests.add(test(name + " with a mark", dialect, text -> text, "\ufeff", "UTF-8"));
    tests.add(test(name + " in UTF-16 with a mark", dialect, text -> text, "\ufeff", "UTF-16LE"));
    tests.add(
        test(
            name + " in big-endian UTF-16 with a mark",
            dialect,
            text -> text,
            "\ufeff",
            "UTF-16BE"));
    tests.add(test(name + " in UTF-16 without a mark", dialect, text -> text, "", "UTF-16LE"));
    if (isWestern(dialect)) {
      tests.add(test(name + " in Windows-1252", dialect, text -> text, "", "windows-1252"));
    }
    tests.add(DynamicTest.dynamicTest(name + " twice", () -> assertTwice(dialect)));
    tests.add(DynamicTest.dynamicTest(name + " shuffled", () -> assertShuffled(dialect)));
    return tests.stream();
  }

  private static DynamicTest test(
      String name, Path dialect, UnaryOperator<String> change, String mark, String encoding) {
    return DynamicTest.dynamicTest(
        name,
        () -> {
          Map<String, byte[]> files = new TreeMap<>();
          Dialects.tables(dialect)
              .forEach(
                  (file, text) ->
                      files.put(
                          file, (mark + change.apply(text)).getBytes(Charset.forName(encoding))));
          assertEquals(
              String.join("\n", Dialects.expected(dialect)),
              String.join("\n", Dialects.shown(Dialects.read(files))),
              name);
        });
  }

  private static boolean isWestern(Path dialect) {
    return Dialects.tables(dialect).values().stream()
        .allMatch(text -> Charset.forName("windows-1252").newEncoder().canEncode(text));
  }

  private static void assertTwice(Path dialect) {
    Map<String, byte[]> files = Dialects.utf8(Dialects.tables(dialect));
    KitReading first = Dialects.read(files);
    KitReading second = Dialects.read(files);
    assertEquals(first.problems(), second.problems());
    assertEquals(first.kit().boards(), second.kit().boards());
    assertEquals(first.kit().fingerprint(), second.kit().fingerprint());
  }

  /** The same items and placements come of any order of the rows; only their lines differ. */
  private static void assertShuffled(Path dialect) throws IOException {
    Map<String, String> tables = new TreeMap<>(Dialects.tables(dialect));
    Matcher rows = ROWS.matcher(Files.readString(dialect.resolve("README.txt")));
    while (rows.find()) {
      int from = Integer.parseInt(rows.group(2)) - 1;
      int to = Integer.parseInt(rows.group(3));
      var lines = new ArrayList<>(Arrays.asList(tables.get(rows.group(1)).split("\n")));
      Collections.shuffle(lines.subList(from, to), new Random(20261125));
      tables.put(rows.group(1), String.join("\n", lines) + "\n");
    }
    assertEquals(
        withoutPlaces(Dialects.expected(dialect)),
        withoutPlaces(Dialects.shown(Dialects.read(Dialects.utf8(tables)))));
  }

  private static List<String> withoutPlaces(List<String> lines) {
    return lines.stream().map(line -> line.replaceAll(":\\d+ ", " ")).sorted().toList();
  }
}
