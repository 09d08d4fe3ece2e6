package lowfirst.intake.kind;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.part.PartKind;

/**
 * What words, footprints, type numbers and letters say of a part's kind: {@code part-kinds.txt}.
 */
public final class PartKindWords {
  private static final PartKindWords TABLE = new PartKindWords();

  /** Longer texts are prose; their start says what the part is. */
  private static final int LONGEST = 300;

  /** A longer text says more than a kind. */
  private static final int LONGEST_NAME = 40;

  private static final Optional<PartKind> NOTHING = Optional.empty();

  private static final int SHORTEST_SMALL = 5;

  /** A digit, three digits on end among them, and no capital. */
  private static final Pattern SMALL = Pattern.compile("(?=.*[a-z])(?=.*\\d{3})[a-z\\d][a-z\\d-]*");

  private static final Pattern DIGIT = Pattern.compile("\\p{Nd}");
  private static final Pattern BETWEEN = Pattern.compile("[-_.]+");

  private static final Pattern WITH =
      Pattern.compile(
          "(?i) (?:with|incl(?:\\.|uding)?|mit|avec|con|com|met) | \\(?\\+ ?(?=\\p{L})");

  /** Where a second thought begins; a comma between digits is a decimal one. */
  private static final Pattern CLAUSE = Pattern.compile("(?i)[,;(](?!\\d)| for ");

  /** Whatever is named first, these tell what the line buys. */
  private static final Set<PartKind> KEPT =
      EnumSet.of(
          PartKind.SOCKET,
          PartKind.PIN_HEADER,
          PartKind.SCREW_TERMINAL,
          PartKind.FUSE_HOLDER,
          PartKind.HARDWARE,
          PartKind.BOARD_FEATURE);

  private final Map<String, List<Rule>> rules = new HashMap<>();
  private final Map<String, PartKind> letters = new HashMap<>();

  private record Rule(Pattern pattern, PartKind kind) {}

  /** A kind and where the words for it start. */
  private record Found(PartKind kind, int start) {}

  private PartKindWords() {
    try (var in = PartKindWords.class.getResourceAsStream("part-kinds.txt");
        var reader =
            new BufferedReader(
                new InputStreamReader(Objects.requireNonNull(in), StandardCharsets.UTF_8))) {
      reader.lines().filter(line -> !line.isBlank() && !line.startsWith("#")).forEach(this::add);
    } catch (IOException lost) {
      throw new UncheckedIOException(lost);
    }
  }

  private void add(String line) {
    String[] sides = line.split(" = ", 2);
    String[] name = sides[0].split(" ");
    PartKind kind = PartKind.valueOf(name[1]);
    if (name[0].equals("letters")) {
      for (String prefix : sides[1].strip().split(" ")) {
        letters.putIfAbsent(prefix, kind);
      }
    } else {
      boolean number = name[0].equals("type") || name[0].equals("plain");
      String flags = number ? "" : "(?iU)";
      rules
          .computeIfAbsent(name[0], none -> new ArrayList<>())
          .add(new Rule(Pattern.compile(flags + sides[1].strip()), kind));
    }
  }

  /**
   * By the words of a value or description; what a part comes with, or is for, says less than what
   * it is: {@code pin header, buttons} is no switch.
   */
  public static Optional<PartKind> byWords(String written) {
    String text = written.replace('_', ' ');
    Matcher with = WITH.matcher(text);
    if (with.find() && with.start() < LONGEST) {
      return byClauses(text.substring(0, with.start())).or(() -> byClauses(text));
    }
    return byClauses(text);
  }

  /** What the first clause names, unless a later one only says the same more narrowly. */
  private static Optional<PartKind> byClauses(String text) {
    Optional<Found> whole = TABLE.found("words", text);
    Matcher clause = CLAUSE.matcher(text);
    if (whole.isEmpty()
        || KEPT.contains(whole.get().kind())
        || !clause.find()
        || clause.start() > whole.get().start()) {
      return whole.map(Found::kind);
    }
    return TABLE
        .found("words", text.substring(0, clause.start()))
        .map(Found::kind)
        .filter(first -> !PartKindGuess.areKin(first, whole.get().kind()))
        .or(() -> whole.map(Found::kind));
  }

  /**
   * By a cell that says no more than the kind, in words or as drawing symbols are named: {@code
   * Resistors}, {@code CAP POL}, {@code Q_NPN}. What has a digit says more.
   */
  public static Optional<PartKind> byName(String text) {
    if (text.isEmpty() || text.length() > LONGEST_NAME || DIGIT.matcher(text).find()) {
      return Optional.empty();
    }
    String plain = BETWEEN.matcher(text.substring(text.lastIndexOf(':') + 1)).replaceAll(" ");
    return byWords(plain)
        .or(
            () ->
                TABLE.rules.get("name").stream()
                    .filter(rule -> rule.pattern().matcher(plain.strip()).matches())
                    .map(Rule::kind)
                    .findFirst());
  }

  /** By a footprint or package name. */
  static Optional<PartKind> byFootprint(String text) {
    return TABLE.found("footprint", text).map(Found::kind);
  }

  /** By a maker's type number, which has to match as a whole. */
  public static Optional<PartKind> byTypeNumber(String text) {
    if (text.isEmpty() || text.length() > LONGEST) {
      return Optional.empty();
    }
    return typed(text).or(() -> isSmall(text) ? typed(text.toUpperCase(Locale.ROOT)) : NOTHING);
  }

  private static Optional<PartKind> typed(String text) {
    return TABLE.rules.get("type").stream()
        .filter(rule -> rule.pattern().matcher(text).matches())
        .map(Rule::kind)
        .findFirst();
  }

  /** Whether a number is written all in small letters: 1n4148; shorter ones may be values. */
  private static boolean isSmall(String text) {
    return text.length() >= SHORTEST_SMALL && SMALL.matcher(text).matches();
  }

  /**
   * Whether a maker's type number is of a part that is no narrower kind, whatever words say: a
   * 1N4001 is no Schottky diode.
   */
  public static boolean isPlain(String typeNumber) {
    return typeNumber.length() <= LONGEST
        && TABLE.rules.get("plain").stream()
            .anyMatch(rule -> rule.pattern().matcher(typeNumber).matches());
  }

  /** By the letters that a designator starts with. */
  public static Optional<PartKind> byLetters(String prefix) {
    return Optional.ofNullable(TABLE.letters.get(prefix));
  }

  private Optional<Found> found(String how, String text) {
    String start = text.length() > LONGEST ? text.substring(0, LONGEST) : text;
    for (Rule rule : start.isEmpty() ? List.<Rule>of() : rules.get(how)) {
      Matcher words = rule.pattern().matcher(start);
      if (words.find()) {
        return Optional.of(new Found(rule.kind(), words.start()));
      }
    }
    return Optional.empty();
  }
}
