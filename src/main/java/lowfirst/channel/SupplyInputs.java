package lowfirst.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.board.Kit;
import lowfirst.board.Rail;
import lowfirst.board.SupplyUnit;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.data.LoadRails;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Source;

/**
 * Everything that the checks of a shared limit read. A value.
 *
 * @param supply which limit
 * @param limit what it is
 * @param least what each of its rails draws for certain
 * @param most what each may draw at most
 * @param missing what would tell more; empty where both are the same
 */
record SupplyInputs(
    SupplyUnit supply, Datum limit, List<Share> least, List<Share> most, List<Datum> missing) {

  SupplyInputs {
    least = List.copyOf(least);
    most = List.copyOf(most);
    missing = List.copyOf(missing);
  }

  /**
   * What one rail takes of it, as power.
   *
   * @param running with the largest loads on that may be on at once
   * @param inrush in the moment when they are switched on
   */
  record Share(Datum running, Datum inrush) {

    private static Share of(RailInputs rail) {
      return new Share(
          watts("P", rail, rail.datum(Term.RAIL_SUM)),
          watts("Pinrush", rail, rail.datum(Term.RAIL_INRUSH_SUM)));
    }

    private static Share alike(Datum power) {
      return new Share(power, power);
    }
  }

  /**
   * The numbers of a shared limit.
   *
   * @param loaded every rail that loads hang on, or may
   */
  static SupplyInputs of(SupplyUnit supply, Kit kit, Map<String, RailInputs> loaded) {
    var least = new ArrayList<Share>();
    var most = new ArrayList<Share>();
    var missing = new ArrayList<Datum>();
    for (String name : supply.rails()) {
      Optional<Rail> rail = kit.rail(name);
      RailInputs on = loaded.get(name);
      if (rail.isEmpty()) {
        String what = "rail \"" + name + "\" of supply " + supply.name() + ": rails.csv";
        most.add(Share.alike(lacking(what)));
      } else if (on != null) {
        least.add(Share.of(on));
        most.add(Share.of(on.perhaps().map(RailInputs.Perhaps::with).orElse(on)));
        on.perhaps().ifPresent(perhaps -> missing.addAll(perhaps.missing()));
      } else {
        Datum loads = lacking("the loads of rail " + name + ": write them in loads.csv");
        most.add(Share.alike(limitOf(rail.get()).orElse(loads)));
        missing.add(loads);
      }
    }
    if (supply.rails().isEmpty()) {
      String what = "rails of supply " + supply.name() + ": write them in supplies.csv";
      most.add(Share.alike(lacking(what)));
    }
    return new SupplyInputs(supply, limit(supply), least, most, missing);
  }

  private static Datum limit(SupplyUnit supply) {
    return Datum.stated(
        Term.SUPPLY_LIMIT,
        supply.powerLimit(),
        "power limit of supply " + supply.name() + ": write it in supplies.csv");
  }

  private static Datum lacking(String what) {
    return Datum.missing(Term.SUPPLY_LIMIT, what);
  }

  private static Datum watts(String symbol, RailInputs rail, Datum amperes) {
    return watts(symbol, rail.rail().name(), rail.datum(Term.SUPPLY), amperes);
  }

  /** A rail's current as power, at the highest voltage: the current was worked out for it, too. */
  private static Datum watts(String symbol, String rail, Datum volts, Datum amperes) {
    if (!amperes.isKnown() || !volts.isKnown()) {
      return amperes.isKnown() ? volts : amperes;
    }
    boolean canPass = amperes.canPass() && volts.canPass();
    return Datum.constant(
        symbol + "(" + rail + ")",
        volts.high() * amperes.high(),
        Dimension.POWER,
        Source.computed("Vmax·I, " + amperes.source() + "; " + volts.source(), canPass));
  }

  /** Where nobody says what hangs on a rail, it takes no more than its own limit. */
  private static Optional<Datum> limitOf(Rail rail) {
    Optional<Datum> volts = LoadRails.voltage(Term.SUPPLY, rail);
    if (volts.isEmpty() || rail.currentLimit().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        watts("P", rail.name(), volts.get(), Datum.of(Term.RAIL_LIMIT, rail.currentLimit().get())));
  }

  /** The same with another limit. */
  SupplyInputs with(Datum limit) {
    return new SupplyInputs(supply, limit, least, most, missing);
  }
}
