package lowfirst.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.stream.Stream;
import lowfirst.channel.ChannelInputs;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.KitInputs;
import lowfirst.channel.check.Term;
import org.junit.jupiter.api.Test;

/** Which channels stand for which others: too few tried would let a part pass that fails. */
class HardestChannelsTest {
  private final ChannelInputs plain = channel("bell C5");

  private static ChannelInputs channel(String load) {
    return KitInputs.of(BellPlayer.asWritten()).channels().stream()
        .filter(in -> in.channel().load().equals(load))
        .findFirst()
        .orElseThrow();
  }

  private void onlySecond(ChannelInputs harder) {
    assertEquals(List.of(harder), HardestChannels.among(List.of(plain, harder)));
    assertEquals(List.of(harder), HardestChannels.among(List.of(harder, plain)));
  }

  private void both(ChannelInputs other) {
    assertEquals(List.of(plain, other), HardestChannels.among(List.of(plain, other)));
    assertEquals(List.of(other, plain), HardestChannels.among(List.of(other, plain)));
  }

  @Test
  void a_channel_with_a_worse_number_and_no_better_one_stands_for_the_other() {
    onlySecond(plain.scaled(Term.LOAD_CURRENT, 1.1));
    onlySecond(plain.scaled(Term.DRIVE_LEVEL, 0.9));
    onlySecond(plain.scaled(Term.LOAD_CURRENT, 1.1).scaled(Term.DRIVE_LEVEL, 0.9));
    assertEquals(1, HardestChannels.among(List.of(plain, plain.scaled(Term.AMBIENT, 1))).size());
  }

  @Test
  void where_each_is_worse_in_something_both_are_tried() {
    both(plain.scaled(Term.LOAD_CURRENT, 1.1).scaled(Term.DRIVE_LEVEL, 1.1));
    both(plain.scaled(Term.LOAD_CURRENT, 0.9).scaled(Term.DRIVE_LEVEL, 0.9));
  }

  @Test
  void a_number_that_may_harm_either_way_must_be_the_same() {
    both(plain.scaled(Term.SUPPLY, 1.1));
    both(plain.scaled(Term.SUPPLY, 0.9));
  }

  @Test
  void the_load_and_what_is_fitted_must_be_alike() {
    both(plain.without(Fitted.FUSE));
    both(plain.fitting(Fitted.PWM));
    both(channel("frost heater"));
  }

  /** Who knows whether the number that one lacks would be the harder? */
  @Test
  void a_number_known_of_one_and_not_of_the_other_makes_both_be_tried() {
    List<Term> open =
        Stream.of(Term.values()).filter(term -> !plain.datum(term).isKnown()).toList();
    assertFalse(open.isEmpty());
    open.forEach(term -> both(plain.with(term, 1)));
  }
}
