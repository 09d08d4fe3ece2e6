package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lowfirst.intake.column.ColumnMap;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.Separator;
import lowfirst.intake.column.TableKind;
import lowfirst.intake.text.PipeTable;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * Finds the cut of a text, among all separators, that explains most as a table.
 *
 * @param text what is looked at; the beginning of a long text
 */
record LikeliestCut(TableKind kind, String file, String text, ColumnMap map) {
  /** Share of rows of the usual length without which words between blanks are no table. */
  private static final double MOSTLY_EVEN = 0.5;

  /** Several tabs between words. */
  private static final Pattern TAB_RUN = Pattern.compile("[^\\t\\n\\r]\\t\\t+[^\\t\\n\\r]");

  /** Characters looked at to find the separator. */
  private static final int SAMPLE = 1 << 14;

  /** The best cut of {@code text} as a table of this kind. */
  static Cut of(TableKind kind, String file, String text, ColumnMap map) {
    Optional<Separator> told = map.separator(kind, file);
    if (told.isPresent()) {
      return Cut.by(told.get(), kind, file, text, map);
    }
    var search = new LikeliestCut(kind, file, sample(text), map);
    Cut likeliest = search.likeliest();
    Cut cut =
        search.text.length() == text.length()
            ? likeliest
            : Cut.by(likeliest.separator(), kind, file, text, map);
    return !kind.isExported() || !cut.separator().isOneCharacter()
        ? cut
        : search.rival(cut).map(rival -> search.asking(cut, rival)).orElse(cut);
  }

  private static String sample(String text) {
    if (text.length() <= SAMPLE) {
      return text;
    }
    int end = Math.max(text.lastIndexOf('\n', SAMPLE), text.lastIndexOf('\r', SAMPLE));
    return text.substring(0, end > 0 ? end : SAMPLE);
  }

  private Cut by(Separator separator) {
    return Cut.by(separator, kind, file, text, map);
  }

  private Cut likeliest() {
    if (kind.isExported() && PipeTable.isIn(text)) {
      Cut bars = by(Separator.BAR);
      if (!bars.partsHeaderAlone()) {
        return bars;
      }
    }
    if (RecordLines.in(kind, text).isPresent()) {
      return by(Separator.RECORDS);
    }
    Optional<Cut> best = Optional.empty();
    double most = 0;
    // Columns of blanks are tried only where no character parts the cells.
    boolean found = false;
    for (Separator separator : Separator.values()) {
      if (!separator.isOneCharacter()
          && (found || !kind.isExported() || separator == Separator.LINES)) {
        break;
      }
      if (separator.isOneCharacter() && text.indexOf(separator.character()) < 0) {
        continue;
      }
      Cut cut = by(separator);
      double worth = cut.worth(kind);
      boolean headed =
          worth > 0 && cut.header().index() >= 0 && !isRagged(cut) && !cut.partsHeaderAlone();
      found |= separator.isOneCharacter() && (headed || SideBySide.areIn(kind, cut.rows()));
      // Where another sign parts as well, a comma is more likely a decimal one.
      boolean comma = best.isEmpty() || best.get().separator() == Separator.COMMA;
      boolean decimal = comma && worth == most && isDecimal();
      if (worth > most || (decimal && worth > 0)) {
        best = Optional.of(cut);
        most = worth;
      }
    }
    Cut cut = best.orElseGet(this::blanksOrFirst);
    return cut.header().isGuessed() || isProse(cut) ? orNone(orLines(cut)) : cut;
  }

  /** Where runs of tabs bring columns below each other, as many of them as the words need. */
  private boolean isRagged(Cut cut) {
    return cut.separator() == Separator.TAB && TAB_RUN.matcher(text).find() && cut.fit() < 0.9;
  }

  /** At single blanks, rows of many lengths are prose, of which nothing is guessed. */
  private boolean isProse(Cut cut) {
    return kind == TableKind.BOM
        && cut.separator() == Separator.BLANKS
        && (cut.evenness() < MOSTLY_EVEN || isBulleted());
  }

  private boolean isBulleted() {
    List<String> lines = text.lines().filter(line -> !line.isBlank()).toList();
    return lines.stream().filter(PartLines::isBulleted).count() * 2 > lines.size();
  }

  private Cut orNone(Cut cut) {
    return isProse(cut)
        ? new Cut(cut.separator(), cut.rows(), new Header(-1, List.of(), List.of()), cut.problems())
        : cut;
  }

  /** A list of lines instead, where the text is one and has no header and no even columns. */
  private Cut orLines(Cut cut) {
    boolean told = !map.columns(kind, file).isEmpty();
    Optional<PartLines> lines =
        kind == TableKind.BOM && !told && OtherForm.of(kind, file, cut.rows()).isEmpty()
            ? PartLines.in(text)
            : Optional.empty();
    if (lines.isEmpty() || beats(cut, lines.get())) {
      return cut;
    }
    return Stream.of(Separator.WIDE_BLANKS, Separator.FIXED_WIDTH)
        .map(this::by)
        .filter(columns -> beats(columns, lines.get()))
        .findFirst()
        .orElseGet(() -> by(Separator.LINES));
  }

  /** Even columns with the designators in one of them are surer than lines, unless signs part. */
  private boolean beats(Cut cut, PartLines lines) {
    boolean columns =
        cut.separator().isOneCharacter()
            || (cut.separator() != Separator.BLANKS && !lines.signed() && cut.width() > 2);
    return columns && cut.header().isComplete(kind) && cut.evenness() > 0.9;
  }

  private Cut blanksOrFirst() {
    Optional<Cut> best = Optional.empty();
    double most = 0;
    for (Separator separator : Separator.values()) {
      if (separator == Separator.LINES) {
        break;
      }
      Cut cut = by(separator);
      if (separator == Separator.SIGNS && cut.header().index() < 0) {
        continue;
      }
      double worth = separator.isOneCharacter() ? cut.evenness() * 1.5 : cut.worth(kind);
      if (worth > most) {
        best = Optional.of(cut);
        most = worth;
      }
    }
    return best.orElseGet(() -> by(Separator.COMMA));
  }

  /** Whether every comma of the text stands between digits. */
  private boolean isDecimal() {
    for (int at = text.indexOf(','); at >= 0; at = text.indexOf(',', at + 1)) {
      boolean between =
          at > 0
              && at + 1 < text.length()
              && Character.isDigit(text.charAt(at - 1))
              && Character.isDigit(text.charAt(at + 1));
      if (!between) {
        return false;
      }
    }
    return true;
  }

  /** Another separator that explains as much, though it cuts otherwise; empty without one. */
  private Optional<Cut> rival(Cut cut) {
    for (Separator other : Separator.values()) {
      boolean mayPart =
          other.isOneCharacter()
              && !(other == Separator.COMMA && isDecimal())
              && other != cut.separator()
              && text.indexOf(other.character()) >= 0;
      if (mayPart) {
        Cut rival = by(other);
        boolean alike = cut.header().index() >= 0 == rival.header().index() >= 0;
        boolean asGood =
            rival.header().isComplete(kind)
                && (rival.header().isHeaded(kind) || !cut.header().isHeaded(kind))
                && rival.header().uses().size() >= cut.header().uses().size()
                && rival.evenness() > 0.9
                && cut.evenness() > 0.9;
        if (alike && asGood) {
          return Optional.of(rival);
        }
      }
    }
    return Optional.empty();
  }

  /** A cut with the question which separator is meant. */
  private Cut asking(Cut cut, Cut rival) {
    String taken = cut.separator().words();
    String other = rival.separator().words();
    var more = new ArrayList<>(cut.problems());
    more.add(
        new Problem(
            Kind.COLUMN_AMBIGUOUS,
            Place.ofLine(file, cut.rows().get(Math.max(0, cut.header().index())).line()),
            taken
                + " part the cells as well as "
                + other
                + ": "
                + cut.shown()
                + ", or "
                + rival.shown()
                + "; "
                + taken
                + " were taken",
            "say --column "
                + kind.key()
                + ".separator="
                + taken.replaceAll("s$", "")
                + " or --column "
                + kind.key()
                + ".separator="
                + other.replaceAll("s$", "")));
    return new Cut(cut.separator(), cut.above(), cut.rows(), cut.header(), more);
  }
}
