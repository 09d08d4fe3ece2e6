package lowfirst.sheet.check;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import lowfirst.board.Board;
import lowfirst.board.Item;
import lowfirst.intake.KitReading;
import lowfirst.problem.Excerpt;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;
import lowfirst.problem.Severity;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Cell;
import lowfirst.sheet.document.Block.Facts;
import lowfirst.sheet.document.Block.Heading;
import lowfirst.sheet.document.Block.Paragraph;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.document.Tables;
import lowfirst.sheet.wording.Counted;

/** What {@code check} found: problems file by file, then the counts. */
public final class CheckDocument {
  /** So many problems of one kind in one file are shown, then it says how many more there are. */
  private static final int SHOWN = 12;

  private static final List<Table.Column> COLUMNS =
      List.of(
          Tables.words("", 8),
          Tables.numbers("line", 5),
          Tables.words("cell", 20),
          Tables.words("what is wrong", 40),
          Tables.words("what to do", 30));

  private CheckDocument() {}

  /** How many problems are shown. */
  public enum Extent {
    ALL,
    /** Of many problems of one kind in one file, only the first dozen. */
    FIRST_OF_A_KIND
  }

  /** The problems and the counts. */
  public static Document of(KitReading reading, Extent extent) {
    var blocks = new ArrayList<Block>();
    addProblems(reading, extent, blocks);
    addSummary(reading, blocks);
    return document(reading, blocks);
  }

  /** The same, after how each table was understood. */
  public static Document explained(KitReading reading, Extent extent) {
    var blocks = new ArrayList<Block>(UnderstandingBlocks.of(reading.understood()));
    addProblems(reading, extent, blocks);
    addSummary(reading, blocks);
    return document(reading, blocks);
  }

  private static Document document(KitReading reading, List<Block> blocks) {
    return new Document("Check of " + reading.kit().settings().title(), "", blocks);
  }

  private static void addProblems(KitReading reading, Extent extent, List<Block> blocks) {
    var byFile = new TreeMap<String, List<Problem>>();
    for (Problem problem : reading.problems()) {
      byFile.computeIfAbsent(problem.place().file(), none -> new ArrayList<>()).add(problem);
    }
    byFile.forEach((file, problems) -> addFile(file, problems, extent, blocks));
  }

  private static void addFile(
      String file, List<Problem> problems, Extent extent, List<Block> blocks) {
    blocks.add(new Heading(2, file));
    var rows = new ArrayList<Table.Row>();
    var seen = new EnumMap<Kind, Integer>(Kind.class);
    for (Problem problem : problems) {
      int number = seen.merge(problem.kind(), 1, Integer::sum);
      if (extent == Extent.ALL || number <= SHOWN) {
        rows.add(row(problem));
      }
    }
    blocks.add(new Table("", COLUMNS, rows));
    if (extent == Extent.FIRST_OF_A_KIND) {
      int hidden = seen.values().stream().mapToInt(count -> Math.max(0, count - SHOWN)).sum();
      if (hidden > 0) {
        blocks.add(
            new Paragraph(
                hidden
                    + " more of these kinds "
                    + (hidden == 1 ? "is" : "are")
                    + " not shown here; --csv shows all."));
      }
    }
  }

  private static Table.Row row(Problem problem) {
    Place place = problem.place();
    return new Table.Row(
        List.of(
            Cell.of(words(problem.severity())),
            Cell.of(place.line() > 0 ? place.line() + "" : ""),
            Cell.of(cell(place)),
            Cell.of(problem.message()),
            Cell.of(problem.remedy())));
  }

  private static String cell(Place place) {
    if (place.column() == 0) {
      return place.header();
    }
    String name = place.header().isEmpty() ? "column " + place.column() : place.header();
    String text = place.cell().replaceAll("\\p{Cntrl}+", " ");
    return name + ": " + (text.isEmpty() ? "(empty)" : Excerpt.of(text, 60));
  }

  /** How much a problem matters, in a word. */
  private static String words(Severity severity) {
    return switch (severity) {
      case FAULT -> "fault";
      case CAUTION -> "caution";
      case NOTE -> "note";
    };
  }

  private static void addSummary(KitReading reading, List<Block> blocks) {
    blocks.add(new Heading(2, "Summary"));
    var facts = new ArrayList<Facts.Fact>();
    for (Board board : reading.kit().boards()) {
      facts.add(new Facts.Fact(board.name(), counts(board)));
    }
    Map<Severity, Long> counts = new EnumMap<>(Severity.class);
    reading.problems().forEach(problem -> counts.merge(problem.severity(), 1L, Long::sum));
    facts.add(
        new Facts.Fact(
            "found",
            Counted.of(counts.getOrDefault(Severity.FAULT, 0L), "fault")
                + ", "
                + Counted.of(counts.getOrDefault(Severity.CAUTION, 0L), "caution")
                + ", "
                + Counted.of(counts.getOrDefault(Severity.NOTE, 0L), "note")));
    blocks.add(new Facts(facts));
    blocks.add(new Paragraph(closing(reading)));
  }

  /** Tables agree only where there are two to compare; else it says which one is missing. */
  private static String closing(KitReading reading) {
    List<Board> alone =
        reading.kit().boards().stream()
            .filter(board -> board.bomLines().isEmpty() || board.placements().isEmpty())
            .toList();
    if (alone.isEmpty() && !reading.kit().boards().isEmpty()) {
      return reading.needsALook()
          ? "Look at the faults and cautions before you solder."
          : "The tables agree. This does not replace looking at the boards and the parts.";
    }
    String missing =
        alone.isEmpty()
            ? "the kit has no board"
            : alone.stream()
                .map(board -> board.name() + " has " + missing(board))
                .collect(Collectors.joining("; "));
    boolean none = alone.size() == reading.kit().boards().size();
    return (none ? "There was nothing to compare: " : "Not every board could be compared: ")
        + missing
        + "."
        + (reading.needsALook() ? " Look at the faults and cautions before you solder." : "");
  }

  private static String missing(Board board) {
    if (board.bomLines().isEmpty() && board.placements().isEmpty()) {
      return "no BOM lines and no placements";
    }
    return board.bomLines().isEmpty()
        ? "no BOM lines to hold its placement list against"
        : "no placements to hold its BOM against";
  }

  private static String counts(Board board) {
    List<Item> lines = board.bomLines();
    int designators = lines.stream().mapToInt(item -> item.designators().size()).sum();
    int leftOut =
        lines.stream()
            .filter(item -> !item.isFitted())
            .mapToInt(item -> item.designators().size())
            .sum();
    return (board.count() > 1 ? board.count() + " built, each with " : "")
        + Counted.of(lines.size(), "BOM line")
        + ", "
        + Counted.of(designators, "designator")
        + (leftOut > 0 ? " (" + leftOut + " not fitted)" : "")
        + ", "
        + Counted.of(lines.stream().filter(Item::isFitted).mapToLong(Item::quantity).sum(), "part")
        + " to buy, "
        + Counted.of(board.placements().size(), "placement");
  }
}
