package lowfirst.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lowfirst.board.Kit;
import lowfirst.board.Load;
import lowfirst.board.OutputChannel;
import lowfirst.board.Rail;
import lowfirst.board.Unit;
import lowfirst.board.UnitChannels;
import lowfirst.channel.LoadFindings;
import lowfirst.channel.Verdict;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Sourced;

/**
 * What to check on one unit before and at first power, each with the value to expect, worked out
 * from the kit where the kit says enough.
 */
public final class FirstPowerChecks {
  /**
   * Above this a person can be hurt: extra-low voltage ends (IEC 60364-4-41, 60 V DC unearthed).
   */
  static final double DEFERRED_ABOVE_VOLTS = 60;

  /** Current that the dummy load is chosen for: enough to measure, too little to heat anything. */
  private static final double DUMMY_AMPERES = 0.2;

  private static final double[] E12 = {1, 1.2, 1.5, 1.8, 2.2, 2.7, 3.3, 3.9, 4.7, 5.6, 6.8, 8.2};

  private final Kit kit;
  private final List<OutputChannel> channels;
  private final LoadFindings findings;
  private final List<PowerCheck> checks = new ArrayList<>();

  private FirstPowerChecks(Kit kit, Unit unit, LoadFindings findings) {
    this.kit = kit;
    this.findings = findings;
    this.channels = UnitChannels.of(kit, unit);
  }

  /**
   * The checks of one unit, in the order to work. Only an output that carries its load is given it.
   *
   * @param findings what was worked out of each channel; one that they lack is taken as undecided
   */
  public static List<PowerCheck> of(Kit kit, Unit unit, LoadFindings findings) {
    var first = new FirstPowerChecks(kit, unit, findings);
    List<Rail> rails = first.rails();
    if (rails.isEmpty()) {
      first.unknownSupply();
      return List.copyOf(first.checks);
    }
    rails.forEach(first::railBeforePower);
    first.railsApart(rails);
    rails.stream().filter(rail -> !isDeferred(rail)).forEach(first::railPowered);
    first.chips(rails);
    first.dummy();
    first.loads();
    return List.copyOf(first.checks);
  }

  /**
   * The rails that this unit's channels hang on or their drivers run from; all if none is named.
   */
  List<Rail> rails() {
    Set<Rail> rails = new LinkedHashSet<>();
    for (OutputChannel channel : channels) {
      kit.driver(channel.driver()).flatMap(d -> kit.rail(d.supply())).ifPresent(rails::add);
    }
    channels.forEach(channel -> railOf(channel).ifPresent(rails::add));
    return rails.isEmpty() ? kit.rails() : List.copyOf(rails);
  }

  private Optional<Rail> railOf(OutputChannel channel) {
    return kit.load(channel.load()).flatMap(load -> kit.rail(load.rail()));
  }

  static boolean isDeferred(Rail rail) {
    return rail.voltage().filter(v -> highest(v, rail) > DEFERRED_ABOVE_VOLTS).isPresent();
  }

  private static double highest(Sourced volts, Rail rail) {
    return volts.asDouble() * (1 + rail.percentOff() / 100);
  }

  private void add(PowerCheck.Stage stage, String name, String how, String expect, String stop) {
    checks.add(new PowerCheck(stage, name, how, expect, stop));
  }

  private void railBeforePower(Rail rail) {
    if (isDeferred(rail)) {
      add(
          PowerCheck.Stage.BEFORE_POWER,
          rail.name() + " rail",
          "Leave it unconnected.",
          "above 60 V DC",
          "Not on this sheet: leave it to licensed practice.");
      return;
    }
    Optional<Double> shortOhms =
        rail.voltage()
            .flatMap(v -> rail.currentLimit().map(limit -> v.asDouble() / limit.asDouble()));
    add(
        PowerCheck.Stage.BEFORE_POWER,
        rail.name() + " to return",
        "Resistance range, red on the plus terminal, black on the return; wait until it settles.",
        shortOhms
            .map(ohms -> "climbs while capacitors charge; far above " + ohms(ohms))
            .orElse("climbs while capacitors charge; no short"),
        shortOhms
            .map(ohms -> "Stays at or below " + ohms(ohms) + ": that takes all the supply has.")
            .orElse("Stays at a few ohms: find the short first."));
  }

  /** What can be said when the kit names no supply. */
  private void unknownSupply() {
    String missing = "not known: write the supplies in rails.csv, then it is worked out";
    add(
        PowerCheck.Stage.BEFORE_POWER,
        "supply to return",
        "Resistance range, red on the plus terminal, black on the return; wait until it settles.",
        "climbs while capacitors charge; no short",
        "Stays at a few ohms: find the short first.");
    add(
        PowerCheck.Stage.RAILS,
        "supply voltage",
        "Start with the supply's limit at 0.1 A. Measure at the supply pins of each socket, against"
            + " the return.",
        missing,
        "Supply goes into its limit, anything smells or is warm: off.");
    add(
        PowerCheck.Stage.CHIPS,
        "supply with ICs",
        "Off, wait for the capacitors, plug the ICs in, on again. Measure as before.",
        "as before",
        "Lower than before, or an IC gets hot: off.");
  }

  private void railsApart(List<Rail> rails) {
    for (int a = 0; a < rails.size(); a++) {
      for (int b = a + 1; b < rails.size(); b++) {
        add(
            PowerCheck.Stage.BEFORE_POWER,
            rails.get(a).name() + " to " + rails.get(b).name(),
            "Resistance range, plus terminal to plus terminal, both ways round.",
            "no short either way; they meet only in the return",
            "A few ohms: a bridge or a part in the wrong place.");
      }
    }
  }

  private void railPowered(Rail rail) {
    String limit =
        rail.currentLimit()
            .map(full -> "Start with the supply's limit at 0.1 A, not at " + full.quantity() + ".")
            .orElse("Start with the supply's limit at 0.1 A.");
    add(
        PowerCheck.Stage.RAILS,
        rail.name() + " voltage",
        limit + " Measure at the supply pins of each socket, against the return.",
        voltageRange(rail),
        "Supply goes into its limit, a reading is outside, anything smells or is warm: off.");
  }

  /** For example {@code 4.75 V to 5.25 V}. */
  static String voltageRange(Rail rail) {
    if (rail.voltage().isEmpty()) {
      return "not stated: write the voltage in rails.csv";
    }
    double volts = rail.voltage().get().asDouble();
    return rail.tolerance()
        .map(Sourced::asDouble)
        .map(t -> volts(volts * (1 - t / 100)) + " to " + volts(volts * (1 + t / 100)))
        .orElse(volts(volts) + "; tolerance not stated, see rails.csv");
  }

  private void chips(List<Rail> rails) {
    for (Rail rail : rails) {
      if (channels.isEmpty() || suppliesDrivers(rail)) {
        add(
            PowerCheck.Stage.CHIPS,
            rail.name() + " with ICs",
            "Off, wait for the capacitors, plug the ICs in, on again. Measure as before.",
            voltageRange(rail),
            rail.currentLimit()
                .map(l -> "Lower than before, or current near " + l.quantity() + ": off.")
                .orElse("Lower than before, or an IC gets hot: off."));
      }
    }
  }

  private boolean suppliesDrivers(Rail rail) {
    return channels.stream()
        .flatMap(channel -> kit.driver(channel.driver()).stream())
        .anyMatch(driver -> driver.supply().equals(rail.name()));
  }

  private void dummy() {
    Set<Rail> loadRails = new LinkedHashSet<>();
    channels.forEach(channel -> railOf(channel).ifPresent(loadRails::add));
    for (Rail rail : loadRails) {
      if (rail.voltage().isEmpty() || isDeferred(rail)) {
        continue;
      }
      double volts = rail.voltage().get().asDouble();
      double ohms = preferred(volts / DUMMY_AMPERES);
      double watts = Math.pow(highest(rail.voltage().get(), rail), 2) / ohms;
      add(
          PowerCheck.Stage.DUMMY,
          rail.name() + " dummy load",
          "A resistor of "
              + ohms(ohms)
              + ", rated "
              + new Quantity(java.math.BigDecimal.valueOf(Math.ceil(2 * watts)), Dimension.POWER)
              + " or more, in place of one load; switch that output on, then off.",
          "on: "
              + Quantity.of(volts / ohms, Dimension.CURRENT).rounded(2)
              + ", MOSFET's drain near 0 V; off: no current, drain at "
              + volts(volts),
          "Drain stays above 1 V when on, or current flows when off: off, check that channel.");
    }
  }

  private void loads() {
    for (OutputChannel channel : channels) {
      Optional<Load> load = kit.load(channel.load());
      Optional<Rail> rail = railOf(channel);
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

  /** The E12 value at or above an amount of ohms (IEC 60063:2015). */
  static double preferred(double ohms) {
    double decade = Math.pow(10, Math.floor(Math.log10(ohms)));
    for (double step : E12) {
      if (step * decade >= ohms * 0.999) {
        return step * decade;
      }
    }
    return 10 * decade;
  }

  private static String ohms(double ohms) {
    return Quantity.of(ohms, Dimension.RESISTANCE).rounded(2);
  }

  private static String volts(double volts) {
    return Quantity.of(volts, Dimension.VOLTAGE).rounded(3);
  }
}
