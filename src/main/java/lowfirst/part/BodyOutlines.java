package lowfirst.part;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import lowfirst.problem.Reading;
import lowfirst.quantity.Source;

/**
 * The package table: body outlines by every name that people and design tools give them.
 *
 * <p>Start reading here for heights; {@link OutlineRules} reads what the table does not name.
 */
public final class BodyOutlines {
  private static final String LEFT_OUT = " \t\n\u000b\f\r-_()./";

  /**
   * What the assumed resistor body, size 0207, dissipates at most as a common metal film: Vishay
   * Beyschlag, MBB/SMA 0207, document 28766, P70 0.6 W. A stronger one may be of any size.
   */
  private static final double MOST_ASSUMED_WATTS = 0.6;

  private final Map<String, BodyOutline> byName = new HashMap<>();
  private final Map<PartKind, BodyOutline> assumed = new HashMap<>();
  private final TreeMap<String, BodyOutline> byTypeStart = new TreeMap<>();

  private BodyOutlines() {}

  /**
   * A row of the package table.
   *
   * @param outline the outline
   * @param otherNames further names it goes by
   * @param usualFor how the type numbers start that usually come in this body
   * @param assumedFor the kinds of part it stands in for where nothing names an outline
   */
  public record Row(
      BodyOutline outline,
      List<String> otherNames,
      List<String> usualFor,
      Set<PartKind> assumedFor) {
    /** An outline that is neither usual nor assumed for anything. */
    public Row(BodyOutline outline, List<String> otherNames) {
      this(outline, otherNames, List.of(), Set.of());
    }
  }

  /** These rows; the first to claim a name, a type number or a kind keeps it. */
  public static BodyOutlines of(List<Row> rows) {
    var table = new BodyOutlines();
    for (Row row : rows) {
      table.byName.putIfAbsent(key(row.outline().name()), row.outline());
      row.otherNames().forEach(name -> table.byName.putIfAbsent(key(name), row.outline()));
      row.usualFor().forEach(start -> table.byTypeStart.putIfAbsent(key(start), row.outline()));
      row.assumedFor().forEach(kind -> table.assumed.putIfAbsent(kind, row.outline()));
    }
    return table;
  }

  /** The outline that goes by this name, case and punctuation aside. */
  public Optional<BodyOutline> named(String name) {
    return Optional.ofNullable(byName.get(key(name)));
  }

  /** Every outline, each once. */
  public List<BodyOutline> all() {
    return byName.values().stream()
        .distinct()
        .sorted(Comparator.comparing(BodyOutline::name))
        .toList();
  }

  /**
   * The outline that a package or footprint name stands for. The rule of the reading says how it
   * was understood; a height that no name tells is unknown in the outline, or stands there as
   * assumed for that kind of part, and says so in its source.
   *
   * @param packageName as the user or a design tool wrote it; may be empty
   */
  public Reading<BodyOutline> find(String packageName, PartKind kind) {
    return OutlineRules.read(OutlineName.of(packageName), kind, this, true);
  }

  /**
   * The outline of a part type: by its package, and where that tells no height, by the body its
   * type number usually comes in.
   */
  public Reading<BodyOutline> find(PartType type) {
    if (SurfaceMount.isNamed(type)) {
      return OutlineRules.flat(
          Stream.of(type.packageName(), type.text(), type.typeNumber())
              .filter(name -> SurfaceMount.isNamed(name, type.kind()))
              .findFirst()
              .orElse(type.packageName().isBlank() ? type.name() : type.packageName()));
    }
    Reading<BodyOutline> byPackage =
        OutlineRules.read(
            OutlineName.of(type.packageName()), type.kind(), this, isOfAssumedSize(type));
    boolean told =
        byPackage
            .value()
            .filter(found -> found.height().isPresent() && !found.isAssumed())
            .isPresent();
    if (told) {
      return byPackage;
    }
    return usual(type.typeNumber())
        .or(() -> usual(type.text()))
        .map(outline -> Reading.of(outline, "the usual body of this type number"))
        .or(() -> type.packageName().isBlank() ? byText(type) : Optional.empty())
        .orElse(byPackage);
  }

  /** Whether the body assumed for its kind can stand for it: not for a stronger resistor. */
  private static boolean isOfAssumedSize(PartType type) {
    return type.kind() != PartKind.RESISTOR
        || type.ratedPower().filter(power -> power.asDouble() > MOST_ASSUMED_WATTS).isEmpty();
  }

  /** Without a package, the value column may name the body: "barrel jack", "1x3". */
  private Optional<Reading<BodyOutline>> byText(PartType type) {
    Reading<BodyOutline> reading = find(type.text(), type.kind());
    return reading.value().filter(found -> found.height().isPresent()).isPresent()
            && !reading.orThrow().isAssumed()
        ? Optional.of(reading)
        : Optional.empty();
  }

  /** The outline assumed for a kind of part where nothing names one. */
  Optional<BodyOutline> assumedFor(PartKind kind) {
    return Optional.ofNullable(assumed.get(kind))
        .map(
            row ->
                OutlineRules.with(
                    row,
                    row.seatedHeightMillimetres(),
                    Source.assumed(
                        "no package is named, so " + row.name(), "the BOM's height column")));
  }

  /**
   * The body that a type number usually comes in. Any part of the number between hyphens may start
   * it, since dealers put their own numbers before the maker's.
   */
  private Optional<BodyOutline> usual(String typeNumber) {
    // a word such as Buzzer is none
    if (typeNumber.length() > OutlineName.LONGEST
        || typeNumber.chars().noneMatch(Character::isDigit)) {
      return Optional.empty();
    }
    String rest = typeNumber;
    while (!rest.isBlank()) {
      Optional<BodyOutline> found = usualFor(key(rest));
      if (found.isPresent()) {
        String source =
            "the usual body of "
                + typeNumber.strip()
                + " ("
                + found.get().name()
                + "), from memory";
        return found.map(
            row ->
                OutlineRules.with(
                    row,
                    row.seatedHeightMillimetres(),
                    Source.assumed(source, "the BOM's height column")));
      }
      int cut = rest.indexOf('-');
      rest = cut < 0 ? "" : rest.substring(cut + 1);
    }
    return Optional.empty();
  }

  /** The row with the longest start that this number begins with. */
  private Optional<BodyOutline> usualFor(String key) {
    for (int end = key.length(); end >= 2; end--) {
      BodyOutline found = byTypeStart.get(key.substring(0, end));
      if (found != null) {
        return Optional.of(found);
      }
    }
    return Optional.empty();
  }

  /** In upper case, without blanks and marks: made for every name of the table at each start. */
  private static String key(String name) {
    var key = new StringBuilder(name.length());
    for (char c : name.strip().toUpperCase(Locale.ROOT).toCharArray()) {
      if (LEFT_OUT.indexOf(c) < 0) {
        key.append(c);
      }
    }
    return key.toString();
  }
}
