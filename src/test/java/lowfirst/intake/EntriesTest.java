package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import lowfirst.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files of names and texts: read as Java's own reader does, with the line of each. */
class EntriesTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a = 1\nb : 2\nc 3\n",
        "# a = 1\n! b = 2\n\n  c = 3",
        "a = one \\\n    two \\\n  three\nb = 4\n",
        "a = ends in a backslash \\\\\nb = 1\n",
        "# a remark ends at its line \\\nb = 1\n",
        "a\\ b = 1\na\\=b = 2\n\\u00e9 = 3\n",
        "a = 1\r\nb = 2\r\n",
        "a = 1\na = 2\n",
        "a = never ends \\",
        "alone\n= nameless\n",
      })
  void they_say_what_the_platform_reads(String text) throws Exception {
    var platform = new Properties();
    platform.load(new StringReader(text));
    assertEquals(platform, entries(text, new ArrayList<>()).texts());
  }

  @Test
  void a_name_may_have_blanks_where_a_sign_ends_it() {
    assertEquals(
        Map.of("a b c", "1 = x", "d e", "2", "f", "g h", "i j", "k"),
        entries("  a  b\tc = 1 = x\nd e: \\\n  2\nf g h\ni\\ j=k\n# l m = 3\n", new ArrayList<>())
            .texts());
  }

  @Test
  void each_has_the_line_where_it_begins_and_a_name_that_stands_twice_the_last() {
    Entries entries = entries("# x\na = 1 \\\n  2\n\nb = 3\na = 4\n", new ArrayList<>());
    assertEquals(Map.of("a", 6, "b", 5), entries.lines());
    assertEquals("kit.properties:6 \"a\"", entries.place("a").toString());
    assertEquals("kit.properties", entries.place("absent").toString());
  }

  @Test
  void a_broken_escape_costs_its_own_line_only() {
    var problems = new ArrayList<Problem>();
    Entries entries = entries("a = 1\nb = \\u12\nc = 3\n", problems);
    assertEquals(Map.of("a", "1", "c", "3"), entries.texts());
    assertEquals(
        List.of(
            "kit.properties:2: a \\u in this line is not followed by four hexadecimal digits;"
                + " write the character itself, or double the backslash"),
        problems.stream().map(Problem::toString).toList());
  }

  private static Entries entries(String text, List<Problem> problems) {
    return Entries.of(KitTables.files("kit.properties", text), "kit.properties", problems);
  }
}
