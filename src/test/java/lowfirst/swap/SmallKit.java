package lowfirst.swap;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.board.Kit;
import lowfirst.intake.KitFiles;
import lowfirst.intake.KitReader;
import lowfirst.intake.shipped.ShippedTables;
import lowfirst.part.BodyOutlines;
import lowfirst.swap.subject.SwapCase;

/** Kits of a few rows, read as a user's tables are, with a swap tried in them. */
final class SmallKit {
  static final BodyOutlines OUTLINES = ShippedTables.bodyOutlines();

  private SmallKit() {}

  static Kit of(Map<String, String> tables) {
    var files = new HashMap<String, byte[]>();
    tables.forEach((name, text) -> files.put(name, text.getBytes(StandardCharsets.UTF_8)));
    return KitReader.read(new KitFiles("test", files, List.of())).kit();
  }

  /** The swap of a place, on the first board that has it. */
  static SwapCase swap(Kit kit, String place, String candidate) {
    return SwapTarget.named(kit, place, Optional.empty()).get(0).with(kit, candidate, OUTLINES);
  }

  static SwapFinding finding(Kit kit, String place, String candidate) {
    return SwapFinding.of(swap(kit, place, candidate), OUTLINES);
  }
}
