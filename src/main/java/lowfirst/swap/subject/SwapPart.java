package lowfirst.swap.subject;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.board.Item;
import lowfirst.part.BodyOutline;
import lowfirst.part.DatasheetLine;
import lowfirst.part.Datasheets;
import lowfirst.part.PartType;
import lowfirst.quantity.Quantity;

/**
 * One of the two parts of a swap, with everything known of it.
 *
 * @param type what it is
 * @param outline its body, where known
 * @param lines datasheet lines about it, and lines for whatever its own text states
 */
public record SwapPart(PartType type, Optional<BodyOutline> outline, List<DatasheetLine> lines) {

  /** What a value is usually written with. */
  private record Beside(String words, String example) {}

  private static final Map<String, Beside> BESIDE_THE_VALUE =
      Map.of(
          "PD", new Beside("power", "0.25 W"),
          "tolerance", new Beside("tolerance", "5 %"),
          "Vrated", new Beside("rated voltage", "50 V"),
          "Vmax", new Beside("highest voltage", "250 V"),
          "TCR", new Beside("temperature coefficient", "50 ppm"),
          "dielectric", new Beside("dielectric", "X7R"),
          "characteristic", new Beside("characteristic", "T 2 A or F 2 A"),
          "colour", new Beside("colour", "red"));

  public SwapPart {
    lines = List.copyOf(lines);
  }

  /** The part that the BOM asks for. */
  public static SwapPart asked(Item item, Optional<BodyOutline> outline, Datasheets datasheets) {
    return of(item.partType(), item.description(), outline, datasheets);
  }

  /** A candidate. */
  public static SwapPart offered(
      PartType type, Optional<BodyOutline> outline, Datasheets datasheets) {
    return of(type, "", outline, datasheets);
  }

  /** A candidate whose datasheet lines have been found already; its body is not looked up. */
  public static SwapPart of(PartType type, List<DatasheetLine> lines) {
    boolean stated = lines.stream().anyMatch(line -> line.symbol().equals("kind"));
    return stated
        ? new SwapPart(type, Optional.empty(), Spelling.of(lines))
        : new SwapPart(type, Optional.empty(), joined(type, "", lines));
  }

  private static SwapPart of(
      PartType type, String description, Optional<BodyOutline> outline, Datasheets datasheets) {
    String key = type.name();
    List<DatasheetLine> known = FittedPart.linesAbout(key, datasheets);
    List<DatasheetLine> lines = joined(type, description, known);
    if (known.isEmpty() && !type.typeNumber().isBlank()) {
      datasheets.within(key).map(like -> StatedFacts.like(type, like)).ifPresent(lines::add);
    }
    return new SwapPart(type, outline, lines);
  }

  /** The datasheet's lines, and what the part's own text states beyond them. */
  private static List<DatasheetLine> joined(
      PartType type, String description, List<DatasheetLine> known) {
    var lines = new ArrayList<>(Spelling.of(known));
    for (DatasheetLine stated : StatedFacts.in(type, description)) {
      if (lines.stream().noneMatch(line -> line.symbol().equals(stated.symbol()))) {
        lines.add(stated);
      }
    }
    return lines;
  }

  /** What a report calls it. */
  public String name() {
    String text = type.name();
    return text.isBlank() ? type.kind().words() : text;
  }

  /** The lines with one symbol. */
  public List<DatasheetLine> lines(String symbol) {
    List<DatasheetLine> found = List.of();
    for (DatasheetLine line : lines) {
      if (line.symbol().equals(symbol)) {
        if (found.isEmpty()) {
          found = new ArrayList<>(4);
        }
        found.add(line);
      }
    }
    return found;
  }

  /**
   * A maker of this part who states nothing of what the others do; a line without a maker speaks
   * for all of them. Its part may be the one in the bag.
   */
  public Optional<String> silentMaker(List<DatasheetLine> stated) {
    if (stated.isEmpty() || stated.stream().anyMatch(line -> line.maker().isBlank())) {
      return Optional.empty();
    }
    for (DatasheetLine line : lines) {
      String maker = line.maker();
      if (!maker.isBlank() && stated.stream().noneMatch(one -> one.maker().equals(maker))) {
        return Optional.of(maker);
      }
    }
    return Optional.empty();
  }

  /** Whether anything is known under a symbol. */
  public boolean states(String symbol) {
    for (DatasheetLine line : lines) {
      if (line.symbol().equals(symbol)) {
        return true;
      }
    }
    return false;
  }

  /** A fact that is a word, such as a pin order; it stands in the condition column. */
  public Optional<Evidence> word(String symbol) {
    for (DatasheetLine line : lines) {
      if (line.symbol().equals(symbol) && !line.condition().isBlank()) {
        return Optional.of(Evidence.of(line.condition(), line.source()));
      }
    }
    return Optional.empty();
  }

  /** The greatest amount guaranteed under a symbol: the largest max, or min where no max stands. */
  public Optional<Evidence> greatest(String symbol) {
    return extreme(symbol, 1);
  }

  /** The least amount guaranteed under a symbol: the smallest max, or min where no max stands. */
  public Optional<Evidence> least(String symbol) {
    return extreme(symbol, -1);
  }

  private Optional<Evidence> extreme(String symbol, int sign) {
    DatasheetLine best = null;
    double bestValue = 0;
    for (DatasheetLine line : lines) {
      if (line.symbol().equals(symbol)) {
        Optional<Quantity> limit = limit(line);
        if (limit.isPresent()) {
          double value = sign * limit.get().asDouble();
          if (best == null || value > bestValue) {
            best = line;
            bestValue = value;
          }
        }
      }
    }
    return best == null
        ? Optional.empty()
        : Optional.of(Evidence.of(limit(best).get(), best.condition(), best.source()));
  }

  /** What a line guarantees: its max, or its min; never its typ. */
  public static Optional<Quantity> limit(DatasheetLine line) {
    return line.max().isPresent() ? line.max() : line.min();
  }

  /** How a report names a datum that is missing, and where to write it. */
  public String missing(String symbol) {
    Beside beside = type.typeNumber().isBlank() ? BESIDE_THE_VALUE.get(symbol) : null;
    return beside == null
        ? symbol + " of " + name() + ": a row in datasheets.csv"
        : beside.words + " of " + name() + ": write it beside the value, such as " + beside.example;
  }
}
