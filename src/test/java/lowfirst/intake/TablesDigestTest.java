package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.Set;
import org.junit.jupiter.api.Test;

/** What tells one kit from another. */
class TablesDigestTest {

  /** SHA-256 (FIPS 180-4) of {@code 7:3:bom.csvabc}, computed with another program. */
  @Test
  void it_is_the_hash_of_each_table_after_the_lengths_of_name_and_content() {
    assertEquals(
        "def36ca415c4514e27428d3d5f0c498253e64737d961d51fdd44612728108d0f",
        TablesDigest.of(
            KitTables.files("bom.csv", "abc", "photo.txt", "no table"), Set.of("bom.csv")));
  }

  @Test
  void what_moves_from_one_table_to_the_next_makes_another_kit() {
    Set<String> both = Set.of("a.csv", "b.csv");
    assertNotEquals(
        TablesDigest.of(KitTables.files("a.csv", "xb.csv", "b.csv", ""), both),
        TablesDigest.of(KitTables.files("a.csv", "x", "b.csv", "b.csv"), both));
  }
}
