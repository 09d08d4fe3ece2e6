package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.Charset;
import java.util.List;
import java.util.Map;
import lowfirst.problem.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Signs in code pages from before Windows, encoded by the machine's own tables of them. */
class OldCodePageTest {
  private static KitReading read(byte[] bom) {
    return KitReader.read(new KitFiles("kit", Map.of("bom.csv", bom), List.of()));
  }

  private static List<String> said(KitReading reading) {
    return reading.problems().stream()
        .filter(problem -> problem.kind() == Kind.TEXT_DAMAGED)
        .map(problem -> problem.place() + " " + problem.message())
        .toList();
  }

  private static String bom(String value) {
    return "Ref,Qty,Value,Description\nR9,1,1k,plain\nC1,1," + value + "\n";
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "IBM437 | 10µF,Stützkondensator | 10µF | 10æF | code page 437 (DOS)",
        "IBM437 | 10 µF,25 °C | 10 µF | 10 æF | code page 437 (DOS)",
        "IBM437 | 4µ7,±20% | 4µ7 | 4æ7 | code page 437 (DOS)",
        "IBM437 | 10n,ESR 4.7 Ω | ESR 4.7 Ω | ESR 4.7 ê | code page 437 (DOS)",
        "IBM437 | 10n,±5 % | ±5 % | ñ5 % | code page 437 (DOS)",
        "IBM437 | 10n,90° | 90° | 90ø | code page 437 (DOS)",
        "IBM850 | 10µF,Áudio | 10µF | 10æF | code page 850 (DOS)",
        "x-MacRoman | 10n,ESR 4.7Ω | ESR 4.7Ω | ESR 4.7½ | Mac Roman",
        "x-MacRoman | 10µF,105°C | 105°C | 105¡C | Mac Roman"
      })
  void it_is_told_by_what_its_signs_mean(
      String charset, String cells, String read, String western, String page) {
    KitReading reading = read(bom(cells).getBytes(Charset.forName(charset)));
    assertEquals(
        List.of(
            "bom.csv:3 the file was read in %s, in which \"%s\" stands here; as Windows-1252 it would be \"%s\""
                .formatted(page, read, western)),
        said(reading));
  }

  @Test
  void values_are_read_from_it() {
    KitReading reading =
        read(
            "Ref,Qty,Value\nC1,1,10 µF\nR1,1,4.7 kΩ\nR2,1,47 Ω\n"
                .getBytes(Charset.forName("IBM437")));
    assertEquals(
        List.of("10 µF electrolytic capacitor", "4.7 kΩ resistor", "47 Ω resistor"),
        reading.kit().boards().get(0).items().stream()
            .map(item -> item.partType().words())
            .toList());
    assertEquals("code page 437 (DOS), guessed", reading.understood().get(0).encoding());
  }

  @Test
  void a_sign_may_be_the_last_of_a_file() {
    KitReading reading = read("Ref,Qty,Value\nR1,1,4.7 kΩ".getBytes(Charset.forName("IBM437")));
    assertEquals("code page 437 (DOS), guessed", reading.understood().get(0).encoding());
  }

  /** Each makes sense in Windows-1252, or no page makes sense of all of it. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "10µF,Stützkondensator für 25 °C ±20 %",
        "10n,Señal nº 5 — «filtro»",
        "10n,½ W; 2½ turns; 10² × 5",
        "10n,ø5 mm (Ø 5)",
        "10n,a “low” – it’s ‘small’…",
        "10n,À côté à l'œuvre",
        "10n,fæF 10æF ñ"
      })
  void windows_1252_stays_what_it_is(String cells) {
    KitReading reading = read(bom(cells).getBytes(Charset.forName("windows-1252")));
    assertEquals(List.of(), said(reading));
    assertEquals(
        cells.substring(cells.indexOf(',') + 1).split(";")[0],
        reading.kit().boards().get(0).items().get(1).description().split(";")[0]);
  }
}
