package lowfirst.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.check.Term;
import lowfirst.channel.formula.CoilDecay;
import lowfirst.channel.formula.OnResistance;

/**
 * Circuits of a channel for the simulator, from its resolved numbers. Diodes are near-ideal with a
 * voltage source for VF; the MOSFET is a level-1 model with linear capacitances; heat flows through
 * a ladder of resistors and capacitors.
 */
final class Netlist {
  private static final String DIODE = ".model di d(is=1e-12 n=0.05 rs=1m)\n";

  private Netlist() {}

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }

  /** The whole channel switched on for good: prints {@code v(g)}, {@code v(s)}, {@code i(vs)}. */
  static String on(ChannelInputs in) {
    OnResistance.Line line = in.onResistance().earned(in.gateVolts(), in.loadAmps());
    double vto = in.nominal(Term.THRESHOLD);
    double kp = 1 / (line.maxOhms() * (line.gateVolts() - vto));
    double volts = in.nominal(Term.SUPPLY);
    return "* on\n"
        + text("vdrv d 0 %g\n", in.nominal(Term.DRIVE_LEVEL))
        + gate(in)
        + text("vs s 0 %g\n", in.nominal(Term.RETURN_LIFT))
        + "m1 dr g s s nm w=1 l=1\n"
        + text(".model nm nmos(level=1 vto=%g kp=%g)\n", vto, kp)
        + text("vrail rail 0 %g\n", volts)
        + text("rload rail a %g\n", volts / in.nominal(Term.LOAD_CURRENT))
        + text("rloop a dr %g\n", OnCurrent.coldLoopOhms(in))
        + ".control\nop\nprint v(g) v(s) i(vs)\nquit\n.endc\n.end\n";
  }

  private static String gate(ChannelInputs in) {
    double gateOhms =
        in.has(Fitted.GATE_RESISTOR) ? Math.max(in.nominal(Term.GATE_RESISTOR), 1e-3) : 1e-3;
    String pullDown =
        in.has(Fitted.PULL_DOWN)
            ? text("rpd %s 0 %g\n", in.pullDownAtGate() ? "g" : "p", in.nominal(Term.PULL_DOWN))
            : "";
    return text("rs d p %g\n", Math.max(in.nominal(Term.DRIVE_RESISTANCE), 1e-3))
        + text("rg p g %g\n", gateOhms)
        + pullDown;
  }

  /** Both edges of a clamped inductive load: measures {@code ton} and {@code toff}. */
  static String edges(ChannelInputs in, double onSeconds, double offSeconds) {
    double amps = in.loadAmps();
    double volts = in.nominal(Term.SUPPLY);
    double vto = in.nominal(Term.THRESHOLD);
    double plateau = in.nominal(Term.PLATEAU);
    double above = plateau - vto;
    double cgd = in.nominal(Term.MILLER_CHARGE) / volts;
    // QGS fills both capacitances up to the plateau while the drain still stands at the rail
    double cgs = Math.max(in.nominal(Term.GATE_SOURCE_CHARGE) / plateau - cgd, 1e-12);
    double gateOhms = in.has(Fitted.GATE_RESISTOR) ? in.nominal(Term.GATE_RESISTOR) : 0;
    double settle = 12 * (in.nominal(Term.DRIVE_RESISTANCE) + gateOhms) * (cgs + cgd);
    double width = settle + 4 * onSeconds;
    double total = 2 * width + settle + 4 * offSeconds;
    double low = in.nominal(Term.DRIVE_LOW);
    double lift = in.nominal(Term.RETURN_LIFT);
    // where the plateau ends: the drain falls to most of what the gate has above threshold
    double fallen = lift + Math.max(0.05 * volts, 0.75 * above);
    return "* edges\n"
        + text(
            "vdrv d 0 pulse(%g %g %g 1n 1n %g %g)\n",
            low, in.nominal(Term.DRIVE_LEVEL), width / 10, width, 10 * total)
        + gate(in)
        + "vsense dr dm 0\n"
        + "m1 dm g s s nm w=1 l=1\n"
        + text(".model nm nmos(level=1 vto=%g kp=%g)\n", vto, 2 * amps / (above * above))
        + text("cgs g s %g\ncgd g dr %g\nvs s 0 %g\n", cgs, cgd, lift)
        + text("vrail rail 0 %g\niload rail dr %g\n", volts, amps)
        + "dfw dr rail df\n.model df d(is=1e-9 n=1 rs=10m cjo=10p)\n.options method=gear abstol=1e-6 vntol=1e-4 gmin=1e-9\n"
        + text(
            ".ic v(dr)=%g v(dm)=%g v(g)=%g v(p)=%g v(d)=%g v(s)=%g v(rail)=%g\n",
            volts + 0.6, volts + 0.6, low, low, low, lift, volts)
        + text(".tran %g %g 0 %g uic\n", total / 2000, total, total / 4000)
        + text(
            ".meas tran ton trig i(vsense) val=%g rise=1 targ v(dr) val=%g fall=1\n",
            0.02 * amps, fallen)
        + text(
            ".meas tran toff trig v(dr) val=%g rise=last targ i(vsense) val=%g fall=last\n",
            fallen, 0.02 * amps)
        + ".end\n";
  }

  /**
   * A coil channel whose switch has just opened: rail, coil with its current, the drain with a
   * little capacitance, and across the coil a diode with a resistor and a Zener in series. Measures
   * {@code peak}, the drain's highest voltage, and {@code half} and {@code gone}, the times until
   * half and a hundredth of the current is left.
   */
  static String release(
      CoilDecay coil, double railVolts, double zenerVolts, double seriesOhms, double seconds) {
    double step = seconds / 2000;
    // charged by the coil's current to the clamp's height within a step
    double farads =
        coil.amperes() * step / (railVolts + zenerVolts + coil.amperes() * seriesOhms) / 4;
    return "* release\n"
        + text("vrail rail 0 %g\n", railVolts)
        + text("l1 rail x %g ic=%g\n", coil.henries(), coil.amperes())
        + text("r1 x dr %g\n", coil.ohms())
        + text("cd dr 0 %g ic=0\n", farads)
        + "d1 dr k di\n"
        + text("vf k kf %g\n", coil.volts())
        + text("rser kf kz %g\n", Math.max(seriesOhms, 1e-6))
        + text("vz kz rail %g\n", zenerVolts)
        + ".options method=gear reltol=1e-4\n"
        + DIODE.replace("n=0.05 rs=1m", "n=0.01 rs=1u")
        + text(".tran %g %g 0 %g uic\n", step, 1.2 * seconds, step)
        + ".meas tran peak max v(dr)\n"
        + text(".meas tran half when i(l1)=%g fall=1\n", 0.5 * coil.amperes())
        + text(".meas tran gone when i(l1)=%g fall=1\n", 0.01 * coil.amperes())
        + ".end\n";
  }

  /** A coil's current dying into a clamp: measures {@code i25}, {@code i50}, {@code charge}. */
  static String decay(CoilDecay coil, double clampVolts, double seconds) {
    return "* decay\n"
        + text("l1 x 0 %g ic=%g\n", coil.henries(), -coil.amperes())
        + text("r1 x y %g\n", Math.max(coil.ohms(), 1e-6))
        + text("d1 y z di\nvclamp z 0 %g\n", clampVolts)
        + DIODE.replace("rs=1m", "rs=1u")
        + text(".tran %g %g 0 %g uic\n", seconds / 500, 1.5 * seconds, seconds / 1000)
        + text(".meas tran i25 find i(vclamp) at=%g\n", 0.25 * seconds)
        + text(".meas tran i50 find i(vclamp) at=%g\n", 0.5 * seconds)
        + text(".meas tran charge integ i(vclamp) from=0 to=%g\n", 1.5 * seconds)
        + text(".meas tran gone when i(vclamp)=%g fall=1\n", 0.01 * coil.amperes())
        + ".end\n";
  }

  /**
   * Heat from junction to air, with the resistance growing as it warms: measures {@code last}, the
   * junction temperature after everything has settled, and {@code most} of the last seconds.
   */
  static String heat(
      ChannelInputs in, double coldWatts, double extraWatts, Ladder ladder, double seconds) {
    var points = new StringJoiner(",");
    for (double celsius = -100; celsius <= 400; celsius += 5) {
      points.add(text("%g,%g", celsius, in.hotFactor().at(celsius)));
    }
    double beyond = in.hotFactor().at(5000);
    points.add(text("%g,%g", 5000.0, beyond));
    String pulse =
        ladder.periodSeconds() > 0
            ? text(
                "von on 0 pulse(0 1 0 1u 1u %g %g)\n", ladder.onSeconds(), ladder.periodSeconds())
            : "von on 0 1\n";
    double step = ladder.periodSeconds() > 0 ? ladder.onSeconds() / 12 : seconds / 400;
    return "* heat\n"
        + pulse
        + text("vair air 0 %g\n", in.ambient())
        + text("bheat 0 tj i=%g+v(on)*%g*pwl(v(tj),%s)\n", extraWatts, coldWatts, points)
        + ladder.text()
        + text(".tran %g %g 0 %g uic\n", step, seconds, step)
        + text(".meas tran last find v(tj) at=%g\n", 0.999 * seconds)
        + text(".meas tran most max v(tj) from=%g to=%g\n", 0.9 * seconds, seconds)
        + ".end\n";
  }

  /** A thermal ladder: Foster cells from junction to case, then the case to air. */
  @SuppressWarnings("ArrayRecordComponent") // never compared
  record Ladder(
      double[] kelvinPerWatt,
      double[] seconds,
      double caseToAir,
      double caseSeconds,
      double onSeconds,
      double periodSeconds) {

    String text() {
      List<String> lines = new ArrayList<>();
      String node = "tj";
      for (int i = 0; i < kelvinPerWatt.length; i++) {
        String next = "c" + i;
        lines.add(Netlist.text("r%d %s %s %g", i, node, next, kelvinPerWatt[i]));
        lines.add(Netlist.text("c%d %s %s %g ic=0", i, node, next, seconds[i] / kelvinPerWatt[i]));
        node = next;
      }
      lines.add(Netlist.text("rca %s air %g", node, caseToAir));
      lines.add(Netlist.text("cca %s air %g ic=0", node, caseSeconds / caseToAir));
      return String.join("\n", lines) + "\n";
    }
  }
}
