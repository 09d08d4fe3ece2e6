package lowfirst.part;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import lowfirst.quantity.Dimension;

/** The kinds of through-hole part that a kit may hold, and what each asks of the hand. */
public enum PartKind {
  WIRE_LINK("wire link"),
  RESISTOR("resistor"),
  RESISTOR_NETWORK("resistor network", Trait.POLARISED),
  TRIMMER("trimmer"),
  POTENTIOMETER("potentiometer"),
  CERAMIC_CAPACITOR("ceramic capacitor"),
  FILM_CAPACITOR("film capacitor"),
  ELECTROLYTIC_CAPACITOR("electrolytic capacitor", Trait.POLARISED, Trait.HEAT_SENSITIVE),
  TANTALUM_CAPACITOR("tantalum capacitor", Trait.POLARISED, Trait.HEAT_SENSITIVE),
  CAPACITOR("capacitor"),
  /** Turned to its value, so that it has none to be told or measured by. */
  TRIMMER_CAPACITOR("trimmer capacitor"),
  INDUCTOR("inductor"),
  DIODE("diode", Trait.POLARISED),
  SCHOTTKY_DIODE("Schottky diode", Trait.POLARISED),
  ZENER_DIODE("Zener diode", Trait.POLARISED),
  BRIDGE_RECTIFIER("bridge rectifier", Trait.POLARISED),
  LED("LED", Trait.POLARISED, Trait.HEAT_SENSITIVE),
  /** Of which nothing says whether a current or a voltage turns it on; it may be a MOSFET. */
  TRANSISTOR("transistor", Trait.POLARISED, Trait.STATIC_SENSITIVE),
  BIPOLAR_TRANSISTOR("bipolar transistor", Trait.POLARISED),
  /** Its gate is a junction: it conducts without a voltage there. */
  JFET("JFET", Trait.POLARISED, Trait.STATIC_SENSITIVE),
  MOSFET("MOSFET", Trait.POLARISED, Trait.STATIC_SENSITIVE),
  THYRISTOR("thyristor", Trait.POLARISED),
  REGULATOR("voltage regulator", Trait.POLARISED),
  INTEGRATED_CIRCUIT("integrated circuit", Trait.POLARISED, Trait.STATIC_SENSITIVE),
  OPTOCOUPLER("optocoupler", Trait.POLARISED),
  DRIVER_ARRAY("Darlington driver array", Trait.POLARISED, Trait.STATIC_SENSITIVE),
  SOCKET("IC socket", Trait.POLARISED),
  CRYSTAL("crystal", Trait.HEAT_SENSITIVE),
  RESONATOR("ceramic resonator"),
  FUSE("fuse"),
  FUSE_HOLDER("fuse holder"),
  VARISTOR("varistor"),
  /** Its resistance is stated for one temperature: no band tells it, and a warm hand changes it. */
  THERMISTOR("thermistor"),
  /** Light changes its resistance; its number tells a range at best. */
  PHOTORESISTOR("photoresistor"),
  RELAY("relay"),
  SWITCH("switch"),
  PIN_HEADER("pin header"),
  CONNECTOR("connector"),
  SCREW_TERMINAL("screw terminal"),
  DISPLAY("display", Trait.POLARISED, Trait.HEAT_SENSITIVE),
  BUZZER("buzzer", Trait.POLARISED),
  MICROPHONE("microphone", Trait.POLARISED, Trait.HEAT_SENSITIVE),
  BATTERY("battery or its holder", Trait.POLARISED),
  MODULE("module", Trait.POLARISED, Trait.STATIC_SENSITIVE),
  HEATSINK("heatsink"),
  MOTOR("motor"),
  /** Not a part to solder: a hole, a pad, a mark. */
  BOARD_FEATURE("board feature"),
  /** A screw, a knob, a tube, a cable: in the BOM but not on the board. */
  HARDWARE("hardware"),
  UNKNOWN("part of unknown kind");

  /** What a kind of part asks of the hand. */
  public enum Trait {
    /** It has one right way round. */
    POLARISED,
    /** Long heat spoils it. */
    HEAT_SENSITIVE,
    /** Touching it can destroy it (ANSI/ESD S20.20). */
    STATIC_SENSITIVE
  }

  private final String words;
  private final Set<Trait> traits;

  PartKind(String words, Trait... traits) {
    this.words = words;
    this.traits = traits.length == 0 ? Set.of() : EnumSet.copyOf(Set.of(traits));
  }

  /** What a person calls it. */
  public String words() {
    return words;
  }

  /** Whether it has one right way round. */
  public boolean isPolarised() {
    return traits.contains(Trait.POLARISED);
  }

  /** Whether long heat spoils it. */
  public boolean isHeatSensitive() {
    return traits.contains(Trait.HEAT_SENSITIVE);
  }

  /** Whether touching it can destroy it. */
  public boolean isStaticSensitive() {
    return traits.contains(Trait.STATIC_SENSITIVE);
  }

  /** Whether it is soldered to the board at all. */
  public boolean isOnTheBoard() {
    return this != BOARD_FEATURE && this != HARDWARE;
  }

  /** Whether it is some kind of capacitor. */
  public boolean isCapacitor() {
    return this == CAPACITOR
        || this == CERAMIC_CAPACITOR
        || this == FILM_CAPACITOR
        || this == ELECTROLYTIC_CAPACITOR
        || this == TANTALUM_CAPACITOR;
  }

  /** Whether it is some kind of two-lead diode that isn't an LED. */
  public boolean isDiode() {
    return this == DIODE || this == SCHOTTKY_DIODE || this == ZENER_DIODE;
  }

  /** What its value measures; empty where parts go by a type number. */
  public Optional<Dimension> measures() {
    return switch (this) {
      case RESISTOR, RESISTOR_NETWORK, TRIMMER, POTENTIOMETER -> Optional.of(Dimension.RESISTANCE);
      case INDUCTOR -> Optional.of(Dimension.INDUCTANCE);
      case CRYSTAL, RESONATOR -> Optional.of(Dimension.FREQUENCY);
      default -> isCapacitor() ? Optional.of(Dimension.CAPACITANCE) : Optional.empty();
    };
  }
}
