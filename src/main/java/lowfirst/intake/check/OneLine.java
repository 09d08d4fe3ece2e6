package lowfirst.intake.check;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.intake.kind.PartKindGuess;
import lowfirst.intake.kind.PartKindWords;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.problem.Excerpt;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;

/**
 * Whether the cells of one BOM line name the same part: its value and its maker's number, its type
 * number and its description. Where one of two can't be understood, they are not said to differ.
 */
final class OneLine {
  private static final Pattern DIGITS = Pattern.compile("\\D+");

  /** Before or behind a digit. */
  private static final Pattern ANY_SIGN = Pattern.compile("(?<=[\\dxX])[xX]|[xX](?=\\d)|\\W");

  /** What has a known type number that tells it from others: not what plugs in or is turned. */
  private static final Set<PartKind> NUMBERED =
      EnumSet.of(
          PartKind.DIODE,
          PartKind.SCHOTTKY_DIODE,
          PartKind.ZENER_DIODE,
          PartKind.BIPOLAR_TRANSISTOR,
          PartKind.JFET,
          PartKind.MOSFET,
          PartKind.THYRISTOR,
          PartKind.REGULATOR,
          PartKind.OPTOCOUPLER,
          PartKind.DRIVER_ARRAY,
          PartKind.INTEGRATED_CIRCUIT);

  /** Of these, a part is one and none of the others. */
  private static final Set<PartKind> NARROW =
      EnumSet.of(
          PartKind.SCHOTTKY_DIODE,
          PartKind.ZENER_DIODE,
          PartKind.BIPOLAR_TRANSISTOR,
          PartKind.JFET,
          PartKind.MOSFET,
          PartKind.THYRISTOR);

  private OneLine() {}

  /** The lines that contradict themselves. */
  static List<Problem> of(List<Item> items) {
    var problems = new ArrayList<Problem>();
    for (Item item : items) {
      PartType type = item.partType();
      boolean numbered = !type.typeNumber().isEmpty() && !type.typeNumber().equals(type.text());
      if (item.isFitted() && numbered && numberDiffers(type)) {
        problems.add(
            differing(
                item,
                "the value \"" + shown(type.text()),
                "the part number \"" + shown(type.typeNumber())));
      } else if (item.isFitted() && descriptionDiffers(type, item.description())) {
        problems.add(
            differing(
                item,
                "the part type \"" + shown(type.name()),
                "the description \"" + shown(item.description())));
      }
      if (item.isFitted()) {
        lettersDiffer(item).ifPresent(problems::add);
      }
    }
    return problems;
  }

  /** R1 and RV1 in one line: what is measured has letters of its own for each kind. */
  private static Optional<Problem> lettersDiffer(Item item) {
    List<Designator> names = item.designators();
    for (Designator other : names) {
      Designator first = names.get(0);
      if (!other.hasPrefixOf(first) && areDifferent(first.prefix(), other.prefix())) {
        return Optional.of(
            new Problem(
                Kind.VALUE_DISAGREES,
                item.place(),
                first
                    + " and "
                    + other
                    + " of this line have letters of different parts; all were taken for one: "
                    + item.partType().kind().words(),
                "give each kind of part a line of its own, or correct the letters"));
      }
    }
    return Optional.empty();
  }

  private static boolean areDifferent(String one, String other) {
    Optional<PartKind> first = PartKindWords.byLetters(one);
    Optional<PartKind> second = PartKindWords.byLetters(other);
    return first.isPresent()
        && second.isPresent()
        && !first.equals(second)
        && Stream.of(first, second).anyMatch(kind -> kind.get().measures().isPresent());
  }

  private static String shown(String text) {
    return Excerpt.of(text, 40);
  }

  private static Problem differing(Item item, String one, String other) {
    return new Problem(
        Kind.VALUE_DISAGREES,
        item.place(),
        one + "\" and " + other + "\" of this line name different parts",
        "find out which is right, and correct the other");
  }

  private static boolean numberDiffers(PartType type) {
    if (type.kind() == PartKind.RESISTOR && type.value().isPresent()) {
      return CodedResistance.in(type.typeNumber())
          .filter(code -> !code.mayMean(type.value().get()))
          .isPresent();
    }
    return isKnown(type.text())
        && isKnown(type.typeNumber())
        && !SameOrNot.resemble(type.text(), type.typeNumber())
        && !isOneOf(type.text(), type.typeNumber())
        && !isOneOf(type.typeNumber(), type.text())
        && !digits(type.text()).equals(digits(type.typeNumber()));
  }

  /** Whether an x in a number stands for any sign, as where it names a family: AB18L1XK50. */
  private static boolean isOneOf(String family, String number) {
    return Pattern.compile(ANY_SIGN.matcher(family).replaceAll("."), Pattern.CASE_INSENSITIVE)
        .matcher(number)
        .lookingAt();
  }

  private static boolean isKnown(String number) {
    return PartKindWords.byTypeNumber(number).filter(NUMBERED::contains).isPresent();
  }

  /** The longest run of digits, which is what makers of the same part agree on; all that long. */
  private static Set<String> digits(String number) {
    var longest = new TreeSet<String>();
    int most = 0;
    for (String run : DIGITS.split(number)) {
      if (run.length() > most) {
        longest.clear();
        most = run.length();
      }
      if (run.length() == most && most > 0) {
        longest.add(run);
      }
    }
    return longest;
  }

  private static boolean descriptionDiffers(PartType type, String description) {
    Optional<PartKind> said = PartKindWords.byWords(description).filter(NARROW::contains);
    if (said.isEmpty()) {
      return false;
    }
    Optional<PartKind> numbered = PartKindWords.byTypeNumber(type.name());
    boolean sure =
        numbered.filter(NARROW::contains).isPresent() || PartKindWords.isPlain(type.name());
    return sure
        && numbered.filter(kind -> PartKindGuess.areKin(said.get(), kind)).isPresent()
        && !numbered.equals(said);
  }
}
