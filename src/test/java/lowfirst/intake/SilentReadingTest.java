package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import lowfirst.intake.column.ColumnMap;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What may mean something else than it was read as is said, never passed over. */
class SilentReadingTest {

  // --- columns of yes and no

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"yes no yes", "1 0 0", "x '' x", "Ja Nein Ja", "'' '' true", "y n ''"})
  void a_column_of_yes_and_no_under_an_unknown_header_is_asked_about(String answers) {
    String[] cells = answers.replace("''", "\u0000").split(" ");
    String bom = "ref,value,Zeta\nR1,1k,%s\nR2,2k,%s\nR3,3k,%s\n".formatted((Object[]) cells);
    Problem asked = only(bom.replace("\u0000", ""), Kind.OPTIONAL_PART);
    assertTrue(
        asked
            .message()
            .startsWith(
                "the column \"Zeta\" was not understood, but may say which parts are fitted ("),
        asked.message());
    assertTrue(asked.remedy().contains("--column bom.fitted=Zeta"), asked.remedy());
    assertTrue(asked.remedy().contains("--column bom.not-fitted=Zeta"), asked.remedy());
    assertEquals(1, asked.place().line());
    assertEquals(3, asked.place().column());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    // all the same, one other word, a column that is understood, one that speaks of something else
    "'ref,value,Zeta\nR1,1k,yes\nR2,2k,yes\n'",
    "'ref,value,Zeta\nR1,1k,no\nR2,2k,\n'",
    "'ref,value,Zeta\nR1,1k,yes\nR2,2k,no\nR3,3k,red\n'",
    "'ref,value,fitted,Zeta\nR1,1k,yes,yes\nR2,2k,yes,no\n'",
    "'ref,value,dnp,Zeta\nR1,1k,,yes\nR2,2k,,no\n'",
    "'fitted,ref,value,Zeta\nyes,R1,1k,yes\nyes,R2,2k,no\n'",
    "'ref,value,values\nR1,1k,yes\nR2,2k,no\n'"
  })
  void other_columns_are_not(String bom) {
    assertEquals(List.of(), of(bom, Kind.OPTIONAL_PART));
  }

  @ParameterizedTest(name = "{0} with {1}")
  @CsvSource({
    "Exclude from board, yes",
    "Excluded from BOM, x",
    "exclude, 1",
    "Exclude from Board, Excluded from board"
  })
  void a_column_that_excludes_parts_is_said_beside_one_that_is_read(String header, String yes) {
    String bom = "ref,value,dnp,%s\nR1,1k,,\nR2,2k,yes,\nH1,hole,,%s\n".formatted(header, yes);
    Problem said = only(bom, Kind.OPTIONAL_PART);
    assertEquals(
        "nothing was read from the column \""
            + header
            + "\", so the part that it excludes counts as fitted",
        said.message());
    assertEquals(4, said.place().line());
    assertEquals(
        1, of(bom.replace(",dnp", ",mark").replace("yes,\n", ",\n"), Kind.OPTIONAL_PART).size());
  }

  @ParameterizedTest(name = "{0} with {1}")
  @CsvSource({"Exclude from board, no", "Exclude from board, ''", "Exclude from simulation, yes"})
  void a_column_that_excludes_nothing_from_the_board_is_not(String header, String answer) {
    String bom = "ref,value,dnp,%s\nR1,1k,,\nR2,2k,yes,%s\n".formatted(header, answer);
    assertEquals(List.of(), of(bom, Kind.OPTIONAL_PART));
  }

  @ParameterizedTest
  @ValueSource(strings = {"optional", "Opcional", "opzionale", "optionnel", "opt.", "(optional)"})
  void a_column_that_calls_a_part_optional_is_said_though_nothing_is_read_from_it(String word) {
    Problem said =
        only("ref,value,state\nR1,1k,needed\nR2,2k,%s\n".formatted(word), Kind.OPTIONAL_PART);
    assertEquals(
        "this may say that the part is optional, but nothing is read from the column \"state\","
            + " so it counts as fitted",
        said.message());
    assertEquals(3, said.place().line());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "pre-soldered",
        "Already on the board",
        "comes soldered",
        "factory-fitted",
        "vorbestückt",
        "bereits eingelötet",
        "déjà soudé",
        "ya soldado",
        "già montato",
        "reeds gesoldeerd"
      })
  void what_is_on_the_board_already_counts_and_is_said(String words) {
    String message =
        "the BOM says that the part is on the board already (\""
            + words
            + "\"); it counts as to be"
            + " fitted";
    Problem said =
        only("ref,value,description\nR1,1k,film\nU2,XR7,%s\n".formatted(words), Kind.OPTIONAL_PART);
    assertEquals(message, said.message());
    assertEquals(3, said.place().line());
    Problem unread =
        only(
            "ref,value,description,remarks\nR1,1k,film,\nU2,XR7,chip,%s\n".formatted(words),
            Kind.OPTIONAL_PART);
    assertEquals(message, unread.message());
    assertEquals(4, unread.place().column());
  }

  @ParameterizedTest
  @ValueSource(strings = {"solder it first", "for the board already built", "pre-amp", "soldering"})
  void other_words_about_soldering_say_nothing_of_that(String words) {
    assertEquals(
        List.of(), of("ref,value,description\nR1,1k,%s\n".formatted(words), Kind.OPTIONAL_PART));
  }

  @Test
  void a_designator_that_is_called_optional_is_said() {
    Problem said =
        only("ref,qty,value\n\"C1, C19 (optional)\",2,1u\nC2,1,1u\n", Kind.OPTIONAL_PART);
    assertEquals(
        "the BOM leaves it open whether to fit this or a part of it (\"optional\"); all counts as"
            + " fitted",
        said.message());
    assertEquals(2, said.place().line());
  }

  @Test
  void columns_of_variants_are_named_together_and_one_without_a_header_by_its_number() {
    Problem asked = only("ref,value,,Big One\nR1,1k,x,x\nR2,2k,,x\nR3,3k,x,\n", Kind.OPTIONAL_PART);
    assertEquals(
        "the columns 3, \"Big One\" were not understood, but may say which parts are fitted (empty,"
            + " x)",
        asked.message());
    assertTrue(asked.remedy().contains("bom.fitted=3, or the one that counts"), asked.remedy());
    assertTrue(
        only("ref,value,Zeta\nR1,1k,yes\nR2,2k,no\nTop side,,\n", Kind.OPTIONAL_PART)
            .message()
            .endsWith("(no, yes)"),
        "a heading answers nothing");
    assertTrue(
        only("ref,value,Big One\nR1,1k,x\nR2,2k,\n", Kind.OPTIONAL_PART)
            .remedy()
            .contains("--column \"bom.fitted=Big One\""));
  }

  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({"fitted, Zeta, 1", "not-fitted, Zeta, 1", "fitted, none, 2"})
  void what_the_remedy_says_answers_the_question(String column, String header, long fitted) {
    KitReading told =
        KitReader.read(
            KitTables.files("bom.csv", "ref,value,Zeta\nR1,1k,yes\nR2,2k,no\n"),
            new ColumnMap(Map.of("bom." + column, header)));
    assertEquals(
        List.of(),
        told.problems().stream().filter(one -> one.kind() == Kind.OPTIONAL_PART).toList());
    assertEquals(
        fitted, told.kit().boards().get(0).items().stream().filter(i -> i.isFitted()).count());
  }

  // --- rows that are put out

  @Test
  void a_designator_behind_a_hash_is_a_part_and_said_once_a_table() {
    Problem one = only("ref,value\nR1,1k\n#C2,100n\n", Kind.OPTIONAL_PART);
    assertEquals(
        "#C2 was read as a part of that name, though the # may mean that it is not fitted",
        one.message());
    assertEquals(3, one.place().line());
    assertEquals("take the part out if it is not fitted, else delete the #", one.remedy());
    assertTrue(
        only("ref,value\n#C1,1n\n#C2,1n\n#C3,1n\n#C4,1n\n#C5,1n\n#C6,1n\n", Kind.OPTIONAL_PART)
            .message()
            .startsWith("#C1, #C2, #C3, #C4, #C5, #C6 were read"),
        "six are named");
    Problem many =
        only(
            "ref,value\nR1,1k\n#C1,1n\n#C2,1n\n#C3,1n\n#C4,1n\n#C5,1n\n#C6,1n\n#C7,1n\n",
            Kind.OPTIONAL_PART);
    assertEquals(
        "#C1, #C2, #C3, #C4, #C5, #C6 and 1 more were read as parts of those names, though the #"
            + " may mean that they are not fitted",
        many.message());
    assertEquals(
        1,
        KitTables.read("placements.csv", "ref,x mm,y mm,side\n#C2,1,2,top\nR1,5,9,top\n")
            .problems()
            .stream()
            .filter(problem -> problem.kind() == Kind.OPTIONAL_PART)
            .count());
  }

  @Test
  void a_comment_that_may_be_a_part_is_said() {
    String bom = "ref,value\nR1,1k\n# R2,2k\n# made in spring\n## C3; C4,1n\n# see R4\n";
    assertEquals(
        List.of(3, 5),
        of(bom, Kind.ROW_IGNORED).stream().map(problem -> problem.place().line()).toList());
  }

  // --- R25 a R27

  @ParameterizedTest(name = "{0} of {1}")
  @CsvSource({
    "R25 a R27, 3, R25 R26 R27, 0",
    "R25 a R27, 2, R25 R27, 0",
    "R25 a R27, '', R25 R27, 1",
    "R25 a R27, 5, R25 R27, 1",
    "R25 a R26, '', R25 R26, 0",
    "R9 a R4, '', R9 R4, 0",
    "'C1, C4 a C6', 4, C1 C4 C5 C6, 0",
    "R25 A R27, 3, R25 R26 R27, 0"
  })
  void of_a_word_that_means_and_or_up_to_the_quantity_tells(
      String cell, String quantity, String read, int asked) {
    String bom = "ref;qty;value\n%s;%s;1k\nD1;1;1N4148\n".formatted(cell, quantity);
    assertEquals(
        "[" + read.replace(" ", ", ") + "]",
        KitTables.read("bom.csv", bom)
            .kit()
            .boards()
            .get(0)
            .items()
            .get(0)
            .designators()
            .toString());
    assertEquals(asked, of(bom, Kind.COLUMN_AMBIGUOUS).size());
  }

  // --- forms that are not read

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    // one part alone is no list
    "'Reference: R1\nValue: 10k\nPackage: 0207\n', 1,"
        + " 'each part stands in lines of its own (\"Reference: R1\")'",
    "'Ref,Q1,R1,R2,D1\nValue,IRLZ44N,100R,10k,1N4007\nQty,1,1,1,1\n', 1, 'the table is turned'",
    "'Reference,R1,R2,C1\nValue,10k,22k,100n\nPackage,0207,0207,disc\n', 1, 'the table is turned'",
    "'Value;10k;22k;100n\nReference;R1;R2;C1\n', 2, 'the table is turned'"
  })
  void a_form_that_is_not_read_is_named_with_what_to_do(String bom, int line, String message) {
    Problem found = only(bom, Kind.HEADER_NOT_FOUND);
    assertTrue(found.message().startsWith(message), found.toString());
    assertEquals(line, found.place().line());
    assertEquals(List.of(), KitTables.read("bom.csv", bom).kit().boards().get(0).items());
  }

  private static Problem only(String bom, Kind kind) {
    List<Problem> found = of(bom, kind);
    assertEquals(1, found.size(), () -> KitTables.read("bom.csv", bom).problems().toString());
    return found.get(0);
  }

  private static List<Problem> of(String bom, Kind kind) {
    return KitTables.read("bom.csv", bom).problems().stream()
        .filter(problem -> problem.kind() == kind)
        .toList();
  }
}
