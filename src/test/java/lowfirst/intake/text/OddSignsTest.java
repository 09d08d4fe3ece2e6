package lowfirst.intake.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Signs spelt as for the web, wide ones, and the marks of notes. */
class OddSignsTest {

  /** Numbers as in Unicode's code charts: Ω is U+03A9, which is 937; U+0378 is assigned to none. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "4.7 k&Omega; | 4.7 kΩ",
        "4.7 k&#937; | 4.7 kΩ",
        "4.7 k&#x3a9; | 4.7 kΩ",
        "4.7 k&#X3A9; | 4.7 kΩ",
        "4.7 k&amp;#937; | 4.7 kΩ",
        "10 &micro;F &plusmn;5 % | 10 µF ±5 %",
        "R &amp; S | R & S",
        "&frac12;W, &frac14;W | ½W, ¼W",
        "&#128266; | 🔊",
        "20&#176;C | 20°C",
        "&#59; &#x22; &#127; | &#59; &#x22; &#127;",
        "&#159; &#x9f; | &#159; &#x9f;",
        "&#888; | &#888;",
        "&quot;$1&quot; &lt; | &quot;$1&quot; &lt;",
        "R&S, no reference; | R&S, no reference;"
      })
  void a_sign_of_the_web_is_put_back_unless_it_may_be_a_separator_or_quote(
      String text, String plain) {
    assertEquals(plain, WebSigns.plain(text));
  }

  @Test
  void the_first_sign_beyond_the_control_characters_is_one() {
    assertEquals("4.7\u00a0k", WebSigns.plain("4.7&#160;k"));
    assertEquals("4.7\u00a0k", WebSigns.plain("4.7&nbsp;k"));
  }

  /** Unicode's fullwidth forms: U+FF01 to U+FF5E are ASCII's ! to ~ in the same order. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "Ｒ１　４．７ｋ | R1 4.7k",
        "０ | 0",
        "９ | 9",
        "！１～ | !1~",
        "１，２；３｜４＂５＇ | 1，2；3｜4＂5＇",
        "１｟１ | 1｟1",
        "Ｒ　ｋ | Ｒ　ｋ"
      })
  void wide_signs_are_made_plain_where_a_wide_digit_stands(String text, String plain) {
    assertEquals(plain, WideSigns.plain(text));
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "a|b\n--|--\n1|2",
        "|a|b|\n|---|:-:|\n",
        "|--|--|\n|1|2|",
        "a|b\n-|-\n1|2",
        "|a|b|\n|:-|-:|\n|1|2|",
        "a|b\r\n --- | --- \r\n1|2\r\n",
        "a|b\r--|--\r1|2",
        "a--b\n\nc|d\n--|--"
      })
  void a_line_of_dashes_and_bars_alone_makes_a_table_of_notes(String text) {
    assertTrue(PipeTable.isIn(text));
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "a|b\n----\n1|2",
        "a|b\nx--|--\n1|2",
        "a|b\n--|--x\n1|2",
        "a--b|c--d",
        "plain words"
      })
  void other_dashes_do_not(String text) {
    assertFalse(PipeTable.isIn(text));
  }

  @Test
  void marks_for_how_words_look_go_from_a_table_of_notes() {
    String rule = "\n---|---\n";
    assertEquals(
        "Ref|Value" + rule + "R1|4k7\nR2|1k",
        PipeTable.plain(
            "**Ref**|Value" + rule + "[R1](http://x.org/r1)|`4k7`\n![R2](picture.png)|1k"));
    assertEquals("Ref|V¦W" + rule, PipeTable.plain("Ref|V\\|W" + rule), "a bar that parts nothing");
  }

  @Test
  void of_signs_that_are_not_meant_as_marks_the_stroke_goes() {
    String rule = "\n|-|-|\n";
    assertEquals(
        "|Ref|Value|" + rule + "|JP1-JP7|2x8|",
        PipeTable.plain("|Ref|Value|" + rule + "|JP1\\-JP7|2x8|"));
  }

  @Test
  void and_stay_everywhere_else_but_for_breaks_of_lines() {
    String plain = "Ref,Value\n**R1**,`4k7`";
    assertSame(plain, PipeTable.plain(plain));
    String bars = "Ref|Value\n**R1**|`4k7`";
    assertSame(bars, PipeTable.plain(bars));
    assertEquals("a b c d", PipeTable.plain("a<br>b<BR/>c<br />d"));
    assertEquals("a b", PipeTable.plain("a<BR>b"));
  }

  @ParameterizedTest(name = "behind {0} others")
  @ValueSource(ints = {0, 1, 4095, 4096, 10_000})
  void every_sign_of_a_text_is_seen_wherever_it_stands(int before) {
    String blanks = " ".repeat(before);
    assertTrue(Signs.of(blanks + "|" + blanks).mayBeAnyOf("<|"));
    assertTrue(Signs.of(blanks + "~" + blanks).mayBeAnyOf("~"), "the last of ASCII");
    assertTrue(Signs.of(blanks + "\u00ad").mayBeAnyOf("\u200b\u00ad"));
    assertFalse(Signs.of(blanks + "~").mayBeAnyOf("<|\u200b"));
  }

  @Test
  void what_was_lost_is_said_beside_what_was_put_back() {
    TextOfFile text =
        TextOfFile.of(
            "bom.csv", "R1,4.7 k&Omega;\nC1,10 \ufffdF\n".getBytes(StandardCharsets.UTF_8));
    assertEquals("R1,4.7 kΩ\nC1,10 \ufffdF\n", text.text());
    assertEquals(
        List.of("bom.csv:2", "bom.csv"),
        text.problems().stream().map(problem -> problem.place().toString()).toList());
  }
}
