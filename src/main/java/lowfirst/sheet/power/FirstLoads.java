package lowfirst.sheet.power;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lowfirst.board.Kit;
import lowfirst.board.Load;
import lowfirst.board.OutputChannel;
import lowfirst.board.Rail;
import lowfirst.channel.LoadFindings;
import lowfirst.channel.check.Verdict;
import lowfirst.marking.Series;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/** The last checks of first power: one output on a dummy load, then each on its own. */
final class FirstLoads {
  /** Current that the dummy load is chosen for: enough to measure, too little to heat anything. */
  private static final double DUMMY_AMPERES = 0.2;

  private final Kit kit;
  private final List<OutputChannel> channels;
  private final LoadFindings findings;
  private final List<PowerCheck> checks = new ArrayList<>();

  private FirstLoads(Kit kit, List<OutputChannel> channels, LoadFindings findings) {
    this.kit = kit;
    this.channels = channels;
    this.findings = findings;
  }

  /** The checks of these channels. */
  static List<PowerCheck> of(Kit kit, List<OutputChannel> channels, LoadFindings findings) {
    var first = new FirstLoads(kit, channels, findings);
    first.dummy();
    first.loads();
    return first.checks;
  }

  private void add(PowerCheck.Stage stage, String name, String how, String expect, String stop) {
    String heading =
        stage == PowerCheck.Stage.DUMMY
            ? "Stage 3: one channel on a dummy load"
            : "Stage 4: each load in turn";
    checks.add(new PowerCheck(stage, heading, name, how, expect, stop));
  }

  private void dummy() {
    Set<Rail> loadRails = new LinkedHashSet<>();
    channels.forEach(channel -> kit.railOf(channel).ifPresent(loadRails::add));
    for (Rail rail : loadRails) {
      if (rail.voltage().isEmpty() || FirstPowerChecks.isDeferred(rail)) {
        continue;
      }
      double volts = rail.nominalVolts();
      double ohms = Series.E12.atOrAbove(volts / DUMMY_AMPERES);
      double watts = Math.pow(rail.highestVolts(), 2) / ohms;
      add(
          PowerCheck.Stage.DUMMY,
          rail.name() + " dummy load",
          "A resistor of "
              + FirstPowerChecks.ohms(ohms)
              + ", rated "
              + new Quantity(java.math.BigDecimal.valueOf(Math.ceil(2 * watts)), Dimension.POWER)
              + " or more, in place of one load; switch that output on, then off.",
          "on: "
              + Quantity.of(volts / ohms, Dimension.CURRENT).rounded(2)
              + ", MOSFET's drain near 0 V; off: no current, drain at "
              + FirstPowerChecks.volts(volts),
          "Drain stays above 1 V when on, or current flows when off: off, check that channel.");
    }
  }

  private void loads() {
    for (OutputChannel channel : channels) {
      Optional<Load> load = kit.load(channel.load());
      Optional<Rail> rail = kit.railOf(channel);
      if (load.isEmpty() || rail.filter(FirstPowerChecks::isDeferred).isPresent()) {
        continue;
      }
      load(channel, load.get(), ExpectedCurrent.words(load.get(), rail));
    }
  }

  private void load(OutputChannel channel, Load load, String current) {
    String name = channel.name();
    String connected = load.name() + ", switch it on briefly.";
    Verdict output = findings.verdictOf(channel);
    switch (output.worse(findings.supplyVerdictOf(load.rail()))) {
      case CARRIES ->
          add(PowerCheck.Stage.LOADS, name, "Connect " + connected, current, stopFor(load));
      case OVERLOADED ->
          add(
              PowerCheck.Stage.LOADS,
              name,
              "Leave "
                  + load.name()
                  + " unplugged: "
                  + (output == Verdict.OVERLOADED ? "the output" : supply(load))
                  + " is overloaded. Change what the channel report says first.",
              "overloaded: stays unplugged",
              "Don't switch it on with this load.");
      case UNDECIDED ->
          add(
              PowerCheck.Stage.LOADS,
              name,
              "Find what the channel report says is missing: whether "
                  + (output == Verdict.UNDECIDED
                      ? "the output carries its load"
                      : supply(load) + " carries its loads")
                  + " is undecided. Once it carries, connect "
                  + connected,
              "undecided: unplugged until it carries; then " + current,
              "It is still undecided, or: " + stopFor(load));
    }
  }

  private static String supply(Load load) {
    return "the supply or the return of rail " + load.rail();
  }

  private static String stopFor(Load load) {
    return load.maxOnTime()
        .map(most -> "More current, or on longer than " + most.quantity() + ": off.")
        .orElse("More current, a smell, a hot MOSFET: off.");
  }
}
