package lowfirst.sorting;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lowfirst.board.Kit;
import lowfirst.marking.BandSequence;
import lowfirst.marking.Colour;
import lowfirst.part.PartKind;
import lowfirst.sorting.Likeness.Circumstance;

/**
 * Every pair of part types in a kit that can be mistaken for one another, the worst mix-up first.
 */
public final class LookAlikes {

  /** More misread bands than this are not taken for a mistake of the eye. */
  private static final int MOST_MISREAD = 2;

  /** The number of pins in the name of a dual in-line package. */
  private static final Pattern DUAL = Pattern.compile("(?i)DIP[-_ ]?(\\d{1,2})");

  private LookAlikes() {}

  /** The look-alikes of a kit. */
  public static List<LookAlike> in(Kit kit) {
    return among(Compartments.of(kit), Meter.of(kit.settings()));
  }

  static List<LookAlike> among(List<Compartment> compartments, Meter meter) {
    List<PartMarking> markings = compartments.stream().map(Compartment::marking).toList();
    var found = new ArrayList<LookAlike>();
    for (int i = 0; i < compartments.size(); i++) {
      for (int j = i + 1; j < compartments.size(); j++) {
        Compartment one = compartments.get(i);
        Compartment other = compartments.get(j);
        likeness(one, markings.get(i), other, markings.get(j))
            .ifPresent(likeness -> found.add(LookAlike.of(one, other, likeness, meter)));
      }
    }
    return found.stream().sorted(LookAlike.WORST_FIRST).toList();
  }

  /** The strongest reason to mistake one for the other, if there is any. */
  private static Optional<Likeness> likeness(
      Compartment one, PartMarking first, Compartment other, PartMarking second) {
    return Stream.of(
            reversed(first, second),
            alikeBands(first, second),
            sameValue(one, other),
            sameText(one, first, other, second),
            codeAsNumber(one, first, other, second),
            sameBody(one, other))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Optional<Likeness> reversed(PartMarking first, PartMarking second) {
    return first.bands().stream()
        .filter(bands -> !bands.isPalindrome() && second.bands().contains(bands.reversed()))
        .findFirst()
        .map(Likeness.Reversed::new);
  }

  private static Optional<Likeness> alikeBands(PartMarking first, PartMarking second) {
    for (BandSequence one : first.bands()) {
      for (BandSequence other : second.bands()) {
        Optional<Likeness> alike = alikeBands(one, other);
        if (alike.isPresent()) {
          return alike;
        }
      }
    }
    return Optional.empty();
  }

  static Optional<Likeness> alikeBands(BandSequence one, BandSequence other) {
    if (one.count() != other.count()) {
      return Optional.empty();
    }
    var places = new ArrayList<Integer>();
    Set<Circumstance> circumstances = EnumSet.allOf(Circumstance.class);
    for (int i = 0; i < one.count(); i++) {
      Colour here = one.bands().get(i);
      Colour there = other.bands().get(i);
      if (here != there) {
        places.add(i + 1);
        circumstances.retainAll(ConfusedColours.of(here, there));
      }
    }
    boolean alike = !places.isEmpty() && places.size() <= MOST_MISREAD && !circumstances.isEmpty();
    return alike
        ? Optional.of(new Likeness.AlikeBands(one, other, places, Set.copyOf(circumstances)))
        : Optional.empty();
  }

  /** The same kind and value with another tolerance, voltage, power or body. */
  private static Optional<Likeness> sameValue(Compartment one, Compartment other) {
    boolean same =
        one.type().kind() == other.type().kind()
            && one.type().value().isPresent()
            && one.type().value().equals(other.type().value());
    return same ? Optional.of(new Likeness.SameValue()) : Optional.empty();
  }

  private static Optional<Likeness> sameText(
      Compartment one, PartMarking first, Compartment other, PartMarking second) {
    if (one.type().kind() == other.type().kind()) {
      return Optional.empty();
    }
    return first.texts().stream()
        .filter(text -> !text.isBlank() && second.texts().contains(text))
        .findFirst()
        .map(Likeness.SameText::new);
  }

  private static Optional<Likeness> codeAsNumber(
      Compartment one, PartMarking first, Compartment other, PartMarking second) {
    return readAsNumber(first, other)
        .or(() -> readAsNumber(second, one))
        .map(Likeness.CodeAsNumber::new);
  }

  /** A print of three digits that is, as so many picofarads, the value of the other part. */
  private static Optional<String> readAsNumber(PartMarking marking, Compartment other) {
    if (!other.type().kind().isCapacitor() || other.type().value().isEmpty()) {
      return Optional.empty();
    }
    String picofarads =
        other
            .type()
            .value()
            .get()
            .amount()
            .scaleByPowerOfTen(12)
            .stripTrailingZeros()
            .toPlainString();
    return marking.texts().stream()
        .filter(text -> text.matches("\\d{3}[A-Z]?") && text.startsWith(picofarads))
        .filter(text -> picofarads.length() == 3)
        .findFirst();
  }

  /** Semiconductors and the like in one body: only the print tells them apart. */
  private static Optional<Likeness> sameBody(Compartment one, Compartment other) {
    if (!isToldByNumber(one.type().kind()) || !isToldByNumber(other.type().kind())) {
      return Optional.empty();
    }
    return body(one)
        .filter(name -> body(other).filter(name::equals).isPresent())
        .map(Likeness.SameBody::new);
  }

  /** The body's name, whether it stands or lies. */
  private static Optional<String> body(Compartment compartment) {
    Matcher dual = DUAL.matcher(compartment.type().packageName());
    String pins = dual.find() ? ", " + dual.group(1) + " pins" : "";
    return compartment
        .outline()
        .map(outline -> outline.name().replaceAll("(?i),?\\s+(standing|lying|flat)\\b.*", ""))
        .map(name -> name + pins);
  }

  private static boolean isToldByNumber(PartKind kind) {
    return switch (kind) {
      case DIODE,
          SCHOTTKY_DIODE,
          ZENER_DIODE,
          BRIDGE_RECTIFIER,
          LED,
          TRANSISTOR,
          BIPOLAR_TRANSISTOR,
          JFET,
          MOSFET,
          THYRISTOR,
          REGULATOR,
          INTEGRATED_CIRCUIT,
          OPTOCOUPLER,
          DRIVER_ARRAY,
          CRYSTAL,
          RESONATOR,
          FUSE,
          VARISTOR,
          THERMISTOR,
          PHOTORESISTOR,
          RELAY ->
          true;
      default -> false;
    };
  }
}
