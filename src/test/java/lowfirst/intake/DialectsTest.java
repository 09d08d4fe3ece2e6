package lowfirst.intake;

import static java.util.stream.Collectors.joining;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lowfirst.board.Board;
import lowfirst.board.Item;
import lowfirst.board.Placement;
import lowfirst.part.PartType;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;
import lowfirst.quantity.Quantity;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * The corpus of dialects: each folder holds tables in one dialect, a README that describes it by
 * its features, and {@code expected.txt}, counted by hand. Each also runs with other line ends and
 * encodings, twice, and with its rows shuffled.
 */
class DialectsTest {
  private static final Pattern ROWS = Pattern.compile("rows: (\\S+) (\\d+)-(\\d+)");

  @TestFactory
  Stream<DynamicTest> each_dialect_is_read_with_no_option_given() throws Exception {
    return dialects().stream().flatMap(DialectsTest::tests);
  }

  @Test
  void there_are_twelve_dialects_at_least() throws Exception {
    assertTrue(dialects().size() >= 12);
  }

  private static List<Path> dialects() throws IOException, URISyntaxException {
    Path root = Path.of(DialectsTest.class.getResource("/dialects").toURI());
    try (Stream<Path> folders = Files.list(root)) {
      return folders.filter(Files::isDirectory).sorted().toList();
    }
  }

  private static Stream<DynamicTest> tests(Path dialect) {
    String name = dialect.getFileName().toString();
    Map<String, UnaryOperator<String>> texts = new LinkedHashMap<>();
    texts.put("as it is", text -> text);
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
          tables(dialect)
              .forEach(
                  (file, text) ->
                      files.put(
                          file, (mark + change.apply(text)).getBytes(Charset.forName(encoding))));
          assertEquals(joined(expected(dialect)), joined(shown(read(files))), name);
        });
  }

  private static boolean isWestern(Path dialect) {
    return tables(dialect).values().stream()
        .allMatch(text -> Charset.forName("windows-1252").newEncoder().canEncode(text));
  }

  private static void assertTwice(Path dialect) {
    Map<String, byte[]> files = utf8(tables(dialect));
    KitReading first = read(files);
    KitReading second = read(files);
    assertEquals(first.problems(), second.problems());
    assertEquals(first.kit().boards(), second.kit().boards());
    assertEquals(first.kit().fingerprint(), second.kit().fingerprint());
  }

  /** The same items and placements come of any order of the rows; only their lines differ. */
  private static void assertShuffled(Path dialect) throws IOException {
    Map<String, String> tables = new TreeMap<>(tables(dialect));
    Matcher rows = ROWS.matcher(Files.readString(dialect.resolve("README.txt")));
    while (rows.find()) {
      int from = Integer.parseInt(rows.group(2)) - 1;
      int to = Integer.parseInt(rows.group(3));
      var lines = new ArrayList<>(Arrays.asList(tables.get(rows.group(1)).split("\n")));
      Collections.shuffle(lines.subList(from, to), new Random(20261125));
      tables.put(rows.group(1), String.join("\n", lines) + "\n");
    }
    assertEquals(withoutPlaces(expected(dialect)), withoutPlaces(shown(read(utf8(tables)))));
  }

  private static String joined(List<String> lines) {
    return String.join("\n", lines);
  }

  private static List<String> withoutPlaces(List<String> lines) {
    return lines.stream().map(line -> line.replaceAll(":\\d+ ", " ")).sorted().toList();
  }

  private static KitReading read(Map<String, byte[]> files) {
    return KitReader.read(new KitFiles("dialect", files, List.of()));
  }

  private static Map<String, byte[]> utf8(Map<String, String> tables) {
    Map<String, byte[]> files = new TreeMap<>();
    tables.forEach((file, text) -> files.put(file, text.getBytes(StandardCharsets.UTF_8)));
    return files;
  }

  private static Map<String, String> tables(Path dialect) {
    Map<String, String> tables = new TreeMap<>();
    try (Stream<Path> paths = Files.list(dialect)) {
      for (Path path : paths.toList()) {
        String name = path.getFileName().toString();
        if (!name.equals("README.txt") && !name.equals("expected.txt")) {
          tables.put(name, Files.readString(path));
        }
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return tables;
  }

  private static List<String> expected(Path dialect) {
    try {
      return Files.readAllLines(dialect.resolve("expected.txt")).stream()
          .filter(line -> !line.isBlank())
          .sorted()
          .toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static List<String> shown(KitReading reading) {
    var lines = new ArrayList<String>();
    for (Board board : reading.kit().boards()) {
      board.items().forEach(item -> lines.add(shown(item)));
      board.placements().forEach(placement -> lines.add(shown(placement)));
    }
    // Heights come from the package table, which has tests of its own.
    reading.problems().stream()
        .filter(problem -> problem.kind() != Kind.HEIGHT_ASSUMED)
        .filter(problem -> problem.kind() != Kind.HEIGHT_UNKNOWN)
        .forEach(problem -> lines.add(shown(problem)));
    lines.sort(null);
    return lines;
  }

  private static String shown(Item item) {
    PartType type = item.partType();
    String ratings =
        Stream.of(type.tolerance(), type.ratedPower(), type.ratedVoltage())
            .flatMap(rating -> rating.stream().map(Object::toString))
            .collect(joining(" "));
    return cells(
        "item",
        item.designators().stream().map(Object::toString).collect(joining(" ")),
        item.quantity() + "",
        type.kind().words(),
        type.value().map(Quantity::toString).orElse(type.text()),
        ratings,
        item.fitting().name().toLowerCase(Locale.ROOT).replace('_', ' '));
  }

  private static String shown(Placement placement) {
    return cells(
        "place",
        placement.designator().text(),
        number(placement.xMillimetres()),
        number(placement.yMillimetres()),
        number(placement.rotationDegrees()),
        placement.side().words());
  }

  private static String shown(Problem problem) {
    int line = problem.place().line();
    String place = problem.place().file() + (line > 0 ? ":" + line : "");
    return cells("problem", place, problem.kind().name());
  }

  private static String number(double number) {
    return String.format(Locale.ROOT, "%.4f", number).replaceFirst("\\.?0+$", "");
  }

  private static String cells(String... cells) {
    return String.join(" | ", cells).replaceAll(" {2,}", " ").strip();
  }
}
