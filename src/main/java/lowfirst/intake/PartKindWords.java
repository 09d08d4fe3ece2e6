package lowfirst.intake;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.part.PartKind;

/**
 * What words, footprints, type numbers and letters say of a part's kind: {@code part-kinds.txt}.
 */
final class PartKindWords {
  private static final PartKindWords TABLE = new PartKindWords();

  /** Longer texts are prose; their start says what the part is. */
  private static final int LONGEST = 300;

  private static final Pattern WITH =
      Pattern.compile(
          "(?i) (?:with|incl(?:\\.|uding)?|mit|avec|con|com|met) | \\(?\\+ ?(?=\\p{L})");

  private final Map<String, List<Rule>> rules = new HashMap<>();
  private final Map<String, PartKind> letters = new HashMap<>();

  private record Rule(Pattern pattern, PartKind kind) {}

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
      String flags = name[0].equals("type") ? "" : "(?iU)";
      rules
          .computeIfAbsent(name[0], none -> new ArrayList<>())
          .add(new Rule(Pattern.compile(flags + sides[1].strip()), kind));
    }
  }

  /** By the words of a value or description; what a part comes with says less than what it is. */
  static Optional<PartKind> byWords(String text) {
    Matcher with = WITH.matcher(text);
    return with.find() && with.start() < LONGEST
        ? TABLE.found("words", text.substring(0, with.start())).or(() -> TABLE.found("words", text))
        : TABLE.found("words", text);
  }

  /** By a footprint or package name. */
  static Optional<PartKind> byFootprint(String text) {
    return TABLE.found("footprint", text);
  }

  /** By a maker's type number, which has to match as a whole. */
  static Optional<PartKind> byTypeNumber(String text) {
    if (text.isEmpty() || text.length() > LONGEST) {
      return Optional.empty();
    }
    return TABLE.rules.get("type").stream()
        .filter(rule -> rule.pattern().matcher(text).matches())
        .map(Rule::kind)
        .findFirst();
  }

  /** By the letters that a designator starts with. */
  static Optional<PartKind> byLetters(String prefix) {
    return Optional.ofNullable(TABLE.letters.get(prefix));
  }

  private Optional<PartKind> found(String how, String text) {
    if (text.isEmpty()) {
      return Optional.empty();
    }
    String start = text.length() > LONGEST ? text.substring(0, LONGEST) : text;
    return rules.get(how).stream()
        .filter(rule -> rule.pattern().matcher(start).find())
        .map(Rule::kind)
        .findFirst();
  }
}
