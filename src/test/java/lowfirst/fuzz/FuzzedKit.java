package lowfirst.fuzz;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import lowfirst.assembly.AssemblyOptions;
import lowfirst.assembly.AssemblyOrder;
import lowfirst.board.Kit;
import lowfirst.channel.ChannelStudy;
import lowfirst.channel.KitInputs;
import lowfirst.channel.LoadFindings;
import lowfirst.intake.KitFiles;
import lowfirst.intake.KitReader;
import lowfirst.intake.KitReading;
import lowfirst.intake.shipped.ShippedTables;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;
import lowfirst.sorting.SortPlan;
import lowfirst.swap.subject.SwappedKit;

/**
 * A small sound kit in which one file is any bytes at all: it must be read, every rejected cell
 * must say its line and column, and what was read must be good enough for every computation.
 */
final class FuzzedKit {

  /** Problems of one cell; their places say which. */
  private static final Set<Kind> OF_ONE_CELL =
      EnumSet.of(
          Kind.CELL_EMPTY,
          Kind.CELL_UNREADABLE,
          Kind.UNIT_UNKNOWN,
          Kind.OUT_OF_RANGE,
          Kind.DESIGNATOR_UNREADABLE);

  private static final Map<String, byte[]> SOUND = sound();

  /** What boards are read of; reading only these tries more inputs in the same time. */
  private static final Set<String> OF_BOARDS =
      Set.of(
          "boards.csv",
          "columns.properties",
          "main/bom.csv",
          "main/bom.xlsx",
          "main/bom.html",
          "main/placements.csv",
          "board.xml");

  private FuzzedKit() {}

  /** Reads the kit with these bytes in place of one file. */
  static Consumer<byte[]> with(String file) {
    return bytes -> read(file, bytes);
  }

  /** Reads the kit with these bytes as the only sheet of a spreadsheet file. */
  static Consumer<byte[]> withSheet() {
    return bytes -> read("main/bom.xlsx", workbook(bytes));
  }

  private static void read(String file, byte[] bytes) {
    Map<String, byte[]> files = new TreeMap<>(SOUND);
    if (OF_BOARDS.contains(file)) {
      files.keySet().retainAll(OF_BOARDS);
    }
    if (file.endsWith(".xlsx") || file.endsWith(".html")) {
      files.remove("main/bom.csv");
      files.put(
          "boards.csv", text("board,bom,placements\nmain," + file + ",main/placements.csv\n"));
    }
    if (file.endsWith(".xml")) {
      files.keySet().removeAll(List.of("boards.csv", "main/bom.csv", "main/placements.csv"));
    }
    files.put(file, bytes);
    KitReading reading = KitReader.read(new KitFiles("kit", files, List.of()));
    reading.problems().forEach(problem -> place(problem, files));
    compute(reading.kit());
  }

  /** A rejection names a file of the kit, and a rejected cell its line and column. */
  private static void place(Problem problem, Map<String, byte[]> files) {
    boolean lies = problem.place().line() < 0 || problem.place().column() < 0;
    boolean table = problem.place().file().matches(".*\\.(csv|xlsx|html|xml)");
    // A cell is also empty where the table lacks its column.
    boolean cell = table && problem.kind() != Kind.CELL_EMPTY;
    boolean vague =
        OF_ONE_CELL.contains(problem.kind())
            && (problem.place().line() == 0 || (cell && problem.place().column() == 0));
    boolean absent =
        problem.kind() != Kind.FILE_MISSING && !files.containsKey(problem.place().file());
    if (lies || vague || absent) {
      throw new AssertionError("no place: " + problem.kind() + " " + problem);
    }
  }

  private static void compute(Kit read) {
    Kit kit = SwappedKit.of(read, ShippedTables.bodyOutlines());
    AssemblyOrder.of(kit, AssemblyOptions.USUAL);
    SortPlan.of(kit);
    KitInputs inputs = KitInputs.of(kit);
    ChannelStudy.of(inputs);
    LoadFindings.of(inputs);
  }

  /** A spreadsheet file of one sheet, in which style 1 is struck through. */
  static byte[] workbook(byte[] sheet) {
    String container = "http://schemas.openxmlformats.org/package/2006/";
    String document = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    String main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    String related = "<Relationships xmlns=\"" + container + "relationships\">%s</Relationships>";
    String relation = "<Relationship Id=\"%1$s\" Type=\"" + document + "/%2$s\" Target=\"%3$s\"/>";
    Map<String, byte[]> parts = new TreeMap<>();
    parts.put(
        "[Content_Types].xml",
        text(
            "<Types xmlns=\""
                + container
                + "content-types\"><Override PartName=\"/xl/styles.xml\" ContentType=\""
                + "application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml\"/></Types>"));
    parts.put(
        "_rels/.rels",
        text(related.formatted(relation.formatted("r1", "officeDocument", "xl/workbook.xml"))));
    parts.put(
        "xl/_rels/workbook.xml.rels",
        text(
            related.formatted(
                relation.formatted("r1", "worksheet", "worksheets/sheet1.xml")
                    + relation.formatted("r2", "styles", "styles.xml"))));
    parts.put(
        "xl/workbook.xml",
        text(
            "<workbook xmlns=\"%s\" xmlns:r=\"%s\">".formatted(main, document)
                + "<sheets><sheet name=\"s\" sheetId=\"1\" r:id=\"r1\"/></sheets></workbook>"));
    parts.put(
        "xl/styles.xml",
        text(
            "<styleSheet xmlns=\"%s\"><fonts><font/><font><strike/></font></fonts>".formatted(main)
                + "<cellXfs><xf fontId=\"0\"/><xf fontId=\"1\"/></cellXfs></styleSheet>"));
    parts.put("xl/worksheets/sheet1.xml", sheet);
    var packed = new ByteArrayOutputStream();
    try (var zip = new ZipOutputStream(packed)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue());
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return packed.toByteArray();
  }

  private static byte[] text(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static Map<String, byte[]> sound() {
    Map<String, byte[]> files = new TreeMap<>();
    files.put("kit.properties", text("title = Chime\nambient = 50 C\n"));
    files.put("columns.properties", text("bom.value = value\nplacements.unit = mm\n"));
    files.put(
        "boards.csv",
        text("board,count,bom,placements\nmain,2,main/bom.csv,main/placements.csv\n"));
    files.put(
        "main/bom.csv",
        text(
            """
            designators,quantity,value,package,height,part type
            Q1,1,BP-1,TO-220,,BP-1
            R1 R2,2,330R 5% 0.25W,DIN0207,2.5 mm,
            D1,1,D-1,DO-41,,D-1
            F1,1,2 A slow,fuse,,
            U1,1,8-bit latch,DIP-20,,
            """));
    files.put(
        "main/placements.csv",
        text(
            """
            designator,x mm,y mm,rotation,side
            Q1,10,10,45,top
            R1,30,10,0,top
            R2,30,20,0,bottom
            D1,30,30,90,top
            F1,30,40,90,top
            U1,50,40,0,top
            """));
    files.put(
        "datasheets.csv",
        text(
            """
            part type,symbol,condition,min,typ,max,unit,source
            BP-1,VDS,,,,60,V,sheet 1
            BP-1,ID,,,,10,A,sheet 1
            BP-1,RDSon,VGS=4.5V ID=5A,,30,40,mΩ,sheet 1
            BP-1,RthJA,,,,62,K/W,sheet 1
            D-1,VRRM,,,,100,V,sheet 1
            D-1,IFav,,,,1,A,sheet 1
            """));
    files.put("rails.csv", text("rail,voltage,tolerance,current limit\nbells,24 V,5 %,20 A\n"));
    files.put("supplies.csv", text("supply,rails,power limit\nPSU,bells,400 W\n"));
    files.put(
        "channels.csv",
        text(
            "channel,board,MOSFET,gate resistor,pull-down,flyback diode,fuse,driver,trace width,"
                + "trace length,copper,wire,wire length,load\n"
                + "1,main,Q1,R1,R2,D1,F1,pin,2 mm,40 mm,35 um,1 mm2,3 m,bell\n"));
    files.put("drivers.csv", text("driver,kind,high level min\npin,logic pin,4.5 V\n"));
    files.put(
        "loads.csv",
        text(
            "load,kind,rail,resistance,inductance,on time,period\n"
                + "bell,solenoid,bells,12 Ω,20 mH,40 ms,1 s\n"));
    files.put("bag.csv", text("part type,quantity,bag\n330R,10,A1\n"));
    files.put(
        "swaps.csv", text("board,designators,part type fitted,reason\nmain,R1,470R,sold out\n"));
    return files;
  }
}
