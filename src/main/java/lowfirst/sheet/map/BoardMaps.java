package lowfirst.sheet.map;

import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Side;
import lowfirst.sheet.drawing.Drawing;

/**
 * Many maps of one board, as in a book of batches: what they share is drawn once, so that a large
 * board costs no more a page than a small one.
 */
public final class BoardMaps {
  private final Map<Side, BoardMap> maps = new EnumMap<>(Side.class);
  private final Map<Side, Drawing> bare = new EnumMap<>(Side.class);

  private BoardMaps(Board board) {
    for (Side side : Side.values()) {
      var map = new BoardMap(board, side, BoardMap.PAPER);
      maps.put(side, map);
      bare.put(side, map.bare(Set.of()));
    }
  }

  /** The maps of a board. */
  public static BoardMaps of(Board board) {
    return new BoardMaps(board);
  }

  /** Places that were filled together, in grey, seen from either side. */
  public record Layer(Map<Side, Drawing> drawings, int places) {}

  /** The layer of these places. */
  public Layer layer(Collection<Designator> places) {
    var drawings = new EnumMap<Side, Drawing>(Side.class);
    Set<Designator> filled = Set.copyOf(places);
    maps.forEach((side, map) -> drawings.put(side, map.filled(filled)));
    return new Layer(drawings, filled.size());
  }

  /** The places to fill now, each under its name, on what is filled already. */
  public Drawing map(Map<Designator, String> lit, List<Layer> filled, Side seenFrom) {
    return maps.get(seenFrom)
        .with(lit, bare.get(seenFrom), drawings(filled, seenFrom), places(filled));
  }

  /** The same without a word in it: to be shown small. */
  public Drawing wordless(Map<Designator, String> lit, List<Layer> filled, Side seenFrom) {
    return maps.get(seenFrom)
        .wordless(lit, bare.get(seenFrom), drawings(filled, seenFrom), places(filled));
  }

  private static List<Drawing> drawings(List<Layer> filled, Side seenFrom) {
    return filled.stream().map(layer -> layer.drawings().get(seenFrom)).toList();
  }

  private static int places(List<Layer> filled) {
    return filled.stream().mapToInt(Layer::places).sum();
  }
}
