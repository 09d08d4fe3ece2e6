package lowfirst.assembly;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;

/**
 * Ordered groups parted into batches, with as few flips as possible.
 *
 * <p>For one fixed order, filling each batch as far as it goes is best: a part of what may be
 * seated together may be seated together too, so a batch that starts later never ends earlier. But
 * groups of one rank may change places, and then it is a packing problem: {@link FewestFlips}
 * solves it, and its answer is taken only where it saves a flip.
 */
final class Batches {
  private Batches() {}

  /** The batches, in the order to work; groups larger than a batch come in pieces. */
  static List<List<Ranked>> of(List<Ranked> preferred, AssemblyOptions options) {
    List<Ranked> pieces = pieces(preferred, options);
    List<List<Ranked>> filled = filledInOrder(pieces, options);
    if (filled.size() <= fewestConceivable(pieces, options)) {
      return filled;
    }
    List<List<Ranked>> packed = FewestFlips.of(pieces, options);
    return packed.size() < filled.size() ? saying(packed) : filled;
  }

  /** Splits only what is larger than a batch. */
  private static List<Ranked> pieces(List<Ranked> preferred, AssemblyOptions options) {
    var pieces = new ArrayList<Ranked>();
    var firstPiece = new HashMap<Integer, Integer>();
    var lastPiece = new HashMap<Integer, Integer>();
    for (Ranked ranked : preferred) {
      firstPiece.put(ranked.position(), pieces.size());
      // Shared by all pieces: there may be many of either.
      var after = new HashSet<Integer>();
      for (int before : ranked.after()) {
        for (int i = firstPiece.get(before); i <= lastPiece.get(before); i++) {
          after.add(i);
        }
      }
      for (Group piece : ranked.group().pieces(options.partsPerBatch())) {
        pieces.add(
            new Ranked(piece, pieces.size(), ranked.rank(), after, ranked.rule(), ranked.why()));
      }
      lastPiece.put(ranked.position(), pieces.size() - 1);
    }
    return pieces;
  }

  private static List<List<Ranked>> filledInOrder(List<Ranked> ordered, AssemblyOptions options) {
    var batches = new ArrayList<List<Ranked>>();
    OpenBatch open = OpenBatch.EMPTY;
    for (Ranked ranked : ordered) {
      if (batches.isEmpty() || !open.takes(ranked.group(), options)) {
        batches.add(new ArrayList<>());
        open = OpenBatch.EMPTY;
      }
      batches.get(batches.size() - 1).add(ranked);
      open = open.with(ranked.group());
    }
    return batches;
  }

  /**
   * No plan has fewer batches than this: single parts sorted by height alone, every other rule left
   * aside, and a batch for each kind of unknown.
   */
  private static int fewestConceivable(List<Ranked> pieces, AssemblyOptions options) {
    List<Ranked> known =
        pieces.stream()
            .filter(ranked -> ranked.height().isPresent())
            .sorted(Comparator.comparingDouble(ranked -> ranked.height().getAsDouble()))
            .toList();
    int batches = 0;
    int parts = 0;
    double low = 0;
    for (Ranked ranked : known) {
      int left = ranked.group().size();
      double height = ranked.height().getAsDouble();
      while (left > 0) {
        boolean fits =
            batches > 0
                && parts < options.partsPerBatch()
                && height - low <= options.heightSpreadMillimetres() + 1e-6;
        if (!fits) {
          batches++;
          parts = 0;
          low = height;
        }
        int taken = Math.min(left, options.partsPerBatch() - parts);
        parts += taken;
        left -= taken;
      }
    }
    return batches + fewestOfUnknown(pieces, options);
  }

  private static int fewestOfUnknown(List<Ranked> pieces, AssemblyOptions options) {
    Map<String, Integer> parts = new HashMap<>();
    for (Ranked ranked : pieces) {
      if (ranked.height().isEmpty()) {
        String key = OpenBatch.EMPTY.with(ranked.group()).unknown();
        parts.merge(key, ranked.group().size(), Integer::sum);
      }
    }
    return parts.values().stream()
        .mapToInt(count -> -Math.floorDiv(-count, options.partsPerBatch()))
        .sum();
  }

  /** In each batch the preferred order again; what overtook another says why. */
  private static List<List<Ranked>> saying(List<List<Ranked>> packed) {
    var said = new ArrayList<List<Ranked>>();
    int lowestLeft = Integer.MAX_VALUE;
    for (int i = packed.size() - 1; i >= 0; i--) {
      var batch = new ArrayList<>(packed.get(i));
      batch.sort(Comparator.comparingInt(Ranked::position));
      int overtaken = lowestLeft;
      batch.replaceAll(
          ranked ->
              ranked.position() > overtaken && ranked.rule() == Rule.LOWEST_FIRST
                  ? ranked.saysInstead(
                      Rule.SAVES_A_FLIP,
                      ranked.why() + "; before others as tall, which saves a flip")
                  : ranked);
      lowestLeft = Math.min(lowestLeft, batch.get(0).position());
      said.add(0, batch);
    }
    return said;
  }
}
