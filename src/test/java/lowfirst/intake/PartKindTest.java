package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import lowfirst.board.Item;
import lowfirst.part.PartKind;
import lowfirst.problem.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a BOM line is taken for when its columns say different things. */
class PartKindTest {
  @ParameterizedTest(name = "{0} {1} {2} {3} is a {4}")
  @CsvSource({
    // a frequency alone is the value of a crystal, whatever letter the layout gave it
    "Q1, 4MHz, XTAL/S, QS, CRYSTAL",
    "Q2, '32,768 kHz', '', HC49, CRYSTAL",
    "Y1, 16 MHz, '', '', CRYSTAL",
    "Q3, BC547, '', TO-92, BIPOLAR_TRANSISTOR",
    "U1, ATMEGA328P 16MHz, '', DIP-28, INTEGRATED_CIRCUIT",
    // the package names the pitch and diameter of a can
    "C7, 1500u/100V, CPOL-EUE7.5-18, 'E7,5-18', ELECTROLYTIC_CAPACITOR",
    "C8, 1500u/100V, CPOL-EUE7.5-18, '', ELECTROLYTIC_CAPACITOR",
    "C1, 0.1uF, C-EU050-025X075, C050-025X075, CAPACITOR",
    // T stands for transistors, transformers and terminals: the letter alone decides nothing
    "T1, Uncoupler 1, 1935161, '', UNKNOWN",
    "T6, Power, 1935161, '', UNKNOWN",
    "T2, BC557, '', TO-92, BIPOLAR_TRANSISTOR",
    // R, C, L and D weigh more than a footprint, other letters less
    // a range, or a word, tells what is turned; two neighbours of a series are a choice
    "C31, 4-40p, '', '', TRIMMER_CAPACITOR",
    "C31, 3 to 30 pF, '', '', TRIMMER_CAPACITOR",
    "C31, '5,5..65pF', '', '', TRIMMER_CAPACITOR",
    "C31, 60p, '', C_Trimmer_Disc, TRIMMER_CAPACITOR",
    "C31, 22-27p, '', '', CAPACITOR",
    // a part may be named by what it is
    "L7909, L7909CV, '', TO-220, REGULATOR",
    "L7909, 100u, '', '', INDUCTOR",
    // what a simulator calls a transistor
    "Q8, Q2N3055, '', '', BIPOLAR_TRANSISTOR",
    // interference suppression capacitors of class X are films (IEC 60384-14)
    "C30, 220n X2, '', '', FILM_CAPACITOR",
    "C30, 220n x2, '', '', CAPACITOR",
    // of several letters in one line most decide
    "'RV4, RB1, RB2', 10k, '', '', RESISTOR",
    "'RV4, RV5, RB2', 10k, '', '', TRIMMER",
    "L9, neon lamp, '', '', UNKNOWN",
    "MIC1, MIC-9.7MM, '', MIC-9.7MM, MICROPHONE",
    // panel potentiometers, whatever the letters; drawings of trimmers are called so, too
    "RV8, 10K, '', Potentiometer_PTV112-4_Dual_Vertical, POTENTIOMETER",
    "RV8, 10K, '', Potentiometer_PTA45_Single_Slide, POTENTIOMETER",
    "RV8, 10K, '', Potentiometer_3296W_Vertical, TRIMMER",
    "R8, 10K, '', 9MM-POT-VERTICAL, POTENTIOMETER",
    "R8, '', '', POTS_16MM, POTENTIOMETER",
    "R8, 10K, '', POTTED-2W, RESISTOR",
    "J9, ステレオジャック 3.5mm (ESP32), '', '', CONNECTOR",
    "D9, LEDs red 5mm, '', '', LED",
    "SJ3, '', '', SJ_2S-TRACE, BOARD_FEATURE",
    "JP4, N/C, SOLDERJUMPERTRACE, SJ_2S-TRACE, BOARD_FEATURE",
    "U9, VIDEO_DIN_8, '', VIDEO_DIN_8, CONNECTOR",
    "U9, RGB_D_SUB_9, '', RGB_D_SUB_9, CONNECTOR",
    "R9, see note, '', DO-41, RESISTOR",
    "K9, see note, '', DO-41, DIODE",
    // a type number counts where types stand, too
    "X9, see note, BC547, '', BIPOLAR_TRANSISTOR",
    // the number of a sheet stands before the letters
    "2.R1, 10k, '', '', RESISTOR",
    "3C4, 100n, '', '', CAPACITOR",
    "3V3, 3.3V, '', '', UNKNOWN",
    // part libraries put the way of mounting into the name
    "U25, XY-PH-2P, '', CONN-TH_2P-P2.00_XY, CONNECTOR",
    "U3, RK09K1130, '', RES-TH_RK09K1130, POTENTIOMETER",
    // of letters that nobody knows the unit of the value tells
    "CA1, 220pF, '', '', CAPACITOR",
    "CA1, u1, '', '', CAPACITOR",
    "X9, '', 22uH switch inductor, '', INDUCTOR",
    // a body of capacitors, by its pitch and size, against letters of connectors
    "CN1, 15p, '', C025-040X050, CAPACITOR",
    "CN1, 15p, '', '', CONNECTOR",
    "RG, '', R-EU_0204/7, 0204/7, RESISTOR",
    "RE1, 10 kOhm, '', '', RESISTOR",
    "DR1, 10uH, '', '', INDUCTOR",
    "CA1, 220, '', '', UNKNOWN",
    "ZV1, 10 kOhm 220pF, '', '', UNKNOWN",
    // what stands in a column of types alone
    "D9, '', ZENER-DIODE, DO41, ZENER_DIODE",
    "VR1, L78S05CV, '', TO220, REGULATOR",
    "Q2, BSS138, '', SOT23, MOSFET",
    "Q2, BSS63, '', SOT23, TRANSISTOR",
    // letters that some give to other parts
    "RA1, 47k, '', R_Axial_DIN0207_L6.3mm_D2.5mm_P10.16mm, RESISTOR",
    "RV1, 275V, '', RV_Disc_D12mm_W4.2mm_P7.5mm, VARISTOR",
    "VR1, S14K275, '', '', VARISTOR",
    "MOV1, 07D471K, '', '', VARISTOR",
    "VR2, V275LA20A, '', '', VARISTOR",
    "VR3, 10k, '', '', TRIMMER",
    "Si1, 1 A träge, '', '', FUSE",
    "KL2, 3-pol, '', '', SCREW_TERMINAL",
    "TH1, 10k NTC, '', '', THERMISTOR",
    "TH2, 10k, '', '', THERMISTOR",
    "RT1, NTC 5D-9, '', '', THERMISTOR",
    "R5, 10k, NTC thermistor B3950, '', THERMISTOR",
    "R6, 10k, Heißleiter, '', THERMISTOR",
    "F3, PTC 500mA, '', '', FUSE",
    "R7, LDR GL5528, '', '', PHOTORESISTOR",
    "R8, 10k, photoresistor, '', PHOTORESISTOR",
    "X1, Bell supply, '', 'MKDSN1,5/2-5.08', SCREW_TERMINAL",
    "X2, Remote, '', D-SUB9, CONNECTOR",
    "J_LED_A, Lamp, '', KF129_5.08_2P_LED_A, CONNECTOR",
    "U4, BC3223, '', DIP-7, INTEGRATED_CIRCUIT",
    "D7, GBU4A, '', '', BRIDGE_RECTIFIER",
    "D8, '', '', LED_D3.0mm, LED",
    // what is screwed through, printed or left bare
    "M2, M3 socket head mounting point, '', M3_Socket_Head, BOARD_FEATURE",
    "U7, ARTWORKSMALL, '', BELL_ARTWORK, BOARD_FEATURE",
    "P4, '', '', PAD1, BOARD_FEATURE",
    "R3, BIG_POT_SQUARE, '', '', POTENTIOMETER",
    "KEEPOUT, antenna keepout zone, '', '', BOARD_FEATURE",
    // makers' names
    "U4, Diodes Inc. XX1234-50, '', '', INTEGRATED_CIRCUIT",
    "J9, XY99-5.0-2P, '', Great_Elec_XY99-5.0-2P, CONNECTOR",
    "O3, FOD817B, '', DIP-4, OPTOCOUPLER",
    "P1, TST, '', Measurement_Point_Round, BOARD_FEATURE",
    // nobody gave it a name, so its letter tells nothing
    "U$1, BELL-3, '', BELL-3, UNKNOWN",
    "U$2, LM358, '', DIL08, INTEGRATED_CIRCUIT",
    // some number circuits D; no diode has that many legs
    "D4, BELL100, '', LQFP-100, INTEGRATED_CIRCUIT",
    "D5, 6N138, '', DIP8, OPTOCOUPLER",
    "D6, 1N4148, '', SOD-123, DIODE",
    "RAM, 62256, '', DIL28, INTEGRATED_CIRCUIT",
    // the number of a plug begins like that of a circuit
    "CONN3, DS1021-1x5, '', '', CONNECTOR",
    "J1, MJ8435, '', '', CONNECTOR",
    "K2, 4052, '', F4052, RELAY",
    "S1, TL9320AF, '', '', SWITCH",
    "U5, TL072, '', '', INTEGRATED_CIRCUIT",
    // X is a crystal to some and a plug to others (GOST 2.710-81), so a type number leaves it open
    "X1, 2x20, FE20-2, FE20-2, PIN_HEADER",
    "X2, ABC-20, '', '', UNKNOWN",
    "X3, '', SH9-3, SH9-3, UNKNOWN",
    "X4, '12.288', '', '', CRYSTAL",
    "X5, ABC-20, '', HC49-4H, CRYSTAL",
    // a simulator's models have the letter before the type number
    "D8, D1N4004, '', '', DIODE",
    // the colour of a diode says that it is lit, that of a jack does not
    "D10, Yellow, '', D_3mm, LED",
    "D11, rot/grün, '', '', LED",
    "J12, Red, '', '', CONNECTOR",
    // letters that elsewhere mean a Zener diode
    "Z3, STM32F030F4, '', '', INTEGRATED_CIRCUIT",
    // a jumper's letters on another plug
    "JP4, CHARGE, '', JST-PH-2, CONNECTOR",
    "JP6, CHARGE, '', PINHEADER_1X3, PIN_HEADER",
    "T9, H1260NL, '', '', UNKNOWN",
    "U6, H11AA1, '', DIP-6, OPTOCOUPLER",
    "Q8, IPP045N10N3, '', TO-220, MOSFET",
    "PL2, 6 way, '', '', CONNECTOR",
    "SWITCH, abc-2, '', '', SWITCH",
    "R33, 10k, Trimmpoti PT10, '', TRIMMER",
    "S47, probe, '', pad_1.5x2, BOARD_FEATURE",
    // dielectrics of EIA-198 are ceramic, whatever the value; so are chips that no one calls others
    "C21, 10 µF X5R, '', '', CERAMIC_CAPACITOR",
    "C22, 22u, '', C_1206, CAPACITOR",
    "C23, 22u, '', '', ELECTROLYTIC_CAPACITOR",
    "K8, SPDT 12 V, '', '', RELAY",
    "CN4, MCP4822 Breakout, '', '', MODULE",
    "U9, WeMos_D2_mini, '', '', MODULE",
    // what stands where the package does may say in words what the part is
    "CR1, IN9371, '', Zener Diode 2.7V 500mW, ZENER_DIODE",
    "CR4, BRIDGE_RECTIFIER, '', '', BRIDGE_RECTIFIER",
    "VR3, 7812, '', Linear Voltage Regulator 12V, REGULATOR",
    "VR4, 7809, '', '', REGULATOR",
    "VR5, 10k, '', '', TRIMMER",
    "E1, JUMPER_WIRE, '', '', WIRE_LINK",
    "U12, Dual Power Switch, '', SO-8_3.9x4.9mm, INTEGRATED_CIRCUIT",
    "SW5, Power Switch, '', '', SWITCH",
    "P2, Battery connector, '', '', CONNECTOR",
    "X8, 332-02, '', '', UNKNOWN",
    "U10, AB30, '', MODULE_AB30, MODULE",
    "U11, Opto-triac, '', DIP-4, OPTOCOUPLER",
    "J13, 2.54mm 2x4 Pin Socket, '', '', PIN_HEADER",
    "X7, 5V oscillator, '', DIP-14, INTEGRATED_CIRCUIT",
    "Y3, 16 MHz oscillator, '', HC49, CRYSTAL",
    "Q9, Q_Dual_PMOS, '', '', MOSFET",
    "Q10, CSD18532Q5, '', '', MOSFET",
    "C24, 22u, C-USC0805K, C0805K, CAPACITOR",
    "TTL, PINHD_1X03, '', 1X03, PIN_HEADER",
    "R_A1, '', PINHD-1X2, 1X02, PIN_HEADER",
    "SJ1, SJ, SJ, SJ, BOARD_FEATURE",
    "ACT, RED, '', CHIP-LED0805, LED",
    "R3, 20k, R-TRIMM43P, RTRIM43P, TRIMMER",
    "R4, 5K, '', RES_ADJ-3.6X3.8, TRIMMER",
    "U3, CDRH-4, '', IND-SMD_L5.7, INDUCTOR",
    "U4, PH-2P, '', CONN-TH_2P, CONNECTOR",
    "M1, ARDUINO-PRO-MINI, '', '', MODULE",
    "U1, ARDUINO PRO MICRO, '', '', MODULE",
    "U1, ATmega8A-PU, '', DIP-28_SMDSocket, INTEGRATED_CIRCUIT",
    "U2, '', '', DIP-28_Socket, SOCKET",
    "P9, GPIO, '', PinSocket_1x12, PIN_HEADER",
    "Q1, BS170FTA, '', SOT-23, MOSFET",
    "L1, 3mm blue LED, '', '', LED",
    "L2, 10uH, '', '', INDUCTOR",
    // four leads, whatever the letter says
    "D6, W04G, '', Diode_Bridge_Round_D9.0mm, BRIDGE_RECTIFIER",
    "D6, B40C1500, '', '', BRIDGE_RECTIFIER",
    "D6, KBP206, '', '', BRIDGE_RECTIFIER",
    "W1, Bridge, '', Wire_Bridge_P7.62mm, WIRE_LINK",
    // a footprint with a plus holds cans and beads, whose stripes mean the opposite
    "C11, 10u/16V tantalum, '', CP_Radial_D5.0mm_P2.50mm, TANTALUM_CAPACITOR",
    "C11, 10u/16V, '', CP_Radial_Tantal_D5.0mm_P2.50mm, TANTALUM_CAPACITOR",
    "C11, 10u/16V, '', CP_Radial_D5.0mm_P2.50mm, ELECTROLYTIC_CAPACITOR",
    "J5, 1x6, '', pin header 1x6, PIN_HEADER",
    // junction types by their makers' sheets; 2SK and 2SJ are field-effect types by JIS C 7012
    "Q1, J201, '', TO-92, JFET",
    "Q1, J113, '', TO-92, JFET",
    "Q1, 2N5457, '', TO-92, JFET",
    "Q1, 2N3819, '', TO-92, JFET",
    "Q1, BF245A, '', TO-92, JFET",
    "Q1, BF256B, '', TO-92, JFET",
    "Q1, MPF102, '', TO-92, JFET",
    "Q1, 2SK30A-GR, '', TO-92, JFET",
    "Q1, 2SJ74, '', TO-92, JFET",
    "Q1, 2SK1058, '', TO-3P, MOSFET",
    "Q1, 2N5551, '', TO-92, BIPOLAR_TRANSISTOR",
    "Q1, 2N3904, '', TO-92, BIPOLAR_TRANSISTOR",
    "Q1, BF494, '', TO-92, BIPOLAR_TRANSISTOR",
    "Q1, 2N7000, '', TO-92, MOSFET",
    "J201, 1x3, '', pin header 1x3, PIN_HEADER",
    // a taper is for what a hand turns; a trimmer's body has none
    "RV1, A10K, '', '', POTENTIOMETER",
    "RV1, B100K, '', '', POTENTIOMETER",
    "VR1, 47k log, '', '', POTENTIOMETER",
    "VR1, 10kA, '', '', POTENTIOMETER",
    "VR1, 100k linear taper, '', '', POTENTIOMETER",
    "RV1, W20k, '', '', POTENTIOMETER",
    "RV1, 10k, '', '', TRIMMER",
    "RV1, B10K, '', Trimmer upright, TRIMMER",
    // what only counts poles is no crystal's frequency
    "X1, 2-pole, '', '', CONNECTOR",
    // P is a plug, and in Europe a potentiometer
    "P1, 10k, '', '', POTENTIOMETER",
    "P1, 2 pin, '', '', CONNECTOR",
    // of a diode its colour says that it is lit
    "D1, röd, '', '', LED",
    "D1, czerwona, '', '', LED",
    "D1, vermelho, '', '', LED",
    "D1, 红色, '', '', LED",
    "X1, 3-polig, '', '', CONNECTOR",
    "X1, 16MHz, '', '', CRYSTAL",
    // a letter says that it is some transistor; what steers it, words or a known number do
    "Q1, XYZ50A6, '', TO-220, TRANSISTOR",
    "Q1, transistor, '', '', TRANSISTOR",
    "Q1, XYZ50A6 NPN, '', TO-220, BIPOLAR_TRANSISTOR",
    "Q1, XYZ50A6 MOSFET, '', TO-220, MOSFET",
    "Q1, small BC547 transistor, '', '', BIPOLAR_TRANSISTOR",
    // GOST 10862-72: a Cyrillic T behind the letter of the material is a bipolar transistor
    "VT1, КТ315Б, '', '', BIPOLAR_TRANSISTOR",
    // Zener diodes by their JEDEC numbers: 1N746 to 1N759, 1N957 to 1N992, 1N5913 to 1N5956
    "VR4, 1N748A, '', '', ZENER_DIODE",
    "D1, 1N957B, '', '', ZENER_DIODE",
    "D1, 1N5929B, '', '', ZENER_DIODE",
    "D1, 1N914, '', '', DIODE",
    // terminals by GOST 2.710-81, crystals to others
    "XT1, '', '', '', UNKNOWN",
    "XT1, 8MHz crystal, '', '', CRYSTAL",
    // circuits for a USB socket are none
    "U2, USB6X1, '', '', INTEGRATED_CIRCUIT",
    "U2, USB-B, '', '', CONNECTOR",
    // the last word of a German compound says what it is
    "X3, 'Batteriestecker, 2-polig', '', '', CONNECTOR",
    "X3, Batteriehalter CR2032, '', '', BATTERY",
    "C9, 5-60p, trimmer capacitor, '', TRIMMER_CAPACITOR",
    "VC1, 5-60p trimmer capacitor, '', '', TRIMMER_CAPACITOR",
    // no disc holds so much, so a library's drawing says less than the value
    "C1, 100uF, '', C_Disc_D5.0mm_W2.5mm_P5.00mm, ELECTROLYTIC_CAPACITOR",
    "C1, 22uF ceramic, '', C_Disc_D5.0mm_W2.5mm_P5.00mm, CERAMIC_CAPACITOR",
    "C1, 1uF, '', C_Disc_D5.0mm_W2.5mm_P5.00mm, CERAMIC_CAPACITOR",
    // M stands before motors, modules and screws alike
    "M1, '', '', '', UNKNOWN",
    "P1, 2P, '', BatteryHolder_1x20mm, BATTERY",
    "M1, Motor 6V, '', '', MOTOR",
    // by IEEE 315 DS is any indicator: a lamp, or a display of many pins
    "DS1, XY08-11, '', '', UNKNOWN",
    "DS1, SC08-11, '', '', DISPLAY",
    "DS1, red LED, '', '', LED",
    "DS1, 5mm, '', LED_D5.0mm, LED",
    "U3, Hour Left, '', IX-11 VFD Tube, DISPLAY",
    // a module goes by the circuit on it, trimmers by their makers' models
    "U20, LM2596 Module, '', LM2596 Module, MODULE",
    "ADJ, 10k, '', 3362W, TRIMMER",
    "OK1, 3086, '', DIL08, OPTOCOUPLER",
    // a crystal under the letter of transistors
    "Q9, 32768Hz, '', TC26H, CRYSTAL",
    // what is plugged in may be all that names a connector
    "J7, Reset buttons, '', AB5, CONNECTOR",
    "P7, Loudspeaker, '', AB5, CONNECTOR",
    "SW7, Reset buttons, '', AB5, SWITCH",
    // letters of all that is turned, and of varistors
    "VR2, 10k, Potentiometer, '', POTENTIOMETER",
    "RV2, potentiometer 10k, '', '', POTENTIOMETER",
    "RV2, potentiometer 10k, '', Trimmer_Round, TRIMMER",
    "RV2, 3296W potentiometer 10k, '', '', TRIMMER",
    "RV2, 275VAC, Varistance, '', VARISTOR",
    "P2, 22k preset, '', '', TRIMMER",
    "P2, 22k, '', '', POTENTIOMETER",
    "RV2, 22k, '', Potentiometer_PC16_Vertical, POTENTIOMETER",
    "VR2, 22k, '', POT_P0915N, POTENTIOMETER",
    "U6, Supply 16 pin, '', SHROUDED POWER 16 PIN, PIN_HEADER",
    "Q2, 2n3906, '', '', BIPOLAR_TRANSISTOR",
    // pins in a row hold several resistors, or a plug
    "R12, 22k x 8, SIP9, '', RESISTOR_NETWORK",
    "R12, 22k, '', SIL-8, RESISTOR_NETWORK",
    "J12, '', '', SIL-8, CONNECTOR",
    "R12, 22k x 8, '', '', RESISTOR",
  })
  void the_kind_is(String designator, String value, String device, String body, PartKind kind) {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "designators;value;part type;package\n"
                + String.join(";", designator, value, device, body)
                + "\n");
    Item item = reading.kit().boards().get(0).items().get(0);
    assertEquals(kind, item.partType().kind(), reading.problems().toString());
  }

  /** Letters that say nothing, as in many layouts, beside a column that says it all. */
  @ParameterizedTest
  @ValueSource(
      strings = {"Device", "Symbol", "Category", "Family", "Part type", "Lib Ref", "Sınıf", "Type"})
  void a_column_of_kinds_tells_them(String header) {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "Designator;Qty;Value;"
                + header
                + "\nX1;1;10k;R\nX2;1;22k;R\nX3;1;100n;C\nX4;1;100u;CAP POL\nX5;1;5V1;Diode Zener\n"
                + "X6;1;4148;Diode\nX7;1;BC550;NPN\nX8;1;IRL3705;NMOS\nX9;1;47k;Resistors\n");
    assertEquals(
        List.of(
            PartKind.RESISTOR,
            PartKind.RESISTOR,
            PartKind.CAPACITOR,
            PartKind.ELECTROLYTIC_CAPACITOR,
            PartKind.ZENER_DIODE,
            PartKind.DIODE,
            PartKind.BIPOLAR_TRANSISTOR,
            PartKind.MOSFET,
            PartKind.RESISTOR),
        reading.kit().boards().get(0).items().stream().map(i -> i.partType().kind()).toList(),
        reading.problems().toString());
  }

  @Test
  void a_type_number_outdoes_the_name_of_a_kind() {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "Ref;Qty;Value;Kind\nFET1;1;2SK30ATM;FET\nR1;1;1k;Resistor\nC1;1;1n;Capacitor\n");
    assertEquals(PartKind.JFET, reading.kit().boards().get(0).items().get(0).partType().kind());
  }

  /** A kind under part type says nothing of how many ohms. */
  @Test
  void the_name_of_a_kind_is_no_number_that_stands_for_a_value() {
    KitReading reading =
        KitTables.read("bom.csv", "Ref;Qty;Part type\nR1;1;Resistor\nC1;1;Capacitor\n");
    assertEquals(
        2,
        reading.problems().stream().filter(p -> p.kind() == Kind.VALUE_NOT_UNDERSTOOD).count(),
        reading.problems().toString());
  }

  /** What plugs in is no kind of the plug. */
  @Test
  void words_on_what_parts_are_for_tell_no_kinds() {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "Ref;Qty;Value;Function\nJ1;1;2-pin;Battery\nJ2;1;2-pin;Motor\nJ3;1;2-pin;Speaker\n"
                + "J4;1;2-pin;Relay\nD1;1;red;Power LED\n");
    assertEquals(
        List.of(PartKind.CONNECTOR, PartKind.CONNECTOR, PartKind.CONNECTOR, PartKind.CONNECTOR),
        reading.kit().boards().get(0).items().stream()
            .limit(4)
            .map(i -> i.partType().kind())
            .toList());
  }

  /** Shelves, ticks and classes are no kinds. */
  @ParameterizedTest
  @CsvSource({"Bin, C, R, L", "Done, x, y, x", "Class, C, C, C", "Side, T, B, T"})
  void letters_about_something_else_tell_no_kinds(
      String header, String one, String two, String three) {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "Designator;Qty;Value;"
                + header
                + "\nR1;1;10k;"
                + one
                + "\nC1;1;100n;"
                + two
                + "\nR2;1;4k7;"
                + three
                + "\n");
    assertEquals(
        List.of(PartKind.RESISTOR, PartKind.CAPACITOR, PartKind.RESISTOR),
        reading.kit().boards().get(0).items().stream().map(i -> i.partType().kind()).toList(),
        reading.problems().toString());
  }

  /** Words of other languages, as dictionaries of the trade have them. */
  @ParameterizedTest(name = "{0} {1} is a {2}")
  @CsvSource({
    "C3, capacitor electrolítico, ELECTROLYTIC_CAPACITOR",
    "C3, film, FILM_CAPACITOR",
    "C3, poliestere, FILM_CAPACITOR",
    "C3, 'Folie, MKS', FILM_CAPACITOR",
    "C3, tant, TANTALUM_CAPACITOR",
    "R3, metal film, RESISTOR",
    "ZZ3, carbon film 10k, RESISTOR",
    "F1, zekering, FUSE",
    "F1, säkring, FUSE",
    "F1, biztosíték, FUSE",
    "P1, potenciometr, POTENTIOMETER",
    "D1, lysdiod, LED",
    "D1, діод Шотткі, SCHOTTKY_DIODE",
    "ZZ1, motstånd 10k, RESISTOR",
    // a type number among the words, or all of them
    "D2, BAT85, SCHOTTKY_DIODE",
    "Q2, 2SK170 low noise, JFET",
    "C3, condensateur électrolytique, ELECTROLYTIC_CAPACITOR",
    "C3, condensador eletrolítico, ELECTROLYTIC_CAPACITOR",
    "C3, condensatore elettrolitico, ELECTROLYTIC_CAPACITOR",
    "C3, kondensator elektrolityczny, ELECTROLYTIC_CAPACITOR",
    "C3, Elektrolytkondensator, ELECTROLYTIC_CAPACITOR",
    "C3, конденсатор электролитический, ELECTROLYTIC_CAPACITOR",
    "C3, 电解电容, ELECTROLYTIC_CAPACITOR",
    "C3, capacitor de tântalo, TANTALUM_CAPACITOR",
    "C3, condensador cerámico, CERAMIC_CAPACITOR",
    "C3, condensateur céramique, CERAMIC_CAPACITOR",
    "P1, Potenziometro, POTENTIOMETER",
    "Y1, cristal, CRYSTAL",
    "F1, fusible, FUSE",
    "F1, fusível, FUSE",
    "D1, diodo zener, ZENER_DIODE",
    "D1, диод Шоттки, SCHOTTKY_DIODE",
    "D1, светодиод, LED",
    "K1, FEMALE HEADER, PIN_HEADER",
    "U1, 8Pin-DIL-Socket, SOCKET",
    "U1, LED driver, INTEGRATED_CIRCUIT",
    "C4, Unpolarized capacitor, CAPACITOR",
    "C4, non-polarized capacitor, CAPACITOR",
    "C4, Polarized capacitor, ELECTROLYTIC_CAPACITOR",
    "K1, 'Relay SPDT, coil voltage 3V', RELAY",
    "IC1, op-amp DIP8 (+socket), INTEGRATED_CIRCUIT",
    "IC6, op amp SIL9 + socket, INTEGRATED_CIRCUIT",
    "H2, 2x5 male right-angle, PIN_HEADER",
    "A1, 'Arduino Nano module, 2x15 pin headers', MODULE",
    "J9, pin header for an Arduino Nano, PIN_HEADER",
    "NX1, numeric nixie tube, DISPLAY",
    // what it is for stands behind what it is
    "J5, 'box header 2x5, buttons', PIN_HEADER",
    "C12, 'ceramic C0G 50 V, crystal', CERAMIC_CAPACITOR",
    "C14, 'ceramic X7R 50 V (reset button)', CERAMIC_CAPACITOR",
    "C15, 'ceramic 0,1 µF for the switch', CERAMIC_CAPACITOR",
    // unless that only says the same more narrowly, or names what holds it
    "C3, 'capacitor, electrolytic', ELECTROLYTIC_CAPACITOR",
    "D1, 'diode, Zener', ZENER_DIODE",
    "X1, 'connector, IC socket', SOCKET",
    "SW1, 'tactile switch, header', SWITCH",
    "C9, CAP CER 22UF 10V, CERAMIC_CAPACITOR",
    "L4, 'light emitting diode, 3 mm', LED",
    "U8, Module Alpha-Link, MODULE",
    "ZZ8, Stehende Induktivität, INDUCTOR",
    "ZZ8, '2-fach Operationsverstärker', INTEGRATED_CIRCUIT"
  })
  void a_description_tells_the_kind(String designator, String words, PartKind kind) {
    KitReading reading =
        KitTables.read("bom.csv", "ref;qty;description\n" + designator + ";1;" + words + "\n");
    assertEquals(kind, reading.kit().boards().get(0).items().get(0).partType().kind());
  }

  /**
   * Whatever a kind is called on our own sheets is understood when a list says it; the last three
   * are names for many things.
   */
  @ParameterizedTest
  @EnumSource(
      value = PartKind.class,
      mode = EnumSource.Mode.EXCLUDE,
      names = {"UNKNOWN", "BOARD_FEATURE", "HARDWARE"})
  void every_kind_is_known_by_its_own_words(PartKind kind) {
    KitReading reading =
        KitTables.read("bom.csv", "designators,quantity,description\nZZ1,1," + kind.words() + "\n");
    assertEquals(kind, reading.kit().boards().get(0).items().get(0).partType().kind());
  }

  /** A type number of a house's own tells nothing, and its datasheet row does. */
  @ParameterizedTest(name = "{0} {1} {2}")
  @CsvSource({
    "Q1, '', MOSFET, MOSFET",
    "U1, '', Darlington driver array, DRIVER_ARRAY",
    "X1, '', fuse, FUSE",
    "D1, Schottky diode, diode, SCHOTTKY_DIODE",
    "Q1, transistor, MOSFET, MOSFET",
    "Q1, MOSFET, no such thing, MOSFET",
  })
  void a_row_of_the_kits_own_datasheets_tells_the_kind(
      String designator, String description, String row, PartKind kind) {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "designators,value,package,description\n" + designator + ",HX-9,," + description + "\n",
            "datasheets.csv",
            "part type,symbol,condition,source\nhx9,kind," + row + ",own sheet\n");
    assertEquals(
        kind, reading.kit().boards().get(0).items().get(0).partType().kind(), "of the BOM's part");
  }

  @Test
  void a_type_number_under_a_word_for_bodies_tells_where_nothing_else_does() {
    List<Item> items =
        KitTables.read(
                "bom.csv",
                "Part,Value,Device\nQ1,BC547,TO92\nU1,unknown,LM358N\nQ2,?,BC547\nR1,10k,0207/10\n"
                    + "C1,100n,C050\nD1,,LED5MM\n")
            .kit()
            .boards()
            .get(0)
            .items();
    assertEquals(
        List.of("BC547 TO92", "LM358N ", "BC547 ", " 0207/10", " C050", " LED5MM"),
        items.stream()
            .map(item -> item.partType().typeNumber() + " " + item.partType().packageName())
            .toList());
    assertEquals(PartKind.INTEGRATED_CIRCUIT, items.get(1).partType().kind());
  }
}
