package lowfirst.cli.process;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a console shows that does not take UTF-8. */
class CodePageStreamTest {

  @ParameterizedTest
  @CsvSource({
    // Code page 850 has µ, °, ± and × but no Ω; 437 has Ω; 1252 has neither Ω nor box lines.
    "IBM850, '10 kohm ±5 %, 1 µF, 25 °C, 3 × 4, <= 2'",
    "IBM437, '10 kΩ ±5 %, 1 µF, 25 °C, 3 x 4, ≤ 2'",
    "windows-1252, '10 kohm ±5 %, 1 µF, 25 °C, 3 × 4, <= 2'",
    "US-ASCII, '10 kohm +/-5 %, 1 uF, 25 degC, 3 x 4, <= 2'",
    "UTF-8, '10 kΩ ±5 %, 1 µF, 25 °C, 3 × 4, ≤ 2'",
  })
  void a_console_shows_its_own_signs_and_spells_out_the_rest(Charset page, String shown)
      throws IOException {
    assertEquals(shown, shown("10 kΩ ±5 %, 1 µF, 25 °C, 3 × 4, ≤ 2", page, 100));
  }

  @Test
  void a_character_cut_between_two_writes_is_put_together() throws IOException {
    for (int atOnce = 1; atOnce < 6; atOnce++) {
      assertEquals("a ohm -> e ? z", shown("a Ω → é 😀 z", StandardCharsets.US_ASCII, atOnce));
    }
  }

  @Test
  void a_console_of_unicode_is_written_to_as_it_is() {
    var sink = new ByteArrayOutputStream();
    assertSame(sink, CodePageStream.over(sink, Optional.of(StandardCharsets.UTF_8)));
    assertSame(sink, CodePageStream.over(sink, Optional.empty()));
  }

  @Test
  void an_unknown_name_of_a_code_page_is_passed_over() {
    assertEquals(Optional.empty(), CodePageStream.named(null, "", "cp 65001", "no-such-page"));
    assertEquals(Optional.of(Charset.forName("IBM850")), CodePageStream.named(null, "cp850"));
  }

  @Test
  void every_sign_that_the_program_prints_can_be_spelled_out() throws IOException {
    var unspelled = new TreeSet<String>();
    try (var files = Files.walk(Path.of("src/main"))) {
      for (Path file : files.filter(CodePageStreamTest::speaksInAConsole).toList()) {
        Files.readString(file)
            .codePoints()
            .filter(sign -> sign > 0x7f && SpelledOut.of(sign).equals("?"))
            .forEach(sign -> unspelled.add(Character.toString(sign) + " in " + file));
      }
    }
    // A byte that could not be decoded is no sign of ours.
    unspelled.removeIf(sign -> sign.startsWith("\ufffd"));
    assertEquals(new TreeSet<>(), unspelled);
  }

  /** A real terminal, a real process: what it is sent when its code page is 850. */
  @Test
  void a_terminal_of_code_page_850_gets_its_own_bytes() throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/script")), "no script(1) on this machine");
    Path seen = Files.createTempFile("seen", "");
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String command =
        java
            + " -XX:TieredStopAtLevel=1 -Dstdout.encoding=IBM850 -cp '"
            + System.getProperty("java.class.path")
            + "' lowfirst.cli.Main code 10k";
    Process process =
        new ProcessBuilder("/usr/bin/script", "-qec", command, "/dev/null")
            .redirectInput(Path.of("/dev/null").toFile())
            .redirectErrorStream(true)
            .redirectOutput(seen.toFile())
            .start();
    assertTrue(process.waitFor(60, TimeUnit.SECONDS), "it did not end");
    String shown = new String(Files.readAllBytes(seen), Charset.forName("IBM850"));
    Files.delete(seen);
    assertTrue(shown.contains("10 kohm"), shown);
    assertTrue(shown.contains("±"), shown);
    assertFalse(shown.contains("?"), shown);
  }

  /** The bench page goes to a browser, which takes UTF-8; what is only read is never shown. */
  private static boolean speaksInAConsole(Path file) {
    String name = file.toString().replace('\\', '/');
    return (name.endsWith(".java") || name.endsWith(".csv") || name.endsWith(".txt"))
        && !name.contains("/bench/")
        && !name.contains("/intake/")
        && !name.endsWith("/CyrillicUnits.java")
        && !name.endsWith("/Glyphs.java");
  }

  private static String shown(String text, Charset page, int atOnce) throws IOException {
    var console = new ByteArrayOutputStream();
    try (var stream = CodePageStream.over(console, Optional.of(page))) {
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      for (int at = 0; at < bytes.length; at += atOnce) {
        stream.write(bytes, at, Math.min(atOnce, bytes.length - at));
      }
    }
    return console.toString(page);
  }
}
