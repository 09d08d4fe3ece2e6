package lowfirst.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lowfirst.board.Kit;
import lowfirst.board.OutputChannel;
import lowfirst.board.Rail;
import lowfirst.board.Unit;
import lowfirst.board.UnitChannels;
import lowfirst.channel.LoadFindings;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/**
 * What to check on one unit before and at first power, each with the value to expect, worked out
 * from the kit where the kit says enough.
 */
public final class FirstPowerChecks {
  /**
   * Above this a person can be hurt: extra-low voltage ends (IEC 60364-4-41, 60 V DC unearthed).
   */
  static final double DEFERRED_ABOVE_VOLTS = 60;

  private final Kit kit;
  private final List<OutputChannel> channels;
  private final List<PowerCheck> checks = new ArrayList<>();

  private FirstPowerChecks(Kit kit, Unit unit) {
    this.kit = kit;
    this.channels = UnitChannels.of(kit, unit);
  }

  /**
   * The checks of one unit, in the order to work. Only an output that carries its load is given it.
   *
   * @param findings what was worked out of each channel; one that they lack is taken as undecided
   */
  public static List<PowerCheck> of(Kit kit, Unit unit, LoadFindings findings) {
    var first = new FirstPowerChecks(kit, unit);
    List<Rail> rails = first.rails();
    if (rails.isEmpty()) {
      first.unknownSupply();
      return List.copyOf(first.checks);
    }
    rails.forEach(first::railBeforePower);
    first.railsApart(rails);
    rails.stream().filter(rail -> !isDeferred(rail)).forEach(first::railPowered);
    first.chips(rails);
    first.checks.addAll(FirstLoads.of(kit, first.channels, findings));
    return List.copyOf(first.checks);
  }

  /**
   * The rails that this unit's channels hang on or their drivers run from; all if none is named.
   */
  private List<Rail> rails() {
    Set<Rail> rails = new LinkedHashSet<>();
    for (OutputChannel channel : channels) {
      kit.driver(channel.driver()).flatMap(d -> kit.rail(d.supply())).ifPresent(rails::add);
    }
    channels.forEach(channel -> kit.railOf(channel).ifPresent(rails::add));
    return rails.isEmpty() ? kit.rails() : List.copyOf(rails);
  }

  static boolean isDeferred(Rail rail) {
    return rail.highestVolts() > DEFERRED_ABOVE_VOLTS;
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
    return rail.tolerance().isPresent()
        ? volts(rail.lowestVolts()) + " to " + volts(rail.highestVolts())
        : volts(rail.nominalVolts()) + "; tolerance not stated, see rails.csv";
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

  static String ohms(double ohms) {
    return Quantity.of(ohms, Dimension.RESISTANCE).rounded(2);
  }

  static String volts(double volts) {
    return Quantity.of(volts, Dimension.VOLTAGE).rounded(3);
  }
}
