package lowfirst.sheet.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Cell;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.drawing.Drawing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextWriterTest {

  private static final Table STEPS =
      new Table(
          "Steps",
          List.of(
              new Table.Column("Step", Table.Align.END, 1),
              new Table.Column("Pick", Table.Align.START, 4),
              new Table.Column("Done", Table.Align.START, 1)),
          List.of(
              new Table.Row(List.of(Cell.of("1"), Cell.of("4.7 kΩ resistor"), Cell.box(true))),
              new Table.Row(List.of(Cell.of("12"), Cell.of("wire link"), Cell.box(false)))));

  private static Document with(Block... blocks) {
    return new Document("Order", "", List.of(blocks));
  }

  @Test
  void a_caption_that_the_heading_holds_is_not_said_again() {
    Table parts = new Table("parts", STEPS.columns(), STEPS.rows());
    String text =
        TextWriter.write(
            with(
                new Block.Heading(2, "Parts, one by one"),
                parts,
                new Block.Heading(2, "More"),
                parts),
            60);
    assertEquals(1, text.lines().filter("parts"::equals).count(), text);
    assertTrue(text.indexOf("parts") > text.indexOf("More"), text);
  }

  @ParameterizedTest
  @CsvSource({
    "from 983 µF to, 13, 'from 983 µF,to'",
    "from 983 µF to, 10, 'from,983 µF to'",
    "from 983 µF to, 8, 'from,983 µF,to'",
    "from 983 µF to, 5, 'from,983,µF to'"
  })
  void a_number_and_its_unit_stay_together_where_both_fit(String text, int width, String lines) {
    assertEquals(lines, String.join(",", Wrapping.lines(text, width)));
  }

  @Test
  void a_table_that_fits_is_aligned() {
    assertEquals(
        """
        Order
        =====

        Steps
        Step  Pick             Done
        ----  ---------------  ----
           1  4.7 kΩ resistor  [x]
          12  wire link        [ ]
        """,
        TextWriter.write(with(STEPS), 80));
  }

  @Test
  void a_table_too_wide_for_the_terminal_becomes_one_record_a_paragraph() {
    assertEquals(
        """
        Order
        =====

        Steps
        Step: 1
          Pick: 4.7 kΩ
            resistor
          Done: [x]

        Step: 12
          Pick: wire link
          Done: [ ]
        """,
        TextWriter.write(with(STEPS), 20));
  }

  @Test
  void no_line_is_longer_than_the_terminal_and_no_word_is_lost_at_any_width() {
    String long40 = "x".repeat(40);
    Document document =
        with(
            new Block.Heading(2, "A heading that is rather long for a narrow terminal"),
            new Block.Caution("The tip is hot; it burns skin at once and cables a moment later."),
            new Block.Facts(List.of(new Block.Facts.Fact("Fingerprint", long40))),
            STEPS);
    String wanted = letters(TextWriter.write(document, 500));
    IntStream.rangeClosed(20, 130)
        .forEach(
            width -> {
              String text = TextWriter.write(document, width);
              text.lines()
                  .forEach(line -> assertTrue(Wrapping.width(line) <= width, width + ": " + line));
              assertEquals(
                  wanted.chars().filter(c -> c == 'x').count(),
                  letters(text).chars().filter(c -> c == 'x').count());
            });
  }

  private static String letters(String text) {
    return text.replaceAll("[^\\p{L}]", "");
  }

  @Test
  void a_drawing_shows_its_words() {
    var bands = new Drawing(10, 3, List.of(), "yellow, violet, red, gold");
    assertTrue(
        TextWriter.write(with(new Block.Figure(bands, "")), 60)
            .contains("Picture: yellow, violet, red, gold\n"));
    assertEquals("yellow, violet, red, gold", TextTable.words(Cell.of("", bands)));
    var fact = new Block.Facts.Fact("pick", "4.7 kΩ");
    assertTrue(
        TextWriter.write(with(new Block.Facts(List.of(fact), Optional.of(bands))), 60)
            .contains("Picture: yellow, violet, red, gold\npick  4.7 kΩ\n"));
  }

  @Test
  void nothing_in_a_users_table_can_steer_the_terminal() {
    String text = TextWriter.write(with(new Block.Paragraph("\u001b[2Jgone\u0007 \u202eback")), 60);
    assertFalse(text.chars().anyMatch(c -> Character.isISOControl(c) && c != '\n'));
    assertTrue(text.contains("␛[2Jgone␇ \uFFFDback"), text);
  }

  @Test
  void wide_characters_count_twice_and_combining_marks_not_at_all() {
    assertEquals(4, Wrapping.width("抵抗"));
    assertEquals(1, Wrapping.width("e\u0301"));
    assertEquals(List.of("抵", "抗"), Wrapping.lines("抵抗", 3));
  }

  @ParameterizedTest(name = "{0} in {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "one two three | 7 | one two/three",
        "one two three | 8 | one two/three",
        "one two three | 13 | one two three",
        "one two three | 12 | one two/three",
        "abcdefgh | 3 | abc/def/gh",
        "a bcdefgh | 3 | a/bcd/efg/h",
        "ab cdefgh | 4 | ab/cdef/gh",
        "  one   two  | 20 | one two",
        "'' | 5 | ''",
        "a | 1 | a",
        "abc | 1 | ab/c",
      })
  void words_are_kept_whole_where_they_fit(String text, int width, String lines) {
    String whole = text.equals("''") ? "" : text;
    String expected = lines.equals("''") ? "" : lines;
    assertEquals(expected, String.join("/", Wrapping.lines(whole, width)));
  }

  @Test
  void line_ends_in_a_text_are_kept_of_every_kind() {
    assertEquals(
        List.of("a", "b", "", "c", "d", "e", "f", ""),
        Wrapping.lines("a\nb\r\n\rc\u0085d\u2028e\u2029f\n", 20));
    assertEquals(4, Wrapping.longestWord("ab cdef\tg\nhi"));
    assertEquals(0, Wrapping.longestWord(""));
    assertEquals("ab  ", Wrapping.padded("ab", 4));
    assertEquals("  ab", Wrapping.paddedLeft("ab", 4));
    assertEquals("abc", Wrapping.padded("abc", 2));
  }

  /**
   * Unicode Standard Annex 11 by its blocks: the first and the last of each, and their neighbours.
   */
  @ParameterizedTest
  @CsvSource({
    "10FF, 1", "1100, 2", "115F, 2", "1160, 1", "2E7F, 1", "2E80, 2", "303E, 2", "303F, 1",
    "A4CF, 2", "A4D0, 1", "ABFF, 1", "AC00, 2", "D7A3, 2", "D7A4, 1", "F900, 2", "FAFF, 2",
    "FB00, 1", "FE6F, 2", "FF00, 2", "FF60, 2", "FF61, 1", "FFE0, 2", "FFE6, 2", "1F300, 2",
    "1FAFF, 2", "1FB00, 1", "20000, 2", "3FFFD, 2", "200B, 0", "0301, 0", "20DD, 0", "7E, 1",
    "20, 1",
  })
  void a_character_takes_as_many_columns_as_terminals_give_it(String hex, int columns) {
    assertEquals(columns, Wrapping.width(Character.toString(Integer.parseInt(hex, 16))));
  }

  @ParameterizedTest
  @CsvSource({"1F, 241F", "7F, FFFD", "9F, FFFD", "202A, FFFD", "2069, FFFD", "2065, 2065", "9, 9"})
  void what_steers_a_terminal_is_shown_instead(String hex, String shown) {
    assertEquals(
        Character.toString(Integer.parseInt(shown, 16)),
        Wrapping.harmless(Character.toString(Integer.parseInt(hex, 16))));
  }

  @Test
  void facts_stand_in_two_columns_where_the_names_are_short() {
    var facts =
        new Block.Facts(
            List.of(
                new Block.Facts.Fact("Kit", "Chime of the hall by the door"),
                new Block.Facts.Fact("Boards", "2")));
    assertEquals(
        """
        Order
        =====

        Kit     Chime of the hall
                by the door
        Boards  2
        """,
        TextWriter.write(with(facts), 26));
    assertEquals(
        """
        Order
        =====

        A rather long name: 1
        """,
        TextWriter.write(
            with(new Block.Facts(List.of(new Block.Facts.Fact("A rather long name", "1")))), 26));
  }

  @Test
  void what_follows_a_label_is_indented_below_it() {
    assertEquals(
        """
        Order
        =====

        CAUTION! the tip is hot and
                 burns

        Top
        ---

        -- deep --

        Picture: a board
        """,
        TextWriter.write(
            with(
                new Block.Caution("the tip is hot and burns"),
                new Block.Heading(2, "Top"),
                new Block.Heading(3, "deep"),
                new Block.Section(),
                new Block.Figure(new Drawing(1, 1, List.of(), "a drawing"), "a board")),
            28));
  }

  @Test
  void a_row_of_several_lines_has_an_empty_line_above_and_below() {
    var table =
        new Table(
            "",
            List.of(
                new Table.Column("No", Table.Align.END, 1),
                new Table.Column("What to do there", Table.Align.START, 1)),
            List.of(
                new Table.Row(List.of(Cell.of("1"), Cell.of("seat it and solder it"))),
                new Table.Row(List.of(Cell.of("2"), Cell.field(""))),
                new Table.Row(List.of(Cell.of("3"), Cell.of("look")))));
    assertEquals(
        """
        Order
        =====

        No  What to do there
        --  ----------------
         1  seat it and
            solder it

         2  ____
         3  look
        """,
        TextWriter.write(with(table), 20));
  }

  @Test
  void what_stands_below_the_title_follows_it() {
    assertEquals(
        "Order\n=====\nof 3 parts\n",
        TextWriter.write(new Document("Order", "of 3 parts", List.of()), 40));
  }

  /** Names and the gap after them take half of the line at most. */
  @ParameterizedTest
  @CsvSource({"28, 'way round to  up'", "26, 'way round to: up'"})
  void facts_stand_beside_their_names_where_these_leave_half_of_the_line(int width, String line) {
    Block.Facts facts = new Block.Facts(List.of(new Block.Facts.Fact("way round to", "up")));
    assertEquals(line, TextWriter.write(with(facts), width).lines().toList().get(3));
  }

  private static Table one(String... cells) {
    return new Table(
        "",
        java.util.Arrays.stream(cells)
            .map(c -> new Table.Column("a", Table.Align.START, 1))
            .toList(),
        List.of(new Table.Row(java.util.Arrays.stream(cells).map(Cell::of).toList())));
  }

  /** With two columns between them, 10 and 8 take 20. */
  @ParameterizedTest
  @CsvSource({
    "abcdefghij, klmnopqr, 20, abcdefghij  klmnopqr",
  })
  void a_table_that_just_fits_stays_one(String left, String right, int width, String line) {
    String text = TextWriter.write(with(one(left, right)), width);
    assertTrue(text.lines().anyMatch(line::equals), text);
  }

  @Test
  void a_cell_of_several_lines_is_as_wide_as_the_widest() {
    String text = TextWriter.write(with(one("abc\nabcdefghi\nab", "x")), 60);
    assertTrue(text.lines().anyMatch("abc        x"::equals), text);
  }
}
