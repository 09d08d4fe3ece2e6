package lowfirst.intake.cell;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.TableRow;
import lowfirst.part.PartKind;
import lowfirst.problem.Excerpt;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;

/**
 * Words by which a BOM leaves it to the builder whether a part is fitted, or which. Such a part
 * counts as fitted, so that nothing is missing from the bag, and it is said; common practice.
 */
public final class FittingWords {
  private static final Pattern OPTIONAL =
      Pattern.compile(
          "(?iU)\\b(optional\\w*|opt\\.?(?=[\\s),;]|$)|wahlweise|option(nel\\w*)?\\b|op[czt]ional\\w*|optioneel|opcjonaln\\w*|voliteln\\w*|facultati\\w*"
              + "|(if|when|where) (required|needed|used|wanted|desired)"
              + "|(only|just) (needed |required |used |fitted )?(for|if|when|with)\\b[^,;]*"
              + "|not (needed|required|used|fitted) (if|when|with|for)\\b[^,;]*"
              + "|(needed|required|fit|fitted|used) only (if|when|with|for)\\b[^,;]*"
              + "|nur (bei|f(ü|ue)r|wenn)\\b[^,;]*|bei bedarf)|任意");

  private static final Pattern ALTERNATIVE =
      Pattern.compile(
          "(?iU)(\\b(alternativ\\w*|instead of|ersatzweise)\\b.*|(^|\\S+ )\\b(or|oder|ou|oppure)\\b "
              + "(?!better|more|higher|greater|larger|bigger|similar|equiv|so\\b|besser|(ä|ae)hnlich|mieux)\\S.*)");

  private static final Pattern LEFT_OUT =
      Pattern.compile(
          "(?iU)^\\W*not (needed|required)(?=\\W*$|\\s?[,;:(])"
              + "|\\b(not used|leave (it )?(empty|out|off|open|unpopulated)|omit(ted)?|entf(ä|ae)llt"
              + "|freilassen)\\b");

  private static final char LAST_LATIN = '\u024f';

  private static final Pattern NOTHING = Pattern.compile("(?i)n\\.?/?c\\.?");

  private static final Pattern NO_VALUE =
      Pattern.compile("(?iU)none|keine?r?|aucun|ninguno|nessuno|brak");

  /** What to do about a part that another has fitted. */
  public static final String UNLESS_DONE = "if it is, write no into a column \"fitted\"";

  /** Where such words stand. */
  private static final List<Column> PLACES =
      List.of(Column.VALUE, Column.QUANTITY, Column.FITTED, Column.DESCRIPTION, Column.PART_TYPE);

  /** Texts that say the same again need no further look. */
  private final Map<String, Said> known = new HashMap<>();

  /** What a text says of fitting; empty texts where it says nothing. */
  private record Said(String optional, String alternative, String done, boolean leftOut) {
    static final Said NOTHING = new Said("", "", "", false);
  }

  /** Whether the words of a text say that a place stays empty. */
  public static boolean leaveOut(String text) {
    return LEFT_OUT.matcher(text).find();
  }

  /** Whether a text says nothing but that the part is optional, so that it is no value. */
  public static boolean areAll(String text) {
    return OPTIONAL.matcher(text).matches();
  }

  /** Whether a text begins with such words, as the heading over optional parts does. */
  public static boolean beginWithOptional(String text) {
    return OPTIONAL.matcher(text).lookingAt();
  }

  /** Whether words leave it to the builder to fit the part. */
  public boolean areOptional(TableRow row) {
    return PLACES.stream().anyMatch(column -> !said(row, column).optional().isEmpty());
  }

  /** Whether words, or those beside its designators, say that the place stays empty. */
  public boolean leaveOut(TableRow row, String besideNames, PartKind kind) {
    boolean plain = kind == PartKind.RESISTOR || kind == PartKind.UNKNOWN || kind.isCapacitor();
    return (plain && NOTHING.matcher(row.text(Column.VALUE)).matches())
        || (plain && NOTHING.matcher(besideNames).matches())
        || PLACES.stream().anyMatch(column -> said(row, column).leftOut());
  }

  /** What to decide about a part that is fitted; empty when nothing is left open. */
  public Optional<Problem> leaveOpen(TableRow row) {
    if (FittedSigns.isYes(row.text(Column.OPTIONAL))) {
      return Optional.of(
          row.problem(
              Kind.OPTIONAL_PART,
              Column.OPTIONAL,
              "the BOM leaves it open whether to fit this; it counts as fitted",
              "decide, and write yes or no into a column \"fitted\""));
    }
    if (NO_VALUE.matcher(row.text(Column.VALUE)).matches()) {
      return Optional.of(
          row.problem(
              Kind.OPTIONAL_PART,
              Column.VALUE,
              "\""
                  + row.text(Column.VALUE)
                  + "\" may say that the part is not fitted, or that it has no value; it counts as"
                  + " fitted",
              "write its value, or yes or no into a column \"fitted\""));
    }
    for (Column column : PLACES) {
      Said said = said(row, column);
      if (!said.optional().isEmpty()) {
        return Optional.of(
            row.problem(
                Kind.OPTIONAL_PART,
                column,
                "the BOM leaves it open whether to fit this (\""
                    + said.optional()
                    + "\"); it counts as fitted",
                "decide, and write yes or no into a column \"fitted\""));
      }
      if (!said.done().isEmpty()) {
        return Optional.of(row.problem(Kind.OPTIONAL_PART, column, done(said.done()), UNLESS_DONE));
      }
      if (!said.alternative().isEmpty() && column != Column.QUANTITY) {
        return Optional.of(
            row.problem(
                Kind.OPTIONAL_PART,
                column,
                "the BOM names an alternative (\"" + said.alternative() + "\"); it is not read",
                "decide, and write just what you fit"));
      }
    }
    return Optional.empty();
  }

  /** That somebody else has fitted the part, as these words say. */
  public static String done(String words) {
    return "the BOM says that the part is on the board already (\""
        + words
        + "\"); it counts as to be fitted";
  }

  /** The same of words beside designators: R1, R2 (optional). */
  public Optional<Problem> leaveOpen(TableRow row, String besideNames) {
    Said said = said(besideNames);
    if (!said.done().isEmpty()) {
      return Optional.of(
          row.problem(Kind.OPTIONAL_PART, Column.DESIGNATORS, done(said.done()), UNLESS_DONE));
    }
    return said.optional().isEmpty()
        ? Optional.empty()
        : Optional.of(
            row.problem(
                Kind.OPTIONAL_PART,
                Column.DESIGNATORS,
                "the BOM leaves it open whether to fit this or a part of it (\""
                    + said.optional()
                    + "\"); all counts as fitted",
                "decide, and take out what you don't fit"));
  }

  private Said said(TableRow row, Column column) {
    return said(row.text(column));
  }

  private Said said(String text) {
    return mayTell(text) ? known.computeIfAbsent(text, FittingWords::read) : Said.NOTHING;
  }

  /** Spares values and type numbers the closer look. */
  private static boolean mayTell(String text) {
    int length = text.length();
    // Other scripts say it in two letters.
    boolean foreign = length > 1 && text.charAt(0) > LAST_LATIN;
    return length <= 500
        && (foreign
            || length > 7
            || (length > 2 && (text.indexOf(' ') > 0 || "oO(".indexOf(text.charAt(0)) >= 0)));
  }

  private static Said read(String text) {
    return new Said(
        found(OPTIONAL, text),
        found(ALTERNATIVE, text),
        DoneWords.in(text),
        LEFT_OUT.matcher(text).find());
  }

  private static String found(Pattern pattern, String text) {
    Matcher words = pattern.matcher(text);
    return words.find() ? Excerpt.of(words.group().strip(), 40) : "";
  }
}
