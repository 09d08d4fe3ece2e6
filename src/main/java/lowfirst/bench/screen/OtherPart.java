package lowfirst.bench.screen;

import java.util.Optional;
import lowfirst.board.Kit;
import lowfirst.intake.shipped.ShippedTables;
import lowfirst.progress.Spot;
import lowfirst.sheet.swap.SwapWords;
import lowfirst.sheet.wording.Sentence;
import lowfirst.swap.SwapFinding;
import lowfirst.swap.SwapTarget;

/** Whether another part fits in a place, judged as the {@code swap} command judges it. */
public final class OtherPart {
  private OtherPart() {}

  /** The finding; empty when the BOM doesn't know the place. */
  public static Optional<SwapFinding> judged(Kit kit, Spot spot, String fitted) {
    return SwapTarget.named(kit, spot.designator().text(), Optional.of(spot.unit().board()))
        .stream()
        .findFirst()
        .map(target -> target.with(kit, fitted, ShippedTables.bodyOutlines()))
        .map(swap -> SwapFinding.of(swap, ShippedTables.bodyOutlines()));
  }

  /** The verdict on the first line, its reasons in a sentence on the second. */
  public static String words(SwapFinding finding) {
    return finding.verdict() + "\n" + Sentence.of(SwapWords.line(finding));
  }
}
