package lowfirst.intake;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lowfirst.marking.WrittenValue;
import lowfirst.part.PartKind;

/** The kind of part that a line of a BOM names, by what its cells say. */
final class KindOfLine {
  /** What others sit in, whatever the letters of the designator say. */
  private static final Set<PartKind> HOLDERS =
      EnumSet.of(
          PartKind.SOCKET, PartKind.PIN_HEADER, PartKind.SCREW_TERMINAL, PartKind.FUSE_HOLDER);

  private static final Set<PartKind> PLUGS =
      EnumSet.of(PartKind.CONNECTOR, PartKind.PIN_HEADER, PartKind.SCREW_TERMINAL);

  /** A value that only counts pins. */
  private static final Pattern PINS =
      Pattern.compile("(?i)\\d{1,3}[- ]?(pins?|ways?|pol(?:e|es|ig)?|p)");

  private KindOfLine() {}

  /** The kind that most speaks for, of the cells that {@link PartTypeReader} gathers. */
  static PartKind of(List<String> cells) {
    String value = cells.get(PartOfLine.VALUE);
    String prefix = cells.get(PartOfLine.LETTERS);
    var guess = new PartKindGuess();
    guess.vote(PartKindWords.byTypeNumber(value), PartKindGuess.STRONG);
    guess.vote(PartKindWords.byTypeNumber(cells.get(PartOfLine.NUMBER)), PartKindGuess.WEAK);
    guess.vote(PartKindWords.byWords(value), PartKindGuess.STRONG);
    guess.vote(PartKindWords.byFootprint(cells.get(PartOfLine.PACKAGE)), PartKindGuess.STRONG);
    guess.vote(PartKindWords.byFootprint(cells.get(PartOfLine.NUMBER)), PartKindGuess.WEAK);
    Optional<PartKind> described = PartKindWords.byWords(cells.get(PartOfLine.DESCRIPTION));
    boolean counted = value.isEmpty() || PINS.matcher(value).matches();
    boolean holds = counted && described.filter(HOLDERS::contains).isPresent();
    guess.vote(described, holds ? PartKindGuess.STRONG : PartKindGuess.WEAK);
    if (described.isEmpty() && !cells.get(PartOfLine.NUMBER).contains("://")) {
      guess.vote(PartKindWords.byWords(cells.get(PartOfLine.NUMBER)), PartKindGuess.WEAK);
    }
    guess.vote(PartKindWords.byWords(cells.get(PartOfLine.OTHER_TEXT)), PartKindGuess.WEAK);
    Optional<PartKind> letters = PartKindWords.byLetters(prefix);
    boolean sure = prefix.length() == 1 && "RCLD".contains(prefix);
    guess.vote(letters, sure ? PartKindGuess.SUREST : PartKindGuess.WEAK);
    // What plugs into a connector may be all that the value says.
    Optional<PartKind> body = PartKindWords.byFootprint(cells.get(PartOfLine.PACKAGE));
    boolean plugs = letters.filter(PLUGS::contains).isPresent();
    guess.vote(body.filter(kind -> plugs && PLUGS.contains(kind)), PartKindGuess.STRONG);
    boolean valued =
        letters
            .flatMap(PartOfLine::dimension)
            .filter(measured -> WrittenValue.parse(value, Optional.of(measured)).isRead())
            .isPresent();
    guess.vote(valued ? letters : Optional.empty(), PartKindGuess.STRONG);
    PartKind kind = guess.kind();
    boolean unheard = letters.isEmpty() && !prefix.isEmpty();
    return kind == PartKind.UNKNOWN && unheard ? byUnit(cells) : kind;
  }

  /** Where nothing else tells, the unit of the value does. */
  private static PartKind byUnit(List<String> cells) {
    String value =
        cells.get(PartOfLine.VALUE).isEmpty()
            ? cells.get(PartOfLine.DESCRIPTION)
            : cells.get(PartOfLine.VALUE);
    if (value.isEmpty() || !Character.isDigit(value.charAt(0))) {
      return PartKind.UNKNOWN;
    }
    return Stream.of(PartKind.RESISTOR, PartKind.CAPACITOR, PartKind.INDUCTOR)
        .filter(kind -> WrittenValue.showsUnit(value, PartOfLine.dimension(kind).orElseThrow()))
        .reduce((one, other) -> PartKind.UNKNOWN)
        .orElse(PartKind.UNKNOWN);
  }
}
