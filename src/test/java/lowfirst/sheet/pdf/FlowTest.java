package lowfirst.sheet.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where pieces come to stand, on pages whose body is 300 points high. */
class FlowTest {
  private static final Paper PAPER = new Paper(120, 30 + 300 / Paper.POINTS);
  private static final Typeface REGULAR = Typeface.regular();
  private static final Typeface BOLD = Typeface.bold();

  /**
   * {@code a100} is a piece of 100 points, {@code ^7} leaves 7 points above it, {@code >} stays
   * with the next, {@code [20} has a header of 20 points, {@code !} starts a section. What comes
   * out is each piece with where it stands; a bar parts pages.
   */
  @ParameterizedTest
  @CsvSource({
    "a100 b100 c100, a0 b100 c200",
    "a100 b100 c101, a0 b100 | c0",
    "a100^7 b100^10, a0 b110",
    "a200 b94^6, a0 b206",
    "a200 b95^6, a0 | b0",
    "a301 b10, a0 | b0",
    "a250 h20> b30, a0 h250 b270",
    "a250 h20> b31, a0 | h0 b20",
    "a250 h20>^4 b27, a0 | h0 b20",
    "a250 h20> i10> b21, a0 | h0 i20 b30",
    "a100> b150> c100, a0 b100 | c0",
    "x10 a100> b150> c100, x0 | a0 b100 | c0",
    "x10 a100^5> b150^5> c100^5, x0 | a0 b105 | c0",
    "h20^6> b280, h0 b20",
    "x10 h20^6> b275^5, x0 | h0 b25",
    "a10>, a0",
    "a10 ! b10, a0 b10",
    "! a10, a0",
    "a200 ! b60 c60, a0 | b0 c60",
    "a200 ! b60 ! c60, a0 b200 | c0",
    "a200 ! b60 c260, a0 | b0 | c0",
    "! a200 c260, a0 | c0",
    "a200 ! b60 c240, a0 | b0 c60",
    "a290 r30[20, a0 | H0 r20",
    "a290 r30^9[20 s30^9[20, a0 | H0 r20 s59",
    "a100 r30[20 s30[20, a0 r100 s130",
  })
  void pieces_stand_one_below_the_other_and_what_belongs_together_stays(
      String pieces, String where) {
    var document = new OpenDocument(PAPER, REGULAR, BOLD);
    var told = new StringBuilder();
    Flow.set(parsed(pieces, document, told), document);
    assertEquals(where, told.toString().strip());
  }

  private static List<Piece> parsed(String pieces, OpenDocument document, StringBuilder told) {
    var parsed = new ArrayList<Piece>();
    for (String word : pieces.split(" ")) {
      if (word.equals("!")) {
        parsed.add(new Piece(0, 0, Piece.Joint.SECTION, Optional.empty(), (page, top) -> {}));
        continue;
      }
      parsed.add(
          new Piece(
              number(word, "\\^"),
              number(word, "^."),
              word.contains(">") ? Piece.Joint.STAYS_WITH_NEXT : Piece.Joint.FREE,
              word.contains("[")
                  ? Optional.of(
                      new Piece(
                          0,
                          number(word, "\\["),
                          Piece.Joint.STAYS_WITH_NEXT,
                          Optional.empty(),
                          teller("H", document, told)))
                  : Optional.empty(),
              teller(word.substring(0, 1), document, told)));
    }
    return parsed;
  }

  private static double number(String word, String sign) {
    var found = java.util.regex.Pattern.compile(sign + "(\\d+)").matcher(word);
    return found.find() ? Double.parseDouble(found.group(1)) : 0;
  }

  private static Piece.Painter teller(String name, OpenDocument document, StringBuilder told) {
    return (page, top) -> {
      int number = document.pages().indexOf(page) + 1;
      while (told.chars().filter(c -> c == '|').count() < number - 1) {
        told.append("| ");
      }
      long below = Math.round(top - Paper.MARGIN_MILLIMETRES * Paper.POINTS);
      told.append(name).append(below).append(' ');
    };
  }
}
