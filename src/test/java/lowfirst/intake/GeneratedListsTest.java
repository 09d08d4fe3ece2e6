package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lowfirst.board.Item;
import lowfirst.board.Placement;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Kits made up part by part, then written as lists in ways drawn at random: headers of several
 * languages, columns in any order, units, decimal marks, separators, quotes, encodings, lines
 * before and after. What is read must be what was made up. The writer shares no code with the
 * reader.
 */
class GeneratedListsTest {
  private static final int KITS = 300;

  /** A part as it was made up; lengths in µm, the angle in degrees. */
  private record Part(
      String name, String value, String body, int x, int y, int turn, boolean bottom, boolean in) {
    String placed() {
      return String.format(
          Locale.ROOT, "%.3f/%.3f %d %s", x / 1e3, y / 1e3, turn, bottom ? "BOTTOM" : "TOP");
    }
  }

  /** How lengths are written: the unit's name, µm in it, decimals that lose less than 0.005 mm. */
  private enum Unit {
    MM("mm", 1000, 3),
    MIL("mil", 25.4, 2),
    INCH("in", 25400, 5),
    MICROMETRE("um", 1, 0);

    private final String sign;
    private final double micrometres;
    private final int decimals;

    Unit(String sign, double micrometres, int decimals) {
      this.sign = sign;
      this.micrometres = micrometres;
      this.decimals = decimals;
    }

    String of(int length, char point) {
      return String.format(Locale.ROOT, "%." + decimals + "f", length / micrometres)
          .replace('.', point);
    }
  }

  private static final String[][] PLACED = {
    {"Designator", "Mid X", "Mid Y", "Rotation", "Layer", "Comment", "Footprint"},
    {"RefDes", "X", "Y", "Rot", "Side", "Value", "Package"},
    {"Bauteil", "X-Koordinate", "Y-Koordinate", "Winkel", "Seite", "Wert", "Gehäuse"},
    {"Part Name", "LocX", "LocY", "Rotate", "Placement Side", "Val", "Pattern"},
    {"Ref", "PosX", "PosY", "Angle", "Surface", "Val", "Package"},
    {"Component", "Center-X", "Center-Y", "Orientation", "Board Side", "Value", "Case"},
  };
  private static final String[][] BOUGHT = {
    {"Designator", "Quantity", "Comment", "Footprint"},
    {"Reference(s)", "Qty", "Value", "Package"},
    {"Bauteile", "Anzahl", "Wert", "Gehäuse"},
    {"Parts", "Count", "Val", "Pattern"},
    {"Reference Designator", "QTY", "Value", "Case"},
    {"Repère", "Quantité", "Valeur", "Boîtier"},
  };
  private static final String[][] SIDES = {
    {"top", "bottom"}, {"T", "B"}, {"TopLayer", "BottomLayer"}, {"F", "B"}, {"oben", "unten"}
  };
  private static final String[][] KINDS = {
    {"R", "4k7", "DIN0207"}, {"R", "470", "DIN0207"}, {"C", "100nF", "disc D5 W2.5 P5.08"},
    {"D", "1N4148", "DO-35"}, {"Q", "BC547", "TO-92"}, {"U", "LM358", "DIP-8"},
    {"T", "2N3904", "TO-92"}
  };

  static List<Integer> seeds() {
    return IntStream.range(0, KITS).boxed().toList();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void what_is_written_in_some_way_is_read_as_it_was_made_up(int seed) {
    var random = new Random(seed);
    List<Part> parts = parts(random);
    byte[] bom = bom(parts, random);
    byte[] placements = placements(parts, random);
    KitReading reading =
        KitReader.read(
            new KitFiles("kit", Map.of("bom.csv", bom, "placements.csv", placements), List.of()));
    var placed = new TreeMap<String, String>();
    for (Placement placement : reading.kit().boards().get(0).placements()) {
      placed.put(
          placement.designator().text(),
          String.format(
              Locale.ROOT,
              "%.3f/%.3f %.0f %s",
              rounded(placement.xMillimetres()),
              rounded(placement.yMillimetres()),
              placement.rotationDegrees(),
              placement.side()));
    }
    String how = new String(placements, StandardCharsets.UTF_8) + reading.problems();
    assertEquals(
        parts.stream()
            .collect(Collectors.toMap(Part::name, Part::placed, (a, b) -> a, TreeMap::new)),
        placed,
        how);
    var bought = new TreeMap<String, String>();
    int pieces = 0;
    for (Item item : reading.kit().boards().get(0).items()) {
      pieces += item.quantity();
      item.designators()
          .forEach(
              name ->
                  bought.put(name.text(), item.isFitted() ? item.partType().text() : "not fitted"));
    }
    var wanted = new TreeMap<String, String>();
    parts.forEach(part -> wanted.put(part.name(), part.in() ? part.value() : "not fitted"));
    String list = new String(bom, StandardCharsets.UTF_8) + reading.problems();
    assertEquals(wanted, bought, list);
    assertEquals(parts.size(), pieces, list);
  }

  /** All lengths made up are multiples of 0.01 mm. */
  private static double rounded(double millimetres) {
    return Math.rint(millimetres * 100) / 100;
  }

  private static List<Part> parts(Random random) {
    var parts = new ArrayList<Part>();
    var counts = new LinkedHashMap<String, Integer>();
    int first = random.nextBoolean() ? 1 : 101;
    int shift = random.nextBoolean() ? 0 : random.nextInt(40) * 10_000 - 200_000;
    boolean twoSides = random.nextInt(3) == 0;
    for (int i = 0; i < 6 + random.nextInt(14); i++) {
      String[] kind = KINDS[random.nextInt(KINDS.length)];
      int number = counts.merge(kind[0], first, (old, none) -> old + 1);
      parts.add(
          new Part(
              kind[0] + number,
              kind[1],
              kind[2],
              shift + 5000 + i % 6 * 17_780,
              shift + 8000 + i / 6 * 15_240,
              90 * random.nextInt(4),
              twoSides && random.nextInt(3) == 0,
              true));
    }
    return parts;
  }

  private static byte[] placements(List<Part> parts, Random random) {
    String[] words = PLACED[random.nextInt(PLACED.length)];
    String[] sides = SIDES[random.nextInt(SIDES.length)];
    char separator = ",;\t|".charAt(random.nextInt(4));
    char point = separator == ',' || random.nextBoolean() ? '.' : ',';
    Unit unit = Unit.values()[random.nextInt(Unit.values().length)];
    int stated = random.nextInt(3); // in the header, in each cell, on a line above
    var columns = new ArrayList<>(List.of(0, 1, 2, 3, 4));
    IntStream.of(5, 6).filter(column -> random.nextBoolean()).forEach(columns::add);
    Collections.shuffle(columns, random);
    boolean numbered = random.nextInt(4) == 0;
    boolean signed = random.nextBoolean();
    String degrees = random.nextInt(4) == 0 ? "°" : "";
    var rows = new ArrayList<List<String>>();
    rows.add(
        columns.stream()
            .map(
                column ->
                    words[column]
                        + (stated == 0 && (column == 1 || column == 2)
                            ? " (" + unit.sign + ")"
                            : ""))
            .toList());
    String in = stated == 1 ? unit.sign : "";
    for (Part part : parts) {
      int turn = signed && part.turn() > 180 ? part.turn() - 360 : part.turn();
      String[] cells = {
        part.name(),
        unit.of(part.x(), point) + in,
        unit.of(part.y(), point) + in,
        turn + degrees,
        sides[part.bottom() ? 1 : 0],
        part.value(),
        part.body()
      };
      rows.add(columns.stream().map(column -> cells[column]).toList());
    }
    if (random.nextInt(5) == 0) {
      rows.add(rows.size() / 2, rows.get(0));
    }
    var lines = new ArrayList<String>();
    if (stated == 2) {
      lines.add((random.nextBoolean() ? "Unit: " : "All in ") + unit.sign);
    }
    return written(rows, numbered ? "No." : "", separator, lines, random);
  }

  private static byte[] bom(List<Part> parts, Random random) {
    String[] words = BOUGHT[random.nextInt(BOUGHT.length)];
    char separator = ",;\t".charAt(random.nextInt(3));
    boolean grouped = random.nextInt(3) > 0;
    String comma = List.of(", ", ",", " ", "; ").get(random.nextInt(4));
    String to = List.of("", "-", " - ", "..", " to ").get(random.nextInt(5));
    boolean counted = grouped || random.nextBoolean();
    boolean left = random.nextInt(3) == 0;
    if (left) {
      int out = random.nextInt(parts.size());
      parts.replaceAll(
          part ->
              part.name().equals(parts.get(out).name())
                  ? new Part(
                      part.name(),
                      part.value(),
                      part.body(),
                      part.x(),
                      part.y(),
                      part.turn(),
                      part.bottom(),
                      false)
                  : part);
    }
    var columns = new ArrayList<>(List.of(0, 2, 3));
    if (counted) {
      columns.add(1);
    }
    Collections.shuffle(columns, random);
    var rows = new ArrayList<List<String>>();
    rows.add(cells(columns, words, left ? "DNP" : ""));
    var groups = new LinkedHashMap<String, List<Part>>();
    for (Part part : parts) {
      String key = grouped ? part.value() + part.in() : part.name();
      groups.computeIfAbsent(key, none -> new ArrayList<>()).add(part);
    }
    for (List<Part> group : groups.values()) {
      Part one = group.get(0);
      String[] cells = {
        names(group, comma, to), String.valueOf(group.size()), one.value(), one.body()
      };
      rows.add(cells(columns, cells, left ? one.in() ? " " : "x" : ""));
    }
    var lines = new ArrayList<String>();
    if (random.nextInt(3) == 0) {
      lines.add("Bell ringer, revision 3");
    }
    return written(rows, random.nextInt(3) == 0 ? "#" : "", separator, lines, random);
  }

  private static List<String> cells(List<Integer> columns, String[] cells, String last) {
    var row = new ArrayList<>(columns.stream().map(column -> cells[column]).toList());
    if (!last.isEmpty()) {
      row.add(last.strip());
    }
    return row;
  }

  private static String names(List<Part> group, String comma, String to) {
    var names = new ArrayList<String>();
    for (int at = 0; at < group.size(); at++) {
      int end = at;
      while (!to.isEmpty() && end + 1 < group.size() && follows(group, end)) {
        end++;
      }
      String first = group.get(at).name();
      names.add(end == at ? first : first + to + group.get(end).name());
      at = end;
    }
    return String.join(comma, names);
  }

  private static boolean follows(List<Part> group, int at) {
    return number(group.get(at + 1)) == number(group.get(at)) + 1;
  }

  private static int number(Part part) {
    return Integer.parseInt(part.name().substring(1));
  }

  /** What programs and hands do to a whole list. */
  private static void oddly(List<String> lines, int header, char separator, Random random) {
    switch (random.nextInt(16)) {
      case 0 -> lines.replaceAll(line -> '"' + line.replace("\"", "\"\"") + '"');
      case 1 -> lines.replaceAll(line -> line.indexOf(separator) < 0 ? line : line + separator);
      case 2 -> lines.replaceAll(line -> line.indexOf(separator) < 0 ? line : separator + line);
      case 3 -> lines.replaceAll(line -> line + "  ");
      case 4 -> lines.add(0, "sep=" + separator);
      case 5 -> lines.set(header, lines.get(header).toUpperCase(Locale.ROOT));
      case 6 -> lines.replaceAll(line -> line.replace(' ', '\u00a0'));
      case 7 -> lines.addAll(List.of("", "(c) the bell makers 2024"));
      case 8 -> {
        String empty = String.valueOf(separator).repeat(3);
        IntStream.of(lines.size(), header + 2).forEach(at -> lines.add(at, empty));
      }
      case 9 ->
          IntStream.iterate(lines.size() - 1, at -> at > 0, at -> at - 1)
              .forEach(at -> lines.add(at, ""));
      default -> {
        // As it is.
      }
    }
  }

  private static byte[] written(
      List<List<String>> rows, String number, char separator, List<String> above, Random random) {
    int quoted = random.nextInt(3); // where needed, everywhere, here and there
    var lines = new ArrayList<>(above);
    for (int row = 0; row < rows.size(); row++) {
      var cells = new ArrayList<>(rows.get(row));
      if (!number.isEmpty()) {
        cells.add(0, rows.get(row).equals(rows.get(0)) ? number : String.valueOf(row));
      }
      lines.add(
          cells.stream()
              .map(
                  cell ->
                      quoted == 1
                              || quoted == 2 && random.nextInt(3) == 0
                              || cell.indexOf(separator) >= 0
                          ? '"' + cell + '"'
                          : cell)
              .collect(Collectors.joining(String.valueOf(separator))));
    }
    oddly(lines, above.size(), separator, random);
    String end = List.of("\n", "\r\n", "\r").get(random.nextInt(3));
    Charset set =
        List.of(StandardCharsets.UTF_8, Charset.forName("windows-1252"), StandardCharsets.UTF_16)
            .get(random.nextInt(3));
    return (String.join(end, lines) + end).getBytes(set);
  }
}
