package lowfirst.sorting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import lowfirst.board.BagLine;
import lowfirst.board.Kit;

/**
 * How to sort the bag of a kit: a line for each part type, what could be mistaken for what, and
 * what the bag list leaves open.
 *
 * @param lines in sorting order: by kind, then by value
 * @param lookAlikes the worst mix-up first
 * @param meter the meter that the limits are made for
 * @param unknown bag lines that fit no part type of the kit
 */
public record SortPlan(
    List<SortLine> lines, List<LookAlike> lookAlikes, Meter meter, List<BagLine> unknown) {

  public SortPlan {
    lines = List.copyOf(lines);
    lookAlikes = List.copyOf(lookAlikes);
    unknown = List.copyOf(unknown);
  }

  /** How to sort the bag of a kit. */
  public static SortPlan of(Kit kit) {
    List<Compartment> compartments = Compartments.of(kit);
    Meter meter = Meter.of(kit.settings());
    Arrivals arrivals = Arrivals.of(kit.bag(), compartments);
    var lines = new ArrayList<SortLine>();
    for (Compartment compartment : compartments) {
      lines.add(
          new SortLine(
              compartment,
              compartment.marking(),
              MeterLimits.of(compartment.type(), meter),
              kit.bag().isEmpty()
                  ? OptionalInt.empty()
                  : OptionalInt.of(arrivals.counts.getOrDefault(compartment, 0)),
              arrivals.bags.getOrDefault(compartment, List.of()),
              arrivals.shared.contains(compartment),
              Spares.of(compartment.type().kind(), compartment.quantity())));
    }
    return new SortPlan(lines, LookAlikes.among(compartments, meter), meter, arrivals.unknown);
  }

  /** Whether something is missing or nobody knows what it is. */
  public boolean needsALook() {
    return lines.stream().anyMatch(line -> line.shortage() > 0) || !unknown.isEmpty();
  }

  /** What arrived, shared out to the compartments. */
  private static final class Arrivals {
    private final Map<Compartment, Integer> counts = new HashMap<>();
    private final Map<Compartment, List<String>> bags = new HashMap<>();
    private final Set<Compartment> shared = new HashSet<>();
    private final List<BagLine> unknown = new ArrayList<>();

    /** Labels that fit one part type first; the others go where something still lacks. */
    private static Arrivals of(List<BagLine> bag, List<Compartment> compartments) {
      var arrivals = new Arrivals();
      var open = new ArrayList<BagLine>();
      for (BagLine line : bag) {
        List<Compartment> fitting = BagMatch.of(line, compartments);
        switch (fitting.size()) {
          case 0 -> arrivals.unknown.add(line);
          case 1 -> arrivals.put(fitting.get(0), line, line.quantity());
          default -> open.add(line);
        }
      }
      for (BagLine line : open) {
        arrivals.share(line, BagMatch.of(line, compartments));
      }
      return arrivals;
    }

    private void share(BagLine line, List<Compartment> fitting) {
      List<Compartment> lacking =
          fitting.stream()
              .filter(compartment -> counts.getOrDefault(compartment, 0) < compartment.quantity())
              .toList();
      List<Compartment> takers = lacking.isEmpty() ? fitting : lacking;
      int left = line.quantity();
      for (Compartment taker : takers) {
        int lacks = Math.max(0, taker.quantity() - counts.getOrDefault(taker, 0));
        boolean last = taker.equals(takers.get(takers.size() - 1));
        int taken = last ? left : Math.min(left, lacks);
        put(taker, line, taken);
        left -= taken;
      }
      if (takers.size() > 1) {
        shared.addAll(takers);
      }
    }

    private void put(Compartment compartment, BagLine line, int quantity) {
      counts.merge(compartment, quantity, Integer::sum);
      if (!line.bag().isBlank()) {
        bags.computeIfAbsent(compartment, none -> new ArrayList<>()).add(line.bag());
      }
    }
  }
}
