package lowfirst.assembly;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.part.PartKind;

/**
 * Which parts are bolted to which heatsink: fastened first, then soldered, so that no strain stays
 * in the leads (makers' mounting notes, from memory; NASA NEPP page 5939: leads broke where the
 * heatsink was left to float).
 *
 * <p>A kit says so by a heatsink whose description or designator names the part ("heatsink for Q3",
 * HSQ3), by a part whose description says "heatsink", or by bodies that overlap.
 */
final class Heatsinks {
  private static final Set<PartKind> CAN_BE_BOLTED =
      Set.of(
          PartKind.MOSFET,
          PartKind.TRANSISTOR,
          PartKind.BIPOLAR_TRANSISTOR,
          PartKind.REGULATOR,
          PartKind.THYRISTOR,
          PartKind.DIODE,
          PartKind.SCHOTTKY_DIODE,
          PartKind.BRIDGE_RECTIFIER,
          PartKind.INTEGRATED_CIRCUIT);

  private static final Pattern OWN_WORDS =
      Pattern.compile("(?i).*\\b(?:on|with|\\+|to)\\b.*\\bheat ?-?sink\\b.*");

  private final Board board;
  private final Seats seats;

  /** Part to heatsink. */
  private final Map<Designator, Designator> heatsinkOf = new LinkedHashMap<>();

  private final Map<Designator, String> alone = new LinkedHashMap<>();

  private Heatsinks(Board board, Seats seats) {
    this.board = board;
    this.seats = seats;
  }

  /**
   * What is bolted.
   *
   * @param seats all seats, the bolted ones at the height of their assembly
   * @param heatsinkOf each bolted part with the heatsink that has a seat of its own
   */
  record Bolted(Seats seats, Map<Designator, Designator> heatsinkOf) {}

  static Bolted applied(Board board, Seats seats) {
    var heatsinks = new Heatsinks(board, seats);
    heatsinks.byHeatsinkWords();
    heatsinks.byOwnWords();
    heatsinks.byBodies();
    return new Bolted(heatsinks.fastened(), heatsinks.heatsinkOf);
  }

  private void byHeatsinkWords() {
    for (Item item : Seats.items(board, PartKind.HEATSINK)) {
      var words = new ArrayList<>(List.of(item.description().split("[\\s,;/()]+")));
      words.addAll(List.of(item.partType().text().split("[\\s,;/()]+")));
      for (String word : words) {
        named(word).ifPresent(part -> bolt(part, item.designators()));
      }
      for (Designator heatsink : item.designators()) {
        named(heatsink.text().replaceFirst("^(?:HS|KK|HEATSINK)[_-]?", ""))
            .ifPresent(part -> bolt(part, List.of(heatsink)));
      }
    }
  }

  private Optional<Seat> named(String word) {
    return word.isBlank()
        ? Optional.empty()
        : Optional.ofNullable(seats.find(Designator.of(word)))
            .filter(seat -> seat.stage() == Step.Stage.SOLDER);
  }

  private void bolt(Seat part, List<Designator> heatsinks) {
    Optional<Designator> seated =
        heatsinks.stream()
            .filter(name -> seats.find(name) != null && !name.equals(part.designator()))
            .findFirst();
    if (seated.isPresent()) {
      heatsinkOf.putIfAbsent(part.designator(), seated.get());
    } else if (heatsinks.isEmpty()) {
      alone.putIfAbsent(part.designator(), "bolt it to its heatsink first, then solder");
    }
  }

  private void byOwnWords() {
    for (Item item : board.items()) {
      if (OWN_WORDS.matcher(item.description()).matches()) {
        item.designators().stream()
            .map(seats::find)
            .filter(seat -> seat != null && CAN_BE_BOLTED.contains(seat.type().kind()))
            .filter(seat -> seat.stage() == Step.Stage.SOLDER)
            .forEach(
                seat ->
                    alone.putIfAbsent(
                        seat.designator(), "bolt it to its heatsink first, then solder"));
      }
    }
  }

  /** The heatsink and the part that stand on one another in the plan belong together. */
  private void byBodies() {
    List<Seat> sinks =
        seats.all().stream().filter(seat -> seat.type().kind() == PartKind.HEATSINK).toList();
    if (sinks.isEmpty()) {
      return;
    }
    for (Covers.Pair pair : Covers.overlapping(seats.all(), sinks)) {
      boolean both = CAN_BE_BOLTED.contains(pair.one().type().kind());
      boolean soldered = pair.one().stage() == Step.Stage.SOLDER;
      if (both && soldered && pair.one().side() == pair.other().side()) {
        heatsinkOf.putIfAbsent(pair.one().designator(), pair.other().designator());
      }
    }
  }

  private Seats fastened() {
    var parts = new HashMap<Designator, Set<Designator>>();
    heatsinkOf.forEach(
        (part, sink) -> parts.computeIfAbsent(sink, none -> new TreeSet<>()).add(part));
    var changed = new LinkedHashMap<Designator, Seat>();
    alone.forEach(
        (part, why) -> changed.put(part, seats.find(part).at(Step.Stage.FASTEN_AND_SOLDER, why)));
    parts.forEach(
        (sink, bolted) -> {
          OptionalDouble height = tallest(sink, bolted);
          changed.put(sink, seats.find(sink).bolted(height, "carries " + Words.list(bolted)));
          bolted.forEach(
              part ->
                  changed.put(
                      part, seats.find(part).bolted(height, "bolt it to " + sink + " first")));
        });
    return seats.with(changed);
  }

  private OptionalDouble tallest(Designator sink, Set<Designator> bolted) {
    double height = 0;
    for (Designator name : bolted) {
      height = Math.max(height, seats.find(name).height().orElse(Double.NaN));
    }
    height = Math.max(height, seats.find(sink).height().orElse(Double.NaN));
    return Double.isNaN(height) ? OptionalDouble.empty() : OptionalDouble.of(height);
  }
}
