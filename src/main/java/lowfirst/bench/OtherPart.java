package lowfirst.bench;

import java.util.Optional;
import lowfirst.board.Kit;
import lowfirst.intake.shipped.ShippedTables;
import lowfirst.progress.Spot;
import lowfirst.sheet.Sentence;
import lowfirst.sheet.SwapWords;
import lowfirst.swap.SwapFinding;
import lowfirst.swap.SwapTarget;

/** Whether another part fits in a place, judged as the {@code swap} command judges it. */
final class OtherPart {
  private OtherPart() {}

  /** The finding; empty when the BOM doesn't know the place. */
  static Optional<SwapFinding> judged(Kit kit, Spot spot, String fitted) {
    return SwapTarget.named(kit, spot.designator().text(), Optional.of(spot.unit().board()))
        .stream()
        .findFirst()
        .map(target -> target.with(kit, fitted, ShippedTables.bodyOutlines()))
        .map(swap -> SwapFinding.of(swap, ShippedTables.bodyOutlines()));
  }

  /** The verdict on the first line, its reasons in a sentence on the second. */
  static String words(SwapFinding finding) {
    return finding.verdict() + "\n" + Sentence.of(SwapWords.line(finding));
  }
}
