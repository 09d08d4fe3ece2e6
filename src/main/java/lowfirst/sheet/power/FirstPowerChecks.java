package lowfirst.sheet.power;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lowfirst.assembly.AssemblyPlan;
import lowfirst.assembly.Step;
import lowfirst.board.Kit;
import lowfirst.board.OutputChannel;
import lowfirst.board.Rail;
import lowfirst.board.Unit;
import lowfirst.board.UnitChannels;
import lowfirst.channel.LoadFindings;
import lowfirst.part.PartKind;
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
  private final boolean hasSockets;
  private final List<PowerCheck> checks = new ArrayList<>();

  private FirstPowerChecks(Kit kit, AssemblyPlan plan, Unit unit) {
    this.kit = kit;
    this.channels = UnitChannels.of(kit, unit);
    this.hasSockets = hasSockets(plan, unit);
  }

  /**
   * The checks of one unit, in the order to work. Only an output that carries its load is given it.
   *
   * @param findings what was worked out of each channel; one that they lack is taken as undecided
   */
  public static List<PowerCheck> of(Kit kit, AssemblyPlan plan, Unit unit, LoadFindings findings) {
    var first = new FirstPowerChecks(kit, plan, unit);
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

  /** What to be warned of before a unit gets power. */
  public static List<String> cautions(Kit kit, Unit unit) {
    return List.of(
        "Mains wiring, protective earth, and anything above 60 V DC are for local code and a licensed"
            + " electrician. Use a finished supply with a current limit.",
        "Large capacitors stay charged after power is off: wait, and measure before you touch."
            + (UnitChannels.of(kit, unit).isEmpty() ? "" : " A coil held on too long overheats."));
  }

  /** Whether anything is plugged into this unit after the rail check. */
  public static boolean hasSockets(AssemblyPlan plan, Unit unit) {
    return plan.steps().stream()
        .filter(step -> step.board().equals(unit.board()))
        .anyMatch(
            step ->
                step.stage() == Step.Stage.PLUG_IN || step.partType().kind() == PartKind.SOCKET);
  }

  /** What stands over a stage up to the first load. */
  private String heading(PowerCheck.Stage stage) {
    String loads = channels.isEmpty() ? "" : ", loads unplugged";
    String plugged = (hasSockets ? ", ICs out of their sockets" : "") + loads;
    return switch (stage) {
      case BEFORE_POWER -> "Before power: meter only" + plugged;
      case RAILS -> "Stage 1: rail check" + plugged;
      default -> "Stage 2: " + (hasSockets ? "ICs in" : "driver connected") + loads;
    };
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
    checks.add(new PowerCheck(stage, heading(stage), name, how, expect, stop));
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
        "Start with the supply's limit at 0.1 A." + whereToMeasure(),
        missing,
        "Supply goes into its limit, anything smells or is warm: off.");
    chips("supply", "as before", "Lower than before, or an IC gets hot: off.");
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
        limit + whereToMeasure(),
        voltageRange(rail),
        "Supply goes into its limit, a reading is outside, anything smells or is warm: off.");
  }

  private String whereToMeasure() {
    return (hasSockets
            ? " Measure at the supply pins of each socket"
            : " Measure where it comes onto the board")
        + ", against the return.";
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
        chips(
            rail.name(),
            voltageRange(rail),
            rail.currentLimit()
                .map(l -> "Lower than before, or current near " + l.quantity() + ": off.")
                .orElse("Lower than before, or an IC gets hot: off."));
      }
    }
  }

  /** A supply again with what is plugged into the board; where nothing is, it has been measured. */
  private void chips(String supply, String expect, String stop) {
    if (hasSockets) {
      add(
          PowerCheck.Stage.CHIPS,
          supply + " with ICs",
          "Off, wait for the capacitors, plug the ICs in, each the right way round, on again. Measure"
              + " as before.",
          expect,
          stop);
    } else if (!channels.isEmpty()) {
      add(
          PowerCheck.Stage.CHIPS,
          supply + " with driver",
          "Off, wait for the capacitors, connect what drives the outputs, on again. Measure as"
              + " before.",
          expect,
          stop);
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
