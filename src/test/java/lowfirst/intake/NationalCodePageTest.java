package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.Charset;
import java.util.List;
import java.util.Map;
import lowfirst.board.Item;
import lowfirst.problem.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables saved in the code page of a country, which is told by its header words. */
class NationalCodePageTest {
  private static KitReading read(String text, String charset) {
    return KitReader.read(
        new KitFiles("kit", Map.of("bom.csv", text.getBytes(Charset.forName(charset))), List.of()));
  }

  private static List<String> guesses(KitReading reading) {
    return reading.problems().stream()
        .filter(problem -> problem.kind() == Kind.COLUMN_GUESSED)
        .filter(problem -> problem.message().startsWith("the file was read in"))
        .map(problem -> problem.message())
        .toList();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "windows-1250, Oznaczenie;Wartość;Ilość, Windows-1250 (Central European), Wartość",
    "windows-1251, Обозначение;Номинал;Кол., Windows-1251 (Cyrillic), Обозначение",
    "IBM866, Обозначение;Номинал;Кол., 'code page 866 (Cyrillic, DOS)', Обозначение",
    "Shift_JIS, 回路記号;定数;数量, Shift JIS, 回路記号",
    "GBK, 位号;参数;数量, GB 18030, 位号"
  })
  void header_words_tell_the_code_page_and_the_guess_is_said(
      String charset, String header, String words, String known) {
    KitReading reading = read(header + "\nR1, R2;10k;2\nC1;100n;1\n", charset);
    Item item = reading.kit().boards().get(0).items().get(0);
    assertEquals("10 kΩ", item.partType().value().orElseThrow().toString());
    assertEquals(2, item.quantity());
    assertEquals(
        List.of("the file was read in " + words + ", in which \"" + known + "\" stands in it"),
        guesses(reading));
  }

  /** What Windows-1252 reads as well stays in it. */
  @Test
  void western_words_are_no_others() {
    KitReading reading = read("Repère;Qté;Valeur\nR1;1;10k\nR2;1;22k\n", "windows-1252");
    assertEquals(2, reading.kit().boards().get(0).items().size());
    assertEquals(List.of(), guesses(reading));
    assertEquals(List.of(), guesses(read("Ref;Qty;Value\nR1;1;10 µ\n", "windows-1252")));
  }
}
