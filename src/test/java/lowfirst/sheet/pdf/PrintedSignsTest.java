package lowfirst.sheet.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What the program's own words are written with, its typefaces must have. */
class PrintedSignsTest {
  /** Where the words of sheets are written. */
  private static final Set<String> WORDED =
      Set.of(
          "assembly",
          "board",
          "channel",
          "marking",
          "part",
          "progress",
          "sheet",
          "sorting",
          "swap");

  /** A table for machines takes signs out; an answer at the terminal or on the page has ticks. */
  private static final Set<String> UNPRINTED = Set.of("CsvWriter.java", "ProgressWords.java");

  private static final Path SOURCES = Path.of("src", "main", "java", "lowfirst");

  @Test
  void every_sign_of_what_may_be_printed_has_a_glyph() throws Exception {
    Typeface regular = Typeface.regular();
    Typeface bold = Typeface.bold();
    var missing = new TreeSet<String>();
    try (var files = Files.walk(SOURCES)) {
      for (Path file : files.filter(PrintedSignsTest::mayBePrinted).toList()) {
        Files.readString(file)
            .lines()
            .filter(line -> !line.strip().startsWith("*") && !line.strip().startsWith("/"))
            .flatMapToInt(String::codePoints)
            .filter(sign -> sign > 0x7f && (regular.glyph(sign) == 0 || bold.glyph(sign) == 0))
            .forEach(sign -> missing.add(Character.toString(sign) + " in " + file));
      }
    }
    assertEquals(new TreeSet<>(), missing);
  }

  private static boolean mayBePrinted(Path file) {
    return file.toString().endsWith(".java")
        && WORDED.contains(SOURCES.relativize(file).getName(0).toString())
        && !UNPRINTED.contains(file.getFileName().toString());
  }
}
