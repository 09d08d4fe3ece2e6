package lowfirst.progress;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lowfirst.assembly.AssemblyPlan;
import lowfirst.assembly.Step;
import lowfirst.board.Designator;
import lowfirst.board.Unit;
import lowfirst.problem.Excerpt;
import lowfirst.problem.Reading;

/**
 * What a person names when ticking: a step by its number, a designator, a range of designators, or
 * a unit by its serial.
 *
 * @param spots every spot named, once, in the order named; never empty
 */
public record Selection(List<Spot> spots) {

  private static final Pattern STEP = Pattern.compile("(?:step\\s*)?0*([1-9]\\d{0,5})");
  private static final Pattern RANGE =
      Pattern.compile("(\\p{L}+)(\\d{1,5})\\s*[-–]\\s*\\1?(\\d{1,5})");

  public Selection {
    spots = List.copyOf(spots);
  }

  /**
   * Reads what was named.
   *
   * @param serials the units meant; empty when every unit of the board is meant
   */
  public static Reading<Selection> parse(
      AssemblyPlan plan, List<String> texts, List<String> serials) {
    List<Unit> units = allUnits(plan);
    for (String serial : serials) {
      if (units.stream().noneMatch(unit -> unit.serial().equals(serial))) {
        return Reading.fault(
            "no unit has the serial \"" + serial + "\"", "say one of " + words(units));
      }
    }
    Predicate<Unit> meant = unit -> serials.isEmpty() || serials.contains(unit.serial());
    var spots = new LinkedHashSet<Spot>();
    for (String text : texts) {
      Reading<List<Spot>> one = one(plan, text.strip(), units, meant);
      if (one.value().isEmpty()) {
        return Reading.fault(one.fault(), one.remedy());
      }
      spots.addAll(one.value().get());
    }
    return spots.isEmpty()
        ? Reading.fault("nothing is named", "name a step, a designator or a unit")
        : Reading.of(new Selection(List.copyOf(spots)), "named");
  }

  private static Reading<List<Spot>> one(
      AssemblyPlan plan, String text, List<Unit> units, Predicate<Unit> meant) {
    Matcher step = STEP.matcher(text);
    if (step.matches()) {
      return ofStep(plan, Integer.parseInt(step.group(1)), meant);
    }
    Optional<Unit> unit = units.stream().filter(known -> known.serial().equals(text)).findFirst();
    if (unit.isPresent()) {
      return Reading.of(all(plan, spot -> spot.unit().equals(unit.get())), "unit");
    }
    Reading<List<Spot>> single = ofDesignator(plan, text, meant);
    return single.isRead() ? single : ofRange(plan, text, meant, single);
  }

  private static Reading<List<Spot>> ofStep(AssemblyPlan plan, int number, Predicate<Unit> meant) {
    Optional<Step> step = plan.step(number);
    if (step.isEmpty()) {
      return Reading.fault(
          "there is no step " + number, "say a step from 1 to " + plan.steps().size());
    }
    List<Spot> spots =
        Progress.spotsOf(step.get()).stream().filter(spot -> meant.test(spot.unit())).toList();
    return spots.isEmpty()
        ? Reading.fault(
            "step " + number + " is on board " + step.get().board() + ", not on that unit",
            "say one of " + words(Progress.unitsOf(step.get())))
        : Reading.of(spots, "step");
  }

  private static Reading<List<Spot>> ofDesignator(
      AssemblyPlan plan, String text, Predicate<Unit> meant) {
    List<Spot> named = all(plan, spot -> spot.designator().text().equalsIgnoreCase(text));
    List<Spot> exact =
        named.stream().filter(spot -> spot.designator().text().equals(text)).toList();
    List<Spot> found =
        (exact.isEmpty() ? named : exact).stream().filter(spot -> meant.test(spot.unit())).toList();
    if (found.isEmpty()) {
      return named.isEmpty()
          ? Reading.fault("no part to fit has the designator \"" + text + "\"", similar(plan, text))
          : Reading.fault(
              named.get(0).designator() + " is not on that unit",
              "say one of " + words(named.stream().map(Spot::unit).toList()));
    }
    Set<String> boards =
        found.stream().map(spot -> spot.unit().board()).collect(Collectors.toSet());
    Set<Designator> designators = found.stream().map(Spot::designator).collect(Collectors.toSet());
    return boards.size() > 1 || designators.size() > 1
        ? Reading.fault(
            "\"" + text + "\" can mean " + words(found),
            "say which unit with --unit, and write the designator as the board does")
        : Reading.of(found, "designator");
  }

  private static Reading<List<Spot>> ofRange(
      AssemblyPlan plan, String text, Predicate<Unit> meant, Reading<List<Spot>> otherwise) {
    Matcher range = RANGE.matcher(text);
    if (!range.matches()) {
      return otherwise;
    }
    int first = Integer.parseInt(range.group(2));
    int last = Integer.parseInt(range.group(3));
    if (last < first || last - first > 999) {
      return Reading.fault(
          "\"" + text + "\" is no range", "write the lower number first, such as R1-R4");
    }
    var spots = new ArrayList<Spot>();
    for (int number = first; number <= last; number++) {
      Reading<List<Spot>> one = ofDesignator(plan, range.group(1) + number, meant);
      if (!one.isRead()) {
        return one;
      }
      spots.addAll(one.orThrow());
    }
    return Reading.of(spots, "range");
  }

  private static List<Spot> all(AssemblyPlan plan, Predicate<Spot> wanted) {
    return plan.steps().stream()
        .flatMap(step -> Progress.spotsOf(step).stream())
        .filter(wanted)
        .toList();
  }

  private static List<Unit> allUnits(AssemblyPlan plan) {
    return plan.steps().stream()
        .flatMap(step -> Progress.unitsOf(step).stream())
        .distinct()
        .toList();
  }

  /** Names the designators of the same letters, so that a slip of the finger is found. */
  private static String similar(AssemblyPlan plan, String text) {
    String letters = text.replaceFirst("[^\\p{L}].*", "").toUpperCase(Locale.ROOT);
    List<Designator> alike =
        all(plan, spot -> spot.designator().prefix().equals(letters)).stream()
            .map(Spot::designator)
            .distinct()
            .sorted()
            .toList();
    return alike.isEmpty()
        ? "say a step number, a designator of the kit or a unit's serial"
        : "say one of " + words(alike);
  }

  private static String words(List<?> things) {
    return Excerpt.of(things.stream().map(Object::toString).distinct().toList(), 12);
  }
}
