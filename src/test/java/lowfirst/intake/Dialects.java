package lowfirst.intake;

import static java.util.stream.Collectors.joining;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import lowfirst.board.Board;
import lowfirst.board.Item;
import lowfirst.board.Placement;
import lowfirst.part.PartType;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;
import lowfirst.quantity.Quantity;

/**
 * The corpus of dialects: each folder holds tables in one dialect, a README that describes it by
 * its features, and {@code expected.txt}, counted by hand.
 */
public final class Dialects {
  private Dialects() {}

  /** The folders. */
  public static List<Path> folders() throws IOException, URISyntaxException {
    Path root = Path.of(Dialects.class.getResource("/dialects").toURI());
    try (Stream<Path> folders = Files.list(root)) {
      return folders.filter(Files::isDirectory).sorted().toList();
    }
  }

  public static KitReading read(Map<String, byte[]> files) {
    return KitReader.read(new KitFiles("dialect", files, List.of()));
  }

  public static Map<String, byte[]> utf8(Map<String, String> tables) {
    Map<String, byte[]> files = new TreeMap<>();
    tables.forEach((file, text) -> files.put(file, text.getBytes(StandardCharsets.UTF_8)));
    return files;
  }

  public static Map<String, String> tables(Path dialect) {
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

  public static List<String> expected(Path dialect) {
    try {
      return Files.readAllLines(dialect.resolve("expected.txt")).stream()
          .filter(line -> !line.isBlank())
          .sorted()
          .toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  public static List<String> shown(KitReading reading) {
    var lines = new ArrayList<String>();
    for (Board board : reading.kit().boards()) {
      if (!board.bomLines().isEmpty()) {
        board.items().forEach(item -> lines.add(shown(item)));
      }
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
