package lowfirst.sheet.sort;

import static lowfirst.sheet.document.Said.assertSays;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lowfirst.board.Kit;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.document.Said;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Shape;
import lowfirst.sheet.sort.TrayLabelsDocument.Compartment;
import lowfirst.sorting.SortPlan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sorting list and the labels of the tray. */
class SortDocumentTest {
  private static final Kit KIT =
      Said.kit(
          "kit.properties",
          "title = Bag\nmeter = 0.5 % + 2 of 6000\n",
          "boards.csv",
          "board,count,bom\nb,2,bom.csv\nc,1,c.csv\n",
          "bom.csv",
          """
          designators,quantity,value,package,description
          R1 R2 R3,3,4k7 5%,,resistor
          R4,1,120R,,resistor
          C1,1,100n 50V,,ceramic capacitor
          D1,1,1N4007,,diode
          Q1,1,BP-1,TO-220,MOSFET
          R5,1,1R,,resistor
          ,4,M3 screw,,screw
          """,
          "c.csv",
          "designators,value,description\nR1,4k7 5%,resistor\n",
          "bag.csv",
          """
          part type or marking,quantity,bag
          4k7,9,A1
          120R,1,A2
          100n,2,A3
          1N4007,2,
          funny,3,Z9
          """);
  private static final SortPlan PLAN = SortPlan.of(KIT);

  private static SortPlan plan(String... files) {
    return SortPlan.of(Said.kit(files));
  }

  private static boolean says(Document document, String start) {
    return Said.lines(document).stream().anyMatch(line -> line.startsWith(start));
  }

  /** 3 of each of 2 and 1 of the other board are 7; 9 came. */
  @Test
  void each_part_type_is_told_with_what_is_needed_and_what_came() {
    Document document = SortDocument.of(PLAN, "Bag");
    assertSays(
        document,
        "Sorting the bag: Bag",
        "7 part types, 25 pieces; 4 part types are short",
        "meter on resistance: ±(0.5 % + 2 of 6000); kit.properties, meter",
        "! Empty a capacitor before you measure it; a charged one harms you and the meter. Touch bare"
            + " metal that is earthed before you touch a MOSFET or an IC.",
        "# Missing: to buy",
        "missing: no. | part | pieces",
        "1 | 1 Ω resistor | 2",
        "2 | 120 Ω resistor | 1",
        "7 | M3 screw hardware | 8",
        "# Parts, one by one",
        "parts: no. | part | marking | or | need | have | bag",
        "# Readings and places",
        "# Spares, if you like",
        "spares: no. | part | pieces",
        "1 | 1 Ω resistor | 2",
        "2 | 120 Ω resistor | 2",
        "4 | 100 nF ceramic capacitor, 50 V | 2",
        "5 | 1N4007 diode | 1");
    List<String> parts =
        Said.rows(document, "parts").stream().map(row -> row.replace('\u00a0', ' ')).toList();
    assertEquals(
        "1 | 1 Ω resistor | [BN BK GD GD] (tolerance assumed) | [BN BK BK SR BN] | 2 | 0, 2 short | ",
        parts.get(0));
    assertEquals(
        "2 | 120 Ω resistor | [BN RD BN GD] (tolerance assumed) | [BN RD BK BK BN] | 2 | 1, 1 short |"
            + " A2",
        parts.get(1));
    assertEquals("3 | 4.7 kΩ resistor, ±5 % | [YE VT RD GD] |  | 7 | 9, 2 over | A1", parts.get(2));
    assertEquals("4 | 100 nF ceramic capacitor, 50 V | 104 | 100n | 2 | 2 | A3", parts.get(3));
    assertEquals("5 | 1N4007 diode | 1N4007 | 4007 | 2 | 2 | ", parts.get(4));
    assertTrue(parts.get(5).startsWith("6 | BP-1 MOSFET, TO-220 | BP-1 | "), parts.get(5));
    assertEquals(5, Said.rows(document, "spares").size(), "two spares of 4.7 kΩ came");
  }

  /** 4.7 kΩ within 5 % on that meter: see the worked example of readings. */
  @Test
  void each_part_type_is_told_with_its_reading_and_its_places() {
    assertSays(
        SortDocument.of(PLAN, "Bag"),
        "readings and places: no. | part | reads | surely in tolerance | where",
        "1 | 1 Ω resistor | 700 mΩ to 1.3 Ω (±5 % assumed) | this meter can't tell | 2 × b: R5",
        "3 | 4.7 kΩ resistor, ±5 % | 4.437 kΩ to 4.966 kΩ | 4.494 kΩ to 4.904 kΩ | 2 × b: R1-R3; c:"
            + " R1",
        "5 | 1N4007 diode | diode test: about 0.5 to 0.8 V with the black lead on the band's side,"
            + " nothing the other way |  | 2 × b: D1",
        "7 | M3 screw hardware |  |  | 2 × b: 4 pieces",
        "# In the bag, but in no BOM",
        "in no BOM: label | pieces | bag | line",
        "funny | 3 | Z9 | bag.csv:6");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "R1,1k 1%; | | 1 part type, 1 piece; no bag.csv, so nothing is known of what arrived",
        "R1,1k 1%;R2,2k 1%; | 1k,1;2k,1; | 2 part types, 2 pieces; nothing is missing",
        "R1,1k 1%;R2,2k 1%; | 1k,1; | 2 part types, 2 pieces; 1 part type is short",
        "R1,1k 1%;R2,2k 1%; | 3k,1; | 2 part types, 2 pieces; 2 part types are short",
      })
  void the_subtitle_says_what_is_missing(String bom, String bag, String words) {
    SortPlan plan =
        bag == null
            ? plan("bom.csv", "designators,value\n" + bom.replace(";", "\n"))
            : plan(
                "bom.csv",
                "designators,value\n" + bom.replace(";", "\n"),
                "bag.csv",
                "part type or marking,quantity\n" + bag.replace(";", "\n"));
    assertEquals(words, SortDocument.of(plan, "x").subtitle());
  }

  @Test
  void what_is_not_known_of_a_bag_is_not_told() {
    Document document = SortDocument.of(plan("bom.csv", "designators,value\nR1,1k 1%\n"), "x");
    assertTrue(Said.rows(document, "parts").get(0).endsWith(" | 1 | ? | "));
    assertFalse(says(document, "# In the bag"));
    assertSays(document, "No two part types of this kit are easily mistaken.");
  }

  @Test
  void with_spares_of_everything_nothing_is_to_buy() {
    Document document =
        SortDocument.of(
            plan(
                "bom.csv",
                "designators,value\nR1,1k 1%\n",
                "bag.csv",
                "part type or marking,quantity\n1k,20\n"),
            "x");
    assertFalse(says(document, "# Missing"));
    assertFalse(says(document, "# Spares"));
    assertTrue(Said.rows(document, "parts").get(0).contains(" | 20, 19 over | "));
  }

  /** One bag for both: what one lacks the other can't have. */
  @Test
  void a_bag_that_serves_two_is_said_to_be_shared() {
    Document document =
        SortDocument.of(
            plan(
                "bom.csv",
                "designators,value\nC1,100n 50V\nC2,100n 100V\n",
                "bag.csv",
                "part type or marking,quantity,bag\n100n,3,A1\n"),
            "x");
    List<String> parts = Said.rows(document, "parts");
    assertTrue(parts.get(0).endsWith(" | 1 | 1 (shared bag) | A1"), parts.toString());
    assertTrue(parts.get(1).endsWith(" | 1 | 2, 1 over (shared bag) | A1"), parts.toString());
    assertTrue(says(document, "look-alikes: these two | why | a mix-up | tell them apart"));
    assertTrue(
        Said.rows(document, "look-alikes")
            .get(0)
            .startsWith("no. 1, 100 nF capacitor and no. 2, 100 nF capacitor | "),
        Said.rows(document, "look-alikes").toString());
  }

  @Test
  void labels_have_a_row_for_each_compartment() {
    Document labels = SortDocument.labels(PLAN, "Bag");
    assertSays(
        labels,
        "Tray labels: Bag",
        "cut along the lines; one label a compartment",
        "labels: no. | part | marking | pieces | where",
        "4 | 100 nF ceramic capacitor | 104 | 2 | 2 × b: C1",
        "7 | M3 screw hardware | M3 screw | 8 | 2 × b: 4 pieces");
    assertEquals(7, labels.blocks().stream().mapToInt(b -> ((Block.Table) b).rows().size()).sum());
  }

  // --- labels to cut out

  private static SortPlan resistors(int count) {
    return plan(
        "bom.csv",
        "designators,value\n"
            + IntStream.rangeClosed(1, count)
                .mapToObj(i -> "R" + i + "," + (100 + i) + "R 1%")
                .collect(Collectors.joining("\n"))
            + "\n");
  }

  private static List<Drawing> sheets(
      SortPlan plan, Compartment size, double width, double height) {
    return TrayLabelsDocument.of("t", plan, size, width, height).blocks().stream()
        .filter(Block.Figure.class::isInstance)
        .map(block -> ((Block.Figure) block).drawing())
        .toList();
  }

  /**
   * 180 by 267 mm: four of 45 mm across; below, 267 less 26 is 241, eight of 30 mm, and less 30 for
   * the title seven.
   */
  @ParameterizedTest
  @CsvSource({"1, 1, 45, 30", "3, 1, 135, 30", "4, 1, 180, 30", "5, 1, 180, 60", "28, 1, 180, 210"})
  void labels_stand_in_rows_as_many_as_there_is_room_for(
      int count, int pages, double width, double height) {
    List<Drawing> sheets = sheets(resistors(count), Compartment.USUAL, 180, 267);
    assertEquals(pages, sheets.size());
    assertEquals(width, sheets.get(0).widthMillimetres(), 1e-9);
    assertEquals(height, sheets.get(0).heightMillimetres(), 1e-9);
  }

  @Test
  void more_labels_go_on_overleaf() {
    List<Drawing> sheets = sheets(resistors(61), Compartment.USUAL, 180, 267);
    assertEquals(3, sheets.size());
    assertEquals(240, sheets.get(1).heightMillimetres(), 1e-9);
    assertEquals(45, sheets.get(2).widthMillimetres(), 1e-9);
    assertTrue(sheets.get(0).words().startsWith("labels: 1 101 Ω resistor; 2 102 Ω resistor; "));
    assertEquals("labels: 61 161 Ω resistor", sheets.get(2).words());
    // A label larger than the paper stands alone.
    assertEquals(2, sheets(resistors(2), new Compartment(150, 150), 100, 100).size());
  }

  private static List<Shape.Box> frames(Drawing sheet, double width) {
    return sheet.shapes().stream()
        .filter(Shape.Box.class::isInstance)
        .map(Shape.Box.class::cast)
        .filter(box -> box.width() == width && box.height() == 30)
        .toList();
  }

  @Test
  void each_label_has_its_place_in_the_grid() {
    List<Shape.Box> frames = frames(sheets(resistors(6), Compartment.USUAL, 180, 267).get(0), 45);
    assertEquals(6, frames.size());
    for (int i = 0; i < 6; i++) {
      assertEquals(45 * (i % 4), frames.get(i).x(), 1e-9);
      assertEquals(i < 4 ? 0 : 30, frames.get(i).y(), 1e-9);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "15, 10, true",
    "150, 150, true",
    "14.9, 10, false",
    "15, 9.9, false",
    "150.1, 20, false",
    "20, 150.1, false",
    "NaN, 20, false",
    "20, NaN, false"
  })
  void a_compartment_has_a_size_that_one_can_write_on(double width, double height, boolean good) {
    if (good) {
      assertEquals(width, new Compartment(width, height).widthMillimetres());
    } else {
      assertThrows(IllegalArgumentException.class, () -> new Compartment(width, height));
    }
  }

  private static List<Shape.Label> words(Drawing label) {
    return label.shapes().stream()
        .filter(Shape.Label.class::isInstance)
        .map(Shape.Label.class::cast)
        .toList();
  }

  /**
   * 45 by 30 mm: edges of 1.6; type of 5, the name in 4: room for 41.8 / (4 · 0.58), 18 letters a
   * line.
   */
  @Test
  void a_label_says_number_count_and_name() {
    Drawing label = TrayLabel.of(PLAN.lines().get(2), 45, 30);
    List<Shape.Label> words = words(label);
    assertEquals("3", words.get(0).text());
    assertEquals(1.6, words.get(0).x(), 1e-9);
    assertEquals(5.6, words.get(0).y(), 1e-9);
    assertEquals(5, words.get(0).size(), 1e-9);
    assertEquals("× 7", words.get(1).text());
    assertEquals(43.4, words.get(1).x(), 1e-9);
    assertEquals(Shape.Label.Anchor.END, words.get(1).anchor());
    assertEquals("4.7 kΩ resistor", words.get(2).text());
    assertEquals(1.6, words.get(2).x(), 1e-9);
    assertEquals(4, words.get(2).size(), 1e-9);
    // From 7.6 on: a line of 4.8, its baseline 1.2 above its end.
    assertEquals(7.6 + 4.8 - 1.2, words.get(2).y(), 1e-9);
    assertEquals("bag A1 · ±5 %", words.get(3).text());
    assertEquals(2.1, words.get(3).size(), 1e-9);
    assertEquals(12.4 + 2.52 - 0.63, words.get(3).y(), 1e-9);
    assertEquals("3: 7 × 4.7 kΩ resistor", label.words());
    // The picture follows 0.8 below; the bands' codes are the last words.
    assertTrue(words.size() >= 8, words.toString());
    assertFalse(
        words(TrayLabel.of(PLAN.lines().get(4), 45, 30)).stream()
            .anyMatch(w -> w.text().startsWith("bag")));
  }

  @Test
  void nothing_stands_outside_a_label_however_small() {
    for (double[] size : new double[][] {{15, 10}, {20, 12}, {45, 30}, {150, 20}, {30, 60}}) {
      for (var line : PLAN.lines()) {
        Drawing label = TrayLabel.of(line, size[0], size[1]);
        for (Shape.Label word : words(label)) {
          assertTrue(word.x() >= 0 && word.x() <= size[0], word + " of " + size[0]);
          assertTrue(word.size() <= 5, word.toString());
        }
        for (Shape shape : label.shapes()) {
          if (shape instanceof Shape.Box box) {
            assertTrue(box.x() + box.width() <= size[0] + 1e-9, box.toString());
            assertTrue(box.y() + box.height() <= size[1] + 1e-9, box.toString());
          }
        }
      }
    }
  }

  /** In 45 by 30 mm the resistor's 17.8 by 7.5 mm fit life size; in 20 by 14 mm nothing is left. */
  @ParameterizedTest
  @CsvSource({"SW1, push button, none", "D1, red LED, none", "U1, op amp, not known"})
  void what_nobody_knows_to_be_printed_is_not_said_to_be_nothing(
      String designator, String value, String marking) {
    SortPlan plan = plan("bom.csv", "designators,value\n" + designator + "," + value + "\n");
    assertEquals(marking, SortTables.marking(plan.lines().get(0)).text());
  }

  @Test
  void a_picture_is_life_size_where_there_is_room_and_left_out_where_none_is() {
    Drawing large = TrayLabel.of(PLAN.lines().get(2), 45, 30);
    Shape.Box body =
        large.shapes().stream()
            .filter(Shape.Box.class::isInstance)
            .map(Shape.Box.class::cast)
            .skip(1)
            .findFirst()
            .orElseThrow();
    assertEquals(6.3, body.width(), 1e-9);
    assertEquals(1.6 + 5.75, body.x(), 1e-9);
    assertEquals(12.4 + 2.52 + 0.8 + 4.6, body.y(), 1e-9);
    long boxes =
        TrayLabel.of(PLAN.lines().get(2), 20, 12).shapes().stream()
            .filter(Shape.Box.class::isInstance)
            .count();
    assertEquals(1, boxes, "the frame only");
  }

  /** A can of 25 mm on leads, with 9 mm of a label left to it, is drawn that small. */
  @Test
  void a_tall_part_is_drawn_as_small_as_it_can_be_told() {
    SortPlan plan =
        plan(
            "bom.csv",
            "designators,value,package,voltage\nC1,1000u electrolytic,radial D16 L25 P7.5,50 V\n");
    Drawing label = TrayLabel.of(plan.lines().get(0), 45, 30);
    assertTrue(
        label.shapes().stream().filter(Shape.Box.class::isInstance).count() > 1, "frame and can");
  }

  /** Two capacitors of one value are told apart by what they bear. */
  @Test
  void a_label_has_the_ratings_of_its_part() {
    SortPlan plan =
        plan(
            "bom.csv",
            "designators,value,package,description\n"
                + "C1,100µF,radial D6.3 P2.5,electrolytic 16 V\n"
                + "C2,100µF,radial D10 P5,electrolytic 63 V\n",
            "bag.csv",
            "part type,quantity,bag\n100µF 16 V,1,B7\n");
    List<Drawing> labels = plan.lines().stream().map(line -> TrayLabel.of(line, 45, 30)).toList();
    assertTrue(said(labels.get(0)).contains("bag B7 · 16 V"), said(labels.get(0)).toString());
    assertTrue(said(labels.get(1)).contains("63 V"), said(labels.get(1)).toString());
    assertEquals(
        List.of("1", "× 1", "100 µF electrolytic", "capacitor"),
        said(labels.get(0)).subList(0, 4),
        "a third line would take the picture's place");
  }

  private static List<String> said(Drawing drawing) {
    return drawing.shapes().stream()
        .filter(Shape.Label.class::isInstance)
        .map(shape -> ((Shape.Label) shape).text())
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "4.7 kΩ resistor, 20, 4.7 kΩ resistor",
    "4.7 kΩ resistor, 15, 4.7 kΩ resistor",
    "4.7 kΩ resistor, 14, 4.7 kΩ/resistor",
    "abcdefgh, 3, abc/def/gh",
    "a abcdefgh b, 3, a/abc/def/gh/b",
    "ab cd, 0, a/b/c/d",
    "'', 5, ''",
    "about 100 µF, 10, about/100 µF",
  })
  void words_are_broken_into_lines_of_a_label(String text, int letters, String lines) {
    assertEquals(lines, String.join("/", TrayLabel.broken(text, letters)));
  }
}
