package lowfirst.channel.check;

import static lowfirst.channel.check.CheckKind.Sense.AT_LEAST;
import static lowfirst.channel.check.CheckKind.Sense.AT_MOST;

import lowfirst.quantity.Dimension;

/**
 * Every check of a channel, a rail or a return, in the order a report shows them, with its equation
 * in plain text and one sentence for a beginner.
 */
public enum CheckKind {
  CELLS_READ(
      "every row that it rests on could be read",
      Dimension.RATIO,
      AT_MOST,
      "cells that can't be read, rows of the same name, swaps without a place = 0",
      "What stands there may be what decides."),
  OWN_PARTS(
      "no part of it is another channel's",
      Dimension.RATIO,
      AT_MOST,
      "other rows with the same transistor, gate resistor, pull-down or flyback diode = 0",
      "Such a part serves one channel: where several rows name it, all but one lack it."),
  VOLTAGE_SCOPE(
      "within extra-low voltage",
      Dimension.VOLTAGE,
      AT_MOST,
      "Vrail·(1 + tolerance) ≤ 60 V DC",
      "Above 60 V DC this tool decides nothing: ask a person licensed to work on it."),
  GATE_LEVEL(
      "gate voltage earns an RDS(on) line",
      Dimension.VOLTAGE,
      AT_LEAST,
      "VGS = VOH·Rpd/(Rpd + RG + Rsource) − Vlift ≥ VGS of a datasheet RDS(on) line (pull-down at"
          + " the driver: VGS = VOH·Rpd/(Rpd + Rsource) − Vlift); VOH less VCE(CTR) − VCEsat where an"
          + " optocoupler isn't promised to saturate",
      "The gate must be pulled as high as the datasheet demands, or the MOSFET is only half on."),
  GATE_LIMIT(
      "gate voltage within VGS",
      Dimension.VOLTAGE,
      AT_MOST,
      "Vdrive,max ≤ VGS",
      "More than this on the gate destroys it at once."),
  GATE_OFF(
      "stays off at power-up",
      Dimension.VOLTAGE,
      AT_MOST,
      "VOL or, undriven, Rpd·(Ileak + QGD/trise) ≤ VGSth,min − 7 mV/K·(TA − 25 °C)",
      "If this fails the load can fire while the controller starts."),
  GATE_DRIVE_CURRENT(
      "driver delivers the gate current",
      Dimension.CURRENT,
      AT_MOST,
      "Vdrive,max/max(RG, Rsource) + Vdrive,max/Rpd ≤ Ipin",
      "The gate resistor keeps the pin's current within what the chip bears."),
  PULL_DOWN_POWER(
      "pull-down bears its power",
      Dimension.POWER,
      AT_MOST,
      "Vdrive²/Rpd ≤ min(P·d(TA), (250 V)²/Rpd); d = the lesser of (155 °C − TA)/85 K and MIL-R-39017",
      "Small resistors burn too: power is derated from 70 °C, and a voltage limit may bind first."),
  GATE_RESISTOR_POWER(
      "gate resistor bears its power",
      Dimension.POWER,
      AT_MOST,
      "Vdrive·(QGS + QGD)·fPWM ≤ min(P·d(TA), (250 V)²/RG)",
      "Charging the gate at every PWM edge heats its resistor."),
  SWITCHING_TIME(
      "switches within the PWM period",
      Dimension.TIME,
      AT_MOST,
      "ton + toff ≤ min(D, 1 − D)/fPWM, from QGS, QGD, R and VGSpl",
      "Too much gate resistance at this PWM frequency never lets it switch fully."),
  DRAIN_CURRENT(
      "drain current within ID",
      Dimension.CURRENT,
      AT_MOST,
      "Iload·(Vmax/Vnom) ≤ ID at the hottest case the datasheet gives; LED:"
          + " Iload·(1 + 4·(Vmax/Vnom − 1))",
      "The headline current needs an ideal heatsink; the junction check below says what it bears"
          + " here."),
  INRUSH_CURRENT(
      "inrush within the pulse rating",
      Dimension.CURRENT,
      AT_MOST,
      "Iinrush ≤ IDM (ID where it is not given); of a transistor or array ICM (IC)",
      "Lamps and motors draw many times their running current for a moment."),
  SAFE_AREA(
      "switching edge within the safe area",
      Dimension.CURRENT,
      AT_MOST,
      "Iload ≤ the SOA point at VDS ≥ Vmax and t ≥ the switching time",
      "While it switches, the MOSFET carries current and voltage together."),
  JUNCTION_TEMPERATURE(
      "junction temperature",
      Dimension.TEMPERATURE,
      AT_MOST,
      "TJ = TA + Reff·I²·RDSon·k(TJ) + RthJA·Psw, solved for TJ; Reff = D·(RthJA − RthJC) + Zth;"
          + " TJ ≤ TJmax − 25 K",
      "The chip inside gets hotter than its case; hot silicon resists more and heats more."),
  INRUSH_JUNCTION(
      "junction temperature in the inrush",
      Dimension.TEMPERATURE,
      AT_MOST,
      "T = TJ + Iinrush²·RDSon·k(T)·Zth(tinrush), solved for T; T ≤ TJmax − 25 K",
      "The inrush heats the chip on top of its running temperature."),
  STALL_CURRENT(
      "switch and contact carry a jammed motor",
      Dimension.CURRENT,
      AT_MOST,
      "Iinrush ≤ ID or IC, Icontact, ICtotal − Iothers, IB·(IC/IB); a fuse that opens in 1 s: I(topen)"
          + " for Iinrush",
      "A motor that jams draws at length what it else draws at starting; it may burn itself, too."),
  STALL_JUNCTION(
      "junction temperature under a jammed motor",
      Dimension.TEMPERATURE,
      AT_MOST,
      "as in service, at Iinrush for good; a fuse that opens in 1 s: at I(topen) for good, and at"
          + " Iinrush for topen",
      "A motor that jams draws at length what it else draws at starting; it may burn itself, too."),
  DRAIN_VOLTAGE(
      "drain voltage within VDS",
      Dimension.VOLTAGE,
      AT_MOST,
      "Vmax + VF ≤ 0.8·VDS",
      "Wiring adds short spikes to the rail: a fifth of the rating is kept for them."),
  AVALANCHE_CURRENT(
      "avalanche current within IAS",
      Dimension.CURRENT,
      AT_MOST,
      "Iload ≤ IAS",
      "Without a flyback diode the MOSFET itself must swallow the coil's energy."),
  AVALANCHE_ENERGY(
      "single avalanche within EAS",
      Dimension.ENERGY,
      AT_MOST,
      "½·L·I²·VDS/(VDS − Vmax) ≤ EAS·((TJmax − TJ)/(TJmax − 25 °C))²",
      "Without a flyback diode the MOSFET itself must swallow the coil's energy."),
  REPETITIVE_AVALANCHE(
      "every avalanche within EAR",
      Dimension.ENERGY,
      AT_MOST,
      "½·L·I²·VDS/(VDS − Vmax) ≤ EAR",
      "A rating for one avalanche is no rating for one at every switching off: fit a diode."),
  ON_TIME(
      "on no longer than the load bears",
      Dimension.TIME,
      AT_MOST,
      "ton ≤ tonmax",
      "A coil that is held on too long burns; a hung controller holds it on."),
  LOAD_DUTY(
      "on no more often than the load bears",
      Dimension.PERCENT,
      AT_MOST,
      "ton/T ≤ Dmax, duty = on time over on and off time",
      "A coil made for short strokes burns when it is on too often."),
  PULL_IN(
      "still pulls in when hot",
      Dimension.VOLTAGE,
      AT_LEAST,
      "Vmin − I·(Rwire + RDSon·k) − Vlift ≥ Vpull-in·(234.5 + Thot)/(234.5 + 20); PWM: D times that"
          + " less (1 − D)·VF",
      "Hot copper resists more, so a warm coil needs more volts to pull."),
  DIODE_VOLTAGE(
      "flyback diode reverse voltage",
      Dimension.VOLTAGE,
      AT_MOST,
      "Vmax ≤ 0.8·VRRM; of a Zener or suppressor diode ≤ 0.8·(VZ or VBR, min; VRWM)",
      "While the load is on, the whole rail stands across the diode."),
  DIODE_PEAK(
      "flyback diode peak current",
      Dimension.CURRENT,
      AT_MOST,
      "Iload ≤ IFRM, or π·IFav which a half-wave rating implies",
      "At switching off the diode takes over the whole coil current at once."),
  DIODE_CURRENT(
      "flyback diode average current",
      Dimension.CURRENT,
      AT_MOST,
      "PWM: I·(1 − D); else (L/R)·(I − (VF/R)·ln(1 + I·R/VF))/min(T, 1 s) ≤ IFav·(TJmax − TA)/(TJmax −"
          + " TA(IFav)); rated at its leads or case: TL(IFav), and TA + VF·IF·RthJA for TA, since they"
          + " get no hotter than the junction",
      "Each switching off sends the coil's current through the diode."),
  DIODE_TEMPERATURE(
      "flyback diode junction temperature",
      Dimension.TEMPERATURE,
      AT_MOST,
      "TA + VF·IF(average)·RthJA ≤ TJmax − 25 K",
      "The diode turns the coil's energy into heat."),
  DIODE_RECOVERY(
      "flyback diode recovers within the PWM period",
      Dimension.TIME,
      AT_MOST,
      "trr ≤ 1 % of 1/fPWM",
      "A slow rectifier shorts the rail for a moment at every PWM edge: use a fast one."),
  RELEASE_TIME(
      "coil releases before the next stroke",
      Dimension.TIME,
      AT_MOST,
      "(L/R)·ln(1 + I·R/VF) ≤ T − ton",
      "The diode keeps the coil's current flowing; a zener in series would let it fall faster."),
  FUSE_CURRENT(
      "fuse carries the load",
      Dimension.CURRENT,
      AT_MOST,
      "Iload + Iothers ≤ c·IN·(1 − 0.005/K·(TA − 25 °C)); c = 0.75 (UL 248-14, or unknown), 1.00"
          + " (IEC 60127)",
      "A fuse run too near its rating ages and opens for no fault."),
  FUSE_PULSE(
      "fuse survives the inrush",
      Dimension.JOULE_INTEGRAL,
      AT_MOST,
      "(Iinrush + Iothers)²·tinrush·ceil(10 s/T) ≤ s·I²t melting; s = 48 % for 100 pulses in its life, 38 %"
          + " for 1 000, 29 % for 10 000, 22 % for 100 000",
      "Every inrush bites a little off the fuse, and more when it can't cool in between."),
  FUSE_HOLDER(
      "fuse holder bears the fuse",
      Dimension.CURRENT,
      AT_MOST,
      "IN ≤ Iholder",
      "A holder or clip with a stronger fuse in it than it is made for melts before the fuse does."),
  CONTACT_FAULT(
      "contact bears a fault",
      Dimension.CURRENT,
      AT_MOST,
      "IN (Itrip of a resettable fuse; Ishort without one) ≤ Icontact",
      "A fuse lets its rated current pass for good: a weaker contact then burns before it opens."),
  FUSE_VOLTAGE(
      "fuse breaks this voltage",
      Dimension.VOLTAGE,
      AT_MOST,
      "Vmax ≤ VN for DC",
      "Direct current keeps an arc burning: the AC rating says nothing about it."),
  FUSE_BREAKING(
      "fuse breaks a short",
      Dimension.CURRENT,
      AT_MOST,
      "Ishort ≤ breaking capacity for DC; Ishort = the supply's short-circuit current, else its"
          + " limit, else Vmax/Rreturn",
      "A fuse that must break more than it was built for bursts or keeps arcing."),
  FUSE_PROTECTS_TRACK(
      "fuse opens before the track burns",
      Dimension.CURRENT,
      AT_MOST,
      "g·IN ≤ IPC-2221 current at a 105 °C track; g = 1.35 (UL 248-14), 2.1 (IEC 60127, or unknown)",
      "A fuse may carry far more than its number for an hour; the track must bear that."),
  FUSE_PROTECTS_WIRE(
      "fuse opens before the wire burns",
      Dimension.CURRENT,
      AT_MOST,
      "g·IN ≤ I(open air)·min(1, 1.45·√((70 °C − TA)/(70 °C − 30 °C))·bundle factor)",
      "A fuse may carry far more than its number for an hour; the wire must bear that."),
  FUSE_HOLDS(
      "resettable fuse holds the load",
      Dimension.CURRENT,
      AT_MOST,
      "Iload + Iothers ≤ Ihold in air of TA or hotter",
      "A resettable fuse holds less in hot air, and then trips for no fault."),
  TRIP_PROTECTS_TRACK(
      "resettable fuse trips before the track burns",
      Dimension.CURRENT,
      AT_MOST,
      "Itrip ≤ IPC-2221 current at a 105 °C track",
      "Tripped it does not open: it stays hot and lets a little through until the power is off."),
  TRIP_PROTECTS_WIRE(
      "resettable fuse trips before the wire burns",
      Dimension.CURRENT,
      AT_MOST,
      "Itrip ≤ I(open air)·min(1, 1.45·√((70 °C − TA)/(70 °C − 30 °C))·bundle factor)",
      "With the power off it resets, and feeds the same fault again: find the fault first."),
  UNFUSED_TRACK(
      "track bears the supply without a fuse",
      Dimension.CURRENT,
      AT_MOST,
      "Ishort ≤ IPC-2221 current at a 105 °C track",
      "Without a fuse all that the supply delivers may flow into a short, for as long as it lasts."),
  UNFUSED_WIRE(
      "wire bears the supply without a fuse",
      Dimension.CURRENT,
      AT_MOST,
      "Ishort ≤ I(open air)·√((70 °C − TA)/(70 °C − 30 °C))·bundle factor",
      "Without a fuse all that the supply delivers may flow into a short, for as long as it lasts."),
  TRACE_CURRENT(
      "copper track carries the load",
      Dimension.CURRENT,
      AT_MOST,
      "Irms ≤ k·ΔT^0.44·A^0.725, k = 0.048 outside, 0.024 inside; ΔT = 20 K; A in mil² (IPC-2221);"
          + " or less by k·ΔT^b·A^c with 0.0647, 0.4281, 0.6732 outside, 0.0150, 0.5453, 0.7349"
          + " inside",
      "The older IPC-2221 curve: IPC-2152 finds lone tracks on thin boards somewhat hotter."),
  CONTACT_CURRENT(
      "contact carries the load",
      Dimension.CURRENT,
      AT_MOST,
      "Iload ≤ Icontact",
      "A terminal run above its rating loosens, then burns."),
  WIRE_CURRENT(
      "wire carries the load",
      Dimension.CURRENT,
      AT_MOST,
      "Irms ≤ I(area)·√((70 °C − TA)/(70 °C − 30 °C))·bundle factor",
      "Thin wire, warm air and neighbours in a bundle all leave it less current."),
  WIRE_DROP(
      "voltage lost on the way",
      Dimension.VOLTAGE,
      AT_MOST,
      "Iload·(2·Rwire + Rtrack), hot ≤ 5 % of Vnom",
      "What the wire loses, the load misses."),
  STAGE_CURRENT(
      "driver output current",
      Dimension.CURRENT,
      AT_MOST,
      "Iload ≤ IC of one output",
      "Here the driver itself carries the load."),
  STAGE_TOTAL(
      "all outputs of the driver together",
      Dimension.CURRENT,
      AT_MOST,
      "Iload + Iothers ≤ ICtotal, the limit of the common pin",
      "One ground pin carries what all outputs sink."),
  STAGE_VOLTAGE(
      "driver output voltage",
      Dimension.VOLTAGE,
      AT_MOST,
      "Vmax + VF ≤ 0.8·VCE",
      "When off, the output bears the whole rail."),
  STAGE_TEMPERATURE(
      "driver temperature",
      Dimension.TEMPERATURE,
      AT_MOST,
      "TA + RthJA·(Vdrop·(Iload + Iothers) + Psw) ≤ TJmax − 25 K; PWM: Psw = ½·Vmax·(Iload + Iothers)·tsw·fPWM,"
          + " a third of it without inductance",
      "All outputs heat one package, and under PWM every edge does."),
  FORCED_GAIN(
      "transistor driven into saturation",
      Dimension.RATIO,
      AT_MOST,
      "IC/IB ≤ the gain at which VCEsat is specified; IB = (VOH − VBEsat)/(RB + Rsource) −"
          + " VBEsat/Rpd",
      "A transistor that gets too little base current stays half on and overheats."),
  OPTO_CURRENT(
      "optocoupler delivers the current",
      Dimension.CURRENT,
      AT_MOST,
      "IC ≤ IF·(IC/IF at which VCEsat is specified); at a gate also IC ≤ ½·IC(CTR) at IF ≥ IF(CTR),"
          + " and the level then counts VCE(CTR)",
      "The transfer ratio on the cover holds at 5 V across the output, not when it is fully on."),
  RAIL_CURRENT(
      "supply delivers the sum",
      Dimension.CURRENT,
      AT_MOST,
      "sum of the largest loads that are on at once ≤ Ilimit",
      "All loads that are on together must fit into the supply."),
  RAIL_INRUSH(
      "supply delivers the inrush",
      Dimension.CURRENT,
      AT_MOST,
      "sum of the largest inrush currents that come at once ≤ Ilimit",
      "If all switch on in one instant the supply may give way: switch them on one after another."),
  RETURN_CURRENT(
      "return conductor carries the sum",
      Dimension.CURRENT,
      AT_MOST,
      "sum I + Iothers ≤ I(area)·√((70 °C − TA)/(70 °C − 30 °C))",
      "All loads' current comes back here: the fine wire that suits the logic supply does not suit"
          + " the return."),
  RETURN_CONTACTS(
      "return contacts carry the sum",
      Dimension.CURRENT,
      AT_MOST,
      "sum I + Iothers ≤ 0.8·contacts·Icontact, since parallel contacts share unevenly",
      "All loads' current passes these contacts."),
  RETURN_DROP(
      "voltage lost in the return",
      Dimension.VOLTAGE,
      AT_MOST,
      "(sum I + Iothers)·(Rreturn + 10 mΩ/contacts), hot ≤ 3 % of Vnom",
      "What the return loses lifts the boards' ground and takes it from every gate."),
  SUPPLY_POWER(
      "supply unit delivers its rails together",
      Dimension.POWER,
      AT_MOST,
      "sum over its rails of Vmax·(sum of the largest loads that are on at once) ≤ Plimit",
      "One unit that feeds several rails can't give each of them its most at once."),
  SUPPLY_INRUSH(
      "supply unit delivers the inrush",
      Dimension.POWER,
      AT_MOST,
      "sum over its rails of Vmax·(sum of the largest inrush currents that come at once) ≤ Plimit",
      "If all switch on in one instant the supply may give way: switch them on one after another.");

  /** Which side of the limit is good. */
  public enum Sense {
    AT_MOST,
    AT_LEAST
  }

  private final String words;
  private final Dimension dimension;
  private final Sense sense;
  private final String formula;
  private final String remark;

  CheckKind(String words, Dimension dimension, Sense sense, String formula, String remark) {
    this.words = words;
    this.dimension = dimension;
    this.sense = sense;
    this.formula = formula;
    this.remark = remark;
  }

  /** What a report calls it. */
  public String words() {
    return words;
  }

  /** Whether it is of all loads coming on in one instant, and not of those that are on. */
  public boolean isOfOneInstant() {
    return this == RAIL_INRUSH || this == SUPPLY_INRUSH;
  }

  /** What its two numbers measure. */
  public Dimension dimension() {
    return dimension;
  }

  /** Which side of the limit is good. */
  public Sense sense() {
    return sense;
  }

  /** The equation in plain text. */
  public String formula() {
    return formula;
  }

  /** One sentence for a beginner. */
  public String remark() {
    return remark;
  }
}
