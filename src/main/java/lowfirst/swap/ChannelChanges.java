package lowfirst.swap;

import java.util.List;
import java.util.Optional;
import lowfirst.board.Kit;
import lowfirst.board.Swap;
import lowfirst.channel.ChannelFinding;
import lowfirst.channel.ChannelInputs;
import lowfirst.channel.KitInputs;
import lowfirst.part.BodyOutlines;
import lowfirst.problem.Place;
import lowfirst.swap.subject.SwapCase;
import lowfirst.swap.subject.SwapUse;
import lowfirst.swap.subject.SwappedKit;

/** Runs every channel that the part serves, once as it is and once with the candidate. */
final class ChannelChanges {
  private ChannelChanges() {}

  static List<ChannelChange> of(SwapCase swap, BodyOutlines outlines) {
    if (swap.uses().isEmpty()) {
      return List.of();
    }
    KitInputs before = KitInputs.of(SwappedKit.of(swap.kit(), outlines));
    KitInputs after = KitInputs.of(tried(swap, outlines));
    return swap.uses().stream().flatMap(use -> change(use, before, after).stream()).toList();
  }

  /** The kit with this swap accepted. */
  static Kit tried(SwapCase swap, BodyOutlines outlines) {
    return SwappedKit.trying(
        swap.kit(),
        new Swap(
            swap.board().name(),
            swap.designators(),
            swap.offered().type().text(),
            "",
            "",
            "",
            Place.ofFile("swaps.csv")),
        outlines);
  }

  private static Optional<ChannelChange> change(SwapUse use, KitInputs before, KitInputs after) {
    String name = use.channel().name();
    Optional<ChannelInputs> was = before.channel(name);
    Optional<ChannelInputs> is = after.channel(name);
    return was.isEmpty() || is.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new ChannelChange(use, ChannelFinding.of(was.get()), ChannelFinding.of(is.get())));
  }
}
