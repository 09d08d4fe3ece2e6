package lowfirst.swap;

import java.util.ArrayList;
import java.util.List;
import lowfirst.channel.ChannelInputs;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;

/**
 * Of many channels those that no other is harder than: a part that these bear, all bear, since
 * making a channel worse never lets it pass. A channel is as hard as another if it is alike in kind
 * and in what is fitted, and no number of it is better.
 */
final class HardestChannels {
  private HardestChannels() {}

  static List<ChannelInputs> among(List<ChannelInputs> channels) {
    var hardest = new ArrayList<ChannelInputs>();
    for (ChannelInputs channel : channels) {
      if (hardest.stream().noneMatch(other -> isAsHard(other, channel))) {
        hardest.removeIf(other -> isAsHard(channel, other));
        hardest.add(channel);
      }
    }
    return List.copyOf(hardest);
  }

  /** Whether {@code one} asks at least as much of every part as {@code other}. */
  private static boolean isAsHard(ChannelInputs one, ChannelInputs other) {
    if (one.loadKind() != other.loadKind()
        || one.channel().traceLayer() != other.channel().traceLayer()
        || one.channel().pullDownSide() != other.channel().pullDownSide()) {
      return false;
    }
    for (Fitted fitted : Fitted.values()) {
      if (one.has(fitted) != other.has(fitted)) {
        return false;
      }
    }
    for (Term term : Term.values()) {
      if (!isAsHard(one.datum(term), other.datum(term), term)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isAsHard(Datum one, Datum other, Term term) {
    if (one.isKnown() != other.isKnown() || one.canPass() != other.canPass()) {
      return false;
    }
    if (!one.isKnown()) {
      return true;
    }
    return switch (term.worse()) {
      case HIGHER -> one.low() >= other.low() && one.high() >= other.high();
      case LOWER -> one.low() <= other.low() && one.high() <= other.high();
      case EITHER -> one.low() == other.low() && one.high() == other.high();
    };
  }
}
