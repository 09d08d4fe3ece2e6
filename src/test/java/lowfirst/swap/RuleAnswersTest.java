package lowfirst.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import lowfirst.part.Datasheets;
import lowfirst.part.PartKind;
import lowfirst.quantity.Source;
import lowfirst.swap.rule.Answer;
import lowfirst.swap.rule.OtherKindRule;
import lowfirst.swap.rule.PlaceRule;
import lowfirst.swap.rule.SwapRule;
import lowfirst.swap.rule.SwapRules;
import lowfirst.swap.rule.SwapVerdict;
import lowfirst.swap.subject.Evidence;
import lowfirst.swap.subject.SwapCase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What single rules say of words, of missing data and of data from memory. */
class RuleAnswersTest {
  private static Optional<Answer> answer(
      PartKind kind, String rule, String place, String asked, String offered) {
    return answer(Sheets.swap(kind, place, asked, offered), kind, rule);
  }

  private static Optional<Answer> answer(SwapCase swap, PartKind kind, String rule) {
    return SwapRules.of(kind).stream()
        .filter(one -> one.toString().equals(rule))
        .findFirst()
        .orElseThrow()
        .judge(swap);
  }

  private static String verdict(Optional<Answer> answer) {
    return answer.map(said -> said.verdict().words()).orElse("silent");
  }

  @ParameterizedTest(name = "{2}: {3} -> {4}")
  @CsvSource({
    // a flyback diode switched at hand-scale times may be any rectifier
    "DIODE, RECOVERY, flyback 24, technology = fast recovery, technology = standard recovery, fits",
    "DIODE, RECOVERY, flyback 24, technology = fast recovery, '', fits",
    // under PWM a slow one never does by its name alone, not even for a slow one
    "DIODE, RECOVERY, flyback pwm 24, technology = fast recovery, technology = standard recovery, undecided",
    "DIODE, RECOVERY, flyback pwm 24, technology = standard recovery, technology = standard recovery, undecided",
    "DIODE, RECOVERY, flyback pwm 24, '', technology = standard recovery, undecided",
    "DIODE, RECOVERY, flyback pwm 24, technology = fast recovery, technology = Schottky, fits",
    // elsewhere slow does for slow, and nobody knows where the BOM does not say
    "DIODE, RECOVERY, '', technology = standard recovery, technology = standard recovery, fits",
    "DIODE, RECOVERY, '', technology = fast recovery, technology = standard recovery, does not fit",
    "DIODE, RECOVERY, '', '', technology = standard recovery, undecided",
    "DIODE, RECOVERY, '', '', technology = Schottky, fits",
    "DIODE, RECOVERY, '', trr <50e-9 s, trr <75e-9 s, does not fit",
    "DIODE, RECOVERY, '', trr <75e-9 s, trr <50e-9 s, fits",
    // a Schottky leaks: harmless across a coil, to be thought of elsewhere, nothing new for another
    "DIODE, LEAKAGE, '', technology = fast recovery, technology = Schottky, undecided",
    "DIODE, LEAKAGE, '', '', technology = Schottky, undecided",
    "DIODE, LEAKAGE, flyback 24, technology = fast recovery, technology = Schottky, silent",
    "SCHOTTKY_DIODE, LEAKAGE, '', technology = Schottky, technology = Schottky, silent",
    "DIODE, LEAKAGE, '', technology = fast recovery, technology = fast recovery, silent",
    "DIODE, LEAKAGE, '', technology = fast recovery, '', silent",
    // more drop is heat that only the circuit can judge; less is welcome
    "DIODE, FORWARD_VOLTAGE, '', VF@IF=1A <1 V, VF@IF=1A <1.2 V, undecided",
    "DIODE, FORWARD_VOLTAGE, '', VF@IF=1A <1 V, VF@IF=1A <0.9 V, fits",
    // what drops so little at 3 A drops no more at 1 A; the other way round nobody knows
    "DIODE, FORWARD_VOLTAGE, '', VF@IF=1A <1 V, VF@IF=3A <0.9 V, fits",
    "DIODE, FORWARD_VOLTAGE, '', VF@IF=3A <1 V, VF@IF=1A <0.9 V, undecided",
    "DIODE, FORWARD_VOLTAGE, '', VF@IF=1A <1 V; VF@IF=3A <1.2 V, VF@IF=1A <0.9 V, undecided",
    "DIODE, FORWARD_VOLTAGE, '', VF@IF=1A <1 V; VF@IF=3A <1.2 V, VF@IF=1000mA <0.9 V; VF@IF=4A <1.1 V, fits",
    "DIODE, FORWARD_VOLTAGE, '', VF@IF=1A <1 V, 'VF@IF=1A, TJ=25C <1 V', fits",
    "DIODE, FORWARD_VOLTAGE, '', VF@IF=1A <1 V, 'VF@IF=1A, TJ=125C <0.9 V', undecided",
    "DIODE, FORWARD_VOLTAGE, '', VF@IF=1A <1 V, VF@IF=1A pulsed <0.9 V, undecided",
    // a surge of a microsecond says nothing of one of half a mains cycle
    "DIODE, SURGE_CURRENT, '', IFSM@8.3 ms half sine <30 A, IFSM@tp=1us <100 A, undecided",
    "DIODE, SURGE_CURRENT, '', IFSM@8.3 ms half sine <30 A, IFSM@tp=1us <20 A, does not fit",
    "DIODE, SURGE_CURRENT, '', IFSM@8.3 ms half sine <30 A, IFSM@8.3 ms half sine <50 A, fits",
    "DIODE, SURGE_CURRENT, '', IFSM <30 A, IFSM@8.3 ms half sine <50 A, fits",
    // each current rating must be kept where it is rated, or in a warmer case
    "MOSFET, DRAIN_CURRENT_RATING, '', ID@TC=25C <40 A; ID@TC=100C <30 A, ID@TC=25C <50 A, undecided",
    "MOSFET, DRAIN_CURRENT_RATING, '', ID@TC=100C <30 A, ID@TC=25C <50 A, undecided",
    "MOSFET, DRAIN_CURRENT_RATING, '', ID@TC=25C <30 A, ID@TC=100C <30 A, fits",
    "MOSFET, DRAIN_CURRENT_RATING, '', ID@TA=25C <3 A, ID@TC=25C <30 A, undecided",
    "MOSFET, DRAIN_CURRENT_RATING, '', ID@TC=25C <40 A, ID@TA=25C <3 A, does not fit",
    // a gate charged to 10 V holds more than one charged to 5 V
    "MOSFET, GATE_CHARGE, '', QG@VGS=5V <48e-9 C, QG@VGS=10V <42e-9 C, fits",
    "MOSFET, GATE_CHARGE, '', QG@VGS=10V <71e-9 C, QG@VGS=5V <48e-9 C, undecided",
    // avalanche energies of other coils do not transfer
    "MOSFET, AVALANCHE, '', EAS@L=1mH <100e-3 J, EAS@L=10mH <300e-3 J, undecided",
    "MOSFET, AVALANCHE, '', EAS@L=1mH <100e-3 J, EAS@L=1mH <300e-3 J, fits",
    "ELECTROLYTIC_CAPACITOR, RIPPLE, '', Iripple@120 Hz <1 A, Iripple@100 kHz <1.2 A, undecided",
    // tabs
    "MOSFET, TAB, '', tab = drain, tab = drain, fits",
    "MOSFET, TAB, '', tab = drain, tab = isolated, fits",
    "MOSFET, TAB, '', tab = isolated, tab = drain, does not fit",
    "MOSFET, TAB, '', tab = drain, '', undecided",
    "MOSFET, TAB, '', '', tab = drain, undecided",
    "MOSFET, TAB, '', '', '', silent",
    // the gate's charge matters where it is switched often, or nobody knows how often
    "MOSFET, GATE_CHARGE, mosfet 24, QG <20e-9 C, QG <40e-9 C, silent",
    "MOSFET, GATE_CHARGE, mosfet pwm 24, QG <20e-9 C, QG <40e-9 C, does not fit",
    "MOSFET, GATE_CHARGE, '', QG <20e-9 C, QG <40e-9 C, does not fit",
    // sheets spell some ratings in other ways, and a fuse's are nominal
    "MOSFET, JUNCTION_LIMIT, '', TJmax <175 degC, TJ <150 degC, does not fit",
    "MOSFET, JUNCTION_LIMIT, '', TJ <150 degC, TJmax <175 degC, fits",
    "MOSFET, DRAIN_VOLTAGE_RATING, '', VDSS <60 V, BVDSS >75 V, fits",
    "MOSFET, GATE_VOLTAGE_RATING, '', VGS <20 V, VGSS <16 V, does not fit",
    "FUSE, NOT_MORE, '', IN ~2 A, Irated ~3.15 A, does not fit",
    "FUSE, ENOUGH, '', IN ~2 A, IN ~1 A, does not fit",
    "FUSE, ENOUGH, '', IN ~2 A, IN ~2 A, fits",
    // a resettable one is no fuse that melts; one that trips later protects less
    "FUSE, CHARACTERISTIC, '', characteristic = T, characteristic = resettable, does not fit",
    "FUSE, ENOUGH, '', Ihold@TA=60C <1.2 A, Ihold@TA=60C <1 A, does not fit",
    "FUSE, TRIP, '', Itrip <3.6 A, Itrip <4 A, does not fit",
    "FUSE, TRIP, '', Itrip <3.6 A, Itrip <3.6 A, fits",
    "FUSE, TRIP, '', Itrip <3.6 A, '', undecided",
    "FUSE, TRIP, '', '', Itrip <3.6 A, silent",
    "FUSE, VOLTAGE, '', VN@DC ~125 V, VN@DC ~32 V, does not fit",
    // a figure for alternating voltage promises nothing of direct; the other way round it does
    "FUSE, VOLTAGE, '', VN@DC ~125 V, VN@AC ~250 V, undecided",
    "FUSE, VOLTAGE, '', VN@DC ~125 V, VN@AC ~63 V, does not fit",
    "FUSE, VOLTAGE, '', VN@DC ~125 V, VN@AC ~250 V; VN@DC ~125 V, fits",
    "FUSE, VOLTAGE, '', VN@AC ~250 V, VN@DC ~250 V, fits",
    "FUSE, BREAKING_CAPACITY, '', breaking@125 V DC <50 A, breaking@250 V AC <1500 A, undecided",
    // a Zener is as good as its band: the nominal voltage alone promises none
    "ZENER_DIODE, VOLTAGE, '', VZ ~12 V, VZ ~12.2 V, undecided",
    "ZENER_DIODE, VOLTAGE, '', VZ ~12 V, VZ ~12.5 V, undecided",
    // some band of 20 % about 12 V reaches to 14.4 V, none of them to 15 V
    "ZENER_DIODE, VOLTAGE, '', VZ ~12 V, VZ ~14.3 V, undecided",
    "ZENER_DIODE, VOLTAGE, '', VZ ~12 V, VZ ~14.5 V, does not fit",
    "ZENER_DIODE, VOLTAGE, '', VZ ~12 V, VZ ~9.7 V, undecided",
    "ZENER_DIODE, VOLTAGE, '', VZ ~12 V, VZ ~9.5 V, does not fit",
    "ZENER_DIODE, VOLTAGE, '', VZ ~12 V, VZ >13.8<15.6 V, does not fit",
    "ZENER_DIODE, VOLTAGE, '', VZ >11.4 V, VZ ~11.4 V, undecided",
    "ZENER_DIODE, VOLTAGE, '', VZ >11.4 V, VZ >11.5 V, undecided",
    "ZENER_DIODE, VOLTAGE, '', VZ >11.4 V, VZ ~13 V, undecided",
    "ZENER_DIODE, VOLTAGE, '', VZ >11.4 V, VZ ~11.3 V, does not fit",
    "ZENER_DIODE, VOLTAGE, '', VZ >11.4 V, VZ >11.3 V, does not fit",
    "ZENER_DIODE, VOLTAGE, '', VZ ~12 V, '', undecided",
    "ZENER_DIODE, VOLTAGE, '', '', VZ ~12 V, undecided",
    "ZENER_DIODE, VOLTAGE, '', VZ ~12 V, VZ ~11.8 V, undecided",
    "ZENER_DIODE, VOLTAGE, '', VZ ~12 V, VZ >11.8<12.2 V, undecided",
    "ZENER_DIODE, VOLTAGE, '', VZ ~12 V, VZ ~11.5 V, undecided",
    "ZENER_DIODE, VOLTAGE, '', VZ <12.6 V, VZ ~12.6 V, undecided",
    "ZENER_DIODE, VOLTAGE, '', VZ >11.4<12.6 V, VZ ~12.2 V, undecided",
    "ZENER_DIODE, VOLTAGE, '', VZ >11.4<12.6 V, VZ ~12.5 V, undecided",
    "ZENER_DIODE, VOLTAGE, '', VZ >11.4<12.6 V, VZ ~12.7 V, does not fit",
    "ZENER_DIODE, VOLTAGE, '', VZ >11.4<12.6 V, VZ >11.4<12.6 V, fits",
    "ZENER_DIODE, VOLTAGE, '', VZ >11.4<12.6 V, VZ >11.3<12.6 V, does not fit",
    "ZENER_DIODE, VOLTAGE, '', VZ >11.4<12.6 V, VZ >11.4<12.7 V, does not fit",
    // either maker's may be in the bag, and the BOM accepts either
    "ZENER_DIODE, VOLTAGE, '', VZ >11.4<12.6 V, [A] VZ >11.8<12.2 V; [B] VZ >11.2<12.8 V, does not fit",
    "ZENER_DIODE, VOLTAGE, '', [A] VZ >11.8<12.2 V; [B] VZ >11.2<12.8 V, VZ >11.4<12.6 V, fits",
    "ZENER_DIODE, POWER, '', PD <1 W, PD <0.5 W, does not fit",
    "ZENER_DIODE, IMPEDANCE, '', ZZ@IZ=5mA <25 Ohm, ZZ@IZ=5mA <30 Ohm, does not fit",
    "ZENER_DIODE, IMPEDANCE, '', ZZ@IZ=5mA <25 Ohm, ZZ@IZ=20mA <30 Ohm, undecided",
    "ZENER_DIODE, IMPEDANCE, '', ZZ@IZ=20mA <30 Ohm, ZZ@IZ=5mA <25 Ohm, fits",
    "ZENER_DIODE, TEST_CURRENT, '', IZT <20e-3 A, IZT <21e-3 A, fits",
    "ZENER_DIODE, TEST_CURRENT, '', IZT <20e-3 A, IZT <5e-3 A, does not fit",
    "ZENER_DIODE, TEST_CURRENT, '', IZT <5e-3 A, IZT <20e-3 A, does not fit",
    "ZENER_DIODE, TEST_CURRENT, '', IZT <20e-3 A, IZT <11e-3 A, fits",
    "ZENER_DIODE, TEST_CURRENT, '', IZT <20e-3 A, IZT <9e-3 A, does not fit",
    "ZENER_DIODE, TEST_CURRENT, '', IZT <20e-3 A, IZT <39e-3 A, fits",
    "ZENER_DIODE, TEST_CURRENT, '', IZT <20e-3 A, IZT <41e-3 A, does not fit",
    "ZENER_DIODE, TEST_CURRENT, '', IZT <20e-3 A, IZT <10e-3 A, does not fit",
    "ZENER_DIODE, TEST_CURRENT, '', IZT <20e-3 A, IZT <40e-3 A, does not fit",
    "ZENER_DIODE, TEST_CURRENT, '', IZT <20e-3 A, '', silent",
    "ZENER_DIODE, TEST_CURRENT, '', '', IZT <20e-3 A, silent",
    // pins and rows must be the same; a terminal's poles may drift by a hole's play over all of
    // them
    "SOCKET, PIN_COUNT, '', pinCount <28 x, pinCount <28 x, fits",
    "SOCKET, PIN_COUNT, '', pinCount <28 x, pinCount <24 x, does not fit",
    "SOCKET, PIN_COUNT, '', pinCount <28 x, poles <28 x, undecided",
    "SOCKET, ROW_PITCH, '', row <7.62 mm, row <15.24 mm, does not fit",
    "SOCKET, ROW_PITCH, '', row <7.62 mm, '', undecided",
    "SOCKET, CONTACT_PITCH, '', pitch <2.54 mm, pitch <2.5 mm, silent",
    "CONNECTOR, PIN_COUNT, '', poles <3 x, poles <3 x, fits",
    "CONNECTOR, ROW_PITCH, '', row <7.62 mm, row <15.24 mm, silent",
    "CONNECTOR, CONTACT_PITCH, '', pitch <2.54 mm; poles <4 x, pitch <2.5 mm, fits",
    "CONNECTOR, CONTACT_PITCH, '', pitch <2.54 mm; poles <5 x, pitch <2.5 mm, does not fit",
    "CONNECTOR, CONTACT_PITCH, '', pitch <2.5 mm; poles <4 x, pitch <2.54 mm, fits",
    // numbers whose difference is the play of 0.15 mm itself, in binary too
    "CONNECTOR, CONTACT_PITCH, '', pitch <0.3 mm; poles <2 x, pitch <0.15 mm, fits",
    "CONNECTOR, CONTACT_PITCH, '', pitch <2.5 mm; poles <5 x, pitch <2.54 mm, does not fit",
    "CONNECTOR, CONTACT_PITCH, '', pitch <2.54 mm, pitch <2.5 mm, does not fit",
    "CONNECTOR, CONTACT_PITCH, '', pitch <2.54 mm, pitch <2.54 mm, fits",
    "CONNECTOR, CONTACT_PITCH, '', pitch <2.54 mm; poles <4 x, '', undecided",
    "CONNECTOR, CONTACT_PITCH, '', poles <4 x, pitch <2.54 mm, undecided",
    "CONNECTOR, CURRENT, '', Irated <15 A, Irated <10 A, does not fit",
    "CONNECTOR, CURRENT, '', '', Irated <10 A, silent",
    // a gain is a guaranteed minimum at one current
    "BIPOLAR_TRANSISTOR, GAIN, '', hFE@IC=2mA >200 x, hFE@IC=2mA >300 x, fits",
    "BIPOLAR_TRANSISTOR, GAIN, '', hFE@IC=2mA >200 x, hFE@IC=2mA <900 x, undecided",
    "BIPOLAR_TRANSISTOR, GAIN, '', hFE@IC=2mA >200 x, hFE@IC=2mA >190 x, does not fit",
    // less at one current and as much at another: the place's current tells
    "BIPOLAR_TRANSISTOR, GAIN, '', hFE@IC=2mA >200 x; hFE@IC=9mA >60 x, hFE@IC=2mA >90 x; hFE@IC=9mA >60 x, undecided",
    "BIPOLAR_TRANSISTOR, GAIN, '', hFE@IC=2mA >200 x; hFE@IC=9mA >60 x, hFE@IC=2mA >90 x; hFE@IC=9mA >50 x, does not fit",
    // 60 at 20 mA between 90 at 2 mA and 70 at 50 mA; but not beyond the last, nor at less volts
    "BIPOLAR_TRANSISTOR, GAIN, '', hFE@IC=2mA >200 x; hFE@IC=20mA >60 x, hFE@IC=2mA >90 x; hFE@IC=50mA >70 x, undecided",
    "BIPOLAR_TRANSISTOR, GAIN, '', hFE@IC=2mA >200 x; hFE@IC=80mA >60 x, hFE@IC=2mA >90 x; hFE@IC=50mA >70 x, does not fit",
    "BIPOLAR_TRANSISTOR, GAIN, '', 'hFE@IC=2mA, VCE=1V >200 x; hFE@IC=20mA, VCE=1V >60 x', 'hFE@IC=2mA, VCE=1V >90 x; hFE@IC=50mA, VCE=2V >70 x', does not fit",
    "BIPOLAR_TRANSISTOR, GAIN, '', hFE@IC=2mA >200 x; hFE@IC=9mA >60 x, [A] hFE@IC=2mA >90 x; [A] hFE@IC=9mA >60 x; [B] hFE@IC=2mA >90 x, does not fit",
    "BIPOLAR_TRANSISTOR, GAIN, '', hFE@IC=2mA >200 x, hFE@IC=100mA >300 x, undecided",
    "BIPOLAR_TRANSISTOR, GAIN, '', hFE@IC=2mA >200 x; hFE@IC=100mA >60 x, hFE@IC=2mA >300 x, undecided",
    "BIPOLAR_TRANSISTOR, GAIN, '', 'hFE@IC=2mA, VCE=5V >200 x', 'hFE@IC=2mA, VCE=1V >200 x', fits",
    "BIPOLAR_TRANSISTOR, GAIN, '', 'hFE@IC=2mA, VCE=1V >200 x', 'hFE@IC=2mA, VCE=5V >300 x', undecided",
    // the BOM accepts what either maker promises, and either maker's may be in the bag
    "BIPOLAR_TRANSISTOR, GAIN, '', [A] hFE@IC=2mA >200 x; [A] hFE@IC=9mA >60 x; [B] hFE@IC=2mA >150 x, hFE@IC=2mA >200 x, fits",
    "BIPOLAR_TRANSISTOR, GAIN, '', hFE@IC=2mA >200 x; hFE@IC=9mA >60 x, [A] hFE@IC=2mA >200 x; [A] hFE@IC=9mA >60 x; [B] hFE@IC=2mA >250 x, undecided",
    // more collector current with no more base current is the harder test
    "BIPOLAR_TRANSISTOR, SATURATION, '', 'VCEsat@IC=150mA, IB=15mA <0.4 V', 'VCEsat@IC=500mA, IB=15mA <0.4 V', fits",
    "BIPOLAR_TRANSISTOR, SATURATION, '', 'VCEsat@IC=150mA, IB=15mA <0.4 V', 'VCEsat@IC=500mA, IB=50mA <0.3 V', undecided",
    "BIPOLAR_TRANSISTOR, SATURATION, '', 'VCEsat@IC=150mA, IB=15mA <0.4 V', '', undecided",
    "BIPOLAR_TRANSISTOR, SATURATION, '', '', 'VCEsat@IC=150mA, IB=15mA <0.4 V', silent",
    "BIPOLAR_TRANSISTOR, POWER, '', PD@TA=25C <1 W, PD@TC=25C <40 W, undecided",
    // built-in diodes must stay, and none need come
    "DRIVER_ARRAY, CLAMP, '', clamp = yes, clamp = no, does not fit",
    "DRIVER_ARRAY, CLAMP, '', clamp = yes, clamp = yes, fits",
    "DRIVER_ARRAY, CLAMP, '', clamp = yes, '', undecided",
    "DRIVER_ARRAY, CLAMP, '', '', clamp = no, silent",
    // a lower breakdown than the rating counts
    "OPTOCOUPLER, COLLECTOR_VOLTAGE, '', VCEO <35 V, VCEO <80 V; VBRCEO >70 V, fits",
    "OPTOCOUPLER, COLLECTOR_VOLTAGE, '', VCEO <35 V, VCEO <80 V; VBRCEO >30 V, does not fit",
    "OPTOCOUPLER, COLLECTOR_VOLTAGE, '', VCEO <35 V, VBRCEO >70 V, fits",
    "OPTOCOUPLER, OUTPUT, '', '', '', silent",
    "OPTOCOUPLER, OUTPUT, '', output = logic gate, '', does not fit",
    "OPTOCOUPLER, OUTPUT, '', output = logic gate, output = logic gate, fits",
    // pins in another order are another part; one that nobody knows may be
    "BIPOLAR_TRANSISTOR, PIN_ORDER, '', pins = E B C, 'pins = E, B, C', fits",
    "BIPOLAR_TRANSISTOR, PIN_ORDER, '', pins = E B C, pins = E C B, does not fit",
    "BIPOLAR_TRANSISTOR, PIN_ORDER, '', pins = E B C, '', undecided",
    // rigid leads meet the holes of their own package, by whatever name
    "MOSFET, PACKAGE, '', package = TO-220AB, package = TO-220FP, fits",
    "MOSFET, PACKAGE, '', package = TO-220, package = TO-247, does not fit",
    "MOSFET, PACKAGE, '', package = TO-220, '', undecided",
    "MOSFET, PACKAGE, '', '', package = TO-220, undecided",
    "MOSFET, PACKAGE, '', '', '', silent",
    "MOSFET, PACKAGE, '', package = TO-220, (memory) package = TO-220, undecided",
    "DRIVER_ARRAY, PACKAGE, '', package = PDIP18, package = DIL-18, fits",
    "DRIVER_ARRAY, PACKAGE, '', package = DIP-18, package = DIP-16, does not fit",
    "FUSE, PACKAGE, '', package = DIP-18, package = DIP-16, silent",
    // a hole's play is nothing, a grid step is formed, more is too far
    "LED, PITCH, '', pitch <2.54 mm, pitch <2.5 mm, fits",
    "LED, PITCH, '', pitch <0.3 mm, pitch <0.15 mm, fits",
    "LED, PITCH, '', pitch <2.54 mm, pitch <5.08 mm, undecided",
    // makers don't agree on letters: what both state decides, be it the word or the letter
    "POTENTIOMETER, TAPER, '', taper = log; taperLetter = A, taperLetter = A, fits",
    "POTENTIOMETER, TAPER, '', taper = log; taperLetter = A, taperLetter = B, does not fit",
    "POTENTIOMETER, TAPER, '', taper = log, taperLetter = A, silent",
    "LED, PITCH, '', pitch <2.54 mm, pitch <5.2 mm, does not fit",
    "LED, PITCH, '', pitch <2.54 mm, '', silent",
    "REGULATOR, PITCH, '', pitch <2.54 mm, pitch <3.5 mm, does not fit",
    "DIODE, PITCH, '', pitch <10.16 mm, pitch <15 mm, silent",
    // 10.16 mm and 0.15 mm of play leave 7.51 mm beside two bends of 1.4 mm
    "DIODE, BODY_LENGTH, '', pitch <10.16 mm, length <7.5 mm, fits",
    "DIODE, BODY_LENGTH, '', pitch <10.16 mm, length <7.6 mm, does not fit",
    "DIODE, BODY_LENGTH, '', pitch <10.16 mm, '', silent",
    "DIODE, BODY_LENGTH, '', '', length <7.5 mm, silent",
    "LED, BODY_LENGTH, '', pitch <2.54 mm, length <7.5 mm, silent",
    // another fixed voltage is another regulator; an adjustable one must reach as far
    "REGULATOR, OUTPUT_VOLTAGE, '', VO ~5 V, VO ~5 V, undecided",
    "REGULATOR, OUTPUT_VOLTAGE, '', VO >4.75~5<5.25 V, VO ~5 V, undecided",
    "REGULATOR, OUTPUT_VOLTAGE, '', VO ~5 V, VO >4.8~5<5.2 V, undecided",
    "REGULATOR, OUTPUT_VOLTAGE, '', VO >4.75~5<5.25 V, VO >4.75~5<5.25 V, fits",
    "REGULATOR, OUTPUT_VOLTAGE, '', VO >4.75~5<5.25 V, VO >4.7~5<5.2 V, undecided",
    "REGULATOR, OUTPUT_VOLTAGE, '', VO >4.75~5<5.25 V, VO >4.8~5<5.3 V, undecided",
    // its rail of 5 V is said to be within 5 %: 4.75 V to 5.25 V
    "REGULATOR, OUTPUT_VOLTAGE, rail 24, VO >4.8~5<5.2 V, VO >4.75~5<5.25 V, fits",
    "REGULATOR, OUTPUT_VOLTAGE, rail 24, VO >4.8~5<5.2 V, VO >4.74~5<5.2 V, does not fit",
    "REGULATOR, OUTPUT_VOLTAGE, rail 24, VO >4.8~5<5.2 V, VO >4.8~5<5.26 V, does not fit",
    // a third less may be enough, half is of another class; what the boards draw tells
    "REGULATOR, OUTPUT_CURRENT, '', IO <1.5 A; VO ~5 V, IO <1 A; VO ~5 V, undecided",
    "REGULATOR, OUTPUT_CURRENT, '', IO <1 A; VO ~5 V, IO <1.5 A; VO ~5 V, fits",
    "REGULATOR, OUTPUT_CURRENT, '', IO <1 A; VO ~5 V, IO <0.5 A; VO ~5 V, does not fit",
    "REGULATOR, OUTPUT_CURRENT, '', IO <1 A; VO ~5 V, IO <0.51 A; VO ~5 V, undecided",
    "REGULATOR, OUTPUT_VOLTAGE, '', VO ~5 V, VO ~3.3 V, does not fit",
    "REGULATOR, OUTPUT_VOLTAGE, '', VO ~5 V, VO >1.2<37 V, does not fit",
    "REGULATOR, OUTPUT_VOLTAGE, '', VO >1.2<37 V, VO ~5 V, does not fit",
    "REGULATOR, OUTPUT_VOLTAGE, '', VO >1.2<37 V, VO >1.2<37 V, fits",
    "REGULATOR, OUTPUT_VOLTAGE, '', VO >1.2<37 V, VO >1.2<32 V, does not fit",
    "REGULATOR, OUTPUT_VOLTAGE, '', VO >1.2<37 V, VO >2<37 V, does not fit",
    "REGULATOR, OUTPUT_VOLTAGE, '', VO ~5 V, VO <5.2 V, undecided",
    // a maker of the candidate's number who says nothing of it may have made the one in the bag
    "REGULATOR, OUTPUT_VOLTAGE, '', VO >4.7~5<5.3 V, [A] VO >4.8~5<5.2 V; [A] IO >1 A, fits",
    "REGULATOR, OUTPUT_VOLTAGE, '', VO >4.7~5<5.3 V, [A] VO >4.8~5<5.2 V; [B] IO >1 A, undecided",
    "REGULATOR, OUTPUT_VOLTAGE, '', VO >4.7~5<5.3 V, VO >4.8~5<5.2 V; [B] IO >1 A, fits",
    "REGULATOR, OUTPUT_VOLTAGE, '', VO >1.2<32 V, [A] VO >1.2<37 V; [B] VO >1.2<30 V, does not fit",
    "REGULATOR, OUTPUT_VOLTAGE, '', VO >1.2<32 V, [A] VO >1.2<37 V; [B] VO >1.2<32 V, fits",
    "REGULATOR, DROPOUT, '', dropout <2 V, [A] dropout <1.5 V, fits",
    "REGULATOR, DROPOUT, '', dropout <2 V, [A] dropout <1.5 V; [B] IO >1 A, undecided",
    "REGULATOR, HEAT, '', RthJA <65 K/W; TJ <125 degC, [A] RthJA <60 K/W; [A] TJ <125 degC, fits",
    "REGULATOR, HEAT, '', RthJA <65 K/W; TJ <125 degC, [A] RthJA <60 K/W; TJ <125 degC; [B] IO >1 A, undecided",
    "REGULATOR, HEAT, '', RthJA <65 K/W; TJ <125 degC, RthJA <60 K/W; [A] TJ <125 degC; [B] IO >1 A, undecided",
    // what it sends to ground is assumed where a maker doesn't say it: 10 mA, and 5 mA were enough
    "REGULATOR, HEAT, '', RthJA <65 K/W; TJ <125 degC; IQ <5e-3 A, RthJA <60 K/W; TJ <125 degC; [A] IQ <2e-3 A, fits",
    "REGULATOR, HEAT, '', RthJA <65 K/W; TJ <125 degC; IQ <5e-3 A, RthJA <60 K/W; TJ <125 degC; [A] IQ <2e-3 A; [B] IO >1 A, undecided",
    "REGULATOR, OUTPUT_VOLTAGE, '', VO ~5 V, VO >4.8 V, undecided",
    "REGULATOR, OUTPUT_VOLTAGE, '', VO ~5 V, '', undecided",
    "REGULATOR, OUTPUT_VOLTAGE, '', '', VO ~5 V, undecided",
    // a type that names its output capacitor is new to a board that was drawn for one that doesn't
    "REGULATOR, OUTPUT_CAPACITOR, '', VO ~5 V, Cout >22e-6 F, undecided",
    "REGULATOR, OUTPUT_CAPACITOR, '', Cout >22e-6 F, Cout >22e-6 F, silent",
    "REGULATOR, OUTPUT_CAPACITOR, '', Cout >22e-6 F, Cout >10e-6 F, silent",
    "REGULATOR, OUTPUT_CAPACITOR, '', Cout >10e-6 F, Cout >22e-6 F, undecided",
    "REGULATOR, OUTPUT_CAPACITOR, '', Cout >10e-6 F, [A] Cout >4e-6 F; [B] Cout >22e-6 F, undecided",
    "REGULATOR, OUTPUT_CAPACITOR, '', VO ~5 V, VO ~5 V, silent",
  })
  void a_rule_says_what_a_practitioner_says(
      PartKind kind, String rule, String place, String asked, String offered, String verdict) {
    assertEquals(verdict, verdict(answer(kind, rule, place, asked, offered)));
  }

  @ParameterizedTest(name = "{1}: {2} -> {3}")
  @CsvSource({
    // a tolerance inside the other is enough for a reservoir; up to 2.2 times may be welcome
    "ELECTROLYTIC_CAPACITOR, CAPACITANCE, 100uF 20%, 110uF 5%, fits",
    "ELECTROLYTIC_CAPACITOR, CAPACITANCE, 100uF 10%, 100uF 20%, does not fit",
    "ELECTROLYTIC_CAPACITOR, CAPACITANCE, 100uF 20%, 220uF 20%, undecided",
    "ELECTROLYTIC_CAPACITOR, CAPACITANCE, 100uF 20%, 270uF 20%, does not fit",
    "FILM_CAPACITOR, CAPACITANCE, 1uF 5%, 2.2uF 5%, does not fit",
    // what says nothing of its dielectric cannot be held to one; C0G and film keep their value
    "CERAMIC_CAPACITOR, DIELECTRIC, 100n 50V, 100n 50V, silent",
    "CERAMIC_CAPACITOR, DIELECTRIC, 100n 50V, 100n C0G 50V, fits",
    "CERAMIC_CAPACITOR, DIELECTRIC, 100n 50V, 100n X7R 50V, undecided",
    "CERAMIC_CAPACITOR, DIELECTRIC, 100n C0G 50V, 100n 50V, undecided",
    "CERAMIC_CAPACITOR, DIELECTRIC, 100n X7R 50V, 100n X5R 50V, fits",
    "CERAMIC_CAPACITOR, DIELECTRIC, 100n X7R 50V, 100n Y5V 50V, does not fit",
    "CERAMIC_CAPACITOR, DIELECTRIC, 1u X7R 50V, 1u film 50V, silent",
    "FILM_CAPACITOR, DIELECTRIC, 10n 50V, 10n C0G 50V, fits",
    "ELECTROLYTIC_CAPACITOR, DIELECTRIC, 10uF 25V, 10uF X7R 25V, silent",
    // only class 2 and 3 lose capacitance under voltage, and only where the other kept it
    "ELECTROLYTIC_CAPACITOR, DC_BIAS, 10uF 25V, 10uF X7R 25V, undecided",
    "ELECTROLYTIC_CAPACITOR, DC_BIAS, 10uF 25V, 10uF C0G 25V, silent",
    "ELECTROLYTIC_CAPACITOR, DC_BIAS, 10uF 25V, 10uF 25V, silent",
    "CERAMIC_CAPACITOR, DC_BIAS, 10u X7R 25V, 10u X5R 25V, silent",
    "CERAMIC_CAPACITOR, DC_BIAS, 10u 25V, 10u X5R 25V, silent",
    // the square root of 0.25 W times 1 MΩ is 500 V; of 2 W times 10 kΩ 141 V, less than any bears
    "RESISTOR, VOLTAGE, 1M 0.25W, 1M 600V, fits",
    "RESISTOR, VOLTAGE, 1M 0.25W, 1M 450V, undecided",
    "RESISTOR, VOLTAGE, 1M 350V, 1M 350V, fits",
    "RESISTOR, VOLTAGE, 1M 350V, 1M 250V, does not fit",
    "RESISTOR, VOLTAGE, 10k, 10k, silent",
    "RESISTOR, VOLTAGE, 11k, 11k, undecided",
    "RESISTOR, VOLTAGE, BLOB, 11k, undecided",
    // a film for a film; a winding for nothing else, and nothing unknown for what bears pulses
    "RESISTOR, TECHNOLOGY, 10k carbon film, 10k carbon film, silent",
    "RESISTOR, TECHNOLOGY, 10k carbon film, 10k metal film, fits",
    "RESISTOR, TECHNOLOGY, 10k, 10k metal film, fits",
    "RESISTOR, TECHNOLOGY, 10k carbon film, 10k, silent",
    "RESISTOR, TECHNOLOGY, 10k wirewound, 10k wirewound, silent",
    "RESISTOR, TECHNOLOGY, 10k, 10k wirewound, does not fit",
    "RESISTOR, TECHNOLOGY, 10k carbon composition, 10k metal film, undecided",
    "RESISTOR, TECHNOLOGY, 10k wirewound, 10k, undecided",
    // nothing but 74-series names tells a logic circuit
    "INTEGRATED_CIRCUIT, FUNCTION, NE555, 74HC14, undecided",
    "INTEGRATED_CIRCUIT, FUNCTION, 74HC14, NE555, undecided",
    "INTEGRATED_CIRCUIT, INPUT_LEVEL, NE555, 74HC14, silent",
  })
  void a_part_is_judged_by_what_stands_in_its_text(
      PartKind kind, String rule, String asked, String offered, String verdict) {
    assertEquals(verdict, verdict(ofTexts(kind, rule, asked, offered)));
  }

  private static Optional<Answer> ofTexts(
      PartKind kind, String rule, String asked, String offered) {
    return answer(Sheets.swap(kind, "", asked, offered, Datasheets.of(List.of())), kind, rule);
  }

  /** What a person reads beside the verdict: what each part is, and what to do. */
  @ParameterizedTest(name = "{1}: {2} -> {3}")
  @CsvSource({
    "INTEGRATED_CIRCUIT, INPUT_LEVEL, 74HCT244, 74HC244, VIH 2.0 V, VIH 70 % of VCC, safe only if",
    "INTEGRATED_CIRCUIT, INPUT_LEVEL, 74HC244, 74HCT244, VIH 70 % of VCC, VIH 2.0 V, ''",
    "INTEGRATED_CIRCUIT, OUTPUT_LEVEL, 74HC244, 74LS244, swings to the supply, TTL high, ''",
    "INTEGRATED_CIRCUIT, OUTPUT_LEVEL, 74LS244, 74HC244, TTL high, swings to the supply, ''",
    "INTEGRATED_CIRCUIT, FUNCTION, 74HC14, NE555, 14, , two circuits of unlike names",
    "INTEGRATED_CIRCUIT, FUNCTION, NE555, 74HC14, , 14, two circuits of unlike names",
    "CERAMIC_CAPACITOR, POLARITY, 1u 50V, 1uF 50V tantalum, not polarised, polarised, ''",
    "TANTALUM_CAPACITOR, POLARITY, 1u 50V, 1uF 50V tantalum, polarised, polarised, ''",
    "CERAMIC_CAPACITOR, DIELECTRIC, 1n C0G 50V, 1n X7R 50V, C0G, X7R, its value wanders",
    "CERAMIC_CAPACITOR, DIELECTRIC, 1n X7R 50V, 1n C0G 50V, X7R, C0G, ''",
    "CERAMIC_CAPACITOR, DIELECTRIC, 1n 50V, 1n C0G 50V, not stated, C0G, ''",
    "ELECTROLYTIC_CAPACITOR, DC_BIAS, 10uF 25V, 10uF X7R 25V, , X7R, look at the maker's curve",
  })
  void the_words_beside_a_verdict_say_which_part_is_what(
      PartKind kind,
      String rule,
      String asked,
      String offered,
      String needs,
      String gives,
      String remark) {
    Answer answer = ofTexts(kind, rule, asked, offered).orElseThrow();
    assertEquals(needs, answer.asked().map(Evidence::word).orElse(null));
    assertEquals(gives, answer.offered().map(Evidence::word).orElse(null));
    assertTrue(answer.remark().startsWith(remark), answer.remark());
    assertEquals(remark.isEmpty(), answer.remark().isEmpty());
  }

  /** A reservoir is spoken of only where the candidate's value is too large for the tolerance. */
  @Test
  void a_value_near_the_one_asked_for_lacks_only_a_tolerance() {
    assertEquals(
        List.of("tolerance of 100uF: write it beside the value, such as 5 %"),
        ofTexts(PartKind.ELECTROLYTIC_CAPACITOR, "CAPACITANCE", "100uF", "104uF 20%")
            .orElseThrow()
            .missing());
  }

  @Test
  void pins_the_other_way_round_are_told_from_pins_in_another_order() {
    assertTrue(pins("E B C", "C B E").startsWith("the other way round"));
    assertEquals("", pins("E B C", "E C B"));
    assertEquals("", pins("E B C", "E B C"));
  }

  private static String pins(String asked, String offered) {
    return answer(
            PartKind.BIPOLAR_TRANSISTOR, "PIN_ORDER", "", "pins = " + asked, "pins = " + offered)
        .orElseThrow()
        .remark();
  }

  @Test
  void a_body_too_long_for_its_holes_is_told_what_standing_it_would_mean() {
    assertEquals("", length("7.5"));
    assertEquals(
        "too long to lie between its holes; standing it changes its height", length("7.6"));
  }

  private static String length(String millimetres) {
    String body = "length <" + millimetres + " mm";
    return answer(PartKind.DIODE, "BODY_LENGTH", "", "pitch <10.16 mm", body)
        .orElseThrow()
        .remark();
  }

  @ParameterizedTest
  @CsvSource({"flyback pwm 24, fast: the channel is pulse-width modulated", "'', fast recovery"})
  void a_slow_diode_is_told_what_was_wanted_of_it(String place, String wanted) {
    String slow = "technology = standard recovery";
    Answer answer =
        answer(PartKind.DIODE, "RECOVERY", place, "technology = fast recovery", slow).orElseThrow();
    assertEquals(wanted, answer.asked().orElseThrow().word());
  }

  /** A typical voltage promises nothing: the answer names whose band is missing. */
  @ParameterizedTest
  @CsvSource({
    "VZ ~12 V, VZ ~12 V, 2",
    "VZ >11.4<12.6 V, VZ ~12 V, 1",
    "VZ ~12 V, VZ >11.4<12.6 V, 1",
  })
  void a_zener_without_a_band_is_told_which_band_to_add(String asked, String offered, int bands) {
    Answer answer = answer(PartKind.ZENER_DIODE, "VOLTAGE", "", asked, offered).orElseThrow();
    assertEquals(bands, answer.missing().size(), answer::toString);
    assertTrue(
        answer.missing().stream().allMatch(words -> words.startsWith("least and greatest VZ of ")),
        answer::toString);
  }

  /** A row without an amount that could be read is no datum, and no reason to stop. */
  @ParameterizedTest
  @CsvSource({"VZ = 12 V or so, VZ ~12 V", "VZ ~12 V, VZ = 12 V or so"})
  void a_zener_row_without_an_amount_says_nothing(String asked, String offered) {
    assertEquals("undecided", verdict(answer(PartKind.ZENER_DIODE, "VOLTAGE", "", asked, offered)));
  }

  @Test
  void only_a_live_tab_for_an_isolated_one_needs_a_washer() {
    String washer = "it would need an insulating washer and bush";
    assertEquals(washer, tab("isolated", "drain").remark());
    assertEquals("", tab("drain", "isolated").remark());
  }

  private static Answer tab(String asked, String offered) {
    return answer(PartKind.MOSFET, "TAB", "", "tab = " + asked, "tab = " + offered).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "DIODE, DIODE, true",
    "DIODE, SCHOTTKY_DIODE, true",
    "SCHOTTKY_DIODE, DIODE, true",
    "DIODE, ZENER_DIODE, false",
    "ZENER_DIODE, DIODE, false",
    "FILM_CAPACITOR, CERAMIC_CAPACITOR, true",
    "FILM_CAPACITOR, RESISTOR, false",
    "RESISTOR, FILM_CAPACITOR, false",
    "CRYSTAL, RESONATOR, true",
    "RESONATOR, CRYSTAL, false",
    "CRYSTAL, FUSE, false",
    "MOSFET, BIPOLAR_TRANSISTOR, false",
  })
  void few_kinds_can_do_the_work_of_another(PartKind asked, PartKind offered, boolean can) {
    assertEquals(can, PlaceRule.mayReplace(asked, offered));
  }

  @ParameterizedTest
  @CsvSource({
    "VDS <60 V,          (memory) VDS <75 V, undecided",
    "(memory) VDS <60 V, VDS <75 V,          undecided",
    "VDS <60 V,          (memory) VDS <45 V, does not fit",
    "VDS <60 V,          VDS <75 V,          fits"
  })
  void what_is_only_remembered_makes_nothing_pass(String asked, String offered, String verdict) {
    Answer answer =
        answer(PartKind.MOSFET, "DRAIN_VOLTAGE_RATING", "", asked, offered).orElseThrow();
    assertEquals(verdict, answer.verdict().words());
    List<String> wanted = List.of("a datasheet in place of memory: from memory");
    assertEquals(verdict.equals("undecided") ? wanted : List.of(), answer.missing());
  }

  @Test
  void no_answer_that_lacks_a_datum_or_rests_on_memory_can_be_built_to_fit() {
    Optional<Evidence> sure = Optional.of(Evidence.of("60 V", Source.datasheet("sheet")));
    Optional<Evidence> dim =
        Optional.of(Evidence.of("60 V", new Source(Source.Origin.MEMORY, "from memory")));
    refused(sure, dim, List.of());
    refused(dim, sure, List.of());
    refused(sure, sure, List.of("VDS of NEW"));
  }

  private static void refused(
      Optional<Evidence> asked, Optional<Evidence> offered, List<String> missing) {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new Answer(
                SwapVerdict.FITS, asked, offered, java.util.OptionalDouble.empty(), missing, ""));
  }

  /** A beginner must be able to ask why of every rule, and an expert where it stands. */
  @ParameterizedTest
  @EnumSource(PartKind.class)
  void every_rule_has_a_name_of_its_own_a_reason_and_a_source(PartKind kind) {
    var names = new HashSet<String>();
    for (SwapRule rule : SwapRules.of(kind)) {
      assertTrue(names.add(rule.words()), rule.words());
      assertFalse(rule.why().isBlank());
      assertFalse(rule.source().text().isBlank());
    }
  }

  @Test
  void a_kind_without_a_table_is_left_to_the_reader() {
    assertTrue(SwapRules.of(PartKind.RELAY).contains(OtherKindRule.COMPARE_YOURSELF));
    assertFalse(SwapRules.of(PartKind.MOSFET).contains(OtherKindRule.COMPARE_YOURSELF));
  }
}
