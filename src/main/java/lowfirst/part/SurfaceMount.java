package lowfirst.part;

import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Names of bodies that are soldered flat to pads. No row of the package table is about them, so no
 * name of one may stand for a through-hole body that has a like name.
 *
 * <p>Package families: JEDEC JEP95 outlines and their common short forms. Chip sizes: the
 * hundredths of an inch of length and width by which IEC 60115-8 and makers call them. The sizes of
 * leaded resistors ({@code 0207}, {@code 0309} ...) are others. Land patterns: the names of
 * IPC-7351B, 3.1.5; those of bodies with leads ({@code RESAD}, {@code CAPRD} ...) are others, too.
 */
public final class SurfaceMount {
  private static final Pattern SAID =
      Pattern.compile(
          "(?<![A-Z])(SMD|SMT|SURFACE[ _-]?MOUNT(ED|ING)?)(?![A-Z])|_\\d{4}METRIC"
              // SWITCHSMD; 1x06-1MP, a plug with a pad that only holds it.
              + "|[A-Z]SM[DT](?![A-Z0-9])|\\dX\\d{2}-\\dMP(?![A-Z0-9])");
  private static final Pattern THROUGH_HOLE =
      Pattern.compile("(?<![A-Z])(THT|THROUGH|P?DIP|DIL|SOCKET|AXIAL|RADIAL|ADAPTER)(?![A-Z])");

  /** The count of pins may stand before the family: 8SOIC. */
  private static final Pattern FAMILY =
      Pattern.compile(
          "(?:(?<![A-Z0-9])|(?<=(?<![A-Z0-9])\\d{1,3})(?=[A-Z]{0,4}(?:SO(?:IC|J|P)|[QD]FN|QFP|BGA|LGA)))("
              + "SC-?(59|70|74|75|88)A?|SOT-?(23|25|26|89|143|223|323|343|346|353|363|416|457|523|553"
              + "|563|666|669|723|883|886)|TSOT-?23|SOD-?(80C?|110|123(F|FL|L|W)?|128|323F?|523F?|723|882|923)"
              + "|DO-?21[3-9][A-Z]{0,2}|TO-?(236|243|252|261|263|268|269|277)[A-Z]{0,2}|D2?-?PAC?K|D3-?PAC?K"
              + "|(HT?|L|M|Q|S|T|TS|V|VS|HTS|HVS|MICRO|W)?SOP|SOIC|SOICW?|SOJ|TSOP|S?SO-?0?(8|1[046]|18|2[048])(?:EP|D?W|[DLNM])?"
              + "|(DH?V?|H?V|L|P|T|TD|U|UD|V|W|WD|X)?[QD]FN|(H?L|H?T|P|C|V|M)?QFP|[UVWX]?SON|MLF|[A-Z]{0,3}BGA|LGA"
              + "|SMDIP|WLCSP|DIRECTFET|(MINI|MICRO)?-?MELF|EIA-?(2012|3216|3528|6032|7343)"
              + "|(2012|3216|3528|6032|7343)-\\d{2}[A-Z]?"
              + ")(?![A-Z])");

  private static final Pattern CHIP =
      Pattern.compile(
          "(?<![A-Z0-9.])(R|C|L|D|F|M|FB|LED|SML|RES|CAP|IND|CHIP)?[ _-]?"
              + "(01005|0201|0402|0603|0805|1008|1206|1210|1806|1808|1812|2010|2220|2512)"
              + "(?![0-9A-KM-Z]|[.,x]\\d)");

  /** A maker's series or a symbol before the size of a chip: CRCW0402, C-EUC0805. */
  private static final Pattern SERIES_AND_CHIP =
      Pattern.compile("(?<=[A-Z])(0402|0603|0805|1206)(?![0-9]|[.,X]\\d)");

  private static final Pattern CHIP_WORD =
      Pattern.compile("(?<![\\w.,/-])(0201|0402|0603|0805|1206|1210|1812|2512)(?![\\w.,/-]*\\w)");

  /** Words about leads, or about a choice. */
  private static final Pattern LEADS =
      Pattern.compile(
          "(?<![A-Z])(THT|PTH|THROUGH|THRU|LEADED|P?DIP|DIL|SIP|AXIAL|RADIAL|DISC|SOCKET|ADAPTER|NOT|NON|NO|OR)(?![A-Z])"
              + "|(?<![A-Z0-9])(TO-?(3|5|18|39|92|126|218|220|247)|DO-?(15|35|41|201)|HC-?(49|18)|DIN ?0\\d{3})(?![0-9])"
              + "|PIN_?HEADER|PIN_?SOCKET|C_RECT|CP_RADIAL");

  /** Length and width of a light-emitting chip's body, in tenths of a millimetre. */
  private static final Pattern LED_CHIP =
      Pattern.compile("(?<![\\d.])(2835|3014|3528|3535|5050|5630|5730)(?![\\d.])");

  /** Of a number a spreadsheet drops the first nought. */
  private static final Pattern BARE_CHIP = Pattern.compile("^(402|603|805)$");

  private static final Pattern METRIC_CHIP =
      Pattern.compile(
          "(?<![A-Z0-9.])[RCL]((1608|2012|3216|3225|4516|4532|5650)M?|(0402|0603|0805|1206|1210|1812|2010|2512)[KW])(?![A-Z0-9])");
  private static final Pattern LAND =
      Pattern.compile(
          "(?<![A-Z])((RES|CAP|IND|DIO|LED|FUS|VAR)(C|CP|CAF|CAV|CWR|M|MP|PM|MELF|P|SC)\\d{3}|CAPAE\\d{3}"
              + "|(SO|SOT|SOTFL|SOP|SOIC|SOJ|SOD|SODFL|SON|PSON|QFP|QFN|PQFN|DFN|CFP|PLCC)\\d{2,3}P\\d)");
  private static final Pattern OF_A_DIODE =
      Pattern.compile(
          "(?<![A-Z0-9])((D[ _-]|DIODE[ _-]?)SM[ABC]|SM[ABC][ _-]?DIODE|SM[ABCF]J?_L\\d)(?![A-Z])");

  private static final Pattern DIODE_WORD = Pattern.compile("(?<![\\w-])SM[ABC](?![\\w-])");

  /** On a diode a body, on a connector a coaxial plug. */
  private static final Pattern LETTERS = Pattern.compile("SM[ABCF]J?");

  private static final Pattern CAN = Pattern.compile("^CP?_ELEC_|^PANASONIC_[A-H]$");

  /** Of several words; a text that is nothing but four digits may be a value or a number. */
  private static final Pattern PARTED = Pattern.compile("(?<=\\S)[ /_,;]");

  /** Longer names are not read. */
  private static final int LONGEST = OutlineName.LONGEST;

  private SurfaceMount() {}

  /** Whether a package or footprint name, or a part's text, says that it is soldered flat. */
  public static boolean isNamed(String name, PartKind kind) {
    if (name.length() < 3 || name.length() > LONGEST) {
      return false;
    }
    String text = capitals(name);
    boolean throughHole = THROUGH_HOLE.matcher(text).find();
    if (SAID.matcher(throughHole ? text : name.toUpperCase(Locale.ROOT)).find()) {
      return true;
    }
    boolean ofItsKind =
        kind.isDiode() && LETTERS.matcher(text).matches()
            || kind == PartKind.LED && LED_CHIP.matcher(text).find();
    return ofItsKind
        || (!throughHole
            && (Stream.of(FAMILY, CHIP, METRIC_CHIP, BARE_CHIP, LAND, OF_A_DIODE, CAN)
                    .anyMatch(p -> p.matcher(text).find())
                || comesAsChip(kind) && SERIES_AND_CHIP.matcher(text).find()));
  }

  /**
   * Whether words about a part say that it is soldered flat, and its package name, which may be
   * empty, doesn't speak of leads.
   */
  public static boolean isSaidOf(String words, String packageName, PartKind kind) {
    if (words.length() < 3
        || words.length() > LONGEST
        || LEADS.matcher(capitals(packageName)).find()) {
      return false;
    }
    String text = words.toUpperCase(Locale.ROOT);
    return !LEADS.matcher(text).find()
        && (SAID.matcher(text).find()
            || FAMILY.matcher(text).find()
            || comesAsChip(kind) && CHIP_WORD.matcher(text).find()
            || kind.isDiode() && DIODE_WORD.matcher(text).find());
  }

  private static boolean comesAsChip(PartKind kind) {
    return kind == PartKind.RESISTOR
        || kind == PartKind.INDUCTOR
        || kind == PartKind.VARISTOR
        || kind == PartKind.THERMISTOR
        || kind == PartKind.LED
        || kind.isCapacitor();
  }

  /** Whether a package or footprint name, or a part's text, names the size of a chip. */
  public static boolean isChip(String name) {
    return name.length() > 3 && name.length() <= LONGEST && isChipInCapitals(capitals(name));
  }

  private static boolean isChipInCapitals(String text) {
    return Stream.of(CHIP, METRIC_CHIP, BARE_CHIP).anyMatch(p -> p.matcher(text).find());
  }

  private static String capitals(String name) {
    return name.substring(name.lastIndexOf(':') + 1).strip().toUpperCase(Locale.ROOT);
  }

  /** Whether a part type says so, in its package or, where that is silent, in its text. */
  public static boolean isNamed(PartType type) {
    if (!type.packageName().isBlank()) {
      return isNamed(type.packageName(), type.kind())
          || SAID.matcher(capitals(type.typeNumber())).find()
              && !THROUGH_HOLE.matcher(capitals(type.packageName())).find();
    }
    return PARTED.matcher(type.text()).find() && isNamed(type.text(), type.kind())
        || SAID.matcher(capitals(type.typeNumber())).find()
        || comesAsChip(type.kind())
            && (SERIES_AND_CHIP.matcher(capitals(type.typeNumber())).find()
                || SERIES_AND_CHIP.matcher(capitals(type.text())).find());
  }
}
