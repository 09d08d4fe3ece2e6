package lowfirst.channel;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import lowfirst.board.Kit;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.intake.KitFiles;
import lowfirst.intake.KitReader;
import lowfirst.intake.KitReading;
import lowfirst.problem.Problem;

/**
 * A kit of one channel, written as tables and read as a user's would be; a test changes single
 * cells. What it starts from is a plain solenoid channel that carries.
 */
public final class ChannelKit {
  private static final String SOURCE = "test part, invented";

  /** Kits read before, by their texts: reading takes far longer than all checks of a channel. */
  private static final Map<Map<String, String>, KitReading> READ = new ConcurrentHashMap<>();

  private final Map<String, Map<String, String>> rows;
  private final List<String> datasheets;
  private final Map<String, String> settings;
  private int built = 1;

  private ChannelKit(
      Map<String, Map<String, String>> rows,
      List<String> datasheets,
      Map<String, String> settings) {
    this.rows = rows;
    this.datasheets = datasheets;
    this.settings = settings;
  }

  /** A 24 V solenoid of 1 A on a logic-level MOSFET; everything stated, everything carries. */
  public static ChannelKit typical() {
    var rows = new LinkedHashMap<String, Map<String, String>>();
    rows.put("bom.Q1", bom("Q1", "", "T-FET", "MOSFET, N-channel"));
    rows.put("bom.R1", bom("R1", "220R 1%", "", "resistor"));
    rows.put("bom.R2", bom("R2", "10k 1%", "", "resistor"));
    rows.put("bom.D1", bom("D1", "", "T-DIODE", "diode, rectifier"));
    rows.put("bom.F1", bom("F1", "", "T-FUSE", "fuse UL 248-14"));
    rows.put(
        "rails",
        cells(
            "rail=power; voltage=24 V; tolerance=5 %; current limit=5 A; return wire=2.5 mm2;"
                + " return length=1 m; return contacts=1; contact rating=15 A"));
    rows.put("rails.logic", cells("rail=logic; voltage=5 V; tolerance=5 %"));
    rows.put(
        "drivers",
        cells(
            "driver=pin; kind=logic pin; supply=logic; high level min=4.7 V; low level max=0.3 V;"
                + " source resistance=30 Ohm; current limit=40 mA; at reset=high impedance"));
    rows.put(
        "loads",
        cells(
            "load=striker; kind=solenoid; rail=power; resistance=24 Ohm; tolerance=5 %;"
                + " inductance=50 mH; on time=100 ms; period=1 s; rated duty=100 %"));
    rows.put(
        "channels",
        cells(
            "channel=out 1; board=main; MOSFET=Q1; gate resistor=R1; pull-down=R2; pull-down"
                + " side=gate; flyback diode=D1; fuse=F1; driver=pin; trace width=2 mm; trace"
                + " length=50 mm; trace copper=35 um; trace layer=external; contact rating=10 A;"
                + " wire=1 mm2; wire length=2 m; load=striker"));
    var kit = new ChannelKit(rows, new ArrayList<>(), new HashMap<>(Map.of("ambient", "40 C")));
    return kit.typicalMosfet().typicalDiode().typicalFuse();
  }

  /** A load of 200 Ω on an output of a Darlington array, its clamp diode beside it. */
  public static ChannelKit array() {
    return typical()
        .with("channels", "MOSFET=; gate resistor=; pull-down=")
        .with("drivers", "kind=Darlington array; part type=T-ARRAY")
        .with("loads", "resistance=200 Ohm")
        .datasheet("T-ARRAY", "VCE", "", "", "50", "V")
        .datasheet("T-ARRAY", "IC", "", "", "0.5", "A")
        .datasheet("T-ARRAY", "ICtotal", "", "", "2.5", "A")
        .datasheet("T-ARRAY", "VCEsat", "IC=350mA, IB=500uA", "", "1.6", "V")
        .datasheet("T-ARRAY", "RthJA", "", "", "63", "K/W")
        .datasheet("T-ARRAY", "TJ", "", "", "150", "C");
  }

  /** An optocoupler pulls the gate up to 12 V and may keep 5 V of them. */
  public static ChannelKit coupled() {
    ChannelKit kit =
        typical()
            .with(
                "drivers",
                "kind=optocoupler; part type=T-OPTO; high level min=; input current=10 mA;"
                    + " supply=gate; source resistance=0 Ohm; current limit=60 mA");
    kit.rows.put("rails.gate", cells("rail=gate; voltage=12 V; tolerance=5 %"));
    return kit.with("bom.R2", "value=12k 1%")
        .datasheet("T-OPTO", "VCEsat", "IC=1mA, IF=20mA", "", "0.2", "V")
        .datasheet("T-OPTO", "CTR", "IF=5mA, VCE=5V", "50", "", "%");
  }

  /** The same behind a resettable fuse that holds 1.8 A, and in air of 60 °C 1.2 A. */
  public static ChannelKit resettable() {
    return typical()
        .with("bom.F1", "part type=T-PTC; description=resettable fuse")
        .datasheet("T-PTC", "Ihold", "TA=23C", "", "1.8", "A")
        .datasheet("T-PTC", "Ihold", "TA=60C", "", "1.2", "A")
        .datasheet("T-PTC", "Itrip", "TA=23C", "", "3.6", "A")
        .datasheet("T-PTC", "Vmax", "DC", "", "30", "V")
        .datasheet("T-PTC", "Imax", "DC", "", "40", "A");
  }

  private ChannelKit typicalMosfet() {
    return datasheet("T-FET", "VDS", "", "", "100", "V")
        .datasheet("T-FET", "VGS", "", "", "16", "V")
        .datasheet("T-FET", "VGSth", "ID=250uA", "1.2", "2.2", "V")
        .datasheet("T-FET", "RDSon", "VGS=10V, ID=10A, TJ=25C", "", "35", "mOhm")
        .datasheet("T-FET", "RDSon", "VGS=4V, ID=8A, TJ=25C", "", "50", "mOhm")
        .datasheet("T-FET", "RDSonRatio", "TJ=100C", "", "1.6", "")
        .datasheet("T-FET", "RDSonRatio", "TJ=175C", "", "2.4", "")
        .datasheet("T-FET", "ID", "TC=100C", "", "14", "A")
        .datasheet("T-FET", "IDM", "", "", "60", "A")
        .datasheet("T-FET", "QG", "VGS=5V", "", "30", "nC")
        .datasheet("T-FET", "QGS", "VGS=5V", "", "8", "nC")
        .datasheet("T-FET", "QGD", "VGS=5V", "", "14", "nC")
        .datasheet("T-FET", "VGSpl", "", "2.4", "3.2", "V")
        .datasheet("T-FET", "RthJA", "", "", "62", "K/W")
        .datasheet("T-FET", "RthJC", "", "", "1.5", "K/W")
        .datasheet("T-FET", "TJ", "", "", "175", "C")
        .datasheet("T-FET", "EAS", "IAS=10A", "", "200", "mJ")
        .datasheet("T-FET", "EAR", "", "", "10", "mJ");
  }

  private ChannelKit typicalDiode() {
    return datasheet("T-DIODE", "VRRM", "", "", "200", "V")
        .datasheet("T-DIODE", "IFav", "TA=75C", "", "3", "A")
        .datasheet("T-DIODE", "VF", "IF=3A", "", "1.1", "V")
        .datasheet("T-DIODE", "RthJA", "", "", "40", "K/W")
        .datasheet("T-DIODE", "TJ", "", "", "150", "C")
        .datasheet("T-DIODE", "trr", "", "", "50", "ns");
  }

  private ChannelKit typicalFuse() {
    return datasheet("T-FUSE", "IN", "", "", "2.5", "A")
        .datasheet("T-FUSE", "VN", "DC", "", "125", "V")
        .datasheet("T-FUSE", "breaking", "125 V DC", "", "50", "A")
        .datasheet("T-FUSE", "I2t", "", "6", "", "A2s");
  }

  private static Map<String, String> bom(
      String designator, String value, String partType, String description) {
    var cells = new LinkedHashMap<String, String>();
    cells.put("designators", designator);
    cells.put("quantity", "1");
    cells.put("value", value);
    cells.put("part type", partType);
    cells.put("description", description);
    return cells;
  }

  private static Map<String, String> cells(String namesAndValues) {
    var cells = new LinkedHashMap<String, String>();
    for (String pair : namesAndValues.split("; *")) {
      int sign = pair.indexOf('=');
      cells.put(pair.substring(0, sign).strip(), pair.substring(sign + 1).strip());
    }
    return cells;
  }

  private ChannelKit copy() {
    var copied = new LinkedHashMap<String, Map<String, String>>();
    rows.forEach((name, cells) -> copied.put(name, new LinkedHashMap<>(cells)));
    var kit = new ChannelKit(copied, new ArrayList<>(datasheets), new HashMap<>(settings));
    kit.built = built;
    return kit;
  }

  /** The same kit with cells of one row changed, {@code name=value; name=value}. */
  public ChannelKit with(String row, String namesAndValues) {
    ChannelKit changed = copy();
    changed.rows.computeIfAbsent(row, none -> new LinkedHashMap<>()).putAll(cells(namesAndValues));
    return changed;
  }

  /** The same kit with one more channel like the first, its parts its own but for the fuse. */
  public ChannelKit another(int number) {
    ChannelKit more = with("channels." + number, row("channels") + "; channel=out " + number);
    for (String column : List.of("MOSFET", "gate resistor", "pull-down", "flyback diode")) {
      String first = rows.get("channels").get(column);
      String own = first + number;
      more =
          more.with("bom." + own, row("bom." + first) + "; designators=" + own)
              .with("channels." + number, column + "=" + own);
    }
    return more;
  }

  /** The cells of a row, as {@code with} takes them. */
  public String row(String name) {
    return rows.get(name).entrySet().stream()
        .map(cell -> cell.getKey() + "=" + cell.getValue())
        .collect(Collectors.joining("; "));
  }

  /** The same kit with a setting of {@code kit.properties}. */
  public ChannelKit setting(String name, String value) {
    ChannelKit changed = copy();
    changed.settings.put(name, value);
    return changed;
  }

  /** The same kit with its board built several times. */
  ChannelKit built(int times) {
    ChannelKit changed = copy();
    changed.built = times;
    return changed;
  }

  /** The same kit with one more datasheet line. */
  public ChannelKit datasheet(
      String part, String symbol, String condition, String min, String max, String unit) {
    return line(part, symbol, condition, min, "", max, unit, SOURCE);
  }

  /** The same kit with one more datasheet line, every cell given. */
  public ChannelKit line(
      String part,
      String symbol,
      String condition,
      String min,
      String typ,
      String max,
      String unit,
      String source) {
    ChannelKit changed = copy();
    changed.datasheets.add(
        String.join(
            ",", part, symbol, "\"" + condition + "\"", min, typ, max, unit, "\"" + source + "\""));
    return changed;
  }

  /** The same kit without the lines of one symbol of one part. */
  public ChannelKit withoutDatasheet(String part, String symbol) {
    ChannelKit changed = copy();
    changed.datasheets.removeIf(line -> line.startsWith(part + "," + symbol + ","));
    return changed;
  }

  /** The same kit with a part of the shipped catalogue as MOSFET, its maker named. */
  ChannelKit mosfet(String partType, String maker) {
    return with("bom.Q1", "part type=" + partType + "; description=MOSFET " + maker);
  }

  /** What a user's kit of these tables would be. */
  public Kit kit() {
    return reading().kit();
  }

  /** What is wrong with its tables. */
  public List<Problem> problems() {
    return reading().problems();
  }

  private KitReading reading() {
    var files = new HashMap<String, String>();
    files.put(
        "boards.csv", "board,count,bom,placements\nmain," + built + ",bom.csv,placements.csv\n");
    files.put("bom.csv", table("bom."));
    for (String name : List.of("rails", "drivers", "loads", "channels")) {
      files.put(name + ".csv", table(name));
    }
    for (String name : List.of("supplies", "swaps")) {
      if (rows.containsKey(name)) {
        files.put(name + ".csv", table(name));
      }
    }
    files.put(
        "datasheets.csv",
        "part type,symbol,condition,min,typ,max,unit,source\n"
            + String.join("\n", datasheets)
            + "\n");
    files.put(
        "kit.properties",
        settings.entrySet().stream()
            .map(entry -> entry.getKey() + " = " + entry.getValue())
            .collect(Collectors.joining("\n")));
    return READ.computeIfAbsent(files, ChannelKit::read);
  }

  private static KitReading read(Map<String, String> files) {
    var contents = new HashMap<String, byte[]>();
    files.forEach((name, text) -> contents.put(name, text.getBytes(StandardCharsets.UTF_8)));
    return KitReader.read(new KitFiles("test", contents, List.of()));
  }

  private String table(String prefix) {
    List<Map<String, String>> own =
        rows.entrySet().stream()
            .filter(entry -> entry.getKey().startsWith(prefix))
            .map(Map.Entry::getValue)
            .toList();
    List<String> headers =
        own.stream().flatMap(cells -> cells.keySet().stream()).distinct().toList();
    return String.join(",", headers)
        + "\n"
        + own.stream()
            .map(
                cells ->
                    headers.stream()
                        .map(header -> "\"" + cells.getOrDefault(header, "") + "\"")
                        .collect(Collectors.joining(",")))
            .collect(Collectors.joining("\n"))
        + "\n";
  }

  /** The resolved numbers of its first channel. */
  public ChannelInputs inputs() {
    return KitInputs.of(kit()).channels().get(0);
  }

  /** The finding of its first channel. */
  ChannelFinding finding() {
    return ChannelFinding.of(inputs());
  }

  /** One check of its first channel. */
  Check check(CheckKind kind) {
    return check(inputs(), kind);
  }

  /** One check of a channel. */
  static Check check(ChannelInputs in, CheckKind kind) {
    return ChannelFinding.of(in)
        .check(kind)
        .orElseThrow(() -> new AssertionError("no check " + kind + " was made"));
  }
}
