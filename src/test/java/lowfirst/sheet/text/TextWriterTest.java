package lowfirst.sheet.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import lowfirst.sheet.Block;
import lowfirst.sheet.Block.Cell;
import lowfirst.sheet.Block.Table;
import lowfirst.sheet.Document;
import lowfirst.sheet.drawing.Drawing;
import org.junit.jupiter.api.Test;

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
}
