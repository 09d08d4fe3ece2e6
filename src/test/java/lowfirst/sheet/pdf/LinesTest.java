package lowfirst.sheet.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Text measured and broken. In this face a figure is 1139 units of 2048 wide, as are a, n and o; a
 * space, a slash and a t are 569, a V is 1366; the size makes a figure 10 points, so a space is 5.
 */
class LinesTest {
  private static final Typeface FACE = Typeface.regular();
  private static final double SIZE = 10 * 2048 / 1139.0;

  @ParameterizedTest
  @CsvSource({
    "12 345 6789, 55, '12 345, 6789'",
    "12 345 6789, 54, '12, 345, 6789'",
    "12 345 6789, 100, 12 345 6789",
    "12  345 , 100, 12 345",
    "1234567890, 45, '1234, 5678, 90'",
    "1234567890 12 34, 45, '1234, 5678, 90 12, 34'",
    "12 1234567890, 45, '12, 1234, 5678, 90'",
    "12345, 50.1, 12345",
    "12, 3, '1, 2'",
    // After a joint where it lies in the second half of what fits, else where the line is full.
    "12/3456789, 45, '12/, 3456, 789'",
    "1/23456789, 45, '1/234, 5678, 9'",
    // A unit stays with its number, not with a word.
    "aa 12 V, 46, 'aa, 12 V'",
    "aa 12 aa, 46, 'aa 12, aa'",
    "aa n V, 46, 'aa n, V'",
    "V 12, 100, V 12",
    // So does a number with the word that it names.
    "aa no. 12 aa, 52, 'aa, no. 12, aa'",
    // A decimal point is no joint.
    "123.4567, 45, '123.4, 567'",
  })
  void a_text_is_broken_between_words_and_a_word_only_when_it_must(
      String text, double width, String lines) {
    List<Lines.Line> broken = Lines.of(FACE, SIZE, text).within(width);
    assertEquals(lines, broken.stream().map(Lines.Line::text).collect(Collectors.joining(", ")));
    for (Lines.Line line : broken) {
      assertEquals(FACE.width(line.text()) * SIZE, line.width(), 1e-9, line.text());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"Ω", "kΩ", "MΩ,", "nF", "µF)", "mA.", "V", "kHz", "mm²", "%", "°C", "K/W", "AWG"})
  void units_stay_with_their_numbers(String unit) {
    String text = "aaa 12 " + unit;
    double tooNarrow = FACE.width(text) * SIZE - 1;
    assertEquals(
        List.of("aaa", "12 " + unit),
        Lines.of(FACE, SIZE, text).within(tooNarrow).stream().map(Lines.Line::text).toList());
  }

  @Test
  void every_line_feed_starts_a_line() {
    Lines lines = Lines.of(FACE, SIZE, "12\n\n345 6");
    assertEquals(
        List.of("12", "", "345 6"), lines.within(100).stream().map(Lines.Line::text).toList());
    assertEquals(30, lines.widestWord(), 1e-9);
    assertEquals(40 + 5690 / 1139.0, lines.naturalWidth(), 1e-9);
    assertFalse(lines.isBlank());
  }

  @Test
  void no_text_is_one_empty_line() {
    assertTrue(Lines.of(FACE, SIZE, " \n ").isBlank());
    assertEquals(List.of(new Lines.Line("", 0)), Lines.of(FACE, SIZE, "").within(10));
    assertEquals(0, Lines.of(FACE, SIZE, "").naturalWidth());
  }

  @Test
  void widths_are_those_that_the_library_reads_from_the_font() throws Exception {
    Typeface face = Typeface.regular();
    String text = "Az09 .,-–Ω ≤ → µ ± é Ж";
    try (var document = new PDDocument()) {
      var font = PDType0Font.load(document, face.font(), true);
      for (String part : List.of(text, "Ω", "Ω", "→", " ", "W")) {
        assertEquals(
            font.getStringWidth(part) / 1000, face.width(part), 5e-4 * part.length(), part);
      }
    }
    assertEquals(1139 / 2048.0, face.width('7'), 1e-9);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "plain ~ text! | plain ~ text!",
        "a\\tb | a b",
        "a\\r\\nb\\rc\\u2028d | a\\nb\\nc\\nd",
        "a\\u200Bb\\u00ADc | abc",
        "e\\u0301 | é",
        "4.7 kΩ ±5 % | 4.7 kΩ ±5 %",
        "抵 | ‹U+62B5›",
        "x\\u007F | x‹U+007F›",
        "x\\u0001y | x‹U+0001›y",
        "\uD83D\uDD27 | ‹U+1F527›",
      })
  void what_a_face_cannot_print_is_replaced_visibly(String text, String printed) {
    assertEquals(plain(printed), FACE.printable(plain(text)));
  }

  /** Java's escapes, since a table of cases holds no line feeds. */
  private static String plain(String text) {
    String feeds = text.replace("\\t", "\t").replace("\\r", "\r").replace("\\n", "\n");
    return java.util.regex.Pattern.compile("\\\\u(\\p{XDigit}{4})")
        .matcher(feeds)
        .replaceAll(found -> "" + (char) Integer.parseInt(found.group(1), 16));
  }
}
