package lowfirst.sheet.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Cell;
import lowfirst.sheet.document.Block.Facts.Fact;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Ink;
import lowfirst.sheet.drawing.Shape;
import lowfirst.sheet.pdf.SeenPdf.SeenPage;
import org.junit.jupiter.api.Test;

/**
 * What goes overleaf together. Below the title 712.1 points are left. A page is filled with a
 * caution, which keeps nothing with it: 12 and 12.35 a line, so 55 lines leave 20.85, and each line
 * less leaves 12.35 more.
 */
class KeptTogetherTest {
  private static final PdfWriter WRITER = new PdfWriter();

  private static final Block HEADING = new Block.Heading(3, "Heading");
  private static final Block LINE = new Block.Paragraph("One line.");
  private static final Block THREE = new Block.Paragraph("a\nb\nc");
  private static final Block FACTS =
      new Block.Facts(List.of(new Fact("name", "text"), new Fact("other", "word")));

  /** 42.02 points high with the space above it, its caption 14.05 more. */
  private static final Drawing DRAWING =
      new Drawing(
          20, 12, List.of(new Shape.Box(0, 0, 20, 12, 0, Shape.Paint.fill(Ink.BLACK))), "box");

  private static final Block TABLE = table("");

  private static Block table(String caption) {
    return Grid.of(caption, List.of(Grid.words("Head", 1)), Grid.row(Cell.of("cell")));
  }

  private static Block lines(int count) {
    return new Block.Caution(
        IntStream.rangeClosed(1, count).mapToObj(i -> "l" + i).collect(Collectors.joining("\n")));
  }

  private static List<SeenPage> pages(int lines, Block... blocks) throws Exception {
    var all = new ArrayList<Block>(List.of(lines(lines)));
    all.addAll(Arrays.asList(blocks));
    return SeenPdf.of(WRITER.write(new Document("T", "S", all), Paper.A4)).pages();
  }

  /** What stands on the second page, after so many lines and these blocks. */
  private static String overleaf(int lines, Block... blocks) throws Exception {
    List<SeenPage> pages = pages(lines, blocks);
    return pages.size() < 2 ? "" : String.join(" ", pages.get(1).words());
  }

  /** Heading 24.65, line 17.35: 42 of 45.55; two facts are 29.7, three lines 42.05. */
  @Test
  void a_heading_with_one_line_goes_where_the_rest_of_its_section_is() throws Exception {
    assertEquals("Heading One line. name text other word", overleaf(53, HEADING, LINE, FACTS));
    assertEquals("Heading One line. a b c", overleaf(53, HEADING, LINE, THREE));
    assertEquals("Heading One line. Head cell", overleaf(53, HEADING, LINE, TABLE));
    assertEquals(
        "Heading One line. One line. name text other word",
        overleaf(51, HEADING, LINE, LINE, FACTS));
    // It may end a page where its section ends.
    assertEquals("Heading a b c", overleaf(53, HEADING, LINE, HEADING, THREE));
    assertEquals("a b c", overleaf(53, HEADING, LINE, new Block.Section(), THREE));
    assertEquals("", overleaf(53, HEADING, LINE));
    // One line that isn't a section's first may end a page, too.
    assertEquals("a b c", overleaf(55, LINE, THREE));
    // A heading with three lines is enough to end on: 66.7 of 70.25.
    assertEquals("a b c", overleaf(51, HEADING, THREE, THREE));
  }

  /** 57 lines fill a page; 50 do with the heading and the header. The page before has 20 lines. */
  @Test
  void a_row_too_long_for_a_page_begins_below_its_header() throws Exception {
    for (int count : List.of(50, 54, 60, 200)) {
      String words =
          IntStream.range(0, count).mapToObj(i -> "w" + i).collect(Collectors.joining("\n"));
      Table table = Grid.of("Caption", List.of(Grid.words("Head", 1)), Grid.row(Cell.of(words)));
      String next = overleaf(20, HEADING, table);
      assertTrue(next.startsWith("Heading Caption Head w0 w1 "), count + ": " + next);
      List<SeenPage> pages = pages(20, HEADING, table);
      for (SeenPage page : pages.subList(2, pages.size())) {
        assertEquals("Head", page.words().get(0), "the header comes again");
        assertTrue(page.words().size() > 1, "and not alone");
      }
      long all =
          pages.stream()
              .flatMap(page -> page.words().stream())
              .filter(word -> word.matches("w\\d+"))
              .distinct()
              .count();
      assertEquals(count, all);
    }
  }

  @Test
  void a_heading_goes_with_what_it_heads() throws Exception {
    assertEquals("Heading a b c", overleaf(54, HEADING, THREE));
    assertEquals("Heading Head cell", overleaf(53, HEADING, TABLE));
  }

  /** 20.85 are left: 17.35 for the line, not for what it introduces. */
  @Test
  void text_goes_with_the_table_figure_or_facts_that_it_introduces() throws Exception {
    assertEquals("One line. Head cell", overleaf(55, LINE, TABLE));
    assertEquals("One line. C", overleaf(55, LINE, new Block.Figure(DRAWING, "C")));
    assertEquals("One line. name text other word", overleaf(55, LINE, FACTS));
    assertEquals("Caution: hot.", overleaf(55, LINE, new Block.Caution("hot.")).replace("! ", ""));
  }

  /** 33.2 are left: 29.7 for the facts, not 26 more for the caution about them. */
  @Test
  void facts_go_with_their_caution_but_not_with_other_blocks() throws Exception {
    String caution = overleaf(54, FACTS, new Block.Caution("hot."));
    assertEquals("name text other word ! Caution: hot.", caution);
    assertEquals("a b c", overleaf(54, FACTS, THREE));
    assertEquals("a b c", overleaf(54, new Block.Caution("hot."), THREE));
  }

  /** 29.7 for the facts and 26 for the caution are 55.7: of 33.2 left, and of 57.9. */
  @Test
  void what_is_to_be_done_then_goes_with_the_facts_and_the_caution_above_it() throws Exception {
    String twice = "name text other word name text other word";
    assertEquals(twice, overleaf(54, FACTS, FACTS));
    assertEquals(
        "name text other word ! Caution: hot. name text other word",
        overleaf(52, FACTS, new Block.Caution("hot."), FACTS));
  }

  /** 33.2 are left: 29.7 for the facts, not 42.02 more for the figure, and 14.05 for a caption. */
  @Test
  void facts_go_with_a_figure_that_has_no_words_of_its_own() throws Exception {
    assertEquals("name text other word", overleaf(54, FACTS, new Block.Figure(DRAWING, "")));
    assertEquals("C", overleaf(54, FACTS, new Block.Figure(DRAWING, "C")));
  }

  /** 2.5 above the first fact and 34.02 for the picture: more than 33.2, less than 45.55. */
  @Test
  void facts_go_with_the_picture_beside_them() throws Exception {
    var pictured =
        new Block.Facts(
            List.of(new Fact("name", "text"), new Fact("other", "word")), Optional.of(DRAWING));
    assertEquals("name text other word", overleaf(54, pictured));
    assertEquals(1, boxes(pages(54, pictured).get(1)));
    assertEquals("", overleaf(53, pictured));
    // The picture is higher than the words: 9.03 are left below it, and 17.35 below the words.
    assertEquals("One line.", overleaf(53, pictured, LINE));
  }

  /** The header is 19.95 and a row 16.25: of 70.25 left, and of 57.9, which two rows fit in. */
  @Test
  void a_row_that_goes_on_with_the_one_above_stays_with_it() throws Exception {
    List<Block.Table.Column> columns = List.of(Grid.words("Step", 1), Grid.words("Unit", 1));
    for (String second : List.of("", "2")) {
      Table table =
          new Table(
              "",
              columns,
              List.of(
                  Grid.row(Cell.of("0"), Cell.of("x")),
                  Grid.row(Cell.of("1"), Cell.of("one")),
                  Grid.row(Cell.of(second), Cell.of("two"))));
      assertEquals("a b c", overleaf(51, table, THREE));
      String next = overleaf(52, table, THREE);
      assertEquals(second.isEmpty() ? "Step Unit 1 one two a b c" : "Step Unit 2 two a b c", next);
    }
  }

  @Test
  void a_figure_without_caption_goes_with_the_facts_that_tell_of_it() throws Exception {
    List<SeenPage> together = pages(52, new Block.Figure(DRAWING, ""), FACTS);
    assertEquals("name text other word", String.join(" ", together.get(1).words()));
    assertEquals(1, boxes(together.get(1)));
    List<SeenPage> apart = pages(52, new Block.Figure(DRAWING, "C"), FACTS);
    assertEquals(1, boxes(apart.get(0)));
    assertTrue(apart.get(0).words().contains("C"));
    List<SeenPage> text = pages(52, new Block.Figure(DRAWING, ""), THREE);
    assertEquals(1, boxes(text.get(0)));
  }

  private static long boxes(SeenPage page) {
    return page.paths().stream().filter(path -> path.fill() == 0).count();
  }

  @Test
  void a_figure_goes_with_its_caption_and_a_caption_with_its_table() throws Exception {
    List<SeenPage> figure = pages(53, new Block.Figure(DRAWING, "C"));
    assertEquals(1, boxes(figure.get(1)));
    assertEquals("C", String.join(" ", figure.get(1).words()));
    assertEquals("Cap Head cell", overleaf(53, table("Cap")));
    // After its last row a table lets go.
    assertEquals("a b c", overleaf(52, table("Cap"), THREE));
    assertEquals("", overleaf(52, table("Cap")));
  }

  @Test
  void the_lines_of_a_caution_stay_together() throws Exception {
    assertEquals("! Caution: a b c", overleaf(54, new Block.Caution("a\nb\nc")));
  }

  /** A third of the page is 280.6: 18 facts of 14.85 are less, 19 are more. */
  @Test
  void few_facts_stay_together_and_many_go_on_overleaf() throws Exception {
    assertTrue(overleaf(52, facts(5, "text")).startsWith("name1 "));
    assertTrue(overleaf(52, facts(18, "text")).startsWith("name1 "));
    // 57.9 points: three facts, then the fourth.
    assertTrue(overleaf(52, facts(19, "text")).startsWith("name4 "));
    // Of two lines each, 27.2: two facts, and not a line of the third.
    assertTrue(overleaf(52, facts(19, "one\ntwo")).startsWith("name3 one two "));
    // The last fact lets go of what follows.
    assertEquals("a b c", overleaf(54, facts(2, "text"), THREE));
  }

  private static Block facts(int count, String text) {
    return new Block.Facts(
        IntStream.rangeClosed(1, count).mapToObj(i -> new Fact("name" + i, text)).toList());
  }
}
