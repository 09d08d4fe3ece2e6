package lowfirst.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lowfirst.intake.shipped.ShippedTables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Bodies that are soldered flat, told from through-hole bodies with like names. */
class SurfaceMountTest {
  private static final BodyOutlines TABLE = ShippedTables.bodyOutlines();

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "R_0805_2012Metric",
        "0603",
        "C0603",
        "C0805K",
        "805",
        "R1206W",
        "R 1206",
        "LED_0805",
        "CAP-1210",
        "lib:L_1812_4532Metric",
        "C_Elec_6.3x5.4",
        "SOT-23",
        "SOT23-5",
        "SOT-223-3_TabPin2",
        "SOT89",
        "SC-70",
        "SOD-123",
        "SOD-123W",
        "DIRECTFET_M",
        "SOD-323F",
        "SOD-80C",
        "TO-252-2",
        "TO-263",
        "DPAK",
        "D2PAK",
        "D2PACK",
        "DO-214AC",
        "DO-213AB",
        "D_SMA",
        "MiniMELF",
        "8SOIC",
        "SMDIP-4",
        "48LQFP",
        "16 TSSOP",
        "SOIC-8_3.9x4.9mm_P1.27mm",
        "SO-8",
        "SO16",
        "TSSOP-20",
        "MSOP8",
        "SSOP28",
        "LQFP-48_7x7mm_P0.5mm",
        "QFN-32-1EP_5x5mm",
        "TQFP44",
        "VQFN-16",
        "BGA-256",
        "WSON-8",
        "CP_Elec_6.3x7.7",
        "EIA-3216",
        "HC49-SMD",
        "PinHeader_2x05_P2.54mm_Vertical_SMD",
        "axial (SMT)",
        "surface mount",
        "RESC1608X55N",
        "CAPC1005X60",
        "CAPMP3528X210N",
        "CAPAE660X565N",
        "DIOM5226X290N",
        "DIOMELF3516N",
        "INDC2012X105N",
        "SOT95P280X145-5N",
        "SOIC127P600X175-8N",
        "QFP50P900X900X160-48N",
        "M0805",
        "SML0603",
        "L3225M",
        "SMF_L2.8-W1.8-LS3.7-RD",
        "SMA-DIODE",
        "SMBDIODE",
        "DIODESMA",
        "PANASONIC_D",
        "TAC_BUTTONSMD",
        "CR1632SMT",
        "SO-20DW",
        "SO16W",
        "Plug_GH_BM05B_1x05-1MP_P1.25mm_Vertical"
      })
  void soldered_flat(String name) {
    assertTrue(SurfaceMount.isNamed(name, PartKind.UNKNOWN));
    assertFalse(TABLE.find(name, PartKind.RESISTOR).isRead());
  }

  @ParameterizedTest(name = "\"{0}\"")
  @ValueSource(
      strings = {
        "0207",
        "0207/10",
        "0204/7",
        "R_Axial_DIN0309_L9.0mm_D3.2mm_P12.70mm_Horizontal",
        "TO-92",
        "TO-220-3",
        "TO-126",
        "TO-247",
        "SOT-32",
        "SOT-78",
        "SOT-93",
        "SOD-27",
        "SOD-81",
        "DO-35",
        "DO-41",
        "DO-201AD",
        "DIP-8_W7.62mm",
        "DIP-16 (socket for SO-8 adapter)",
        "SIP-9",
        "IPAK",
        "I2PAK",
        "HC49U",
        "SMA",
        "C025-024X044",
        "C_Disc_D5.0mm_W2.5mm_P5.00mm",
        "CP_Radial_D8.0mm_P3.50mm",
        "E7.5-18",
        "PinHeader_1x04_P2.54mm_Vertical",
        "SO-239",
        "USB_B",
        "RESAD1016W60L620D240B",
        "CAPRD500W60D800H1150B",
        "DIOAD1068W53L419D191B",
        "TO254P1054X470X1955-3",
        "DIP762W50P254L920H533Q8N",
        "M3",
        "CR2032",
        ""
      })
  void with_leads_through_the_board(String name) {
    assertFalse(SurfaceMount.isNamed(name, PartKind.UNKNOWN));
  }

  @Test
  void no_name_of_the_package_table_is_taken_for_one() {
    List<String> taken =
        TABLE.all().stream()
            .map(BodyOutline::name)
            .filter(name -> SurfaceMount.isNamed(name, PartKind.UNKNOWN))
            .toList();
    assertEquals(List.of(), taken);
  }

  @ParameterizedTest(name = "{0} {1} in {2}: {3}")
  @CsvSource({
    "DIODE, SS14, SMA, true",
    "CONNECTOR, antenna, SMA, false",
    "DIODE, 1N4148W SOD-123, '', true",
    "BIPOLAR_TRANSISTOR, 2N3904, SOT-23, true",
    "BIPOLAR_TRANSISTOR, 2N3904, '', false",
    "RESISTOR, 10k 0805, '', true",
    "RESISTOR, 1206, '', false",
    "RESISTOR, 10k/0603, '', true",
    "CAPACITOR, 22n_0805_X7R, '', true",
    "RESISTOR, /1206, '', false",
    "RESISTOR, 10k/0207, '', false",
    // sizes of light-emitting chips, in tenths of a millimetre (common practice)
    "LED, LED 2835, '', true",
    "LED, red, 5050, true",
    "RESISTOR, 5050, '', false",
    // metric chip sizes, and tantalum cases by EIA-535
    "CAPACITOR, 100n, C3216, true",
    "CAPACITOR, 330u, A/3216-18W, true",
    "CAPACITOR, 100n, C025-024X044, false",
    // IPC-7351 land of a moulded capacitor with a plus
    "CAPACITOR, 6.8u, CAPPM3528X210N, true",
    // a series or a symbol before the size of a chip
    "RESISTOR, 10k, FP-CRCW0402-e3, true",
    "CAPACITOR, 100n, C-EUC0805, true",
    "VARISTOR, 5 V, CT/CN0603, true",
    "CONNECTOR, key, KEY0603, false",
    // a library may say what a name in it does not
    "SWITCH, push, Button_SMD:SW_SPST_6x6, true",
    "RESISTOR, 1k, Own_SMD:R_Axial_DIN0207, false",
    "MOSFET, IRF540, TO-220, false"
  })
  void a_part_type_says_so_in_its_package_or_its_text(
      PartKind kind, String text, String packageName, boolean flat) {
    PartType type = type(kind, text, packageName);
    assertEquals(flat, SurfaceMount.isNamed(type));
    // The usual body of the type number must not step in.
    assertEquals(!flat, TABLE.find(type).value().isPresent() || kind == PartKind.CONNECTOR);
  }

  private static PartType type(PartKind kind, String text, String packageName) {
    return PartType.named(kind, text, text, packageName);
  }

  @ParameterizedTest(name = "{0}, {1}, {2}: {3}")
  @CsvSource({
    "DIODE, 'Schottky 40 V 1 A SMA', FP-403, true",
    "DIODE, 'Schottky 40 V 1 A SMA', DO-41, false",
    "DIODE, 'Schottky 40 V 1 A, DO-41 or SMA', '', false",
    "RESISTOR, 'thick film 1 % 0805', '', true",
    "RESISTOR, 'thick film 1 % 0805', FP-AT-B, true",
    "RESISTOR, 'film 0207', '', false",
    "INTEGRATED_CIRCUIT, 'op amp SOIC-8', '', true",
    "INTEGRATED_CIRCUIT, 'op amp, DIP-8', '', false",
    "INTEGRATED_CIRCUIT, 'op amp (not SMD)', '', false",
    "SWITCH, tactile surface mount, FP-TS, true",
    "SWITCH, 'for through hole, not surface mount', '', false",
    "CONNECTOR, jack for 2012 models, '', false"
  })
  void words_about_a_part_say_so(PartKind kind, String words, String packageName, boolean flat) {
    assertEquals(flat, SurfaceMount.isSaidOf(words, packageName, kind));
  }
}
