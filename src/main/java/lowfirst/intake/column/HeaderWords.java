package lowfirst.intake.column;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The trade's header words, from the resource {@code headers.txt}. */
public final class HeaderWords {
  private static final Pattern ACCENT = Pattern.compile("\\p{M}");
  private static final Map<TableKind, Map<String, List<Match>>> BY_TABLE = load();

  /** From this rank on, a header names its column only when no surer one does. */
  public static final int WEAK = 1000;

  /** A longer text is no header. */
  private static final int LONGEST = 60;

  private static final Pattern OR = Pattern.compile("/|或");

  /** Headers about something else, whatever words they share. */
  private static final Pattern OTHER =
      Pattern.compile(
          "(?i)price|cost|pin|pad|stock|order|supplier|vendor|distributor|library|sheet|image|link");

  /** What else may be told along x and y than where a part sits. */
  private static final Pattern NO_PLACE =
      Pattern.compile(
          "(?i)size|width|height|length|extent|offset|shift|scale|pitch|step|grid|count|mirror|flip|rot|angle");

  private HeaderWords() {}

  /**
   * A column that a header may name.
   *
   * @param rank how sure it is; smaller is surer, {@link #WEAK} and above only for want of better
   */
  public record Match(Column column, int rank) {
    /** Whether it counts only for want of a better one. */
    public boolean isWeak() {
      return rank >= WEAK;
    }
  }

  /** The columns that {@code header} may name in a table of this kind, the surest first. */
  public static List<Match> matches(TableKind kind, String header) {
    if (isNumber(header)) {
      return List.of();
    }
    Map<String, List<Match>> words = BY_TABLE.get(kind);
    String text = HeaderUnit.without(header);
    List<Match> whole = words.getOrDefault(key(text), List.of());
    boolean prose = text.length() > LONGEST || text.contains("://");
    if (!whole.isEmpty() || prose) {
      return whole;
    }
    if (!kind.isExported()) {
      return words.getOrDefault(key(HeaderUnit.withoutAny(header)), List.of());
    }
    int note = text.indexOf('(');
    Matcher or = OR.matcher(text);
    int half = or.find() ? or.start() : -1;
    return half < 0 || (note > 0 && note < half) ? inside(text, words) : halves(text, words);
  }

  /** Whether a text is nothing but a word for this column. */
  public static boolean isWordFor(TableKind kind, Column column, String text) {
    return BY_TABLE.get(kind).getOrDefault(key(text), List.of()).stream()
        .anyMatch(match -> match.column() == column);
  }

  /** Whether digits and points are all there is, as in most cells of a placement list. */
  private static boolean isNumber(String text) {
    for (int at = 0; at < text.length(); at++) {
      char c = text.charAt(at);
      if (c != '.' && c != '-' && (c < '0' || c > '9')) {
        return false;
      }
    }
    return true;
  }

  /** The cell of a header row that names a column surest; -1 when none does. */
  public static int cell(TableKind kind, Row header, Column column) {
    int surest = -1;
    int best = Integer.MAX_VALUE;
    for (int cell = 0; cell < header.size(); cell++) {
      for (Match match : matches(kind, header.cell(cell))) {
        if (match.column() == column && match.rank() < best) {
          surest = cell;
          best = match.rank();
        }
      }
    }
    return surest;
  }

  /** "Value/Part Number": either half may name the column, less surely. */
  private static List<Match> halves(String text, Map<String, List<Match>> words) {
    var halves = new ArrayList<Match>();
    for (String half : OR.split(text)) {
      for (Match match : words.getOrDefault(key(half), List.of())) {
        halves.add(new Match(match.column(), match.rank() + WEAK / 2));
      }
    }
    return halves;
  }

  /** "Qty Used": a sure word, or two, inside a longer header may name the column. */
  private static List<Match> inside(String text, Map<String, List<Match>> words) {
    String[] parts = text.split("[\\s_.-]+");
    var found = new ArrayList<Match>();
    if (parts.length < 2 || parts.length > 6 || OTHER.matcher(text).find()) {
      return found;
    }
    for (int length = 2; length >= 1 && found.isEmpty(); length--) {
      for (int from = 0; from + length <= parts.length; from++) {
        String phrase = String.join(" ", List.of(parts).subList(from, from + length));
        if (phrase.length() > 2 || isAxis(phrase, text)) {
          words.getOrDefault(key(phrase), List.of()).stream()
              .filter(match -> !match.isWeak())
              .forEach(match -> found.add(new Match(match.column(), match.rank() + 2 * WEAK)));
        }
      }
    }
    return found;
  }

  /** "Midpoint X": the letter alone tells, unless the words about it name what is no place. */
  private static boolean isAxis(String word, String header) {
    return (word.equalsIgnoreCase("x") || word.equalsIgnoreCase("y"))
        && !NO_PLACE.matcher(header).find();
  }

  /** A header without case, accents, blanks and punctuation; a lone # stays. */
  public static String key(String header) {
    String plain =
        isPlain(header)
            ? header
            : ACCENT.matcher(Normalizer.normalize(header, Normalizer.Form.NFD)).replaceAll("");
    var bare = new StringBuilder(plain.length());
    for (int at = 0; at < plain.length(); at++) {
      char c = Character.toLowerCase(plain.charAt(at));
      boolean dropped = Character.isWhitespace(c) || (isPunctuation(c) && c != '#');
      boolean sign = c == '#' && bare.length() == 0 && plain.length() > 1;
      if (!dropped && !sign) {
        bare.append(c);
      }
    }
    return bare.length() == 0 && plain.strip().equals("#") ? "#" : bare.toString();
  }

  private static boolean isPlain(String text) {
    for (int at = 0; at < text.length(); at++) {
      if (text.charAt(at) > 127) {
        return false;
      }
    }
    return true;
  }

  private static boolean isPunctuation(char c) {
    return (c >= '!' && c <= '/')
        || (c >= ':' && c <= '@')
        || (c >= '[' && c <= '`')
        || (c >= '{' && c <= '~');
  }

  private static Map<TableKind, Map<String, List<Match>>> load() {
    var tables = new EnumMap<TableKind, Map<String, List<Match>>>(TableKind.class);
    for (TableKind kind : TableKind.values()) {
      tables.put(kind, new HashMap<>());
    }
    try (var in = HeaderWords.class.getResourceAsStream("headers.txt");
        var reader =
            new BufferedReader(
                new InputStreamReader(Objects.requireNonNull(in), StandardCharsets.UTF_8))) {
      reader
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .forEach(line -> add(tables, line));
    } catch (IOException lost) {
      throw new UncheckedIOException(lost);
    }
    return tables;
  }

  private static void add(Map<TableKind, Map<String, List<Match>>> tables, String line) {
    String[] sides = line.split("=", 2);
    String[] name = sides[0].strip().split("\\.", 2);
    TableKind kind = TableKind.valueOf(name[0].toUpperCase(Locale.ROOT));
    Column column = Column.ofKey(name[1]).orElseThrow(() -> new IllegalStateException(line));
    String[] sureAndWeak = sides[1].split("~", 2);
    for (int part = 0; part < sureAndWeak.length; part++) {
      int rank = part * WEAK;
      for (String header : sureAndWeak[part].split(",")) {
        int own = rank++;
        List<Match> known =
            tables.get(kind).computeIfAbsent(key(header), none -> new ArrayList<>());
        if (known.stream().noneMatch(match -> match.column() == column)) {
          known.add(new Match(column, own));
        }
      }
    }
  }
}
